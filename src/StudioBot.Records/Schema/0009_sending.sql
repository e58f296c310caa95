-- Whether a chat has a message on the wire, without looking at all that were sent.
create index post_sending on post (chat_id) where state = 'sending';
