-- What a manager looks up: links, rounds and shifts, also those that are over; who left.

create function public.read_invites(p_orchard uuid) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
begin
  perform private.begin_read(p_orchard, null, 'manager');
  return (
    select jsonb_build_object(
      'invites', coalesce(jsonb_agg(jsonb_build_object('invite', i.id, 'kind', i.kind, 'role', i.role, 'person', i.person_id,
        'shiftDate', s.on_date, 'madeBy', i.made_by, 'madeAt', private.instant(i.made_at),
        'expiresAt', private.instant(i.expires_at), 'endedAt', private.instant(i.ended_at),
        'used', i.used, 'over', private.invite_lacks(i)) order by i.made_at desc, i.id), '[]'),
      'names', private.names_of(p_orchard, array_agg(i.person_id) || array_agg(i.made_by)))
    from (
      select * from public.invites where orchard_id = p_orchard order by made_at desc limit 300) newest
    join public.invites i on i.id = newest.id
    left join public.shifts s on s.id = i.shift_id);
end $$;
comment on function public.read_invites is 'The newest 300. Never the code: only its hash is kept. over: why it lets nobody in any more.';
grant execute on function public.read_invites to authenticated;

create function public.read_rounds(p_orchard uuid) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
begin
  perform private.begin_read(p_orchard, null, 'lead');
  return (
    select coalesce(jsonb_agg(jsonb_build_object('round', r.id, 'kind', r.kind, 'season', r.season, 'species', r.species,
      'from', r.from_on, 'to', r.to_on, 'openedAt', private.instant(r.opened_at), 'closedAt', private.instant(r.closed_at),
      'trees', (
        select count(*) from public.trees t
        where t.orchard_id = p_orchard and t.life = 'standing' and t.species = any (r.species)),
      'done', coalesce(w.done, 0), 'begun', coalesce(w.begun, 0), 'leftOut', coalesce(w.left_out, 0),
      'planned', coalesce(s.planned, 0), 'held', coalesce(s.held, 0)) order by r.opened_at desc, r.id), '[]')
    from public.rounds r
    left join lateral (
      select count(*) filter (where state = 'done') as done, count(*) filter (where state = 'begun') as begun,
        count(*) filter (where state = 'left_out') as left_out
      from public.tree_work where round_id = r.id) w on true
    left join lateral (
      select count(*) filter (where state = 'scheduled') as planned, count(*) filter (where state in ('open', 'closed')) as held
      from public.shifts where round_id = r.id) s on true
    where r.orchard_id = p_orchard);
end $$;
comment on function public.read_rounds is 'trees: how many of its species stand now, which for a round of the past is not how many stood then.';
grant execute on function public.read_rounds to authenticated;

create function public.read_shifts(p_orchard uuid) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
begin
  perform private.begin_read(p_orchard, null, 'lead');
  return (
    select coalesce(jsonb_agg(jsonb_build_object('shift', s.id, 'round', s.round_id, 'kind', r.kind, 'season', r.season,
      'date', s.on_date, 'state', s.state, 'openedAt', private.instant(s.opened_at), 'closedAt', private.instant(s.closed_at),
      'people', (select count(distinct a.person_id) from public.attendances a where a.shift_id = s.id),
      'done', (
        select count(distinct v.tree_no) from public.visits v
        where v.shift_id = s.id and v.result = 'done' and v.undone_at is null)) order by s.starts_at desc, s.id), '[]')
    from (
      select * from public.shifts
      where orchard_id = p_orchard and state <> 'scheduled' order by starts_at desc limit 300) s
    join public.rounds r on r.id = s.round_id);
end $$;
comment on function public.read_shifts is 'The newest 300 that were opened or called off; those that are planned stand in the snapshot. shift_record has the rest.';
grant execute on function public.read_shifts to authenticated;

create function public.people_who_left(p_orchard uuid) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
begin
  perform private.begin_read(p_orchard, null, 'manager');
  return (
    select coalesce(jsonb_agg(jsonb_build_object('person', id, 'name', name, 'role', role,
      'addedAt', private.instant(added_at), 'removedAt', private.instant(removed_at)) order by removed_at desc, id), '[]')
    from (
      select * from public.people
      where orchard_id = p_orchard and removed_at is not null and forgotten_at is null
      order by removed_at desc limit 1000) gone);
end $$;
comment on function public.people_who_left is 'Removed and not forgotten: their names are still kept.';
grant execute on function public.people_who_left to authenticated;
