-- Taking back the last finish or half done: for a short while, by who did it, if nobody acted on it.

-- Who was at the tree when its claim ended, in their parts; helpers and learners only while they are free.
create function private.back_at_tree(p_claim public.claims, p_shift uuid) returns table (person_id uuid, part text)
language plpgsql stable set search_path = '' as $$
begin
  return query
    select cp.person_id, cp.part from public.claim_people cp
    where cp.claim_id = p_claim.id and cp.to_at = p_claim.ended_at
      and (cp.part = 'holder' or private.not_free(cp.person_id, p_shift) = '[]');
end $$;

create function private.not_free(p_person uuid, p_shift uuid) returns jsonb
language plpgsql stable set search_path = '' as $$
begin
  return private.holds_another(p_person)
    || case when not private.is_here(p_shift, p_person) then private.code('not_arrived')
       when private.on_break(p_shift, p_person) then private.code('on_break') else '[]'::jsonb end;
end $$;

create function private.cannot_undo(p_c private.command, p_visit public.visits) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_shift public.shifts := private.open_shift(p_c.orchard_id);
  v_minutes integer := private.house_rule(p_c.orchard_id, 'undo_minutes');
  v_claim public.claims;
begin
  if p_visit.id is null or p_visit.claim_id is null or p_visit.person_id <> p_c.person_id or p_visit.result = 'also_worked'
    or p_visit.shift_id is distinct from v_shift.id
  then return private.code('nothing_to_undo'); end if;
  if private.held_by(p_c.orchard_id, p_visit.tree_no) is not null then
    return private.code('tree_held', jsonb_build_object('tree', p_visit.tree_no, 'person', private.held_by(p_c.orchard_id, p_visit.tree_no)));
  end if;
  select * into v_claim from public.claims where id = p_visit.claim_id;
  -- Since we heard of it: what the device's clock said decides nothing.
  if v_claim.ended_at < p_c.at - make_interval(mins => v_minutes)
    or exists (select 1 from public.flags f where f.orchard_id = p_c.orchard_id and f.tree_no = p_visit.tree_no
      and f.kind = 'arborist' and f.ended_at is null)
    or private.dealt_to(p_c.orchard_id, p_visit.tree_no) is not null
    or exists (select 1 from public.looked_over l where l.round_id = p_visit.round_id and l.tree_no = p_visit.tree_no and l.at > p_visit.at)
  then return private.code('too_late_to_undo'); end if;
  return private.cannot_go_back(p_c, v_claim, v_shift);
end $$;

-- Under a stop nobody takes a tree back in hand, nobody has two, and nobody is left alone with a ladder.
create function private.cannot_go_back(p_c private.command, p_claim public.claims, p_shift public.shifts) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_tree public.trees := private.tree_or_fail(p_c.orchard_id, p_claim.tree_no);
  v_holder uuid;
  v_refused jsonb := private.missing_after_stop(p_c.orchard_id, p_shift, p_c.person_id)
    || private.weather_stops(p_c.orchard_id, p_c.at)
    || private.closed_around(v_tree, p_shift) || private.not_free(p_c.person_id, p_shift.id);
begin
  select person_id into v_holder from private.back_at_tree(p_claim, p_shift.id) where part = 'holder';
  if v_holder <> p_c.person_id and private.not_free(v_holder, p_shift.id) <> '[]' then
    v_refused := v_refused || private.code('helper_not_ready', jsonb_build_object('person', v_holder));
  end if;
  if p_claim.kind = 'prune' and (p_claim.ladder or v_tree.asks_saw)
    and (p_claim.buddy_id is null or private.missing_of_buddy(p_shift, v_holder, p_claim.buddy_id) <> '[]')
    and not exists (select 1 from private.back_at_tree(p_claim, p_shift.id) where part = 'helper')
  then v_refused := v_refused || private.code('two_people_needed'); end if;
  return v_refused;
end $$;

create function public.undo_tree(p_orchard uuid, p_command uuid, p_person uuid, p_tree integer) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_visit public.visits;
  v_claim public.claims;
  v_refused jsonb;
begin
  v_c := private.begin_command('undo_tree', p_orchard, p_command, p_person, 'self', jsonb_build_object('tree', p_tree));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.tree_or_fail(p_orchard, p_tree);
  select * into v_visit from public.visits
  where orchard_id = p_orchard and tree_no = p_tree and undone_at is null order by at desc, id limit 1;
  v_refused := private.cannot_undo(v_c, v_visit);
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  select * into v_claim from public.claims where id = v_visit.claim_id;
  insert into public.claim_people (orchard_id, claim_id, person_id, part, from_at)
  select p_orchard, v_claim.id, b.person_id, b.part, v_c.at from private.back_at_tree(v_claim, v_visit.shift_id) b;
  update public.visits set undone_at = v_c.at where id = v_visit.id;
  update public.claims set ended_at = null, ended_how = null, ended_note = null where id = v_claim.id;
  return private.accept(v_c, 'tree_undone', private.claim_facts(v_claim.id)
    || jsonb_build_object('work', private.set_work(p_orchard, v_visit.round_id, p_tree, v_visit.before_state,
         v_visit.before_share, null, v_c.at)));
end $$;
grant execute on function public.undo_tree to authenticated;
