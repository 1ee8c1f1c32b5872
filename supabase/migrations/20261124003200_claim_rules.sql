-- What person and tree need together, and the whole list for a claim.

create type private.wish as (
  person_id uuid, tree_no integer, purpose text, kind text, ladder boolean,
  helpers uuid[], learners uuid[], buddy_id uuid
);
comment on type private.wish is 'A claim that somebody asks for.';

create function private.has_tool(p_people uuid[], p_kind text) returns boolean
language plpgsql stable set search_path = '' as $$
begin
  return (
    select exists (
      select 1 from public.tool_holdings h join public.tools t on t.orchard_id = h.orchard_id and t.no = h.tool_no
      where h.person_id = any (p_people) and h.returned_at is null and t.kind = p_kind and t.state = 'fit'));
end $$;

create function private.missing_for_height(p_tree public.trees, p_shift public.shifts, p_wish private.wish) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_crew uuid[] := array[p_wish.person_id] || p_wish.helpers;
  v_alone boolean := cardinality(p_wish.helpers) = 0 and p_wish.buddy_id is null;
  v_missing jsonb := '[]';
begin
  if p_wish.ladder then
    if p_tree.height_cm is null then v_missing := v_missing || private.code('height_unknown'); end if;
    if not private.has_skill(p_wish.person_id, 'ladder', private.today(p_shift.orchard_id)) then
      v_missing := v_missing || private.code('skill_missing', jsonb_build_object('skill', 'ladder'));
    end if;
    if not private.has_tool(v_crew, 'ladder') then v_missing := v_missing || private.code('no_ladder_in_hand'); end if;
  end if;
  if p_tree.asks_saw then
    if not private.has_skill(p_wish.person_id, 'hand_saw', private.today(p_shift.orchard_id)) then
      v_missing := v_missing || private.code('skill_missing', jsonb_build_object('skill', 'hand_saw'));
    end if;
    if not private.has_tool(v_crew, 'saw') then v_missing := v_missing || private.code('no_saw_in_hand'); end if;
  end if;
  if (p_wish.ladder or p_tree.asks_saw) and v_alone then
    v_missing := v_missing || private.code('two_people_needed');
  end if;
  return v_missing;
end $$;

create function private.missing_of_buddy(p_shift public.shifts, p_person uuid, p_buddy uuid) returns jsonb
language plpgsql stable set search_path = '' as $$
begin
  if p_buddy is null or p_shift.id is null then return '[]'; end if;
  if p_buddy = p_person or not private.is_here(p_shift.id, p_buddy) or private.on_break(p_shift.id, p_buddy) then
    return private.code('buddy_not_here', jsonb_build_object('person', p_buddy));
  end if;
  -- One code for both, so that nobody hears from it who is under age.
  if not exists (select 1 from public.people where id = p_buddy and age_band = 'adult' and role <> 'visitor') then
    return private.code('buddy_not_fit', jsonb_build_object('person', p_buddy));
  end if;
  return '[]';
end $$;
comment on function private.missing_of_buddy is 'A buddy is an adult of the crew who is here and not on a break.';

create function private.missing_of_others(p_orchard uuid, p_shift public.shifts, p_wish private.wish) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_other record;
  v_codes jsonb;
  v_missing jsonb := '[]';
begin
  for v_other in
    select x as id, 'helper' as part from unnest(p_wish.helpers) x
    union all select x, 'learner' from unnest(p_wish.learners) x
  loop
    v_codes := private.missing_of_person(p_orchard, v_other.id, 'other', v_other.part);
    if v_codes <> '[]' then
      v_missing := v_missing || private.code('helper_not_ready', jsonb_build_object(
        'person', v_other.id, 'codes', (select jsonb_agg(c -> 'code') from jsonb_array_elements(v_codes) c)));
    end if;
  end loop;
  return v_missing || private.missing_of_buddy(p_shift, p_wish.person_id, p_wish.buddy_id);
end $$;

create function private.missing_for_pruning(p_tree public.trees, p_shift public.shifts, p_wish private.wish) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_missing jsonb := private.missing_for_height(p_tree, p_shift, p_wish);
begin
  -- The named holder without the skill; whoever comes along as helper learns.
  if not private.has_skill(p_wish.person_id, 'prunes_alone', private.today(p_shift.orchard_id))
    and not exists (select 1 from public.people p where p.id = p_wish.person_id and private.is_lead_role(p.role))
    and not exists (select 1 from public.big_cut_marks m
      where m.round_id = p_shift.round_id and m.tree_no = p_tree.no and m.ended_at is null)
  then v_missing := v_missing || private.code('not_marked'); end if;

  if (p_wish.ladder or p_tree.asks_saw or private.asks_ladder(p_tree)) and exists (
      select 1 from public.people p
      where p.id = any (array[p_wish.person_id] || p_wish.helpers || p_wish.learners) and p.age_band = 'minor')
  then v_missing := v_missing || private.code('minor_ladder_saw'); end if;
  return v_missing;
end $$;

create function private.told_of_others(p_c private.command, p_missing jsonb, p_others uuid[]) returns jsonb
language plpgsql stable set search_path = '' as $$
begin
  if p_c.by_lead then return p_missing; end if;
  return (
    select coalesce(jsonb_agg(case when (x -> 'detail' ->> 'person')::uuid = any (p_others) and x ->> 'code' = 'helper_not_ready'
        then x #- '{detail,codes}' else x end), '[]')
      || coalesce((
        select jsonb_agg(private.code('helper_not_ready', jsonb_build_object('person', p.id)) -> 0)
        from public.people p where p.id = any (p_others) and p.age_band = 'minor' and p_missing @> private.code('minor_ladder_saw')), '[]')
    from jsonb_array_elements(p_missing) x
    where x ->> 'code' <> 'minor_ladder_saw' or private.is_minor(p_c.person_id));
end $$;
comment on function private.told_of_others is
  'What a volunteer may know of somebody they bring along: not ready, but nothing of consent, age, skills or failed checks.';

create function private.missing_for_claim(p_orchard uuid, p_wish private.wish) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_shift public.shifts := private.open_shift(p_orchard);
  v_tree public.trees;
  v_missing jsonb;
begin
  select * into v_tree from public.trees where orchard_id = p_orchard and no = p_wish.tree_no;
  if not found then perform private.fail(404, 'no_such_tree', 'There is no tree with this number.'); end if;

  v_missing := private.missing_of_person(p_orchard, p_wish.person_id, p_wish.kind, 'holder')
    || private.missing_of_others(p_orchard, v_shift, p_wish);
  if v_shift.id is null then return v_missing; end if;

  v_missing := v_missing || private.missing_of_tree(v_tree, v_shift, p_wish.person_id, p_wish.kind, p_wish.ladder);
  if p_wish.kind = 'prune' then
    v_missing := v_missing || private.missing_for_pruning(v_tree, v_shift, p_wish);
  end if;
  return v_missing;
end $$;
