-- The books. What is booked hangs from an act; a book is only appended, and what stands in a shelf, a balance or a
-- stage is the sum or the last of its lines. A row that is no book is kept in the act as it was (setting_change).

-- No author: the studio itself, when it opens its books or a cure has run its time.
create table act (
    id integer primary key,
    kind text not null check (length(kind) between 1 and 20),
    author_id integer references member (id),
    for_id integer references member (id),
    chat_id integer,
    message_id integer,
    words text not null check (length(words) > 0),
    happened_at integer not null,
    written_at integer not null,
    undoes_id integer unique references act (id),
    check ((kind = 'undo') = (undoes_id is not null)),
    check (undoes_id <> id)
) strict;

create index act_author on act (author_id, written_at, id);
create index act_for on act (for_id) where for_id is not null;

create trigger act_is_not_changed before update on act
begin
    select raise(abort, 'an act is not changed');
end;

create trigger act_does_not_go before delete on act
begin
    select raise(abort, 'an act does not go');
end;

create trigger act_undo_stays before insert on act
when (select undoes_id from act where id = new.undoes_id) is not null
begin
    select raise(abort, 'what undid an act is not undone');
end;

-- What stood in the file before there were books is opened by one act, at the last moment the file knows of.
insert into act (kind, words, happened_at, written_at)
select 'opening', 'opening', last_at, last_at
from (
    select max(at) as last_at
    from (
        select max(bought_at) as at from lot
        union all select max(poured_at) from piece
        union all select max(made_at) from batch
        union all select max(read_at) from air_reading))
where last_at is not null;

-- A kit is one label on two materials, so a label is unique only within its material.
create table lot_next (
    id integer primary key,
    material_id integer not null references material (id),
    label text collate nocase check (length(label) between 1 and 20),
    bought_at integer not null,
    price_cents integer check (price_cents >= 0),
    bought_microlitres integer check (bought_microlitres > 0),
    bought_milligrams integer check (bought_milligrams > 0),
    bought_pieces integer check (bought_pieces > 0),
    opened_at integer,
    act_id integer not null references act (id),
    undone_id integer references act (id),
    unique (id, material_id),
    check ((bought_microlitres is not null) + (bought_milligrams is not null) + (bought_pieces is not null) = 1)
) strict;

insert into lot_next (
    id, material_id, label, bought_at, price_cents, bought_microlitres, bought_milligrams, bought_pieces, act_id)
select lot.id, lot.material_id, lot.label, lot.bought_at, lot.price_cents, lot.bought_microlitres,
       lot.bought_milligrams, lot.bought_pieces, act.id
from lot
join act on act.kind = 'opening'
order by lot.id;

-- Reasons of the lines: an undone line is answered by its opposite for the same reason, so that sums by reason hold.
create table stock_entry (
    id integer primary key,
    act_id integer not null references act (id),
    material_id integer not null,
    lot_id integer not null,
    microlitres integer check (microlitres <> 0),
    milligrams integer check (milligrams <> 0),
    pieces integer check (pieces <> 0),
    reason text not null check (reason in (
        'opening', 'bought', 'made', 'used', 'mixed', 'poured', 'coated', 'counted', 'binned', 'returned')),
    undoes_id integer unique references stock_entry (id),
    foreign key (lot_id, material_id) references lot_next (id, material_id),
    check ((microlitres is not null) + (milligrams is not null) + (pieces is not null) = 1)
) strict;

insert into stock_entry (act_id, material_id, lot_id, microlitres, milligrams, pieces, reason)
select act.id, lot.material_id, lot.id, lot.left_microlitres, lot.left_milligrams, lot.left_pieces, 'opening'
from lot
join act on act.kind = 'opening'
where coalesce(lot.left_microlitres, lot.left_milligrams, lot.left_pieces) > 0
order by lot.id;

drop table lot;
alter table lot_next rename to lot;

create unique index lot_label on lot (material_id, label) where undone_id is null;
create index lot_age on lot (material_id, bought_at, id) where undone_id is null;
create index lot_act on lot (act_id);
create index stock_entry_act on stock_entry (act_id);
create index stock_entry_lot on stock_entry (lot_id, microlitres, milligrams, pieces);
create index stock_entry_material on stock_entry (material_id, microlitres, milligrams, pieces);

