-- The few posts that wait for their next try, without looking at all that wait.
create index post_put_off on post (chat_id, next_try_at) where state = 'waiting' and next_try_at > put_at;
