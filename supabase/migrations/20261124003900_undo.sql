-- Taking back the last finish or half done: for a short while, by who did it, if nobody acted on it.

create function private.cannot_undo(p_c private.command, p_visit public.visits) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_shift public.shifts := private.open_shift(p_c.orchard_id);
  v_minutes integer := private.house_rule(p_c.orchard_id, 'undo_minutes');
begin
  if p_visit.id is null or p_visit.claim_id is null or p_visit.person_id <> p_c.person_id or p_visit.result = 'also_worked'
    or p_visit.shift_id is distinct from v_shift.id
  then return private.code('nothing_to_undo'); end if;
  if private.held_by(p_c.orchard_id, p_visit.tree_no) is not null then
    return private.code('tree_held', jsonb_build_object('tree', p_visit.tree_no, 'person', private.held_by(p_c.orchard_id, p_visit.tree_no)));
  end if;
  if p_visit.at < p_c.at - make_interval(mins => v_minutes)
    or exists (select 1 from public.flags f where f.orchard_id = p_c.orchard_id and f.tree_no = p_visit.tree_no
      and f.kind = 'arborist' and f.ended_at is null)
    or exists (select 1 from public.looked_over l where l.round_id = p_visit.round_id and l.tree_no = p_visit.tree_no and l.at > p_visit.at)
  then return private.code('too_late_to_undo'); end if;
  -- Under a stop nobody takes a tree back in hand, and nobody has two.
  return private.missing_after_stop(p_c.orchard_id, v_shift, p_c.person_id)
    || case when (private.open_claim_of(p_c.person_id)).id is null then '[]'::jsonb
       else private.code('holds_another', jsonb_build_object('tree', (private.open_claim_of(p_c.person_id)).tree_no)) end
    || case when private.is_here(v_shift.id, p_c.person_id) then '[]'::jsonb else private.code('not_arrived') end;
end $$;

create function public.undo_tree(p_orchard uuid, p_command uuid, p_person uuid, p_tree integer) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_visit public.visits;
  v_refused jsonb;
begin
  v_c := private.begin_command('undo_tree', p_orchard, p_command, p_person, 'self', jsonb_build_object('tree', p_tree));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.tree_or_fail(p_orchard, p_tree);
  select * into v_visit from public.visits
  where orchard_id = p_orchard and tree_no = p_tree and undone_at is null order by at desc, id limit 1;
  v_refused := private.cannot_undo(v_c, v_visit);
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  update public.visits set undone_at = v_c.at where id = v_visit.id;
  update public.claims set ended_at = null, ended_how = null, ended_note = null where id = v_visit.claim_id;
  insert into public.claim_people (orchard_id, claim_id, person_id, part, from_at)
  values (p_orchard, v_visit.claim_id, p_person, 'holder', v_c.at);
  return private.accept(v_c, 'tree_undone', private.claim_facts(v_visit.claim_id)
    || jsonb_build_object('work', private.set_work(p_orchard, v_visit.round_id, p_tree, v_visit.before_state,
         v_visit.before_share, null, v_c.at)));
end $$;
grant execute on function public.undo_tree to authenticated;
