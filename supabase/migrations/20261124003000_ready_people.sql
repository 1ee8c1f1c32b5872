-- What a person lacks before any claim, as a list of refusals: everything that is missing, not the first.

create function private.work_round(p_orchard uuid) returns public.rounds
language plpgsql stable set search_path = '' as $$
begin
  return (
    select r from public.rounds r
    left join public.shifts s on s.round_id = r.id and s.state = 'open'
    where r.orchard_id = p_orchard and r.closed_at is null
    order by (s.id is not null) desc, r.opened_at desc, r.id
    limit 1);
end $$;
comment on function private.work_round is 'The round that work goes to: the open shift''s, else the open one that was opened last.';

create function private.missing_consent(p_orchard uuid, p_person public.people, p_shift public.shifts) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_missing jsonb := '[]';
begin
  if not exists (
    select 1 from public.consents c join public.rounds r on r.id = p_shift.round_id
    where c.person_id = p_person.id and c.season = r.season
      and c.text_version = private.house_rule(p_orchard, 'consent_version')
      -- Of whoever came in as an adult and is none, the guardian has said nothing yet.
      and (p_person.age_band = 'adult' or c.by_person_id <> p_person.id)
  ) then v_missing := v_missing || private.code('consent_missing'); end if;

  if p_person.age_band = 'minor'
    and (p_person.guardian_id is null or not private.is_here(p_shift.id, p_person.guardian_id))
  then v_missing := v_missing || private.code('adult_missing', jsonb_build_object('person', p_person.guardian_id)); end if;
  return v_missing;
end $$;

create function private.missing_briefing(p_shift public.shifts, p_person uuid) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_version integer := private.latest_briefing(p_shift.id);
  v_told integer := private.told_version(p_shift.id, p_person);
  v_missing jsonb := '[]';
begin
  -- Given once a shift by a person, and again after "come down now"; each version is signed for, on the phone or read out.
  if v_told = 0 or v_told < private.come_down_version(p_shift.id)
  then v_missing := v_missing || private.code('briefing_not_given'); end if;
  if not exists (
    select 1 from public.briefing_signatures s
    where s.shift_id = p_shift.id and s.person_id = p_person and s.version = v_version
  ) then v_missing := v_missing || private.code('briefing_not_signed', jsonb_build_object('version', v_version)); end if;
  return v_missing;
end $$;

create function private.equipment_passed(p_shift uuid, p_person uuid) returns boolean
language plpgsql stable set search_path = '' as $$
begin
  return (
    select coalesce((
      select cardinality(e.failed_items) = 0 from public.equipment_checks e
      where e.shift_id = p_shift and e.person_id = p_person
      order by e.checked_at desc limit 1), false));
end $$;

create function private.missing_tools(p_person uuid, p_kind text) returns jsonb
language plpgsql stable set search_path = '' as $$
begin
  return (
    with in_hand as (
      select t.* from public.tools t
      join public.tool_holdings h on h.orchard_id = t.orchard_id and h.tool_no = t.no
      where h.person_id = p_person and h.returned_at is null
    )
    select case when p_kind = 'prune' and not exists (
        select 1 from in_hand where kind in ('pruner', 'lopper', 'saw', 'pole_pruner'))
      then private.code('no_tool_in_hand') else '[]'::jsonb end
    || coalesce((select jsonb_agg(private.code('tool_failed', jsonb_build_object('tool', no)) -> 0 order by no)
        from in_hand where state = 'failed'), '[]')
    || coalesce((select jsonb_agg(private.code('tool_not_clean', jsonb_build_object('tool', no)) -> 0 order by no)
        from in_hand where not clean), '[]'));
end $$;

create function private.missing_after_stop(p_orchard uuid, p_shift public.shifts, p_person uuid) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_stop public.stops;
begin
  select * into v_stop from public.stops s
  where s.shift_id = p_shift.id and s.resumed_at is null and s.block_no is null
  order by s.called_at limit 1;
  if found then return private.code('stopped', jsonb_build_object('stop', v_stop.id)); end if;

  select * into v_stop from public.stops s
  where s.shift_id = p_shift.id and s.resumed_at is not null
  order by s.called_at desc limit 1;
  -- Who arrived after work went on never heard that stop.
  if found and exists (
      select 1 from public.attendances a
      where a.shift_id = p_shift.id and a.person_id = p_person and a.left_at is null and a.arrived_at < v_stop.resumed_at)
    and not exists (
      select 1 from public.stop_answers x where x.stop_id = v_stop.id and x.person_id = p_person and x.phase = 'resumed')
  then return private.code('stop_not_answered', jsonb_build_object('stop', v_stop.id)); end if;
  return '[]';
end $$;

create function private.missing_of_person(p_orchard uuid, p_person uuid, p_kind text, p_part text) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_shift public.shifts := private.open_shift(p_orchard);
  v_person public.people;
  v_holds public.claims := private.open_claim_of(p_person);
  v_missing jsonb := '[]';
begin
  select * into v_person from public.people where orchard_id = p_orchard and id = p_person and removed_at is null;
  if not found then perform private.fail(404, 'no_such_person', 'This person is not in the orchard.'); end if;

  if v_person.role = 'visitor' then v_missing := v_missing || private.code('visitors_do_not_prune'); end if;
  if v_person.admitted_at is null then v_missing := v_missing || private.code('not_admitted'); end if;
  if v_shift.id is null then return v_missing || private.code('shift_not_open'); end if;

  v_missing := v_missing || private.missing_after_stop(p_orchard, v_shift, p_person)
    || private.weather_stops(p_orchard, now());
  if not private.is_here(v_shift.id, p_person) then
    v_missing := v_missing || private.code('not_arrived');
  elsif private.on_break(v_shift.id, p_person) then
    v_missing := v_missing || private.code('on_break');
  end if;
  v_missing := v_missing
    || private.missing_consent(p_orchard, v_person, v_shift)
    || private.missing_briefing(v_shift, p_person);
  if not private.equipment_passed(v_shift.id, p_person) then
    v_missing := v_missing || private.code('equipment_not_checked');
  end if;
  if p_part <> 'learner' then v_missing := v_missing || private.missing_tools(p_person, p_kind); end if;
  if v_holds.id is not null then
    v_missing := v_missing || private.holds_another(p_person);
  end if;
  return v_missing;
end $$;
