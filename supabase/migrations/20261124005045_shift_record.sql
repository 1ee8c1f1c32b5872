-- The day in numbers: hours, trees and answers of one shift, counted from what is kept. No typed text about anybody.

create function private.hours_in(p_shift public.shifts, p_now timestamptz)
returns table (person_id uuid, stays jsonb, here_s integer, break_s integer)
language plpgsql stable set search_path = '' as $$
begin
  return query
    with stays as (
      select a.id, a.person_id, a.arrived_at, coalesce(a.left_at, p_shift.closed_at, p_now) as until, a.left_at
      from public.attendances a where a.shift_id = p_shift.id
    ), rests as (
      -- A break that nobody ended lasts until its stay does.
      select s.id, sum(extract(epoch from least(coalesce(b.to_at, s.until), s.until) - least(b.from_at, s.until))) as seconds
      from stays s join public.breaks b on b.attendance_id = s.id group by s.id
    )
    select s.person_id,
      jsonb_agg(jsonb_build_array(private.instant(s.arrived_at), private.instant(s.left_at)) order by s.arrived_at),
      round(sum(extract(epoch from s.until - s.arrived_at)))::integer,
      round(coalesce(sum(r.seconds), 0))::integer
    from stays s left join rests r on r.id = s.id
    group by s.person_id;
end $$;
comment on function private.hours_in is 'stays: [[arrived, left or null]]. here_s counts breaks too; break_s is how much of it they were.';

create function private.trees_in(p_shift public.shifts)
returns table (tree_no integer, block_no integer, person_id uuid, result text)
language plpgsql stable set search_path = '' as $$
begin
  return query
    select distinct on (v.tree_no) v.tree_no, t.block_no, v.person_id, v.result
    from public.visits v
    join public.trees t on t.orchard_id = v.orchard_id and t.no = v.tree_no
    where v.shift_id = p_shift.id and v.undone_at is null and v.result in ('done', 'begun') and private.is_pruning(v.claim_id)
    order by v.tree_no, (v.result = 'done') desc, v.at desc, v.id;
end $$;
comment on function private.trees_in is
  'Each tree that was pruned in this shift once, by whoever finished it last, or else left it half done last: so that people and blocks add up to the same.';

create function private.record_of_people(p_shift public.shifts, p_now timestamptz) returns jsonb
language plpgsql stable set search_path = '' as $$
begin
  return (
    with helped as (
      select cp.person_id, count(*) as trees
      from public.claims c join public.claim_people cp on cp.claim_id = c.id and cp.part = 'helper' and cp.to_at = c.ended_at
      where c.shift_id = p_shift.id and c.ended_how = 'finished' and c.kind = 'prune' and c.tree_no is not null
      group by cp.person_id
    ), visited as (
      select v.person_id, count(*) filter (where v.result = 'also_worked') as also, count(*) filter (where v.from_paper) as paper
      from public.visits v where v.shift_id = p_shift.id and v.undone_at is null group by v.person_id
    ), pruned as (
      select t.person_id, count(*) filter (where t.result = 'done') as done, count(*) filter (where t.result = 'begun') as begun
      from private.trees_in(p_shift) t group by t.person_id
    ), everybody as (
      select a.person_id from public.attendances a where a.shift_id = p_shift.id
      union select person_id from visited
      union select person_id from helped
    )
    select coalesce(jsonb_agg(jsonb_build_object(
      'person', e.person_id, 'stays', coalesce(h.stays, '[]'), 'hereS', coalesce(h.here_s, 0), 'breakS', coalesce(h.break_s, 0),
      'done', coalesce(p.done, 0), 'begun', coalesce(p.begun, 0), 'helped', coalesce(x.trees, 0),
      'alsoWorked', coalesce(v.also, 0), 'fromPaper', coalesce(v.paper, 0)) order by e.person_id), '[]')
    from everybody e
    left join private.hours_in(p_shift, p_now) h using (person_id)
    left join pruned p using (person_id)
    left join helped x using (person_id)
    left join visited v using (person_id));
end $$;

create function private.record_of_stops(p_shift uuid) returns jsonb
language plpgsql stable set search_path = '' as $$
begin
  return (
    select coalesce(jsonb_agg(jsonb_build_object(
      'stop', s.id, 'block', s.block_no, 'calledBy', s.called_by, 'calledAt', private.instant(s.called_at),
      'resumedAt', private.instant(s.resumed_at),
      'answers', (
        select coalesce(jsonb_agg(jsonb_build_object('person', a.person_id, 'answer', a.phase, 'at', private.instant(a.at),
          'byLead', a.how = 'seen_by_lead') order by a.at, a.person_id, a.phase), '[]')
        from public.stop_answers a where a.stop_id = s.id)) order by s.called_at), '[]')
    from public.stops s where s.shift_id = p_shift);
end $$;

create function public.shift_record(p_orchard uuid, p_shift uuid default null) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
declare
  v_shift public.shifts;
begin
  perform private.begin_read(p_orchard, null, 'lead');
  select * into v_shift from public.shifts s
  where s.orchard_id = p_orchard and case when p_shift is null then s.state <> 'scheduled' else s.id = p_shift end
  order by s.opened_at desc nulls last limit 1;
  if v_shift.id is null then
    if p_shift is null then return null; end if;
    perform private.fail(404, 'no_such_shift', 'There is no such shift.');
  end if;

  return jsonb_build_object(
    'shift', v_shift.id, 'date', v_shift.on_date, 'state', v_shift.state,
    'openedAt', private.instant(v_shift.opened_at), 'closedAt', private.instant(v_shift.closed_at),
    'people', private.record_of_people(v_shift, clock_timestamp()),
    'blocks', (
      select coalesce(jsonb_agg(jsonb_build_object('block', block_no, 'done', done, 'begun', begun) order by block_no), '[]')
      from (
        select block_no, count(*) filter (where result = 'done') as done, count(*) filter (where result = 'begun') as begun
        from private.trees_in(v_shift) group by block_no) by_block),
    'stops', private.record_of_stops(v_shift.id));
end $$;
comment on function public.shift_record is 'For leads. p_shift null: the one that was opened last, also when it is closed.';
grant execute on function public.shift_record to authenticated;
