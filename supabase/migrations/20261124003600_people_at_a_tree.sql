-- Coming to a claimed tree as helper or learner, going, and handing the claim over.

create function private.claim_or_fail(p_orchard uuid, p_claim uuid) returns public.claims
language plpgsql stable set search_path = '' as $$
declare
  v_claim public.claims;
begin
  select * into v_claim from public.claims where orchard_id = p_orchard and id = p_claim;
  if not found then perform private.fail(404, 'no_such_claim', 'There is no such claim.'); end if;
  return v_claim;
end $$;

create function private.part_in(p_claim uuid, p_person uuid) returns text
language plpgsql stable set search_path = '' as $$
begin
  return (
    select part from public.claim_people where claim_id = p_claim and person_id = p_person and to_at is null);
end $$;

create function private.is_minor(p_person uuid) returns boolean
language plpgsql stable set search_path = '' as $$
begin
  return (
    select exists (select 1 from public.people where id = p_person and age_band = 'minor'));
end $$;

create function private.closed_around_claim(p_claim public.claims, p_tree public.trees, p_shift public.shifts) returns jsonb
language plpgsql stable set search_path = '' as $$
begin
  if p_claim.tree_no is null then return private.stopped_in(p_claim.block_no, p_shift); end if;
  return private.closed_around(p_tree, p_shift)
    || case when p_claim.kind = 'prune' then private.put_off(p_tree, p_shift, p_claim.ladder, now()) else '[]' end;
end $$;
comment on function private.closed_around_claim is 'The same for a row: its block is stopped. A hazard closes the trees near it, and the wood of the others can still be hauled.';

create function public.join_tree(p_orchard uuid, p_command uuid, p_person uuid, p_claim uuid, p_part text default 'helper') returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_claim public.claims;
  v_tree public.trees;
  v_missing jsonb;
begin
  v_c := private.begin_command('join_tree', p_orchard, p_command, p_person, 'self',
    jsonb_build_object('claim', p_claim, 'part', p_part));
  if v_c.answer is not null then return v_c.answer; end if;
  if p_part is null or p_part not in ('helper', 'learner') then
    perform private.fail(400, 'malformed', 'One joins as helper or learner.');
  end if;
  v_claim := private.claim_or_fail(p_orchard, p_claim);
  if v_claim.ended_at is not null then return private.refuse(v_c, private.code('claim_over')); end if;

  v_missing := private.missing_of_person(p_orchard, p_person, 'other', p_part);
  select * into v_tree from public.trees where orchard_id = p_orchard and no = v_claim.tree_no;
  v_missing := v_missing || private.closed_around_claim(v_claim, v_tree, private.open_shift(p_orchard));
  if private.is_minor(p_person) and (v_claim.ladder or v_tree.asks_saw or private.asks_ladder(v_tree)) then
    v_missing := v_missing || private.code('minor_ladder_saw');
  end if;
  if v_missing <> '[]' then return private.refuse(v_c, v_missing); end if;

  insert into public.claim_people (orchard_id, claim_id, person_id, part, from_at)
  values (p_orchard, p_claim, p_person, p_part, v_c.at);
  return private.accept(v_c, 'tree_joined', jsonb_build_object('claim', p_claim, 'person', p_person, 'part', p_part));
end $$;
grant execute on function public.join_tree to authenticated;

create function public.leave_tree(p_orchard uuid, p_command uuid, p_person uuid, p_claim uuid) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_claim public.claims;
  v_part text;
begin
  v_c := private.begin_command('leave_tree', p_orchard, p_command, p_person, 'self', jsonb_build_object('claim', p_claim));
  if v_c.answer is not null then return v_c.answer; end if;
  v_claim := private.claim_or_fail(p_orchard, p_claim);
  v_part := private.part_in(p_claim, p_person);
  if v_part is null then return private.refuse(v_c, private.code('not_in_claim')); end if;
  -- A tree is never left without a holder by accident: it is finished, left half done or handed over.
  if v_part = 'holder' then return private.refuse(v_c, private.code('holder_hands_over')); end if;

  update public.claim_people set to_at = v_c.at where claim_id = p_claim and person_id = p_person and to_at is null;
  return private.accept(v_c, 'tree_left', jsonb_build_object(
    'claimsLeft', jsonb_build_array(jsonb_build_array(p_claim, p_person)),
    'dirty', private.soil_tools(p_orchard, v_claim.tree_no, array[p_person])));
