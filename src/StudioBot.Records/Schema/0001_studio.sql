-- One studio, one file. Instants are UTC milliseconds (_at); what is added up is whole microlitres, milligrams, cents.
-- An amount stands in three columns of which exactly one is set: by volume, by mass or by count.

create table studio (
    id integer primary key check (id = 1),
    name text not null check (length(name) between 1 and 80),
    zone text not null check (length(zone) > 0),
    currency text not null check (length(currency) = 3),
    units text not null check (units in ('metric', 'us', 'imperial')),
    scoop_microlitres integer not null check (scoop_microlitres > 0)
) strict;

create table member (
    id integer primary key,
    name text not null unique collate nocase check (length(name) between 1 and 40),
    role text not null check (role in ('member', 'steward')),
    units text check (units in ('metric', 'us', 'imperial')),
    joined_at integer not null,
    left_at integer check (left_at >= joined_at)
) strict;

create table account (
    user_id integer primary key,
    member_id integer not null references member (id),
    added_at integer not null
) strict;

create index account_member on account (member_id);

create table room (
    id integer primary key,
    name text not null unique collate nocase check (length(name) between 1 and 40)
) strict;

create table air_reading (
    id integer primary key,
    room_id integer not null references room (id),
    celsius real not null check (celsius between -50 and 80),
    humidity_percent real not null check (humidity_percent between 0 and 100),
    read_at integer not null
) strict;

create index air_reading_newest on air_reading (room_id, read_at, id);

create table shelf (
    id integer primary key,
    label text not null unique collate nocase check (length(label) between 1 and 20),
    room_id integer not null references room (id)
) strict;

create index shelf_room on shelf (room_id);

create table material (
    id integer primary key,
    name text not null unique collate nocase check (length(name) between 1 and 60),
    form text not null check (form in ('liquid', 'powder', 'counted', 'mixture', 'resin_a', 'hardener_b')),
    density_grams_per_millilitre real check (density_grams_per_millilitre > 0),
    teaspoon_milligrams integer check (teaspoon_milligrams > 0),
    solids_share real check (solids_share between 0 and 1),
    low_microlitres integer check (low_microlitres >= 0),
    low_milligrams integer check (low_milligrams >= 0),
    low_pieces integer check (low_pieces >= 0),
    check ((low_microlitres is not null) + (low_milligrams is not null) + (low_pieces is not null) <= 1)
) strict;

create table pack (
    id integer primary key,
    material_id integer not null references material (id),
    microlitres integer check (microlitres > 0),
    milligrams integer check (milligrams > 0),
    pieces integer check (pieces > 0),
    price_cents integer check (price_cents >= 0),
    check ((microlitres is not null) + (milligrams is not null) + (pieces is not null) = 1)
) strict;

create index pack_material on pack (material_id);

-- A kit is one label on two materials, so a label is unique only within its material.
create table lot (
    id integer primary key,
    material_id integer not null references material (id),
    label text collate nocase check (length(label) between 1 and 20),
    bought_at integer not null,
    price_cents integer check (price_cents >= 0),
    bought_microlitres integer check (bought_microlitres > 0),
    bought_milligrams integer check (bought_milligrams > 0),
    bought_pieces integer check (bought_pieces > 0),
    left_microlitres integer check (left_microlitres >= 0),
    left_milligrams integer check (left_milligrams >= 0),
    left_pieces integer check (left_pieces >= 0),
    unique (material_id, label),
    check ((bought_microlitres is not null) + (bought_milligrams is not null) + (bought_pieces is not null) = 1),
    check ((bought_microlitres is null) = (left_microlitres is null)),
    check ((bought_milligrams is null) = (left_milligrams is null)),
    check ((bought_pieces is null) = (left_pieces is null))
) strict;

create table recipe (
    id integer primary key,
    name text not null unique collate nocase check (length(name) between 1 and 60),
    makes_material_id integer references material (id)
) strict;

create index recipe_makes on recipe (makes_material_id);

