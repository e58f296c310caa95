-- Who was refused what, and why, for stewards to look at: only appended. Who is forgotten is taken out of it.
create table refusal (
    id integer primary key,
    user_id integer not null,
    standing text not null check (
        standing in ('stranger', 'left', 'anonymous', 'channel', 'member', 'steward')),
    name text not null,
    words text not null,
    why text not null check (length(why) > 0),
    refused_at integer not null
) strict;

create index refusal_account on refusal (user_id, refused_at);
create index refusal_moment on refusal (refused_at, id);

create trigger refusal_is_not_changed before update on refusal
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

-- An account that is none of the studio's, or a group that is not its own (groups have numbers below zero): when it was
-- last told so, and how many codes it tried since when.
create table stranger (
    chat_account integer primary key,
    told_at integer,
    wrong_codes integer not null default 0 check (wrong_codes >= 0),
    wrong_since integer
) strict;

-- A group that became a supergroup has another number from then on; what still comes under the old one is meant for it.
create table chat_move (
    from_chat_id integer primary key,
    to_chat_id integer not null check (to_chat_id <> from_chat_id)
) strict;