end $$;
grant execute on function public.leave_tree to authenticated;

create function private.missing_to_take_over(p_orchard uuid, p_claim public.claims, p_to uuid) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_tree public.trees;
  v_wish private.wish;
  v_missing jsonb;
begin
  select * into v_tree from public.trees where orchard_id = p_orchard and no = p_claim.tree_no;
  v_wish := (p_to, p_claim.tree_no, p_claim.purpose, p_claim.kind, p_claim.ladder,
    (select coalesce(array_agg(person_id), '{}') from public.claim_people
     where claim_id = p_claim.id and to_at is null and part = 'helper' and person_id <> p_to), '{}'::uuid[], p_claim.buddy_id);
  -- Who went home, or takes the tree over, is no company any more.
  if private.missing_of_buddy(private.open_shift(p_orchard), p_to, p_claim.buddy_id) <> '[]' then v_wish.buddy_id := null; end if;
  v_missing := private.missing_of_person(p_orchard, p_to, p_claim.kind, 'holder')
    || private.closed_around_claim(p_claim, v_tree, private.open_shift(p_orchard));
  if v_tree.no is not null and p_claim.kind = 'prune' then
    v_missing := v_missing || private.missing_for_pruning(v_tree, private.open_shift(p_orchard), v_wish);
  end if;
  -- Who helps at this tree already does not hold another one.
  if private.part_in(p_claim.id, p_to) is not null then
    select coalesce(jsonb_agg(x), '[]') into v_missing from jsonb_array_elements(v_missing) x where x ->> 'code' <> 'holds_another';
  end if;
  return v_missing;
end $$;

-- As with helpers: what everybody sees is told in full, the rest as "not ready".
create function private.told_of_taker(p_missing jsonb, p_to uuid) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_private text[] := array['consent_missing', 'adult_missing', 'equipment_not_checked', 'skill_missing', 'not_marked', 'minor_ladder_saw'];
begin
  return (
    select coalesce(jsonb_agg(x) filter (where not x ->> 'code' = any (v_private)), '[]')
      || case when bool_or(x ->> 'code' = any (v_private))
         then private.code('helper_not_ready', jsonb_build_object('person', p_to)) else '[]'::jsonb end
    from jsonb_array_elements(p_missing) x);
end $$;

create function public.hand_over(
  p_orchard uuid, p_command uuid, p_person uuid, p_claim uuid, p_to uuid, p_how_reached text default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_claim public.claims;
  v_missing jsonb;
begin
  v_c := private.begin_command('hand_over', p_orchard, p_command, p_person, 'self',
    jsonb_build_object('claim', p_claim, 'to', p_to, 'how_reached', p_how_reached));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_how_reached is null or private.is_line(p_how_reached, 300), 'p_how_reached: up to 300 characters.');
  -- Whoever still stands in the tree must know that it is not theirs any more.
  perform private.need(p_how_reached is not null or v_c.by_person_id = p_person, 'Say how the holder was reached.');
  if p_to is null or p_to = p_person then perform private.fail(400, 'malformed', 'Hand over to somebody else.'); end if;
  v_claim := private.claim_or_fail(p_orchard, p_claim);
  if v_claim.ended_at is not null then return private.refuse(v_c, private.code('claim_over')); end if;
  if private.part_in(p_claim, p_person) is distinct from 'holder' then return private.refuse(v_c, private.code('not_holder')); end if;

  v_missing := private.missing_to_take_over(p_orchard, v_claim, p_to);
  if not v_c.by_lead then v_missing := private.told_of_taker(v_missing, p_to); end if;
  if v_missing <> '[]' then return private.refuse(v_c, v_missing); end if;

  update public.claim_people set to_at = v_c.at, how_reached = case when person_id = p_person then p_how_reached end
  where claim_id = p_claim and to_at is null and person_id in (p_person, p_to);
  insert into public.claim_people (orchard_id, claim_id, person_id, part, from_at) values (p_orchard, p_claim, p_to, 'holder', v_c.at);
  return private.accept(v_c, 'tree_handed_over', jsonb_build_object('claim', p_claim, 'to', p_to, 'from', p_person,
    'dirty', private.soil_tools(p_orchard, v_claim.tree_no, array[p_person])));
end $$;
grant execute on function public.hand_over to authenticated;
