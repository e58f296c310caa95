-- Each line of the stock's book carries what it moved in cents, with the sign of its amount: what is drawn takes its
-- part of the lot's worth, all that is left of it takes all. Lines from before are valued by the lot's price.
alter table stock_entry add column cents integer not null default 0;

drop trigger stock_entry_is_not_changed;
update stock_entry
set cents = valued.after - valued.before
from (
    select id,
           (2 * price * level + bought) / (2 * bought) as after,
           (2 * price * (level - units) + bought) / (2 * bought) as before
    from (
        select entry.id,
               coalesce(entry.microlitres, entry.milligrams, entry.pieces) as units,
               coalesce(lot.price_cents, 0) as price,
               coalesce(lot.bought_microlitres, lot.bought_milligrams, lot.bought_pieces) as bought,
               sum(coalesce(entry.microlitres, entry.milligrams, entry.pieces)) over (
                   partition by entry.lot_id
                   order by entry.id) as level
        from stock_entry as entry
        join lot on lot.id = entry.lot_id)) as valued
where valued.id = stock_entry.id;

create trigger stock_entry_is_not_changed before update on stock_entry
begin
    select raise(abort, 'a book is only appended');
end;

-- Running sums of the books, kept by the file itself, so that a level or a balance is as quick on ten years as on one.
create table lot_sum (
    lot_id integer primary key references lot (id),
    material_id integer not null references material (id),
    units integer not null default 0,
    cents integer not null default 0
) strict;

insert into lot_sum (lot_id, material_id, units, cents)
select lot.id, lot.material_id,
       coalesce(sum(coalesce(entry.microlitres, entry.milligrams, entry.pieces)), 0),
       coalesce(sum(entry.cents), 0)
from lot
left join stock_entry as entry on entry.lot_id = lot.id
group by lot.id;

create index lot_sum_material on lot_sum (material_id, units);

create trigger lot_has_a_sum after insert on lot
begin
    insert into lot_sum (lot_id, material_id)
    values (new.id, new.material_id);
end;

drop trigger stock_entry_draws_what_is_there;
create trigger stock_entry_is_summed after insert on stock_entry
begin
    update lot_sum
    set units = units + coalesce(new.microlitres, new.milligrams, new.pieces),
        cents = cents + new.cents
    where lot_id = new.lot_id;
    select raise(abort, 'a lot holds no less than nothing')
    from lot_sum
    where lot_id = new.lot_id
      and units < 0;
end;

-- The member is 0 where the account is nobody's.
create table money_sum (
    account text not null check (account in ('member', 'kitty', 'studio')),
    member_id integer not null,
    cents integer not null,
    primary key (account, member_id)
) strict, without rowid;

insert into money_sum (account, member_id, cents)
select account, coalesce(member_id, 0), sum(cents)
from money_entry
group by account, coalesce(member_id, 0);

create trigger money_entry_is_summed after insert on money_entry
begin
    insert into money_sum (account, member_id, cents)
    values (new.account, coalesce(new.member_id, 0), new.cents)
    on conflict (account, member_id) do update
    set cents = cents + excluded.cents;
end;

drop index stock_entry_lot;
drop index stock_entry_material;
drop index money_entry_account;
create index stock_entry_lot on stock_entry (lot_id);
create index stock_entry_material on stock_entry (material_id, reason);
create index act_happened on act (happened_at);

-- Whoever takes of it, all use it: gloves, towels. Its use is shared by the studio's rule.
alter table material add column shared integer not null default 0 check (shared in (0, 1));

-- What a workshop will take from the shelf.
create table workshop (
    id integer primary key,
    act_id integer not null references act (id),
    starts_at integer not null,
    people integer not null check (people > 0),
    words text not null check (length(words) > 0),
    undone_id integer references act (id)
) strict;

create index workshop_act on workshop (act_id);
create index workshop_start on workshop (starts_at) where undone_id is null;

create table workshop_part (
    workshop_id integer not null references workshop (id),
    material_id integer not null references material (id),
    microlitres integer check (microlitres > 0),
    milligrams integer check (milligrams > 0),
    pieces integer check (pieces > 0),
    primary key (workshop_id, material_id),
    check ((microlitres is not null) + (milligrams is not null) + (pieces is not null) = 1)
) strict, without rowid;

create index workshop_part_material on workshop_part (material_id);

-- Who got money says that it came; until then it is one member's word.
create table payment_receipt (
    act_id integer primary key references act (id),
    receipt_act_id integer not null references act (id)
) strict;

create index payment_receipt_act on payment_receipt (receipt_act_id);

-- A file that goes out with a post, and goes when the post does.
create table post_file (
    post_id integer primary key references post (id) on delete cascade,
    name text not null check (length(name) between 1 and 100),
    media_type text not null check (length(media_type) between 3 and 100),
    content blob not null check (length(content) > 0)
) strict;
