-- The state of the day as one answer, in the shape of lib/events/state.ts. Each function gives some of its keys.
-- All are stable, so they read one and the same moment, and head is the number of exactly this state.

create function private.orchard_state(p_reader private.reader) returns jsonb
language plpgsql stable set search_path = '' as $$
begin
  return (
    select jsonb_build_object(
      'orchardId', o.id, 'epoch', h.epoch, 'head', h.head, 'channelEpoch', h.channel_epoch,
      'sheetVersion', h.sheet_version, 'minClient', o.min_client,
      'me', jsonb_build_object('personId', p_reader.person_id, 'role', p_reader.role),
      'orchard', jsonb_build_object(
        'name', o.name, 'timeZone', o.time_zone, 'language', o.language, 'units', o.units,
        'houseRules', private.default_house_rules() || o.house_rules, 'emergencyVersion', o.emergency_version,
        'aerialVersion', o.aerial_version))
    from public.orchards o
    join public.orchard_heads h on h.orchard_id = o.id
    where o.id = p_reader.orchard_id
  );
end $$;

create function private.people_state(p_reader private.reader) returns jsonb
language plpgsql stable set search_path = '' as $$
begin
  return (
    with here as (
      select p.*, p_reader.is_lead or p.id = any (p_reader.own) as told
      from public.people p
      where p.orchard_id = p_reader.orchard_id and p.removed_at is null
    )
    select jsonb_build_object(
      'people', (
        select coalesce(jsonb_object_agg(id, jsonb_build_object('role', role, 'admitted', admitted_at is not null)), '{}')
        from here),
      'minors', (
        select coalesce(jsonb_object_agg(id, jsonb_build_object('guardianId', guardian_id)), '{}')
        from here where told and age_band = 'minor'),
      'notFound', (
        select coalesce(jsonb_object_agg(a.person_id, a.shift_id), '{}')
        from public.attendances a join here on here.id = a.person_id
        where p_reader.is_lead and a.orchard_id = p_reader.orchard_id and a.not_found and a.found_at is null),
      'skills', (
        select coalesce(jsonb_object_agg(person_id, skills), '{}')
        from (
          select s.person_id, jsonb_object_agg(s.skill, s.until) as skills
          from public.skills s join here on here.id = s.person_id
          where here.told and s.ended_at is null
          group by s.person_id) of_each),
      'consents', (
        select coalesce(jsonb_object_agg(person_id, season), '{}')
        from (
          select c.person_id, max(c.season) as season
          from public.consents c join here on here.id = c.person_id
          where here.told and c.text_version = private.house_rule(p_reader.orchard_id, 'consent_version')
            and (here.age_band = 'adult' or c.by_person_id <> c.person_id)
          group by c.person_id) of_each))
  );
end $$;

create function private.rounds_state(p_orchard uuid) returns jsonb
language plpgsql stable set search_path = '' as $$
begin
  return jsonb_build_object(
    'rounds', (
      select coalesce(jsonb_object_agg(r.id, jsonb_build_object(
        'kind', r.kind, 'season', r.season, 'species', r.species, 'from', r.from_on, 'to', r.to_on)), '{}')
      from public.rounds r
      where r.orchard_id = p_orchard and r.closed_at is null),
    'shifts', (
      select coalesce(jsonb_object_agg(s.id, jsonb_build_object(
        'roundId', s.round_id, 'date', s.on_date, 'startsAt', private.instant(s.starts_at), 'endsAt', private.instant(s.ends_at),
        'state', s.state, 'signal', s.signal,
        'briefingVersion', coalesce(b.version, 0), 'briefingChange', b.change, 'comeDownVersion', private.come_down_version(s.id),
        'off', (select coalesce(jsonb_object_agg(x.what, x.reason), '{}') from public.shift_offs x where x.shift_id = s.id))), '{}')
      from public.shifts s
      left join lateral (
        select version, change from public.briefings where shift_id = s.id order by version desc limit 1) b on true
      where s.orchard_id = p_orchard and s.state in ('scheduled', 'open')));
end $$;

