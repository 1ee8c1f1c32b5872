-- How long trees took: what minutes per tree, the pace of a day and a season are learned from. Minutes are for leads.

create function private.paused_s(p_visit public.visits) returns integer
language plpgsql stable set search_path = '' as $$
declare
  v_at_it tstzmultirange := tstzmultirange(tstzrange(p_visit.at - make_interval(secs => greatest(p_visit.seconds, 0)), p_visit.at));
  v_paused tstzmultirange;
begin
  select range_agg(tstzrange(x.from_at, greatest(coalesce(x.to_at, p_visit.at), x.from_at))) into v_paused
  from (
    select b.from_at, b.to_at from public.breaks b join public.attendances a on a.id = b.attendance_id
    where a.shift_id = p_visit.shift_id and a.person_id = p_visit.person_id
    union all
    select s.called_at, s.resumed_at from public.stops s
    where s.shift_id = p_visit.shift_id and (s.block_no is null or s.block_no = (
      select t.block_no from public.trees t where t.orchard_id = p_visit.orchard_id and t.no = p_visit.tree_no))
  ) x;
  return (
    select coalesce(round(sum(extract(epoch from upper(r) - lower(r)))), 0)::integer
    from unnest(v_at_it * coalesce(v_paused, '{}')) r);
end $$;
comment on function private.paused_s is 'Of the time at the tree what was a break or a stop; a stop counts until that block goes on.';

create function private.people_at(p_claim public.claims) returns numeric
language plpgsql stable set search_path = '' as $$
declare
  v_whole numeric := extract(epoch from p_claim.ended_at - p_claim.opened_at);
begin
  if v_whole is null or v_whole <= 0 then return 1; end if;
  return (
    select greatest(1, round(coalesce(sum(extract(epoch from
      least(coalesce(cp.to_at, p_claim.ended_at), p_claim.ended_at) - greatest(cp.from_at, p_claim.opened_at))), 0) / v_whole, 2))
    from public.claim_people cp where cp.claim_id = p_claim.id and cp.part <> 'learner');
end $$;
comment on function private.people_at is 'How many worked on it, on average over its time: who helped for half of it counts half. Learners look on.';

create function public.work_times(p_orchard uuid) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
declare
  v_now timestamptz := clock_timestamp();
  v_kind text;
begin
  perform private.begin_read(p_orchard, null, 'lead');
  v_kind := (private.work_round(p_orchard)).kind;
  return jsonb_build_object(
    'at', private.instant(v_now),
    'visits', (
      select coalesce(jsonb_agg(jsonb_build_array(tree_no, shift_id, round_id, result, seconds, people, teaching)), '[]')
      from (
        select v.tree_no, v.shift_id, v.round_id, v.result,
          case when v.seconds is not null then greatest(v.seconds - private.paused_s(v), 0) end as seconds,
          case when c.id is null then 1 else private.people_at(c) end as people,
          coalesce(c.purpose = 'teaching', false) as teaching
        from public.visits v
        join public.rounds r on r.id = v.round_id and r.kind = coalesce(v_kind, r.kind)
        left join public.claims c on c.id = v.claim_id
        where v.orchard_id = p_orchard and v.undone_at is null and coalesce(c.kind = 'prune', true)
        order by v.at desc, v.id limit 800) newest),
    'shifts', (
      select coalesce(jsonb_agg(jsonb_build_object('shift', s.id, 'hereS', h.here_s, 'breakS', h.break_s) order by s.opened_at desc), '[]')
      from (
        select * from public.shifts where orchard_id = p_orchard and state in ('open', 'closed') order by opened_at desc limit 20) s
      cross join lateral (
        select coalesce(sum(here_s), 0) as here_s, coalesce(sum(break_s), 0) as break_s
        from private.hours_in((select x from public.shifts x where x.id = s.id), v_now) hours
        where exists (
          select 1 from public.claims c join public.claim_people cp on cp.claim_id = c.id and cp.part <> 'learner'
          where c.shift_id = s.id and c.kind = 'prune' and cp.person_id = hours.person_id)) h));
end $$;
comment on function public.work_times is
  'For leads, of rounds of the kind that is worked in now: summer''s cuts take other minutes. visits: [tree, shift, round, result, seconds or null, people, teaching] of the newest 800, breaks and stops taken out. shifts: hours of those who pruned in it. Nobody is named.';
grant execute on function public.work_times to authenticated;
