-- A studio as version 10 left it. A file like this is never edited.
pragma user_version = 10;
BEGIN TRANSACTION;
CREATE TABLE account (
    user_id integer primary key,
    member_id integer not null references member (id),
    added_at integer not null
) strict;
INSERT INTO "account" VALUES(7001,1,1796000000000);
INSERT INTO "account" VALUES(7002,2,1796000000000);
INSERT INTO "account" VALUES(7003,2,1796000000000);
CREATE TABLE act (
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
INSERT INTO "act" VALUES(1,'opening',NULL,NULL,NULL,NULL,'opening',1795592400000,1795592400000,NULL);
INSERT INTO "act" VALUES(100,'bought',1,NULL,7001,21,'bought 1 L white 18.50 lot G-1',1796000000000,1796000000000,NULL);
INSERT INTO "act" VALUES(101,'used',2,1,-100,22,'used 20 ml white for Mira',1796000000000,1796000000000,NULL);
INSERT INTO "act" VALUES(102,'undo',2,NULL,-100,23,'undo',1796000000000,1796000000000,101);
INSERT INTO "act" VALUES(103,'coat',2,NULL,7002,24,'coat 17 120 A 60 B',1796000000000,1796000000000,NULL);
INSERT INTO "act" VALUES(104,'paid',1,NULL,7001,25,'paid 9.25 to Pia',1796000000000,1796000000000,NULL);
INSERT INTO "act" VALUES(105,'studio',1,NULL,7001,26,'studio week fri 17:00',1796000000000,1796000000000,NULL);
INSERT INTO "act" VALUES(110,'reserve',1,NULL,NULL,NULL,'reserve sat 10:00 8 people',1796000000000,1796000000000,NULL);
INSERT INTO "act" VALUES(111,'received',2,NULL,NULL,NULL,'received 9.25 from Mira',1796000000000,1796000000000,NULL);
INSERT INTO "act" VALUES(112,'used',2,NULL,NULL,NULL,'used 100 ml white',1796000000000,1796000000000,NULL);
INSERT INTO "act" VALUES(120,'count',1,NULL,NULL,NULL,'count white 870 ml',1796000000000,1796000000000,NULL);
INSERT INTO "act" VALUES(130,'kept',2,NULL,NULL,NULL,'kept 17',1796000000000,1796000000000,NULL);
INSERT INTO "act" VALUES(900,'batch',1,NULL,NULL,NULL,'batch 1 ford4 22 s 21C',1796000000000,1796000000000,NULL);
INSERT INTO "act" VALUES(901,'batch',1,NULL,NULL,NULL,'batch 1 gelled 21C',1790001440000,1790001440000,NULL);
CREATE TABLE air_reading (
    id integer primary key,
    room_id integer not null references room (id),
    celsius real not null check (celsius between -50 and 80),
    humidity_percent real not null check (humidity_percent between 0 and 100),
    read_at integer not null
, act_id integer references act (id), undone_id integer references act (id)) strict;
INSERT INTO "air_reading" VALUES(1,1,19.0,58.0,1795453800000,1,NULL);
INSERT INTO "air_reading" VALUES(2,2,23.0,45.0,1795537800000,1,NULL);
INSERT INTO "air_reading" VALUES(3,1,20.0,55.0,1795592400000,1,NULL);
INSERT INTO "air_reading" VALUES(4,1,20.5,58.0,1796000000000,105,NULL);
CREATE TABLE batch (
    id integer primary key,
    number integer not null unique check (number >= 1),
    recipe_id integer not null references recipe (id),
    maker_id integer not null references member (id),
    made_at integer not null,
    made_microlitres integer not null check (made_microlitres > 0)
, act_id integer references act (id), undone_id integer references act (id), lot_id integer references lot (id)) strict;
INSERT INTO "batch" VALUES(1,1,1,1,1793113200000,400000,1,NULL,NULL);
INSERT INTO "batch" VALUES(2,2,1,2,1793203200000,800000,1,NULL,NULL);
INSERT INTO "batch" VALUES(3,3,2,1,1793289600000,50000,1,NULL,NULL);
INSERT INTO "batch" VALUES(4,4,1,3,1793350800000,400000,1,NULL,NULL);
INSERT INTO "batch" VALUES(5,5,1,1,1793638800000,800000,1,NULL,NULL);
INSERT INTO "batch" VALUES(6,6,1,2,1793894400000,400000,1,NULL,NULL);
INSERT INTO "batch" VALUES(7,7,1,4,1794132000000,600000,1,NULL,NULL);
INSERT INTO "batch" VALUES(8,8,2,2,1794240000000,100000,1,NULL,NULL);
INSERT INTO "batch" VALUES(9,9,1,3,1794502800000,800000,1,NULL,NULL);
INSERT INTO "batch" VALUES(10,10,1,1,1794844800000,800000,1,NULL,NULL);
INSERT INTO "batch" VALUES(11,11,2,1,1795017600000,100000,1,NULL,NULL);
INSERT INTO "batch" VALUES(12,12,1,1,1795251600000,1200000,1,NULL,NULL);
INSERT INTO "batch" VALUES(13,13,1,2,1795536000000,400000,1,NULL,NULL);
CREATE TABLE batch_gel (
    id integer primary key,
    act_id integer not null references act (id),
    batch_id integer not null references batch (id),
    after_seconds real not null check (after_seconds > 0),
    celsius real check (celsius between -20 and 50),
    undone_id integer references act (id)
) strict;
INSERT INTO "batch_gel" VALUES(1,901,1,1440.0,21.0,NULL);
CREATE TABLE chat_move (
    from_chat_id integer primary key,
    to_chat_id integer not null check (to_chat_id <> from_chat_id)
) strict;
INSERT INTO "chat_move" VALUES(-100,-1000000000100);
CREATE TABLE chat_offset (
    id integer primary key check (id = 1),
    next_update_id integer not null
) strict;
INSERT INTO "chat_offset" VALUES(1,504);
CREATE TABLE claim_code (
    id integer primary key check (id = 1),
    code_hash text not null check (length(code_hash) = 64),
    expires_at integer not null,
    tries integer not null default 0 check (tries >= 0),
    used_at integer
) strict;
INSERT INTO "claim_code" VALUES(1,'cccccccccccccccccccccccccccccccccccccccccccccccccccccccccccccccc',1796000000000,2,1796000000000);
CREATE TABLE coat (
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
INSERT INTO "coat" VALUES(300,120000,60000,2.0,1.0,'volume',2000,20.5,58.0);
CREATE TABLE coat_lot (
    event_id integer not null references coat (event_id),
    lot_id integer not null references lot (id),
    primary key (event_id, lot_id)
) strict, without rowid;
INSERT INTO "coat_lot" VALUES(300,1);
INSERT INTO "coat_lot" VALUES(300,2);
CREATE TABLE count_share (
    act_id integer not null references act (id),
    run_id integer not null references act (id),
    material_id integer not null references material (id),
    member_id integer not null,
    cents integer not null,
    primary key (act_id, material_id, member_id)
) strict, without rowid;
INSERT INTO "count_share" VALUES(120,120,1,0,0);
INSERT INTO "count_share" VALUES(120,120,1,1,-9);
INSERT INTO "count_share" VALUES(120,120,1,2,-10);
CREATE TABLE flow_reading (
    id integer primary key,
    act_id integer not null references act (id),
    batch_id integer not null references batch (id),
    cup text check (length(cup) between 1 and 10),
    seconds real not null check (seconds > 0),
    celsius real check (celsius between -20 and 50),
    undone_id integer references act (id)
) strict;
INSERT INTO "flow_reading" VALUES(1,900,1,'ford4',22.0,21.0,NULL);
INSERT INTO "flow_reading" VALUES(2,900,1,NULL,1.5,NULL,NULL);
CREATE TABLE inbox (
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
INSERT INTO "inbox" VALUES(1,501,7001,11,NULL,'message','{"update_id":501,"text":"used 20 ml white – für Pia"}',1796000000000,'done',1,NULL,1796000000000);
INSERT INTO "inbox" VALUES(2,502,7002,12,'p-1','callback_query','{}',1796000000000,'parked',3,'FormatException, mark K7Q',1796000000000);
INSERT INTO "inbox" VALUES(3,503,7002,13,NULL,'message','no JSON',1796000000000,'waiting',0,NULL,NULL);
CREATE TABLE invitation (
    code_hash text primary key check (length(code_hash) = 64),
    role text not null check (role in ('member', 'steward')),
    member_id integer references member (id),
    expires_at integer not null,
    used_at integer,
    act_id integer references act (id)
) strict, without rowid;
INSERT INTO "invitation" VALUES('aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa','member',NULL,1796000000000,NULL,105);
INSERT INTO "invitation" VALUES('bbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbb','steward',2,1796000000000,1796000000000,NULL);
CREATE TABLE "lot" (
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
INSERT INTO "lot" VALUES(1,1,'W-1',1789380000000,1750,1000000,NULL,NULL,NULL,1,NULL);
INSERT INTO "lot" VALUES(2,1,'W-2',1794218400000,1750,1000000,NULL,NULL,NULL,1,NULL);
INSERT INTO "lot" VALUES(3,2,'K-4',1791799200000,1090,500000,NULL,NULL,NULL,1,NULL);
INSERT INTO "lot" VALUES(4,3,'U-3',1791799200000,1560,500000,NULL,NULL,NULL,1,NULL);
INSERT INTO "lot" VALUES(5,4,'G-2',1793008800000,820,250000,NULL,NULL,NULL,1,NULL);
INSERT INTO "lot" VALUES(6,5,'O-1',1789380000000,690,250000,NULL,NULL,NULL,1,NULL);
INSERT INTO "lot" VALUES(7,6,NULL,1791194400000,1790,NULL,100000,NULL,NULL,1,NULL);
INSERT INTO "lot" VALUES(8,7,NULL,1791194400000,1890,NULL,100000,NULL,NULL,1,NULL);
INSERT INTO "lot" VALUES(9,8,NULL,1791194400000,950,NULL,50000,NULL,NULL,1,NULL);
INSERT INTO "lot" VALUES(10,9,NULL,1793613600000,990,NULL,50000,NULL,NULL,1,NULL);
INSERT INTO "lot" VALUES(11,10,'N-5',1793613600000,5980,5000000,NULL,NULL,NULL,1,NULL);
INSERT INTO "lot" VALUES(12,11,'V-3',1793613600000,3360,2000000,NULL,NULL,NULL,1,NULL);
INSERT INTO "lot" VALUES(13,12,'F-1',1789380000000,790,500000,NULL,NULL,NULL,1,NULL);
INSERT INTO "lot" VALUES(14,13,'T-2',1789380000000,540,500000,NULL,NULL,NULL,1,NULL);
INSERT INTO "lot" VALUES(15,14,NULL,1791799200000,850,1000000,NULL,NULL,NULL,1,NULL);
INSERT INTO "lot" VALUES(16,15,'R-2',1789984800000,3200,1000000,NULL,NULL,NULL,1,NULL);
INSERT INTO "lot" VALUES(17,15,'R-3',1794823200000,5800,2000000,NULL,NULL,NULL,1,NULL);
INSERT INTO "lot" VALUES(18,16,'H-11',1789984800000,1800,500000,NULL,NULL,NULL,1,NULL);
INSERT INTO "lot" VALUES(19,16,'H-12',1794823200000,3200,1000000,NULL,NULL,NULL,1,NULL);
INSERT INTO "lot" VALUES(20,17,'P-1',1792404000000,2490,2500000,NULL,NULL,NULL,1,NULL);
INSERT INTO "lot" VALUES(21,18,NULL,1793008800000,3600,NULL,NULL,40,NULL,1,NULL);
INSERT INTO "lot" VALUES(22,19,NULL,1791194400000,1780,NULL,NULL,200,NULL,1,NULL);
INSERT INTO "lot" VALUES(23,20,NULL,1793613600000,1250,NULL,NULL,100,NULL,1,NULL);
INSERT INTO "lot" VALUES(24,21,'M-6',1794823200000,NULL,800000,NULL,NULL,NULL,1,NULL);
INSERT INTO "lot" VALUES(25,21,'M-7',1795255200000,NULL,1200000,NULL,NULL,NULL,1,NULL);
INSERT INTO "lot" VALUES(26,22,'A-2',1794996000000,NULL,100000,NULL,NULL,NULL,1,NULL);
INSERT INTO "lot" VALUES(50,1,'G-1',1796000000000,1850,1000000,NULL,NULL,1796000000000,100,NULL);
INSERT INTO "lot" VALUES(51,1,'G-2',1796000000000,NULL,500000,NULL,NULL,NULL,100,102);
CREATE TABLE lot_stop (
    lot_id integer primary key references lot (id),
    why text check (length(why) > 0),
    stopped_at integer not null
) strict;
INSERT INTO "lot_stop" VALUES(50,'lumps',1796000000000);
INSERT INTO "lot_stop" VALUES(51,NULL,1796000000000);
CREATE TABLE lot_sum (
    lot_id integer primary key references lot (id),
    material_id integer not null references material (id),
    units integer not null default 0,
    cents integer not null default 0
) strict;
INSERT INTO "lot_sum" VALUES(1,1,40000,70);
INSERT INTO "lot_sum" VALUES(2,1,780000,1365);
INSERT INTO "lot_sum" VALUES(3,2,310000,676);
INSERT INTO "lot_sum" VALUES(4,3,265000,827);
INSERT INTO "lot_sum" VALUES(5,4,140000,459);
INSERT INTO "lot_sum" VALUES(6,5,85000,235);
INSERT INTO "lot_sum" VALUES(7,6,46000,823);
INSERT INTO "lot_sum" VALUES(8,7,38000,718);
INSERT INTO "lot_sum" VALUES(9,8,31500,599);
INSERT INTO "lot_sum" VALUES(10,9,42000,832);
INSERT INTO "lot_sum" VALUES(11,10,2150000,2571);
INSERT INTO "lot_sum" VALUES(12,11,930000,1562);
INSERT INTO "lot_sum" VALUES(13,12,360000,569);
INSERT INTO "lot_sum" VALUES(14,13,410000,443);
INSERT INTO "lot_sum" VALUES(15,14,640000,544);
INSERT INTO "lot_sum" VALUES(16,15,120000,384);
INSERT INTO "lot_sum" VALUES(17,15,2000000,5800);
INSERT INTO "lot_sum" VALUES(18,16,60000,216);
INSERT INTO "lot_sum" VALUES(19,16,1000000,3200);
INSERT INTO "lot_sum" VALUES(20,17,1700000,1693);
INSERT INTO "lot_sum" VALUES(21,18,26,2340);
INSERT INTO "lot_sum" VALUES(22,19,88,783);
INSERT INTO "lot_sum" VALUES(23,20,64,800);
INSERT INTO "lot_sum" VALUES(24,21,90000,0);
INSERT INTO "lot_sum" VALUES(25,21,860000,0);
INSERT INTO "lot_sum" VALUES(26,22,70000,0);
INSERT INTO "lot_sum" VALUES(50,1,890000,1646);
INSERT INTO "lot_sum" VALUES(51,1,0,0);
CREATE TABLE material (
    id integer primary key,
    name text not null unique collate nocase check (length(name) between 1 and 60),
    form text not null check (form in ('liquid', 'powder', 'counted', 'mixture', 'resin_a', 'hardener_b')),
    density_grams_per_millilitre real check (density_grams_per_millilitre > 0),
    teaspoon_milligrams integer check (teaspoon_milligrams > 0),
    solids_share real check (solids_share between 0 and 1),
    low_microlitres integer check (low_microlitres >= 0),
    low_milligrams integer check (low_milligrams >= 0),
    low_pieces integer check (low_pieces >= 0), bottle_milligrams integer check (bottle_milligrams > 0), shelf_life_days integer check (shelf_life_days > 0), lead_time_days integer check (lead_time_days >= 0), shared integer not null default 0 check (shared in (0, 1)),
    check ((low_microlitres is not null) + (low_milligrams is not null) + (low_pieces is not null) <= 1)
) strict;
INSERT INTO "material" VALUES(1,'white','liquid',1.3,NULL,0.55,300000,NULL,NULL,42000,720,3,0);
INSERT INTO "material" VALUES(2,'lamp black','liquid',1.1,NULL,0.45,150000,NULL,NULL,NULL,NULL,NULL,1);
INSERT INTO "material" VALUES(3,'ultramarine','liquid',1.15,NULL,0.48,150000,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "material" VALUES(4,'magenta','liquid',1.1,NULL,0.45,150000,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "material" VALUES(5,'ochre','liquid',1.25,NULL,0.52,100000,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "material" VALUES(6,'blue mica','powder',2.8,2200,1.0,NULL,20000,NULL,NULL,NULL,NULL,0);
INSERT INTO "material" VALUES(7,'gold mica','powder',2.8,2200,1.0,NULL,20000,NULL,NULL,NULL,NULL,0);
INSERT INTO "material" VALUES(8,'silver mica','powder',2.8,2200,1.0,NULL,20000,NULL,NULL,NULL,NULL,0);
INSERT INTO "material" VALUES(9,'copper mica','powder',2.8,2200,1.0,NULL,20000,NULL,NULL,NULL,NULL,0);
INSERT INTO "material" VALUES(10,'neutral base','liquid',1.05,NULL,0.46,1000000,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "material" VALUES(11,'gloss varnish','liquid',1.03,NULL,0.38,400000,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "material" VALUES(12,'flow extender','liquid',1.02,NULL,0.1,100000,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "material" VALUES(13,'thinner','liquid',1.0,NULL,0.05,200000,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "material" VALUES(14,'isopropyl','liquid',0.79,NULL,0.0,250000,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "material" VALUES(15,'resin A','resin_a',1.13,NULL,1.0,500000,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "material" VALUES(16,'hardener B','hardener_b',0.98,NULL,1.0,250000,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "material" VALUES(17,'wall paint','liquid',1.4,NULL,0.55,1500000,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "material" VALUES(18,'tile 10cm','counted',NULL,NULL,NULL,NULL,NULL,10,NULL,NULL,NULL,0);
INSERT INTO "material" VALUES(19,'cup','counted',NULL,NULL,NULL,NULL,NULL,30,NULL,NULL,NULL,0);
INSERT INTO "material" VALUES(20,'glove','counted',NULL,NULL,NULL,NULL,NULL,20,NULL,NULL,NULL,0);
INSERT INTO "material" VALUES(21,'medium','mixture',1.045,NULL,0.44,400000,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "material" VALUES(22,'activator','mixture',1.244,NULL,0.47,50000,NULL,NULL,NULL,NULL,NULL,0);
CREATE TABLE member (
    id integer primary key,
    name text not null unique collate nocase check (length(name) between 1 and 40),
    role text not null check (role in ('member', 'steward')),
    units text check (units in ('metric', 'us', 'imperial')),
    joined_at integer not null,
    left_at integer check (left_at >= joined_at)
) strict;
INSERT INTO "member" VALUES(1,'Mira','steward',NULL,1788282000000,NULL);
INSERT INTO "member" VALUES(2,'Pia','member',NULL,1788282000000,NULL);
INSERT INTO "member" VALUES(3,'Tomas','member',NULL,1788886800000,NULL);
INSERT INTO "member" VALUES(4,'Jonas','member',NULL,1791306000000,NULL);
CREATE TABLE money_entry (
    id integer primary key,
    act_id integer not null references act (id),
    account text not null check (account in ('member', 'kitty', 'studio')),
    member_id integer references member (id),
    cents integer not null check (cents <> 0),
    undoes_id integer unique references money_entry (id),
    check ((account = 'member') = (member_id is not null))
) strict;
INSERT INTO "money_entry" VALUES(1,100,'member',1,1850,NULL);
INSERT INTO "money_entry" VALUES(2,100,'studio',NULL,-1850,NULL);
INSERT INTO "money_entry" VALUES(3,104,'member',1,925,NULL);
INSERT INTO "money_entry" VALUES(4,104,'member',2,-925,NULL);
INSERT INTO "money_entry" VALUES(5,101,'kitty',NULL,37,NULL);
INSERT INTO "money_entry" VALUES(6,101,'member',2,-37,NULL);
INSERT INTO "money_entry" VALUES(7,102,'kitty',NULL,-37,5);
INSERT INTO "money_entry" VALUES(8,102,'member',2,37,6);
INSERT INTO "money_entry" VALUES(10,112,'member',2,-185,NULL);
INSERT INTO "money_entry" VALUES(11,112,'studio',NULL,185,NULL);
INSERT INTO "money_entry" VALUES(20,120,'member',1,-9,NULL);
INSERT INTO "money_entry" VALUES(21,120,'member',2,-10,NULL);
INSERT INTO "money_entry" VALUES(22,120,'studio',NULL,19,NULL);
CREATE TABLE money_sum (
    account text not null check (account in ('member', 'kitty', 'studio')),
    member_id integer not null,
    cents integer not null,
    primary key (account, member_id)
) strict, without rowid;
INSERT INTO "money_sum" VALUES('kitty',0,0);
INSERT INTO "money_sum" VALUES('member',1,2766);
INSERT INTO "money_sum" VALUES('member',2,-1120);
INSERT INTO "money_sum" VALUES('studio',0,-1646);
CREATE TABLE pack (
    id integer primary key,
    material_id integer not null references material (id),
    microlitres integer check (microlitres > 0),
    milligrams integer check (milligrams > 0),
    pieces integer check (pieces > 0),
    price_cents integer check (price_cents >= 0),
    check ((microlitres is not null) + (milligrams is not null) + (pieces is not null) = 1)
) strict;
INSERT INTO "pack" VALUES(1,1,500000,NULL,NULL,990);
INSERT INTO "pack" VALUES(2,1,1000000,NULL,NULL,1750);
INSERT INTO "pack" VALUES(3,2,250000,NULL,NULL,640);
INSERT INTO "pack" VALUES(4,2,500000,NULL,NULL,1090);
INSERT INTO "pack" VALUES(5,3,250000,NULL,NULL,780);
INSERT INTO "pack" VALUES(6,4,250000,NULL,NULL,820);
INSERT INTO "pack" VALUES(7,5,250000,NULL,NULL,690);
INSERT INTO "pack" VALUES(8,6,NULL,10000,NULL,550);
INSERT INTO "pack" VALUES(9,6,NULL,50000,NULL,1800);
INSERT INTO "pack" VALUES(10,7,NULL,10000,NULL,550);
INSERT INTO "pack" VALUES(11,7,NULL,50000,NULL,1800);
INSERT INTO "pack" VALUES(12,8,NULL,10000,NULL,550);
INSERT INTO "pack" VALUES(13,8,NULL,50000,NULL,1800);
INSERT INTO "pack" VALUES(14,9,NULL,10000,NULL,550);
INSERT INTO "pack" VALUES(15,9,NULL,50000,NULL,1800);
INSERT INTO "pack" VALUES(16,10,1000000,NULL,NULL,1350);
INSERT INTO "pack" VALUES(17,10,2500000,NULL,NULL,2990);
INSERT INTO "pack" VALUES(18,11,1000000,NULL,NULL,1680);
INSERT INTO "pack" VALUES(19,12,500000,NULL,NULL,790);
INSERT INTO "pack" VALUES(20,13,500000,NULL,NULL,540);
INSERT INTO "pack" VALUES(21,14,1000000,NULL,NULL,850);
INSERT INTO "pack" VALUES(22,15,1000000,NULL,NULL,3200);
INSERT INTO "pack" VALUES(23,16,500000,NULL,NULL,1800);
INSERT INTO "pack" VALUES(24,17,2500000,NULL,NULL,2490);
INSERT INTO "pack" VALUES(25,17,5000000,NULL,NULL,4200);
INSERT INTO "pack" VALUES(26,18,NULL,NULL,20,1900);
INSERT INTO "pack" VALUES(27,18,NULL,NULL,40,3600);
INSERT INTO "pack" VALUES(28,19,NULL,NULL,100,890);
INSERT INTO "pack" VALUES(29,20,NULL,NULL,100,1250);
CREATE TABLE payment_receipt (
    act_id integer primary key references act (id),
    receipt_act_id integer not null references act (id)
) strict;
INSERT INTO "payment_receipt" VALUES(104,111);
CREATE TABLE "piece" (
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
INSERT INTO "piece" VALUES(1,1,'panel',200000,200000,NULL,'swipe',3,3,1,1,1793118000000,1,NULL);
INSERT INTO "piece" VALUES(2,2,'disc',300000,NULL,NULL,'bloom',5,4,2,2,1793208000000,1,NULL);
INSERT INTO "piece" VALUES(3,3,'panel',300000,400000,20000,'bloom',6,3,2,3,1793294400000,1,NULL);
INSERT INTO "piece" VALUES(4,4,'panel',100000,100000,NULL,'swipe',3,NULL,4,4,1793355600000,1,NULL);
INSERT INTO "piece" VALUES(5,5,'panel',100000,100000,NULL,'swipe',3,NULL,4,4,1793355600000,1,NULL);
INSERT INTO "piece" VALUES(6,6,'oval',200000,300000,NULL,'bloom',5,4,4,2,1793542800000,1,NULL);
INSERT INTO "piece" VALUES(7,7,'hexagon',150000,NULL,NULL,'swipe',4,3,5,1,1793643600000,1,NULL);
INSERT INTO "piece" VALUES(8,8,'disc',400000,NULL,NULL,'bloom',5,3,5,3,1793726400000,1,NULL);
INSERT INTO "piece" VALUES(9,9,'panel',210000,297000,NULL,'swipe',3,4,6,2,1793899200000,1,NULL);
INSERT INTO "piece" VALUES(10,10,'disc',100000,NULL,NULL,'bloom',3,NULL,7,4,1794136800000,1,NULL);
INSERT INTO "piece" VALUES(11,11,'disc',100000,NULL,NULL,'bloom',3,NULL,7,4,1794136800000,1,NULL);
INSERT INTO "piece" VALUES(12,12,'panel',250000,250000,NULL,'swipe',4,4,7,2,1794244800000,1,NULL);
INSERT INTO "piece" VALUES(13,13,'panel',400000,400000,NULL,'bloom',6,3,9,1,1794507600000,1,NULL);
INSERT INTO "piece" VALUES(14,14,'panel',300000,300000,NULL,'bloom',5,4,9,3,1794586800000,1,NULL);
INSERT INTO "piece" VALUES(15,15,'disc',250000,NULL,NULL,'swipe',4,3,9,2,1794669600000,1,NULL);
INSERT INTO "piece" VALUES(16,16,'panel',200000,200000,NULL,'swipe',3,NULL,10,4,1794849600000,1,NULL);
INSERT INTO "piece" VALUES(17,17,'panel',300000,300000,NULL,'bloom',6,3,12,1,1795256400000,1,NULL);
INSERT INTO "piece" VALUES(18,18,'disc',300000,NULL,NULL,'bloom',5,4,12,2,1795270800000,1,NULL);
INSERT INTO "piece" VALUES(19,19,'hexagon',150000,NULL,NULL,'swipe',4,3,12,3,1795360800000,1,NULL);
INSERT INTO "piece" VALUES(20,20,'panel',300000,400000,20000,'swipe',4,4,12,4,1795454400000,1,NULL);
INSERT INTO "piece" VALUES(21,21,'panel',250000,250000,NULL,'bloom',5,3,13,2,1795540800000,1,NULL);
CREATE TABLE piece_event (
    id integer primary key,
    act_id integer not null references act (id),
    piece_id integer not null references "piece" (id),
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
INSERT INTO "piece_event" VALUES(1,1,1,'poured','sold',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO "piece_event" VALUES(2,1,2,'poured','kept',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO "piece_event" VALUES(3,1,3,'poured','cured',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO "piece_event" VALUES(4,1,3,'shelved',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,1,NULL);
INSERT INTO "piece_event" VALUES(5,1,4,'poured','bin',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO "piece_event" VALUES(6,1,5,'poured','kept',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO "piece_event" VALUES(7,1,6,'poured','cured',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO "piece_event" VALUES(8,1,6,'shelved',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,2,NULL);
INSERT INTO "piece_event" VALUES(9,1,7,'poured','sold',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO "piece_event" VALUES(10,1,8,'poured','cured',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO "piece_event" VALUES(11,1,8,'shelved',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,3,NULL);
INSERT INTO "piece_event" VALUES(12,1,9,'poured','cured',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO "piece_event" VALUES(13,1,9,'shelved',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,4,NULL);
INSERT INTO "piece_event" VALUES(14,1,10,'poured','coated',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO "piece_event" VALUES(15,1,10,'shelved',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,9,NULL);
INSERT INTO "piece_event" VALUES(16,1,11,'poured','coated',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO "piece_event" VALUES(17,1,11,'shelved',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,9,NULL);
INSERT INTO "piece_event" VALUES(18,1,12,'poured','coated',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO "piece_event" VALUES(19,1,12,'shelved',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,10,NULL);
INSERT INTO "piece_event" VALUES(20,1,13,'poured','coated',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO "piece_event" VALUES(21,1,13,'shelved',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,11,NULL);
INSERT INTO "piece_event" VALUES(22,1,14,'poured','ready',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO "piece_event" VALUES(23,1,14,'shelved',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,5,NULL);
INSERT INTO "piece_event" VALUES(24,1,15,'poured','ready',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO "piece_event" VALUES(25,1,15,'shelved',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,5,NULL);
INSERT INTO "piece_event" VALUES(26,1,16,'poured','ready',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO "piece_event" VALUES(27,1,16,'shelved',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,6,NULL);
INSERT INTO "piece_event" VALUES(28,1,17,'poured','drying',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO "piece_event" VALUES(29,1,17,'shelved',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,7,NULL);
INSERT INTO "piece_event" VALUES(30,1,18,'poured','drying',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO "piece_event" VALUES(31,1,18,'shelved',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,7,NULL);
INSERT INTO "piece_event" VALUES(32,1,19,'poured','drying',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO "piece_event" VALUES(33,1,19,'shelved',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,8,NULL);
INSERT INTO "piece_event" VALUES(34,1,20,'poured','drying',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO "piece_event" VALUES(35,1,20,'shelved',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,8,NULL);
INSERT INTO "piece_event" VALUES(36,1,21,'poured','drying',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO "piece_event" VALUES(37,1,21,'shelved',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,12,NULL);
INSERT INTO "piece_event" VALUES(300,103,1,'coated','coated',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO "piece_event" VALUES(301,103,2,'weighed',NULL,NULL,318400,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO "piece_event" VALUES(302,103,2,'left',NULL,40000,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO "piece_event" VALUES(303,103,3,'due',NULL,NULL,NULL,32000,NULL,1796000000000,'a customer',NULL,NULL,NULL);
INSERT INTO "piece_event" VALUES(304,103,3,'sold','sold',NULL,NULL,8500,40.0,NULL,'gallery',NULL,NULL,NULL);
INSERT INTO "piece_event" VALUES(305,103,3,'photo',NULL,NULL,NULL,NULL,NULL,NULL,'big cells','AgAD',NULL,NULL);
INSERT INTO "piece_event" VALUES(306,104,3,'undone',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,304);
INSERT INTO "piece_event" VALUES(307,104,2,'shelved',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,5,NULL);
INSERT INTO "piece_event" VALUES(330,130,4,'shelved',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,6,NULL);
INSERT INTO "piece_event" VALUES(331,130,4,'kept','kept',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
CREATE TABLE piece_number (
    number integer primary key check (number >= 1),
    shape text not null check (shape in ('panel', 'disc', 'oval', 'hexagon')),
    width_micrometres integer not null check (width_micrometres > 0),
    height_micrometres integer check (height_micrometres > 0),
    depth_micrometres integer check (depth_micrometres >= 0),
    act_id integer not null references act (id),
    check ((shape in ('panel', 'oval')) = (height_micrometres is not null))
) strict;
INSERT INTO "piece_number" VALUES(90,'panel',300000,300000,NULL,105);
CREATE TABLE "piece_part" (
    piece_id integer not null references "piece" (id),
    position integer not null check (position >= 1),
    material_id integer not null references material (id),
    microlitres integer check (microlitres > 0),
    milligrams integer check (milligrams > 0),
    primary key (piece_id, position),
    unique (piece_id, material_id),
    check ((microlitres is null) <> (milligrams is null))
) strict, without rowid;
INSERT INTO "piece_part" VALUES(1,1,21,84000,NULL);
INSERT INTO "piece_part" VALUES(1,2,1,15000,NULL);
INSERT INTO "piece_part" VALUES(1,3,3,18000,NULL);
INSERT INTO "piece_part" VALUES(1,4,2,3000,NULL);
INSERT INTO "piece_part" VALUES(1,5,6,NULL,3000);
INSERT INTO "piece_part" VALUES(1,6,8,NULL,1200);
INSERT INTO "piece_part" VALUES(2,1,21,143139,NULL);
INSERT INTO "piece_part" VALUES(2,2,4,37110,NULL);
INSERT INTO "piece_part" VALUES(2,3,5,21206,NULL);
INSERT INTO "piece_part" VALUES(2,4,2,10603,NULL);
INSERT INTO "piece_part" VALUES(2,5,7,NULL,4241);
INSERT INTO "piece_part" VALUES(2,6,9,NULL,3181);
INSERT INTO "piece_part" VALUES(3,1,21,252000,NULL);
INSERT INTO "piece_part" VALUES(3,2,1,45000,NULL);
INSERT INTO "piece_part" VALUES(3,3,3,54000,NULL);
INSERT INTO "piece_part" VALUES(3,4,2,9000,NULL);
INSERT INTO "piece_part" VALUES(3,5,6,NULL,9000);
INSERT INTO "piece_part" VALUES(3,6,8,NULL,3600);
INSERT INTO "piece_part" VALUES(6,1,21,95426,NULL);
INSERT INTO "piece_part" VALUES(6,2,4,24740,NULL);
INSERT INTO "piece_part" VALUES(6,3,5,14137,NULL);
INSERT INTO "piece_part" VALUES(6,4,2,7069,NULL);
INSERT INTO "piece_part" VALUES(6,5,7,NULL,2827);
INSERT INTO "piece_part" VALUES(6,6,9,NULL,2121);
INSERT INTO "piece_part" VALUES(7,1,21,40920,NULL);
INSERT INTO "piece_part" VALUES(7,2,1,7307,NULL);
INSERT INTO "piece_part" VALUES(7,3,3,8769,NULL);
INSERT INTO "piece_part" VALUES(7,4,2,1461,NULL);
INSERT INTO "piece_part" VALUES(7,5,6,NULL,1461);
INSERT INTO "piece_part" VALUES(7,6,8,NULL,585);
INSERT INTO "piece_part" VALUES(8,1,21,263894,NULL);
INSERT INTO "piece_part" VALUES(8,2,1,47124,NULL);
INSERT INTO "piece_part" VALUES(8,3,3,56549,NULL);
INSERT INTO "piece_part" VALUES(8,4,2,9425,NULL);
INSERT INTO "piece_part" VALUES(8,5,6,NULL,9425);
INSERT INTO "piece_part" VALUES(8,6,8,NULL,3770);
INSERT INTO "piece_part" VALUES(9,1,21,126299,NULL);
INSERT INTO "piece_part" VALUES(9,2,4,32744,NULL);
INSERT INTO "piece_part" VALUES(9,3,5,18711,NULL);
INSERT INTO "piece_part" VALUES(9,4,2,9356,NULL);
INSERT INTO "piece_part" VALUES(9,5,7,NULL,3742);
INSERT INTO "piece_part" VALUES(9,6,9,NULL,2807);
INSERT INTO "piece_part" VALUES(12,1,21,126563,NULL);
INSERT INTO "piece_part" VALUES(12,2,4,32813,NULL);
INSERT INTO "piece_part" VALUES(12,3,5,18750,NULL);
INSERT INTO "piece_part" VALUES(12,4,2,9375,NULL);
INSERT INTO "piece_part" VALUES(12,5,7,NULL,3750);
INSERT INTO "piece_part" VALUES(12,6,9,NULL,2813);
INSERT INTO "piece_part" VALUES(13,1,21,336000,NULL);
INSERT INTO "piece_part" VALUES(13,2,1,60000,NULL);
INSERT INTO "piece_part" VALUES(13,3,3,72000,NULL);
INSERT INTO "piece_part" VALUES(13,4,2,12000,NULL);
INSERT INTO "piece_part" VALUES(13,5,6,NULL,12000);
INSERT INTO "piece_part" VALUES(13,6,8,NULL,4800);
INSERT INTO "piece_part" VALUES(14,1,21,182250,NULL);
INSERT INTO "piece_part" VALUES(14,2,4,47250,NULL);
INSERT INTO "piece_part" VALUES(14,3,5,27000,NULL);
INSERT INTO "piece_part" VALUES(14,4,2,13500,NULL);
INSERT INTO "piece_part" VALUES(14,5,7,NULL,5400);
INSERT INTO "piece_part" VALUES(14,6,9,NULL,4050);
INSERT INTO "piece_part" VALUES(15,1,21,103084,NULL);
INSERT INTO "piece_part" VALUES(15,2,1,18408,NULL);
INSERT INTO "piece_part" VALUES(15,3,3,22089,NULL);
INSERT INTO "piece_part" VALUES(15,4,2,3682,NULL);
INSERT INTO "piece_part" VALUES(15,5,6,NULL,3682);
INSERT INTO "piece_part" VALUES(15,6,8,NULL,1473);
INSERT INTO "piece_part" VALUES(17,1,21,189000,NULL);
INSERT INTO "piece_part" VALUES(17,2,1,33750,NULL);
INSERT INTO "piece_part" VALUES(17,3,3,40500,NULL);
INSERT INTO "piece_part" VALUES(17,4,2,6750,NULL);
INSERT INTO "piece_part" VALUES(17,5,6,NULL,6750);
INSERT INTO "piece_part" VALUES(17,6,8,NULL,2700);
INSERT INTO "piece_part" VALUES(18,1,21,143139,NULL);
INSERT INTO "piece_part" VALUES(18,2,4,37110,NULL);
INSERT INTO "piece_part" VALUES(18,3,5,21206,NULL);
INSERT INTO "piece_part" VALUES(18,4,2,10603,NULL);
INSERT INTO "piece_part" VALUES(18,5,7,NULL,4241);
INSERT INTO "piece_part" VALUES(18,6,9,NULL,3181);
INSERT INTO "piece_part" VALUES(19,1,21,40920,NULL);
INSERT INTO "piece_part" VALUES(19,2,1,7307,NULL);
INSERT INTO "piece_part" VALUES(19,3,3,8769,NULL);
INSERT INTO "piece_part" VALUES(19,4,2,1461,NULL);
INSERT INTO "piece_part" VALUES(19,5,6,NULL,1461);
INSERT INTO "piece_part" VALUES(19,6,8,NULL,585);
INSERT INTO "piece_part" VALUES(20,1,21,243000,NULL);
INSERT INTO "piece_part" VALUES(20,2,4,63000,NULL);
INSERT INTO "piece_part" VALUES(20,3,5,36000,NULL);
INSERT INTO "piece_part" VALUES(20,4,2,18000,NULL);
INSERT INTO "piece_part" VALUES(20,5,7,NULL,7200);
INSERT INTO "piece_part" VALUES(20,6,9,NULL,5400);
INSERT INTO "piece_part" VALUES(21,1,21,131250,NULL);
INSERT INTO "piece_part" VALUES(21,2,1,23438,NULL);
INSERT INTO "piece_part" VALUES(21,3,3,28125,NULL);
INSERT INTO "piece_part" VALUES(21,4,2,4688,NULL);
INSERT INTO "piece_part" VALUES(21,5,6,NULL,4688);
INSERT INTO "piece_part" VALUES(21,6,8,NULL,1875);
CREATE TABLE piece_stand (
    piece_id integer primary key references piece (id),
    stage text not null check (stage in ('drying', 'ready', 'coated', 'cured', 'kept', 'sold', 'bin')),
    shelf_id integer references shelf (id)
) strict;
INSERT INTO "piece_stand" VALUES(1,'coated',NULL);
INSERT INTO "piece_stand" VALUES(2,'kept',5);
INSERT INTO "piece_stand" VALUES(3,'cured',1);
INSERT INTO "piece_stand" VALUES(4,'kept',6);
INSERT INTO "piece_stand" VALUES(5,'kept',NULL);
INSERT INTO "piece_stand" VALUES(6,'cured',2);
INSERT INTO "piece_stand" VALUES(7,'sold',NULL);
INSERT INTO "piece_stand" VALUES(8,'cured',3);
INSERT INTO "piece_stand" VALUES(9,'cured',4);
INSERT INTO "piece_stand" VALUES(10,'coated',9);
INSERT INTO "piece_stand" VALUES(11,'coated',9);
INSERT INTO "piece_stand" VALUES(12,'coated',10);
INSERT INTO "piece_stand" VALUES(13,'coated',11);
INSERT INTO "piece_stand" VALUES(14,'ready',5);
INSERT INTO "piece_stand" VALUES(15,'ready',5);
INSERT INTO "piece_stand" VALUES(16,'ready',6);
INSERT INTO "piece_stand" VALUES(17,'drying',7);
INSERT INTO "piece_stand" VALUES(18,'drying',7);
INSERT INTO "piece_stand" VALUES(19,'drying',8);
INSERT INTO "piece_stand" VALUES(20,'drying',8);
INSERT INTO "piece_stand" VALUES(21,'drying',12);
CREATE TABLE post (
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
INSERT INTO "post" VALUES(1,7001,'answer 7001 11 0',0,'{"html":"20 ml"}',1796000000000,'sent',1796000000000,1,0,NULL,91,1796000000000);
INSERT INTO "post" VALUES(2,7002,NULL,1,'{}',1796000000000,'waiting',1796000000000,0,1,'cut',NULL,NULL);
INSERT INTO "post" VALUES(3,-100,NULL,2,'{}',1796000000000,'parked',1796000000000,4,0,'gone',NULL,1796000000000);
CREATE TABLE post_file (
    post_id integer primary key references post (id) on delete cascade,
    name text not null check (length(name) between 1 and 100),
    media_type text not null check (length(media_type) between 3 and 100),
    content blob not null check (length(content) > 0)
) strict;
INSERT INTO "post_file" VALUES(1,'usage.csv','text/csv',X'4142430A00FF');
CREATE TABLE "press" (
    press_key text primary key check (length(press_key) between 16 and 64),
    owner_user_id integer,
    chat_id integer not null,
    line text not null check (length(line) > 0),
    agrees integer not null default 0 check (agrees in (0, 1)),
    expires_at integer not null,
    used_at integer
) strict, without rowid;
INSERT INTO "press" VALUES('0123456789abcdee',7001,-100,'used 20 ml white',0,1796000000000,NULL);
INSERT INTO "press" VALUES('0123456789abcdef',7002,7002,'undo 101',0,1796000000000,1796000000000);
INSERT INTO "press" VALUES('fedcba9876543210',NULL,-100,'dry 17',1,1796000000000,NULL);
CREATE TABLE recipe (
    id integer primary key,
    name text not null unique collate nocase check (length(name) between 1 and 60),
    makes_material_id integer references material (id)
) strict;
INSERT INTO "recipe" VALUES(1,'medium',21);
INSERT INTO "recipe" VALUES(2,'activator',22);
INSERT INTO "recipe" VALUES(3,'ocean',NULL);
INSERT INTO "recipe" VALUES(4,'dusk',NULL);
CREATE TABLE recipe_part (
    recipe_id integer not null references recipe (id),
    position integer not null check (position >= 1),
    material_id integer not null references material (id),
    microlitres integer check (microlitres > 0),
    milligrams integer check (milligrams > 0),
    primary key (recipe_id, position),
    unique (recipe_id, material_id),
    check ((microlitres is null) <> (milligrams is null))
) strict, without rowid;
INSERT INTO "recipe_part" VALUES(1,1,10,300000,NULL);
INSERT INTO "recipe_part" VALUES(1,2,11,100000,NULL);
INSERT INTO "recipe_part" VALUES(2,1,1,40000,NULL);
INSERT INTO "recipe_part" VALUES(2,2,12,10000,NULL);
INSERT INTO "recipe_part" VALUES(3,1,21,140000,NULL);
INSERT INTO "recipe_part" VALUES(3,2,1,25000,NULL);
INSERT INTO "recipe_part" VALUES(3,3,3,30000,NULL);
INSERT INTO "recipe_part" VALUES(3,4,2,5000,NULL);
INSERT INTO "recipe_part" VALUES(3,5,6,NULL,5000);
INSERT INTO "recipe_part" VALUES(3,6,8,NULL,2000);
INSERT INTO "recipe_part" VALUES(4,1,21,135000,NULL);
INSERT INTO "recipe_part" VALUES(4,2,4,35000,NULL);
INSERT INTO "recipe_part" VALUES(4,3,5,20000,NULL);
INSERT INTO "recipe_part" VALUES(4,4,2,10000,NULL);
INSERT INTO "recipe_part" VALUES(4,5,7,NULL,4000);
INSERT INTO "recipe_part" VALUES(4,6,9,NULL,3000);
CREATE TABLE refusal (
    id integer primary key,
    user_id integer not null,
    standing text not null check (
        standing in ('stranger', 'left', 'anonymous', 'channel', 'member', 'steward')),
    name text not null,
    words text not null,
    why text not null check (length(why) > 0),
    refused_at integer not null
) strict;
INSERT INTO "refusal" VALUES(1,9001,'stranger','Kai','stock','a stranger',1796000100000);
INSERT INTO "refusal" VALUES(2,7002,'member','Pia','settle','for stewards',1796000200000);
CREATE TABLE reminder (
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
INSERT INTO "reminder" VALUES(1,'ready','piece 17',NULL,NULL,1796000000000,1796000000000,NULL,NULL,'ready 17 1','planned',NULL,NULL,103);
INSERT INTO "reminder" VALUES(2,'week','studio',-100,NULL,1796000000000,1796000000000,'sunday 18:00','Europe/Vienna','week 2026-11-29','held','quiet',NULL,NULL);
INSERT INTO "reminder" VALUES(3,'asked','request 1',7002,2,1796000000000,1796000000000,NULL,NULL,'asked 1','done','sent',1796000000000,105);
CREATE TABLE room (
    id integer primary key,
    name text not null unique collate nocase check (length(name) between 1 and 40)
) strict;
INSERT INTO "room" VALUES(1,'studio');
INSERT INTO "room" VALUES(2,'cupboard');
CREATE TABLE setting_change (
    id integer primary key,
    act_id integer not null references act (id),
    table_name text not null,
    row_key text not null,
    row_before text check (json_valid(row_before)),
    row_after text check (json_valid(row_after)),
    check (coalesce(row_before, row_after) is not null)
) strict;
INSERT INTO "setting_change" VALUES(1,105,'studio_setting','week','{"value":"sun 18:00"}','{"value":"fri 17:00"}');
CREATE TABLE shelf (
    id integer primary key,
    label text not null unique collate nocase check (length(label) between 1 and 20),
    room_id integer not null references room (id)
) strict;
INSERT INTO "shelf" VALUES(1,'A1',1);
INSERT INTO "shelf" VALUES(2,'A2',1);
INSERT INTO "shelf" VALUES(3,'A3',1);
INSERT INTO "shelf" VALUES(4,'A4',1);
INSERT INTO "shelf" VALUES(5,'B1',1);
INSERT INTO "shelf" VALUES(6,'B2',1);
INSERT INTO "shelf" VALUES(7,'B3',1);
INSERT INTO "shelf" VALUES(8,'B4',1);
INSERT INTO "shelf" VALUES(9,'C1',2);
INSERT INTO "shelf" VALUES(10,'C2',2);
INSERT INTO "shelf" VALUES(11,'C3',2);
INSERT INTO "shelf" VALUES(12,'C4',2);
CREATE TABLE snooze (
    kind text not null check (length(kind) between 1 and 30),
    subject text not null check (length(subject) between 1 and 60),
    until_at integer not null,
    primary key (kind, subject)
) strict, without rowid;
INSERT INTO "snooze" VALUES('ready','piece 17',1796000000000);
CREATE TABLE stock_entry (
    id integer primary key,
    act_id integer not null references act (id),
    material_id integer not null,
    lot_id integer not null,
    microlitres integer check (microlitres <> 0),
    milligrams integer check (milligrams <> 0),
    pieces integer check (pieces <> 0),
    reason text not null check (reason in (
        'opening', 'bought', 'made', 'used', 'mixed', 'poured', 'coated', 'counted', 'binned', 'returned')),
    undoes_id integer unique references stock_entry (id), cents integer not null default 0,
    foreign key (lot_id, material_id) references "lot" (id, material_id),
    check ((microlitres is not null) + (milligrams is not null) + (pieces is not null) = 1)
) strict;
INSERT INTO "stock_entry" VALUES(1,1,1,1,40000,NULL,NULL,'opening',NULL,70);
INSERT INTO "stock_entry" VALUES(2,1,1,2,780000,NULL,NULL,'opening',NULL,1365);
INSERT INTO "stock_entry" VALUES(3,1,2,3,310000,NULL,NULL,'opening',NULL,676);
INSERT INTO "stock_entry" VALUES(4,1,3,4,265000,NULL,NULL,'opening',NULL,827);
INSERT INTO "stock_entry" VALUES(5,1,4,5,140000,NULL,NULL,'opening',NULL,459);
INSERT INTO "stock_entry" VALUES(6,1,5,6,85000,NULL,NULL,'opening',NULL,235);
INSERT INTO "stock_entry" VALUES(7,1,6,7,NULL,46000,NULL,'opening',NULL,823);
INSERT INTO "stock_entry" VALUES(8,1,7,8,NULL,38000,NULL,'opening',NULL,718);
INSERT INTO "stock_entry" VALUES(9,1,8,9,NULL,31500,NULL,'opening',NULL,599);
INSERT INTO "stock_entry" VALUES(10,1,9,10,NULL,42000,NULL,'opening',NULL,832);
INSERT INTO "stock_entry" VALUES(11,1,10,11,2150000,NULL,NULL,'opening',NULL,2571);
INSERT INTO "stock_entry" VALUES(12,1,11,12,930000,NULL,NULL,'opening',NULL,1562);
INSERT INTO "stock_entry" VALUES(13,1,12,13,360000,NULL,NULL,'opening',NULL,569);
INSERT INTO "stock_entry" VALUES(14,1,13,14,410000,NULL,NULL,'opening',NULL,443);
INSERT INTO "stock_entry" VALUES(15,1,14,15,640000,NULL,NULL,'opening',NULL,544);
INSERT INTO "stock_entry" VALUES(16,1,15,16,120000,NULL,NULL,'opening',NULL,384);
INSERT INTO "stock_entry" VALUES(17,1,15,17,2000000,NULL,NULL,'opening',NULL,5800);
INSERT INTO "stock_entry" VALUES(18,1,16,18,60000,NULL,NULL,'opening',NULL,216);
INSERT INTO "stock_entry" VALUES(19,1,16,19,1000000,NULL,NULL,'opening',NULL,3200);
INSERT INTO "stock_entry" VALUES(20,1,17,20,1700000,NULL,NULL,'opening',NULL,1693);
INSERT INTO "stock_entry" VALUES(21,1,18,21,NULL,NULL,26,'opening',NULL,2340);
INSERT INTO "stock_entry" VALUES(22,1,19,22,NULL,NULL,88,'opening',NULL,783);
INSERT INTO "stock_entry" VALUES(23,1,20,23,NULL,NULL,64,'opening',NULL,800);
INSERT INTO "stock_entry" VALUES(24,1,21,24,90000,NULL,NULL,'opening',NULL,0);
INSERT INTO "stock_entry" VALUES(25,1,21,25,860000,NULL,NULL,'opening',NULL,0);
INSERT INTO "stock_entry" VALUES(26,1,22,26,70000,NULL,NULL,'opening',NULL,0);
INSERT INTO "stock_entry" VALUES(200,100,1,50,1000000,NULL,NULL,'bought',NULL,1850);
INSERT INTO "stock_entry" VALUES(201,101,1,50,-20000,NULL,NULL,'used',NULL,-37);
INSERT INTO "stock_entry" VALUES(202,102,1,50,20000,NULL,NULL,'used',201,37);
INSERT INTO "stock_entry" VALUES(210,112,1,50,-100000,NULL,NULL,'used',NULL,-185);
INSERT INTO "stock_entry" VALUES(220,120,1,50,-10000,NULL,NULL,'counted',NULL,-19);
CREATE TABLE stranger (
    chat_account integer primary key,
    told_at integer,
    wrong_codes integer not null default 0 check (wrong_codes >= 0),
    wrong_since integer
) strict;
INSERT INTO "stranger" VALUES(-77,NULL,0,NULL);
INSERT INTO "stranger" VALUES(9001,1796000100000,2,1796000150000);
CREATE TABLE studio (
    id integer primary key check (id = 1),
    name text not null check (length(name) between 1 and 80),
    zone text not null check (length(zone) > 0),
    currency text not null check (length(currency) = 3),
    units text not null check (units in ('metric', 'us', 'imperial')),
    scoop_microlitres integer not null check (scoop_microlitres > 0)
) strict;
INSERT INTO "studio" VALUES(1,'Lantern Yard Pour Room','Europe/Vienna','EUR','metric',20000);
CREATE TABLE studio_setting (
    name text primary key check (length(name) between 1 and 40),
    value text not null check (length(value) > 0)
) strict, without rowid;
INSERT INTO "studio_setting" VALUES('group','-100');
INSERT INTO "studio_setting" VALUES('week','fri 17:00');
CREATE TABLE technique_override (
    name text primary key collate nocase check (length(name) between 1 and 40),
    laid_micrometres integer check (laid_micrometres between 50 and 20000),
    run_off_share real check (run_off_share between 0 and 1)
) strict, without rowid;
CREATE TABLE unwanted_ping (
    member_id integer not null references member (id),
    kind text not null check (length(kind) between 1 and 30),
    primary key (member_id, kind)
) strict, without rowid;
INSERT INTO "unwanted_ping" VALUES(2,'Torch');
CREATE TABLE wish (
    member_id integer primary key references member (id),
    quiet_from_minutes integer check (quiet_from_minutes between 0 and 1439),
    quiet_until_minutes integer check (quiet_until_minutes between 0 and 1439),
    woken integer not null default 0 check (woken in (0, 1)),
    check ((quiet_from_minutes is null) = (quiet_until_minutes is null))
) strict;
INSERT INTO "wish" VALUES(1,1320,480,1);
INSERT INTO "wish" VALUES(2,NULL,NULL,0);
CREATE TABLE workshop (
    id integer primary key,
    act_id integer not null references act (id),
    starts_at integer not null,
    people integer not null check (people > 0),
    words text not null check (length(words) > 0),
    undone_id integer references act (id)
) strict;
INSERT INTO "workshop" VALUES(1,110,1796000000000,8,'reserve sat 10:00 8 people',NULL);
INSERT INTO "workshop" VALUES(2,110,1796000000000,2,'reserve sun 2 people',111);
CREATE TABLE workshop_part (
    workshop_id integer not null references workshop (id),
    material_id integer not null references material (id),
    microlitres integer check (microlitres > 0),
    milligrams integer check (milligrams > 0),
    pieces integer check (pieces > 0),
    primary key (workshop_id, material_id),
    check ((microlitres is not null) + (milligrams is not null) + (pieces is not null) = 1)
) strict, without rowid;
INSERT INTO "workshop_part" VALUES(1,1,250000,NULL,NULL);
INSERT INTO "workshop_part" VALUES(2,1,1000,NULL,NULL);
CREATE INDEX account_member on account (member_id);
CREATE INDEX air_reading_newest on air_reading (room_id, read_at, id);
CREATE INDEX shelf_room on shelf (room_id);
CREATE INDEX pack_material on pack (material_id);
CREATE INDEX recipe_makes on recipe (makes_material_id);
CREATE INDEX recipe_part_material on recipe_part (material_id);
CREATE INDEX batch_recipe on batch (recipe_id);
CREATE INDEX batch_maker on batch (maker_id);
CREATE UNIQUE INDEX inbox_message on inbox (chat_id, message_id, kind)
    where message_id is not null and press_id is null;
CREATE INDEX inbox_waiting on inbox (chat_id, id) where state = 'waiting';
CREATE INDEX inbox_received on inbox (received_at);
CREATE UNIQUE INDEX post_in_flight on post (chat_id) where state = 'sending';
CREATE INDEX post_waiting on post (urgency, id) where state = 'waiting';
CREATE INDEX post_waiting_in_chat on post (chat_id, urgency, id) where state = 'waiting';
CREATE INDEX post_settled on post (settled_at) where settled_at is not null;
CREATE INDEX act_author on act (author_id, written_at, id);
CREATE INDEX act_for on act (for_id) where for_id is not null;
CREATE TRIGGER act_is_not_changed before update on act
begin
    select raise(abort, 'an act is not changed');
end;
CREATE TRIGGER act_does_not_go before delete on act
begin
    select raise(abort, 'an act does not go');
end;
CREATE TRIGGER act_undo_stays before insert on act
when (select undoes_id from act where id = new.undoes_id) is not null
begin
    select raise(abort, 'what undid an act is not undone');
end;
CREATE UNIQUE INDEX lot_label on lot (material_id, label) where undone_id is null;
CREATE INDEX lot_age on lot (material_id, bought_at, id) where undone_id is null;
CREATE INDEX lot_act on lot (act_id);
CREATE INDEX stock_entry_act on stock_entry (act_id);
CREATE TRIGGER stock_entry_does_not_go before delete on stock_entry
begin
    select raise(abort, 'a book is only appended');
end;
CREATE INDEX money_entry_act on money_entry (act_id);
CREATE INDEX money_entry_member on money_entry (member_id) where member_id is not null;
CREATE TRIGGER money_entry_is_not_changed before update on money_entry
begin
    select raise(abort, 'a book is only appended');
end;
CREATE TRIGGER money_entry_does_not_go before delete on money_entry
begin
    select raise(abort, 'a book is only appended');
end;
CREATE INDEX batch_act on batch (act_id);
CREATE INDEX batch_lot on batch (lot_id) where lot_id is not null;
CREATE INDEX air_reading_act on air_reading (act_id);
CREATE UNIQUE INDEX piece_number_given on piece (number) where undone_id is null;
CREATE INDEX piece_recipe on piece (recipe_id);
CREATE INDEX piece_batch on piece (batch_id);
CREATE INDEX piece_maker on piece (maker_id);
CREATE INDEX piece_act on piece (act_id);
CREATE INDEX piece_part_material on piece_part (material_id);
CREATE INDEX piece_event_act on piece_event (act_id);
CREATE INDEX piece_event_piece on piece_event (piece_id, id);
CREATE INDEX piece_event_shelf on piece_event (shelf_id) where shelf_id is not null;
CREATE TRIGGER piece_event_is_not_changed before update on piece_event
begin
    select raise(abort, 'a book is only appended');
end;
CREATE TRIGGER piece_event_does_not_go before delete on piece_event
begin
    select raise(abort, 'a book is only appended');
end;
CREATE VIEW live_piece_event as
select line.id, line.act_id, line.piece_id, line.kind, line.stage, line.microlitres, line.milligrams, line.cents,
       line.share_percent, line.until_at, line.words, line.file_id, line.shelf_id
from piece_event as line
where line.kind <> 'undone'
  and not exists (select 1 from piece_event as answer where answer.undoes_id = line.id);
CREATE INDEX coat_lot_lot on coat_lot (lot_id);
CREATE TRIGGER coat_is_not_changed before update on coat
begin
    select raise(abort, 'a book is only appended');
end;
CREATE TRIGGER coat_does_not_go before delete on coat
begin
    select raise(abort, 'a book is only appended');
end;
CREATE TRIGGER coat_lot_is_not_changed before update on coat_lot
begin
    select raise(abort, 'a book is only appended');
end;
CREATE TRIGGER coat_lot_does_not_go before delete on coat_lot
begin
    select raise(abort, 'a book is only appended');
end;
CREATE INDEX setting_change_act on setting_change (act_id);
CREATE INDEX setting_change_row on setting_change (table_name, row_key);
CREATE INDEX reminder_due on reminder (due_at, id) where state <> 'done';
CREATE INDEX reminder_subject on reminder (subject, kind, id);
CREATE INDEX reminder_act on reminder (act_id) where act_id is not null;
CREATE INDEX reminder_member on reminder (member_id) where member_id is not null;
CREATE INDEX invitation_expiry on invitation (expires_at);
CREATE INDEX press_expiry on press (expires_at);
CREATE TRIGGER stock_entry_is_not_changed before update on stock_entry
begin
    select raise(abort, 'a book is only appended');
end;
CREATE INDEX lot_sum_material on lot_sum (material_id, units);
CREATE TRIGGER lot_has_a_sum after insert on lot
begin
    insert into lot_sum (lot_id, material_id)
    values (new.id, new.material_id);
end;
CREATE TRIGGER stock_entry_is_summed after insert on stock_entry
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
CREATE TRIGGER money_entry_is_summed after insert on money_entry
begin
    insert into money_sum (account, member_id, cents)
    values (new.account, coalesce(new.member_id, 0), new.cents)
    on conflict (account, member_id) do update
    set cents = cents + excluded.cents;
end;
CREATE INDEX stock_entry_lot on stock_entry (lot_id);
CREATE INDEX act_happened on act (happened_at);
CREATE INDEX workshop_act on workshop (act_id);
CREATE INDEX workshop_start on workshop (starts_at) where undone_id is null;
CREATE INDEX workshop_part_material on workshop_part (material_id);
CREATE INDEX payment_receipt_act on payment_receipt (receipt_act_id);
CREATE INDEX count_share_material on count_share (material_id, run_id);
CREATE INDEX piece_stand_stage on piece_stand (stage);
CREATE INDEX piece_stand_shelf on piece_stand (shelf_id) where shelf_id is not null;
CREATE VIEW piece_standing as
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
CREATE TRIGGER piece_event_stands after insert on piece_event
begin
    delete from piece_stand
    where piece_id = new.piece_id;
    insert into piece_stand (piece_id, stage, shelf_id)
    select piece_id, stage, shelf_id
    from piece_standing
    where piece_id = new.piece_id
      and stage is not null;
end;
CREATE INDEX stock_entry_material on stock_entry (material_id, reason, act_id);
CREATE INDEX act_written on act (written_at);
CREATE INDEX refusal_account on refusal (user_id, refused_at);
CREATE INDEX refusal_moment on refusal (refused_at, id);
CREATE TRIGGER refusal_is_not_changed before update on refusal
when new.id <> old.id
    or new.standing <> old.standing
    or new.why <> old.why
    or new.refused_at <> old.refused_at
    or new.user_id <> 0
    or new.name <> ''
    or new.words <> ''
begin
    select raise(abort, 'a book is only appended');
end;
CREATE INDEX flow_reading_act on flow_reading (act_id);
CREATE INDEX flow_reading_batch on flow_reading (batch_id);
CREATE INDEX piece_event_note on piece_event (id) where kind = 'note';
CREATE INDEX post_put_off on post (chat_id, next_try_at) where state = 'waiting' and next_try_at > put_at;
CREATE INDEX batch_gel_act on batch_gel (act_id);
CREATE INDEX batch_gel_batch on batch_gel (batch_id);
DELETE FROM "sqlite_sequence";
INSERT INTO "sqlite_sequence" VALUES('inbox',3);
INSERT INTO "sqlite_sequence" VALUES('post',3);
COMMIT;