create function private.crew_state(p_reader private.reader) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_shift uuid := (private.open_shift(p_reader.orchard_id)).id;
begin
  return jsonb_build_object(
    'attendance', (
      select coalesce(jsonb_object_agg(a.person_id, jsonb_build_object(
        'state', case when b.id is not null and b.to_at is null then 'break' else 'here' end,
        'since', private.instant(coalesce(b.to_at, b.from_at, a.arrived_at)), 'restedAt', private.instant(private.rested_at(a)))), '{}')
      from public.attendances a
      left join lateral (
        select id, from_at, to_at from public.breaks where attendance_id = a.id order by from_at desc, to_at is null desc limit 1) b on true
      where a.shift_id = v_shift and a.left_at is null),
    'briefed', (
      select coalesce(jsonb_object_agg(person_id, jsonb_build_object(
        -- As private.told_version.
        'givenVersion', case when given = 0 then 0 else greatest(given, own) end, 'signedVersion', signed)), '{}')
      from (
        select person_id, max(given) as given, max(signed) as signed, max(own) as own
        from (
          select g.person_id, g.version as given, 0 as signed, 0 as own from public.briefings_given g where g.shift_id = v_shift
          union all
          select s.person_id, 0, s.version, case when s.signed_by = s.person_id then s.version else 0 end
          from public.briefing_signatures s where s.shift_id = v_shift) each_one
        group by person_id) of_each
      where exists (select 1 from public.people p where p.id = person_id and p.removed_at is null)),
    'stops', (
      select coalesce(jsonb_object_agg(s.id, jsonb_build_object(
        'block', s.block_no, 'calledBy', s.called_by, 'calledAt', private.instant(s.called_at), 'resumed', s.resumed_at is not null,
        -- 'resumed' sorts before 'stopped' and overrides it.
        'answers', (
          select coalesce(jsonb_object_agg(person_id, phase), '{}')
          from (select person_id, min(phase) as phase from public.stop_answers where stop_id = s.id group by person_id) last),
        'seenBy', (
          select coalesce(jsonb_object_agg(person_id, by_person_id) filter (where how = 'seen_by_lead'), '{}')
          from (
            select distinct on (person_id) person_id, by_person_id, how
            from public.stop_answers where stop_id = s.id order by person_id, phase) last))), '{}')
      from public.stops s where s.shift_id = v_shift)
  ) || private.equipment_state(p_reader, v_shift);
end $$;

create function private.equipment_state(p_reader private.reader, p_shift uuid) returns jsonb
language plpgsql stable set search_path = '' as $$
begin
  return (
    with latest as (
      select distinct on (e.person_id) e.person_id, e.failed_items,
        p_reader.is_lead or e.person_id = any (p_reader.own) as told,
        bool_or(e.failed_items = '{}') over (partition by e.person_id) as once_passed
      from public.equipment_checks e
      join public.people p on p.id = e.person_id and p.removed_at is null
      where e.shift_id = p_shift
      order by e.person_id, e.checked_at desc
    )
    select jsonb_build_object(
      -- Other volunteers hear of passed checks only.
      'equipped', coalesce(jsonb_object_agg(person_id, failed_items = '{}' or not told) filter (where told or once_passed), '{}'),
      'failedEquipment', coalesce(jsonb_object_agg(person_id, failed_items) filter (where told and failed_items <> '{}'), '{}'))
    from latest
  );
end $$;