create trigger stock_entry_is_not_changed before update on stock_entry
begin
    select raise(abort, 'a book is only appended');
end;

create trigger stock_entry_does_not_go before delete on stock_entry
begin
    select raise(abort, 'a book is only appended');
end;

create trigger stock_entry_draws_what_is_there after insert on stock_entry
when coalesce(new.microlitres, new.milligrams, new.pieces) < 0
    and (select sum(coalesce(microlitres, milligrams, pieces)) from stock_entry where lot_id = new.lot_id) < 0
begin
    select raise(abort, 'a lot holds no less than nothing');
end;

create table lot_stop (
    lot_id integer primary key references lot (id),
    why text check (length(why) > 0),
    stopped_at integer not null
) strict;

-- The lines of an act add up to zero: what one account gains another gives.
create table money_entry (
    id integer primary key,
    act_id integer not null references act (id),
    account text not null check (account in ('member', 'kitty', 'studio')),
    member_id integer references member (id),
    cents integer not null check (cents <> 0),
    undoes_id integer unique references money_entry (id),
    check ((account = 'member') = (member_id is not null))
) strict;

create index money_entry_act on money_entry (act_id);
create index money_entry_account on money_entry (account, member_id, cents);
create index money_entry_member on money_entry (member_id) where member_id is not null;

create trigger money_entry_is_not_changed before update on money_entry
begin
    select raise(abort, 'a book is only appended');
end;

create trigger money_entry_does_not_go before delete on money_entry
begin
    select raise(abort, 'a book is only appended');
end;

alter table batch add column act_id integer references act (id);
alter table batch add column undone_id integer references act (id);
alter table batch add column lot_id integer references lot (id);
update batch set act_id = (select id from act where kind = 'opening');
create index batch_act on batch (act_id);
create index batch_lot on batch (lot_id) where lot_id is not null;

alter table air_reading add column act_id integer references act (id);
alter table air_reading add column undone_id integer references act (id);
update air_reading set act_id = (select id from act where kind = 'opening');
create index air_reading_act on air_reading (act_id);

-- A number that is written under a piece before it is poured.
create table piece_number (
    number integer primary key check (number >= 1),
    shape text not null check (shape in ('panel', 'disc', 'oval', 'hexagon')),
    width_micrometres integer not null check (width_micrometres > 0),
    height_micrometres integer check (height_micrometres > 0),
    depth_micrometres integer check (depth_micrometres >= 0),
    act_id integer not null references act (id),
    check ((shape in ('panel', 'oval')) = (height_micrometres is not null))
) strict;

-- A disc has its diameter in the width, a hexagon its width across flats.
create table piece_next (
    id integer primary key,
    number integer not null check (number >= 1),
    shape text not null check (shape in ('panel', 'disc', 'oval', 'hexagon')),
    width_micrometres integer not null check (width_micrometres > 0),
    height_micrometres integer check (height_micrometres > 0),
    depth_micrometres integer check (depth_micrometres >= 0),
    technique text not null check (length(technique) > 0),
    colours integer check (colours >= 1),
    recipe_id integer references recipe (id),
    batch_id integer references batch (id),
    maker_id integer not null references member (id),
    poured_at integer not null,
    act_id integer not null references act (id),
    undone_id integer references act (id),
    check ((shape in ('panel', 'oval')) = (height_micrometres is not null))
) strict;

insert into piece_next (
    id, number, shape, width_micrometres, height_micrometres, depth_micrometres, technique, colours, recipe_id,
    batch_id, maker_id, poured_at, act_id)
select piece.id, piece.number, piece.shape, piece.width_micrometres, piece.height_micrometres,
       piece.depth_micrometres, piece.technique, piece.colours, piece.recipe_id, piece.batch_id, piece.maker_id,
       piece.poured_at, act.id
from piece
join act on act.kind = 'opening'
order by piece.id;

