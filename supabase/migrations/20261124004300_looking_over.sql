-- Finished work looked over by a lead: passed, or reopened with a reason. Never one's own tree.

create function private.worked_on(p_orchard uuid, p_round uuid, p_tree integer) returns uuid[]
language plpgsql stable set search_path = '' as $$
begin
  return (
    select coalesce(array_agg(distinct person_id order by person_id), '{}')
    from (
      select v.person_id from public.visits v
      where v.orchard_id = p_orchard and v.round_id = p_round and v.tree_no = p_tree and v.undone_at is null
        and private.is_pruning(v.claim_id)
      union all
      select cp.person_id from public.claims c
      join public.claim_people cp on cp.claim_id = c.id
      where c.orchard_id = p_orchard and c.round_id = p_round and c.tree_no = p_tree and c.kind = 'prune'
        -- A tree given back as it was is nobody's work.
        and (c.ended_how is distinct from 'released'
          or exists (select 1 from public.visits v where v.claim_id = c.id and v.undone_at is null))) at_it);
end $$;
comment on function private.worked_on is 'Everybody who pruned at this tree in this round: holders, helpers and learners, also those who went on.';

create function private.dealt_back(p_c private.command, p_round public.rounds, p_tree public.trees) returns uuid[]
language plpgsql volatile set search_path = '' as $$
declare
  v_shift public.shifts := private.open_shift(p_c.orchard_id);
  v_claim uuid;
  v_pruner uuid;
begin
  select v.claim_id, v.person_id into v_claim, v_pruner from public.visits v
  where v.orchard_id = p_c.orchard_id and v.round_id = p_round.id and v.tree_no = p_tree.no and v.result = 'done'
    and v.undone_at is null and private.is_pruning(v.claim_id)
  order by v.at desc limit 1;
  -- Whoever tapped may have been the helper.
  v_pruner := coalesce((
    select cp.person_id from public.claim_people cp
    where cp.claim_id = v_claim and cp.part = 'holder' order by cp.to_at desc nulls first limit 1), v_pruner);

  if v_pruner is null or not private.is_here(v_shift.id, v_pruner) or private.held_by(p_c.orchard_id, p_tree.no) is not null
    or private.closed_for_work(p_tree, p_round) <> '[]'
  then return null; end if;
  perform private.end_deals(p_c.orchard_id, array[p_tree.no], p_c.at);
  insert into public.deals (orchard_id, round_id, tree_no, people, dealt_by, dealt_at)
  values (p_c.orchard_id, p_round.id, p_tree.no, array[v_pruner], p_c.by_person_id, p_c.at);
  return array[v_pruner];
end $$;
comment on function private.dealt_back is 'To whoever finished it, while they are here and the tree is open; else it is free, and null.';

create function public.look_over(
  p_orchard uuid, p_command uuid, p_person uuid, p_tree integer, p_result text, p_reason text default null, p_note text default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_round public.rounds;
  v_tree public.trees;
  v_people uuid[];
  v_refused jsonb := '[]';
  v_body jsonb;
begin
  v_c := private.begin_command('look_over', p_orchard, p_command, p_person, 'lead',
    jsonb_build_object('tree', p_tree, 'result', p_result, 'reason', p_reason, 'note', p_note));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_result in ('passed', 'reopened'), 'p_result: passed or reopened.');
  perform private.need((p_result = 'reopened') = (p_reason is not null) and (p_reason is null or p_reason in ('stubs_left',
    'centre_closed', 'crossing_left', 'dead_left', 'too_much_shortened', 'torn_bark', 'wood_hanging', 'not_tidy')),
    'p_reason: a known reason to reopen, and none to pass.');
  perform private.need(p_note is null or (p_result = 'reopened' and private.is_line(p_note, 300)), 'p_note: up to 300 characters, to reopen.');
  v_tree := private.tree_or_fail(p_orchard, p_tree);

  v_round := private.work_round(p_orchard);
  if v_round.id is null then return private.refuse(v_c, private.code('no_round')); end if;
  if not exists (select 1 from public.tree_work where round_id = v_round.id and tree_no = p_tree and state = 'done') then
    v_refused := v_refused || private.code('tree_not_done', jsonb_build_object('tree', p_tree));
  end if;
  v_people := private.worked_on(p_orchard, v_round.id, p_tree);
  if array[p_person, v_c.by_person_id] && v_people then
    v_refused := v_refused || private.code('worked_on_it', jsonb_build_object('tree', p_tree));
  end if;
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  insert into public.looked_over (id, orchard_id, round_id, tree_no, by_person_id, result, reason, note, people, at)
  values (p_command, p_orchard, v_round.id, p_tree, v_c.by_person_id, p_result, p_reason, btrim(p_note), v_people, v_c.at);
  if p_result = 'reopened' then
    v_body := jsonb_build_object('tree', p_tree, 'work', private.set_work(p_orchard, v_round.id, p_tree, 'begun', null, null, v_c.at));
    v_body := v_body || jsonb_build_object('to', private.dealt_back(v_c, v_round, v_tree));
  end if;
  return private.accept(v_c, 'tree_looked_over', v_body,
    jsonb_build_object('tree', p_tree, 'result', p_result, 'reason', p_reason), p_own_people => v_people);
end $$;
grant execute on function public.look_over to authenticated;

create function public.trees_to_look_over(p_orchard uuid) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
declare
  v_round uuid;
begin
  perform private.begin_read(p_orchard, null, 'lead');
  v_round := (private.work_round(p_orchard)).id;
  return jsonb_build_object(
    'trees', (
      select coalesce(jsonb_agg(jsonb_build_object('tree', tree_no, 'at', private.instant(changed_at),
        'people', private.worked_on(p_orchard, v_round, tree_no)) order by changed_at desc, tree_no), '[]')
      from (
        select w.tree_no, w.changed_at from public.tree_work w
        where w.round_id = v_round and w.state = 'done' and not exists (
          select 1 from public.looked_over l where l.round_id = v_round and l.tree_no = w.tree_no and l.result = 'passed'
            and l.at >= w.changed_at)
        order by w.changed_at desc limit 500) waiting),
    'people', (
      select coalesce(jsonb_object_agg(person_id, jsonb_build_object('since', private.instant(since), 'lookedOver', looked_over)), '{}')
      from (
        select v.person_id, min(v.at) as since,
          (select count(*) from public.looked_over l where l.round_id = v_round and v.person_id = any (l.people)) as looked_over
        from public.visits v where v.orchard_id = p_orchard and v.undone_at is null
        group by v.person_id) known));
end $$;
comment on function public.trees_to_look_over is
  'Done and not passed, the newest 500; and of everybody who pruned here: since when, and how many of their trees of this round were looked over.';
grant execute on function public.trees_to_look_over to authenticated;