create function private.work_state(p_orchard uuid) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_round uuid := (private.work_round(p_orchard)).id;
begin
  return jsonb_build_object(
    'workRoundId', v_round,
    'work', jsonb_build_object(
      -- Runs of tree numbers, [first, last, first, last, …]: rows are pruned in order, so ten thousand trees are a few runs.
      'done', (
        select coalesce(jsonb_agg(edge), '[]')
        from (
          select range_agg(int4range(tree_no, tree_no, '[]')) as ranges
          from public.tree_work where round_id = v_round and state = 'done') done,
        unnest(done.ranges) as run,
        lateral (values (lower(run)), (upper(run) - 1)) as edges (edge)),
      'begun', (
        select coalesce(jsonb_agg(jsonb_build_array(tree_no, share) order by tree_no), '[]')
        from public.tree_work where round_id = v_round and state = 'begun'),
      'leftOut', (
        select coalesce(jsonb_agg(tree_no order by tree_no), '[]')
        from public.tree_work where round_id = v_round and state = 'left_out')),
    'deals', (
      select coalesce(jsonb_object_agg(tree_no, people), '{}')
      from public.deals where orchard_id = p_orchard and round_id = v_round and ended_at is null),
    'dealtBy', (
      select coalesce(jsonb_object_agg(tree_no, dealt_by), '{}')
      from public.deals where orchard_id = p_orchard and round_id = v_round and ended_at is null),
    'marked', (
      select coalesce(jsonb_object_agg(m.tree_no, jsonb_build_object('mark', m.id, 'by', m.marked_by, 'photo', (
        select p.id from public.photos p where p.orchard_id = p_orchard and p.mark_id = m.id order by p.added_at desc limit 1))), '{}')
      from public.big_cut_marks m where m.round_id = v_round and m.ended_at is null));
end $$;

create function private.trees_in_hand_state(p_orchard uuid) returns jsonb
language plpgsql stable set search_path = '' as $$
begin
  return jsonb_build_object(
    'tools', (
      select coalesce(jsonb_object_agg(t.no, jsonb_build_object(
        'label', t.label, 'kind', t.kind, 'fit', t.state = 'fit', 'clean', t.clean, 'heldBy', h.person_id, 'ownedBy', t.owned_by)), '{}')
      from public.tools t
      left join public.tool_holdings h on h.orchard_id = t.orchard_id and h.tool_no = t.no and h.returned_at is null
      where t.orchard_id = p_orchard),
    'claims', (
      select coalesce(jsonb_object_agg(c.id, jsonb_build_object(
        'tree', c.tree_no,
        'row', private.row_of(c),
        'purpose', c.purpose, 'kind', c.kind, 'ladder', c.ladder, 'buddyId', c.buddy_id, 'openedAt', private.instant(c.opened_at),
        'people', (
          select coalesce(jsonb_object_agg(cp.person_id, cp.part), '{}')
          from public.claim_people cp where cp.claim_id = c.id and cp.to_at is null))), '{}')
      from public.claims c where c.orchard_id = p_orchard and c.ended_at is null));
end $$;

create function private.flags_state(p_reader private.reader) returns jsonb
language plpgsql stable set search_path = '' as $$
begin
  return jsonb_build_object('flags', (
    select coalesce(jsonb_object_agg(f.id, jsonb_strip_nulls(jsonb_build_object(
      'tree', f.tree_no, 'kind', f.kind, 'state', f.state, 'sign', f.sign, 'severity', f.severity, 'keepOutM', f.keep_out_m,
      'reasons', f.reasons, 'limb', f.limb,
      'raisedBy', f.raised_by, 'raisedAt', private.instant(f.raised_at),
      'inside', (
        select jsonb_object_agg(k.person_id, jsonb_build_object('tree', k.tree_no, 'out', k.out_at is not null))
        from public.keep_out_people k where k.flag_id = f.id),
      -- Leads, and who took it.
      'photos', (
        select jsonb_agg(p.id order by p.added_at, p.id) from public.photos p
        where p.flag_id = f.id and (p_reader.is_lead or p.taken_by = any (p_reader.own))),
      'notes', case when p_reader.is_lead then (select nullif(count(*), 0) from public.flag_notes n where n.flag_id = f.id) end))), '{}')
    from public.flags f where f.orchard_id = p_reader.orchard_id and f.ended_at is null));
end $$;

create function public.snapshot(p_orchard uuid, p_person uuid) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
declare
  v_reader private.reader := private.begin_read(p_orchard, p_person);
begin
  return private.orchard_state(v_reader)
    || private.people_state(v_reader)
    || private.rounds_state(p_orchard)
    || private.crew_state(v_reader)
    || private.work_state(p_orchard)
    || private.trees_in_hand_state(p_orchard)
    || private.looked_over_state(v_reader)
    || private.brush_state(p_orchard)
    || private.calls_state(v_reader)
    || private.flags_state(v_reader)
    || private.weather_state(p_orchard);
end $$;
grant execute on function public.snapshot to authenticated;
