-- What each got (above zero) or bore (below) by the counts of a material since anything else moved it, as it stands
-- after the act: those counts are one run, told by the first of them. The member is 0 where it is the studio itself,
-- whose row stands in every count, be it of nothing.
create table count_share (
    act_id integer not null references act (id),
    run_id integer not null references act (id),
    material_id integer not null references material (id),
    member_id integer not null,
    cents integer not null,
    primary key (act_id, material_id, member_id)
) strict, without rowid;

create index count_share_material on count_share (material_id, run_id);
