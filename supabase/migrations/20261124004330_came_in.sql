-- What only leads look at: what came in otherwise than by a claim, the unsent work of who was put out, why tools failed.

create function private.bring_in_handed(p_c private.command, p_hand_in public.hand_ins, p_shift public.shifts, p_item jsonb) returns jsonb
language plpgsql volatile set search_path = '' as $$
declare
  v_tree public.trees;
  v_share integer := case when p_item #>> '{args,share}' ~ '^[1-9][0-9]?$' then (p_item #>> '{args,share}')::integer end;
  v_before public.tree_work;
  v_result text := case p_item ->> 'name' when 'finish_tree' then 'done' when 'release_tree' then 'begun' end;
begin
  if p_item #>> '{args,tree}' !~ '^[1-9][0-9]{0,8}$' or v_result is null or (v_result = 'begun' and v_share is null) then return null; end if;
  select * into v_tree from public.trees where orchard_id = p_c.orchard_id and no = (p_item #>> '{args,tree}')::integer;
  if not found then return null; end if;
  if not private.is_free_in(v_tree, p_shift.round_id) then v_result := 'also_worked'; end if;

  select * into v_before from public.tree_work where round_id = p_shift.round_id and tree_no = v_tree.no;
  insert into public.visits (id, orchard_id, round_id, shift_id, tree_no, person_id, result, share, at, before_state, before_share, came_in_late)
  values (gen_random_uuid(), p_c.orchard_id, p_shift.round_id, p_shift.id, v_tree.no, p_hand_in.person_id, v_result, v_share,
    p_hand_in.handed_in_at, coalesce(v_before.state, 'unpruned'), v_before.share, true);
  if v_result = 'also_worked' then return null; end if;
  return private.set_work(p_c.orchard_id, p_shift.round_id, v_tree.no, v_result,
    case when v_result = 'begun' then v_share end, null, p_c.at) -> 0;
end $$;
comment on function private.bring_in_handed is
  'One tree of what was handed in. It comes from a phone that is out, so everything in it is looked at. Gives its part of work, or null.';

create function public.accept_hand_in(p_orchard uuid, p_command uuid, p_person uuid, p_hand_in uuid) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_hand_in public.hand_ins;
  v_shift public.shifts;
  v_work jsonb;
begin
  v_c := private.begin_command('accept_hand_in', p_orchard, p_command, p_person, 'lead', jsonb_build_object('hand_in', p_hand_in));
  if v_c.answer is not null then return v_c.answer; end if;
  select * into v_hand_in from public.hand_ins where orchard_id = p_orchard and id = p_hand_in;
  if not found then perform private.fail(404, 'no_such_hand_in', 'Nothing was handed in under this id.'); end if;
  if v_hand_in.accepted_at is not null then return private.refuse(v_c, private.code('accepted_before')); end if;

  update public.hand_ins set accepted_by = v_c.by_person_id, accepted_at = v_c.at where id = p_hand_in;
  select s.* into v_shift from public.attendances a join public.shifts s on s.id = a.shift_id
  where a.orchard_id = p_orchard and a.person_id = v_hand_in.person_id
  order by a.arrived_at desc limit 1;
  if found then
    select jsonb_agg(brought) filter (where brought is not null) into v_work
    from (
      select private.bring_in_handed(v_c, v_hand_in, v_shift, item) as brought
      from jsonb_array_elements(v_hand_in.work) with ordinality as handed (item, place)
      order by place offset 0) each_one;
  end if;
  return private.accept(v_c, 'hand_in_accepted',
    private.filled(jsonb_build_object(
      'work', coalesce(v_work, '[]'),
      'dealsEnded', private.end_deals(p_orchard, (
        select array_agg((x ->> 0)::integer) from jsonb_array_elements(v_work) x where x ->> 1 = 'done'), v_c.at))),
    jsonb_build_object('handIn', p_hand_in));
end $$;
comment on function public.accept_hand_in is
  'The trees in it count: done or begun where they are free, else "also worked on". Flags and the rest a lead reads, and does what they ask for.';
grant execute on function public.accept_hand_in to authenticated;

create function private.handed_things(p_work jsonb) returns jsonb
language sql immutable set search_path = '' as $$
  select coalesce(jsonb_agg(jsonb_build_object('name', left(item ->> 'name', 40),
    'tree', case when item #>> '{args,tree}' ~ '^[1-9][0-9]{0,8}$' then (item #>> '{args,tree}')::integer end) order by place), '[]')
  from jsonb_array_elements(p_work) with ordinality as handed (item, place)
  where jsonb_typeof(item) = 'object' and item ->> 'name' is not null
$$;

create function public.came_in(p_orchard uuid) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
begin
  perform private.begin_read(p_orchard, null, 'lead');
  return jsonb_build_object(
    'visits', (
      select coalesce(jsonb_agg(jsonb_build_object('id', id, 'tree', tree_no, 'person', person_id, 'result', result,
        'at', private.instant(at), 'late', came_in_late, 'withoutClaim', without_claim, 'lacked', lacked) order by at desc), '[]')
      from (
        select * from public.visits
        where orchard_id = p_orchard and undone_at is null and at > now() - interval '14 days'
          and (came_in_late or without_claim or result = 'also_worked')
        order by at desc limit 200) newest),
    'handIns', (
      select coalesce(jsonb_agg(jsonb_build_object('id', h.id, 'person', h.person_id, 'name', p.name,
        'at', private.instant(h.handed_in_at), 'things', private.handed_things(h.work)) order by h.handed_in_at desc), '[]')
      from public.hand_ins h join public.people p on p.id = h.person_id
      where h.orchard_id = p_orchard and h.accepted_at is null));
end $$;
comment on function public.came_in is 'visits: work that came late, without a claim, or on a tree that was not theirs any more; of the last 14 days.';
grant execute on function public.came_in to authenticated;

create function public.tool_faults(p_orchard uuid) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
begin
  perform private.begin_read(p_orchard, null, 'lead');
  return (
    select coalesce(jsonb_object_agg(t.no, jsonb_build_object('failed', last.failed_items, 'note', last.note,
      'by', last.checked_by, 'at', private.instant(last.checked_at))), '{}')
    from public.tools t
    join lateral (
      select * from public.tool_checks c where c.orchard_id = p_orchard and c.tool_no = t.no
      order by c.checked_at desc limit 1) last on true
    where t.orchard_id = p_orchard and t.state = 'failed');
end $$;
comment on function public.tool_faults is 'Why each tool that is out of use is so: what was ticked and written at its last check.';
grant execute on function public.tool_faults to authenticated;
