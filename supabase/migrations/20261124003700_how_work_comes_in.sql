-- Finished and half-done work is never thrown away. What becomes of it depends on what happened meanwhile.

create type private.coming_in as (
  how text, claim_id uuid, shift_id uuid, round_id uuid, begun_at timestamptz, people uuid[], lacked text[]
);
comment on type private.coming_in is
  'how: holder (still holds it), dealt (kept for this person and begun without signal), paper (written down, and nobody else has it), late (the shift closed meanwhile), also_worked (somebody else holds or finished it, or it was closed since).';

create function private.tree_or_fail(p_orchard uuid, p_tree integer) returns public.trees
language plpgsql stable set search_path = '' as $$
declare
  v_tree public.trees;
begin
  select * into v_tree from public.trees where orchard_id = p_orchard and no = p_tree;
  if not found then perform private.fail(404, 'no_such_tree', 'There is no tree with this number.'); end if;
  return v_tree;
end $$;

create function private.is_free_in(p_tree public.trees, p_round uuid) returns boolean
language plpgsql stable set search_path = '' as $$
begin
  return (
    select private.held_by(p_tree.orchard_id, p_tree.no) is null
      and not exists (select 1 from public.tree_work w
        where w.round_id = p_round and w.tree_no = p_tree.no and w.state in ('done', 'left_out'))
      and not exists (select 1 from public.flags f where f.orchard_id = p_tree.orchard_id and f.tree_no = p_tree.no
        and f.kind = 'arborist' and f.ended_at is null));
end $$;

create function private.comes_in_by_claim(p_c private.command, p_tree public.trees, p_claim uuid) returns private.coming_in
language plpgsql stable set search_path = '' as $$
declare
  v_claim public.claims := private.claim_or_fail(p_c.orchard_id, p_claim);
  v_in public.claim_people;
  v_how text := 'also_worked';
begin
  if v_claim.tree_no is distinct from p_tree.no then
    perform private.fail(400, 'malformed', 'This claim is of another tree.');
  end if;
  select * into v_in from public.claim_people
  where claim_id = p_claim and person_id = p_c.person_id and part <> 'learner'
  order by to_at desc nulls first limit 1;

  if v_in.id is not null and v_claim.ended_at is null and v_in.to_at is null then
    v_how := 'holder';
  elsif v_in.id is not null and v_claim.ended_how = 'shift_closed' and private.is_free_in(p_tree, v_claim.round_id) then
    v_how := 'late';
  end if;
  return (v_how, p_claim, v_claim.shift_id, v_claim.round_id, v_claim.opened_at,
    case when v_in.id is null then array[p_c.person_id] else (
      select array_agg(person_id) from public.claim_people
      where claim_id = p_claim and to_at is not distinct from v_in.to_at) end, null::text[]);
end $$;

create function private.lacked_without_claim(p_c private.command, p_tree public.trees, p_shift public.shifts) returns text[]
language plpgsql stable set search_path = '' as $$
declare
  v_wish private.wish := (p_c.person_id, p_tree.no, 'work', 'prune', false, '{}', '{}', null);
begin
  -- What was missing then nobody knows any more once the shift is closed.
  if p_shift.state <> 'open' then return '{}'; end if;
  return (
    select coalesce(array_agg(x ->> 'code' order by x ->> 'code'), '{}')
    from jsonb_array_elements(private.missing_of_person(p_c.orchard_id, p_c.person_id, 'prune', 'holder')
      || private.missing_for_pruning(p_tree, p_shift, v_wish)) x
    -- That it is dark when it comes in says nothing of when it was done.
    where x ->> 'code' not in ('holds_another', 'dark'));
end $$;
comment on function private.lacked_without_claim is
  'What a claim would have been refused for, as it is now that the work comes in. The work is kept; a lead is told.';

create function private.comes_in_by_deal(p_c private.command, p_tree public.trees, p_begun_at timestamptz) returns private.coming_in
language plpgsql stable set search_path = '' as $$
declare
  v_begun timestamptz := private.when_said(p_begun_at, p_c.at - interval '14 days', p_c.at);
  v_shift public.shifts;
  v_how text := 'also_worked';
begin
  select s.* into v_shift from public.shifts s
  left join public.attendances a on a.shift_id = s.id and a.person_id = p_c.person_id
  where s.orchard_id = p_c.orchard_id and s.state in ('open', 'closed')
  order by (a.arrived_at <= v_begun and coalesce(a.left_at, v_begun) >= v_begun) desc nulls last,
    (a.id is not null) desc, s.opened_at desc
  limit 1;
  if v_shift.id is null then return null; end if;

  if private.is_free_in(p_tree, v_shift.round_id)
    and exists (select 1 from public.attendances a where a.shift_id = v_shift.id and a.person_id = p_c.person_id)
    and exists (select 1 from public.deals d
      where d.orchard_id = p_c.orchard_id and d.tree_no = p_tree.no and p_c.person_id = any (d.people)
        and d.dealt_at <= p_c.at and coalesce(d.ended_at, p_c.at) >= v_begun)
  then v_how := case when v_shift.state = 'open' then 'dealt' else 'late' end; end if;
  return (v_how, null::uuid, v_shift.id, v_shift.round_id, greatest(v_begun, v_shift.opened_at), array[p_c.person_id],
    private.lacked_without_claim(p_c, p_tree, v_shift));
end $$;

create function private.is_pruning(p_claim uuid) returns boolean
language plpgsql stable set search_path = '' as $$
begin
  return (
    select coalesce((select kind = 'prune' from public.claims where id = p_claim), true));
end $$;
comment on function private.is_pruning is 'Brush and other work leave a tree as pruned as it was. What was begun without a claim is pruning.';

create function private.soil_tools(p_orchard uuid, p_tree integer, p_people uuid[]) returns jsonb
language plpgsql volatile set search_path = '' as $$
declare
  v_list jsonb;
begin
  with soiled as (
    update public.tools t set clean = false
    from public.tool_holdings h
    where h.orchard_id = t.orchard_id and h.tool_no = t.no and h.returned_at is null
      and t.orchard_id = p_orchard and h.person_id = any (p_people) and t.clean
      and private.has_disease_flag(p_orchard, p_tree)
    returning t.no
  )
  select jsonb_agg(no order by no) into v_list from soiled;
  return v_list;
end $$;
comment on function private.soil_tools is
  'After work on a tree flagged for disease its tools are not clean until someone says so. The list for dirty, or null.';

create function private.set_work(
  p_orchard uuid, p_round uuid, p_tree integer, p_state text, p_share integer, p_note text, p_at timestamptz
) returns jsonb
language plpgsql volatile set search_path = '' as $$
begin
  delete from public.brush_hauled where round_id = p_round and tree_no = p_tree;
  if p_state = 'unpruned' then
    delete from public.tree_work where round_id = p_round and tree_no = p_tree;
  else
    insert into public.tree_work (orchard_id, round_id, tree_no, state, share, note, changed_at)
    values (p_orchard, p_round, p_tree, p_state, p_share, p_note, p_at)
    on conflict (round_id, tree_no) do update
      set state = excluded.state, share = excluded.share, note = excluded.note, changed_at = excluded.changed_at;
  end if;
  -- Phones only carry the round that is worked in now.
  if p_round is distinct from (private.work_round(p_orchard)).id then return null; end if;
  return jsonb_build_array(jsonb_build_array(p_tree, p_state, p_share));
end $$;
comment on function private.set_work is 'Sets a tree''s work in a round; the list for work, null when it is not the round that phones carry.';