-- stage: the one the piece has from this line on; empty: as before. An undone line is answered by one of kind undone.
create table piece_event (
    id integer primary key,
    act_id integer not null references act (id),
    piece_id integer not null references piece_next (id),
    kind text not null check (kind in (
        'poured', 'left', 'caught', 'shelved', 'weighed', 'bare', 'dry', 'notyet', 'coated', 'failed', 'sanded',
        'cured', 'staged', 'note', 'photo', 'due', 'kept', 'sold', 'bin', 'undone')),
    stage text check (stage in ('drying', 'ready', 'coated', 'cured', 'kept', 'sold', 'bin')),
    microlitres integer check (microlitres > 0),
    milligrams integer check (milligrams > 0),
    cents integer check (cents >= 0),
    share_percent real check (share_percent between 0 and 100),
    until_at integer,
    words text check (length(words) > 0),
    file_id text check (length(file_id) > 0),
    shelf_id integer references shelf (id),
    undoes_id integer unique references piece_event (id),
    check ((kind = 'undone') = (undoes_id is not null)),
    check (kind not in ('left', 'caught') or microlitres is not null),
    check ((kind in ('weighed', 'bare')) = (milligrams is not null)),
    check ((kind = 'photo') = (file_id is not null)),
    check (kind <> 'note' or words is not null),
    check (kind <> 'due' or until_at is not null),
    check (shelf_id is null or kind = 'shelved')
) strict;

insert into piece_event (act_id, piece_id, kind, stage, shelf_id)
select act.id, line.piece_id, line.kind, line.stage, line.shelf_id
from (
    select id as piece_id, 'poured' as kind, stage, null as shelf_id
    from piece
    union all
    select id, 'shelved', null, shelf_id
    from piece
    where shelf_id is not null) as line
join act on act.kind = 'opening'
order by line.piece_id, line.kind;

-- The parts go aside while the table they hang from is made anew.
create table piece_part_next (
    piece_id integer not null references piece_next (id),
    position integer not null check (position >= 1),
    material_id integer not null references material (id),
    microlitres integer check (microlitres > 0),
    milligrams integer check (milligrams > 0),
    primary key (piece_id, position),
    unique (piece_id, material_id),
    check ((microlitres is null) <> (milligrams is null))
) strict, without rowid;

insert into piece_part_next (piece_id, position, material_id, microlitres, milligrams)
select piece_id, position, material_id, microlitres, milligrams
from piece_part;

drop table piece_part;
drop table piece;
alter table piece_next rename to piece;
alter table piece_part_next rename to piece_part;

create unique index piece_number_given on piece (number) where undone_id is null;
create index piece_recipe on piece (recipe_id);
create index piece_batch on piece (batch_id);
create index piece_maker on piece (maker_id);
create index piece_act on piece (act_id);
create index piece_part_material on piece_part (material_id);
create index piece_event_act on piece_event (act_id);
create index piece_event_piece on piece_event (piece_id, id);
create index piece_event_shelf on piece_event (shelf_id) where shelf_id is not null;

create trigger piece_event_is_not_changed before update on piece_event
begin
    select raise(abort, 'a book is only appended');
end;

create trigger piece_event_does_not_go before delete on piece_event
begin
    select raise(abort, 'a book is only appended');
end;

create view live_piece_event as
select line.id, line.act_id, line.piece_id, line.kind, line.stage, line.microlitres, line.milligrams, line.cents,
       line.share_percent, line.until_at, line.words, line.file_id, line.shelf_id
from piece_event as line
where line.kind <> 'undone'
  and not exists (select 1 from piece_event as answer where answer.undoes_id = line.id);

-- What a line of kind coated was: as taken, not as planned.
create table coat (
    event_id integer primary key references piece_event (id),
    a_microlitres integer not null check (a_microlitres > 0),
    b_microlitres integer not null check (b_microlitres > 0),
    ratio_a real check (ratio_a > 0),
    ratio_b real check (ratio_b > 0),
    ratio_by text check (ratio_by in ('volume', 'mass')),
    film_micrometres integer check (film_micrometres > 0),
    celsius real check (celsius between 0 and 50),
    humidity_percent real check (humidity_percent between 0 and 100),
    check ((ratio_a is null) = (ratio_b is null) and (ratio_a is null) = (ratio_by is null)),
    check ((celsius is null) = (humidity_percent is null))
) strict;

