-- How a piece stands now, kept by the file itself like the sums of the books: its last stage and shelf that hold.
create table piece_stand (
    piece_id integer primary key references piece (id),
    stage text not null check (stage in ('drying', 'ready', 'coated', 'cured', 'kept', 'sold', 'bin')),
    shelf_id integer references shelf (id)
) strict;

create index piece_stand_stage on piece_stand (stage);
create index piece_stand_shelf on piece_stand (shelf_id) where shelf_id is not null;

create view piece_standing as
select piece.id as piece_id,
       (select line.stage
        from live_piece_event as line
        where line.piece_id = piece.id and line.stage is not null
        order by line.id desc
        limit 1) as stage,
       (select line.shelf_id
        from live_piece_event as line
        where line.piece_id = piece.id and line.kind = 'shelved'
        order by line.id desc
        limit 1) as shelf_id
from piece;

insert into piece_stand (piece_id, stage, shelf_id)
select piece_id, stage, shelf_id
from piece_standing
where stage is not null;

create trigger piece_event_stands after insert on piece_event
begin
    delete from piece_stand
    where piece_id = new.piece_id;
    insert into piece_stand (piece_id, stage, shelf_id)
    select piece_id, stage, shelf_id
    from piece_standing
    where piece_id = new.piece_id
      and stage is not null;
end;

-- What a material was used by lately: its lines by reason, from the first act that was written since.
drop index stock_entry_material;
create index stock_entry_material on stock_entry (material_id, reason, act_id);
create index act_written on act (written_at);
