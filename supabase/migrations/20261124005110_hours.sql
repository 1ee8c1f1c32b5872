-- Hours over a season: attendance less breaks, for each person and shift, of the same kind as shift_record.

create function private.season_or_last(p_orchard uuid, p_season integer) returns integer
language plpgsql stable set search_path = '' as $$
begin
  return coalesce(p_season, (select max(season) from public.rounds where orchard_id = p_orchard));
end $$;

create function public.volunteer_hours(p_orchard uuid, p_season integer default null) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
declare
  v_season integer;
  v_shifts jsonb;
begin
  perform private.begin_read(p_orchard, null, 'lead');
  v_season := private.season_or_last(p_orchard, p_season);
  select coalesce(jsonb_agg(jsonb_build_object('shift', s.id, 'round', r.id, 'kind', r.kind, 'date', s.on_date, 'state', s.state,
    'people', private.record_of_people(s, clock_timestamp())) order by s.opened_at, s.id), '[]') into v_shifts
  from public.shifts s join public.rounds r on r.id = s.round_id
  where s.orchard_id = p_orchard and r.season = v_season and s.state in ('open', 'closed');
  return jsonb_build_object(
    'season', v_season,
    'seasons', (
      select coalesce(jsonb_agg(distinct season order by season desc), '[]') from public.rounds where orchard_id = p_orchard),
    'shifts', v_shifts,
    'names', private.names_of(p_orchard, (
      select array_agg(distinct (one ->> 'person')::uuid)
      from jsonb_array_elements(v_shifts) s, jsonb_array_elements(s -> 'people') one)));
end $$;
comment on function public.volunteer_hours is
  'For leads. p_season null: the newest. people as in shift_record; names also of people who left. Who was forgotten counts without a name.';
grant execute on function public.volunteer_hours to authenticated;

create function public.my_hours(p_orchard uuid, p_person uuid) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
begin
  perform private.begin_read(p_orchard, p_person);
  return (
    select coalesce(jsonb_agg(jsonb_build_object('shift', s.id, 'season', r.season, 'date', s.on_date,
      'hereS', h.here_s, 'breakS', h.break_s) order by s.opened_at desc, s.id), '[]')
    from public.shifts s
    join public.rounds r on r.id = s.round_id
    join lateral private.hours_in(s, clock_timestamp()) h on h.person_id = p_person
    where s.orchard_id = p_orchard
      and exists (select 1 from public.attendances a where a.shift_id = s.id and a.person_id = p_person));
end $$;
comment on function public.my_hours is 'Everybody reads their own, and nobody else''s.';
grant execute on function public.my_hours to authenticated;