create table coat_lot (
    event_id integer not null references coat (event_id),
    lot_id integer not null references lot (id),
    primary key (event_id, lot_id)
) strict, without rowid;

create index coat_lot_lot on coat_lot (lot_id);

create trigger coat_is_not_changed before update on coat
begin
    select raise(abort, 'a book is only appended');
end;

create trigger coat_does_not_go before delete on coat
begin
    select raise(abort, 'a book is only appended');
end;

create trigger coat_lot_is_not_changed before update on coat_lot
begin
    select raise(abort, 'a book is only appended');
end;

create trigger coat_lot_does_not_go before delete on coat_lot
begin
    select raise(abort, 'a book is only appended');
end;

-- A row that is no book, as it was before an act changed it and as it was then; empty where there was no row.
create table setting_change (
    id integer primary key,
    act_id integer not null references act (id),
    table_name text not null,
    row_key text not null,
    row_before text check (json_valid(row_before)),
    row_after text check (json_valid(row_after)),
    check (coalesce(row_before, row_after) is not null)
) strict;

create index setting_change_act on setting_change (act_id);
create index setting_change_row on setting_change (table_name, row_key);

create table studio_setting (
    name text primary key check (length(name) between 1 and 40),
    value text not null check (length(value) > 0)
) strict, without rowid;

alter table material add column bottle_milligrams integer check (bottle_milligrams > 0);
alter table material add column shelf_life_days integer check (shelf_life_days > 0);
alter table material add column lead_time_days integer check (lead_time_days >= 0);

-- What the bot has to say by itself. due_at: when to look at it; the planned moment, or until when it is held. A civil
-- rule is kept with its zone, to be worked out again.
create table reminder (
    id integer primary key,
    kind text not null check (length(kind) between 1 and 30),
    subject text not null check (length(subject) between 1 and 60),
    chat_id integer,
    member_id integer references member (id),
    planned_at integer not null,
    due_at integer not null,
    rule text check (length(rule) > 0),
    zone text check (length(zone) > 0),
    occurrence_key text not null unique check (length(occurrence_key) between 1 and 120),
    state text not null default 'planned' check (state in ('planned', 'held', 'done')),
    verdict text check (length(verdict) > 0),
    done_at integer,
    act_id integer references act (id),
    check ((rule is null) = (zone is null)),
    check ((state = 'done') = (done_at is not null)),
    check (state = 'planned' or verdict is not null)
) strict;

create index reminder_due on reminder (due_at, id) where state <> 'done';
create index reminder_subject on reminder (subject, kind, id);
create index reminder_act on reminder (act_id) where act_id is not null;
create index reminder_member on reminder (member_id) where member_id is not null;

-- A person's quiet hours in minutes of their day, from one to the other, over midnight where the first is later.
create table wish (
    member_id integer primary key references member (id),
    quiet_from_minutes integer check (quiet_from_minutes between 0 and 1439),
    quiet_until_minutes integer check (quiet_until_minutes between 0 and 1439),
    woken integer not null default 0 check (woken in (0, 1)),
    check ((quiet_from_minutes is null) = (quiet_until_minutes is null))
) strict;

create table unwanted_ping (
    member_id integer not null references member (id),
    kind text not null check (length(kind) between 1 and 30),
    primary key (member_id, kind)
) strict, without rowid;

create table snooze (
    kind text not null check (length(kind) between 1 and 30),
    subject text not null check (length(subject) between 1 and 60),
    until_at integer not null,
    primary key (kind, subject)
) strict, without rowid;

-- Codes are kept as hashes only.
create table invitation (
    code_hash text primary key check (length(code_hash) = 64),
    role text not null check (role in ('member', 'steward')),
    member_id integer references member (id),
    expires_at integer not null,
    used_at integer,
    act_id integer references act (id)
) strict, without rowid;

create index invitation_expiry on invitation (expires_at);

create table claim_code (
    id integer primary key check (id = 1),
    code_hash text not null check (length(code_hash) = 64),
    expires_at integer not null,
    tries integer not null default 0 check (tries >= 0),
    used_at integer
) strict;