create table recipe_part (
    recipe_id integer not null references recipe (id),
    position integer not null check (position >= 1),
    material_id integer not null references material (id),
    microlitres integer check (microlitres > 0),
    milligrams integer check (milligrams > 0),
    primary key (recipe_id, position),
    unique (recipe_id, material_id),
    check ((microlitres is null) <> (milligrams is null))
) strict, without rowid;

create index recipe_part_material on recipe_part (material_id);

-- What this studio found for a technique, over what the trade assumes; a column that is empty leaves the trade's.
create table technique_override (
    name text primary key collate nocase check (length(name) between 1 and 40),
    laid_micrometres integer check (laid_micrometres between 50 and 20000),
    run_off_share real check (run_off_share between 0 and 1)
) strict, without rowid;

create table batch (
    id integer primary key,
    number integer not null unique check (number >= 1),
    recipe_id integer not null references recipe (id),
    maker_id integer not null references member (id),
    made_at integer not null,
    made_microlitres integer not null check (made_microlitres > 0)
) strict;

create index batch_recipe on batch (recipe_id);
create index batch_maker on batch (maker_id);

-- A disc has its diameter in the width, a hexagon its width across flats.
create table piece (
    id integer primary key,
    number integer not null unique check (number >= 1),
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
    stage text not null check (stage in ('drying', 'ready', 'coated', 'cured', 'kept', 'sold', 'bin')),
    shelf_id integer references shelf (id),
    check ((shape in ('panel', 'oval')) = (height_micrometres is not null))
) strict;

create index piece_recipe on piece (recipe_id);
create index piece_batch on piece (batch_id);
create index piece_maker on piece (maker_id);
create index piece_shelf on piece (shelf_id);

create table piece_part (
    piece_id integer not null references piece (id),
    position integer not null check (position >= 1),
    material_id integer not null references material (id),
    microlitres integer check (microlitres > 0),
    milligrams integer check (milligrams > 0),
    primary key (piece_id, position),
    unique (piece_id, material_id),
    check ((microlitres is null) <> (milligrams is null))
) strict, without rowid;

create index piece_part_material on piece_part (material_id);

-- Raw updates of the chat service. The same event may come again under another update_id: then its message or its
-- press tells. What came is stored whatever it is: a row that cannot be read is parked, it must not stop the fetching.
create table inbox (
    id integer primary key autoincrement,
    update_id integer not null unique,
    chat_id integer not null,
    message_id integer,
    press_id text unique,
    kind text not null check (length(kind) > 0),
    raw text not null,
    received_at integer not null,
    state text not null default 'waiting' check (state in ('waiting', 'done', 'parked')),
    tries integer not null default 0 check (tries >= 0),
    trouble text,
    settled_at integer,
    check ((state = 'waiting') = (settled_at is null))
) strict;

create unique index inbox_message on inbox (chat_id, message_id, kind)
    where message_id is not null and press_id is null;
create index inbox_waiting on inbox (chat_id, id) where state = 'waiting';
create index inbox_received on inbox (received_at);

create table chat_offset (
    id integer primary key check (id = 1),
    next_update_id integer not null
) strict;

create table post (
    id integer primary key autoincrement,
    chat_id integer not null,
    once_key text unique,
    urgency integer not null check (urgency between 0 and 2),
    payload text not null check (json_valid(payload)),
    put_at integer not null,
    state text not null default 'waiting' check (state in ('waiting', 'sending', 'sent', 'parked')),
    next_try_at integer not null,
    tries integer not null default 0 check (tries >= 0),
    maybe_sent integer not null default 0 check (maybe_sent in (0, 1)),
    trouble text,
    sent_message_id integer,
    settled_at integer,
    check ((state in ('sent', 'parked')) = (settled_at is not null))
) strict;

create unique index post_in_flight on post (chat_id) where state = 'sending';
create index post_waiting on post (urgency, id) where state = 'waiting';
create index post_waiting_in_chat on post (chat_id, urgency, id) where state = 'waiting';
create index post_settled on post (settled_at) where settled_at is not null;

create table press (
    press_key text primary key check (length(press_key) between 16 and 64),
    owner_user_id integer not null,
    chat_id integer not null,
    line text not null check (length(line) > 0),
    expires_at integer not null,
    used_at integer
) strict, without rowid;

create index press_expiry on press (expires_at);
