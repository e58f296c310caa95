-- That a batch had gelled: how long after it was mixed, and how warm it was. The moment is the act's.
create table batch_gel (
    id integer primary key,
    act_id integer not null references act (id),
    batch_id integer not null references batch (id),
    after_seconds real not null check (after_seconds > 0),
    celsius real check (celsius between -20 and 50),
    undone_id integer references act (id)
) strict;

create index batch_gel_act on batch_gel (act_id);
create index batch_gel_batch on batch_gel (batch_id);

-- They stood among the readings of cups, under a cup that is none.
insert into batch_gel (act_id, batch_id, after_seconds, celsius, undone_id)
select act_id, batch_id, seconds, celsius, undone_id
from flow_reading
where cup = 'gel'
order by id;

delete from flow_reading where cup = 'gel';
