-- How a batch flowed: the seconds of a cup, or of a trace where no cup is named. The moment is the act's.
create table flow_reading (
    id integer primary key,
    act_id integer not null references act (id),
    batch_id integer not null references batch (id),
    cup text check (length(cup) between 1 and 10),
    seconds real not null check (seconds > 0),
    celsius real check (celsius between -20 and 50),
    undone_id integer references act (id)
) strict;

create index flow_reading_act on flow_reading (act_id);
create index flow_reading_batch on flow_reading (batch_id);

-- What was noted of pieces, without reading all that happened to them.
create index piece_event_note on piece_event (id) where kind = 'note';
