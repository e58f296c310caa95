-- A button may be anybody's of the studio (under what the bot says by itself), and may agree to what was doubted.
create table press_next (
    press_key text primary key check (length(press_key) between 16 and 64),
    owner_user_id integer,
    chat_id integer not null,
    line text not null check (length(line) > 0),
    agrees integer not null default 0 check (agrees in (0, 1)),
    expires_at integer not null,
    used_at integer
) strict, without rowid;

insert into press_next (press_key, owner_user_id, chat_id, line, expires_at, used_at)
select press_key, owner_user_id, chat_id, line, expires_at, used_at
from press;

drop table press;
alter table press_next rename to press;
create index press_expiry on press (expires_at);
