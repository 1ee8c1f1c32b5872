-- A lead keeps trees for a person or a pair, until taken back, leave or close. A big cut marked lets people without "prunes alone" in.

create function private.end_deals(p_orchard uuid, p_trees integer[], p_at timestamptz) returns jsonb
language plpgsql volatile set search_path = '' as $$
declare
  v_list jsonb;
begin
  with ended as (
    update public.deals set ended_at = p_at
    where orchard_id = p_orchard and tree_no = any (p_trees) and ended_at is null
    returning tree_no
  )
  select jsonb_agg(tree_no order by tree_no) into v_list from ended;
  return v_list;
end $$;
comment on function private.end_deals is 'The trees whose deal ended, as a list for dealsEnded; null when there was none.';

create function private.trees_with(p_refusals jsonb) returns jsonb
language plpgsql immutable set search_path = '' as $$
begin
  return (
    select coalesce(jsonb_agg(jsonb_build_object('code', code, 'detail', jsonb_build_object('trees', trees)) order by code), '[]')
    from (
      select x ->> 'code' as code, jsonb_agg(x -> 'tree' order by (x ->> 'tree')::integer) as trees
      from jsonb_array_elements(p_refusals) x group by 1
    ) by_code);
end $$;
comment on function private.trees_with is '[{code, tree}] to one refusal a code with all its trees.';

create function private.cannot_be_dealt(p_orchard uuid, p_round public.rounds, p_trees integer[]) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_tree public.trees;
  v_code text;
  v_refusals jsonb := '[]';
begin
  if (select count(*) from public.trees where orchard_id = p_orchard and no = any (p_trees)) <> cardinality(p_trees) then
    perform private.fail(404, 'no_such_tree', 'There is no tree with one of these numbers.');
  end if;
  for v_tree in select * from public.trees where orchard_id = p_orchard and no = any (p_trees) loop
    for v_code in
      select x ->> 'code' from jsonb_array_elements(private.closed_for_work(v_tree, p_round)) x
      union all select 'tree_in_progress' where private.held_by(p_orchard, v_tree.no) is not null
    loop
      v_refusals := v_refusals || jsonb_build_object('code', v_code, 'tree', v_tree.no);
    end loop;
  end loop;
  return private.trees_with(v_refusals);
end $$;

create function public.deal_trees(p_orchard uuid, p_command uuid, p_person uuid, p_trees integer[], p_to uuid[]) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_round public.rounds;
  v_refused jsonb;
begin
  v_c := private.begin_command('deal_trees', p_orchard, p_command, p_person, 'lead',
    jsonb_build_object('trees', p_trees, 'to', p_to));
  if v_c.answer is not null then return v_c.answer; end if;
  if coalesce(cardinality(p_trees), 0) not between 1 and 2000 or coalesce(cardinality(p_to), 0) not between 1 and 2
    or cardinality(p_trees) <> (select count(distinct x) from unnest(p_trees) x)
    or cardinality(p_to) <> (select count(distinct x) from unnest(p_to) x)
  then perform private.fail(400, 'malformed', 'Deal 1 to 2000 different trees to one or two different people.'); end if;
  if (select count(*) from public.people where orchard_id = p_orchard and id = any (p_to) and removed_at is null
      and role <> 'visitor') <> cardinality(p_to)
  then perform private.fail(404, 'no_such_person', 'One of these people is not in the orchard.'); end if;

  v_round := private.work_round(p_orchard);
  if v_round.id is null then return private.refuse(v_c, private.code('no_round')); end if;
  v_refused := private.cannot_be_dealt(p_orchard, v_round, p_trees);
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  perform private.end_deals(p_orchard, p_trees, v_c.at);
  insert into public.deals (orchard_id, round_id, tree_no, people, dealt_by, dealt_at)
  select p_orchard, v_round.id, t, p_to, v_c.by_person_id, v_c.at from unnest(p_trees) t;
  return private.accept(v_c, 'trees_dealt', jsonb_build_object('trees', p_trees, 'to', p_to));
end $$;
grant execute on function public.deal_trees to authenticated;

create function public.take_back(p_orchard uuid, p_command uuid, p_person uuid, p_trees integer[]) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
begin
  v_c := private.begin_command('take_back', p_orchard, p_command, p_person, 'lead', jsonb_build_object('trees', p_trees));
  if v_c.answer is not null then return v_c.answer; end if;
  if coalesce(cardinality(p_trees), 0) not between 1 and 2000 then
    perform private.fail(400, 'malformed', 'Take back 1 to 2000 trees.');
  end if;

  return private.accept(v_c, 'trees_taken_back',
    jsonb_build_object('dealsEnded', private.end_deals(p_orchard, p_trees, v_c.at)));
end $$;
grant execute on function public.take_back to authenticated;

create function public.mark_big_cuts(
  p_orchard uuid, p_command uuid, p_person uuid, p_tree integer, p_note text default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_round public.rounds;
begin
  v_c := private.begin_command('mark_big_cuts', p_orchard, p_command, p_person, 'self',
    jsonb_build_object('tree', p_tree, 'note', p_note));
  if v_c.answer is not null then return v_c.answer; end if;
  if char_length(p_note) > 300 then perform private.fail(400, 'malformed', 'A note has up to 300 characters.'); end if;
  if not exists (select 1 from public.trees where orchard_id = p_orchard and no = p_tree) then
    perform private.fail(404, 'no_such_tree', 'There is no tree with this number.');
  end if;

  v_round := private.work_round(p_orchard);
  if v_round.id is null then return private.refuse(v_c, private.code('no_round')); end if;
  if not v_c.by_lead and not private.has_skill(p_person, 'prunes_alone', private.today(p_orchard)) then
    return private.refuse(v_c, private.code('skill_missing', jsonb_build_object('skill', 'prunes_alone')));
  end if;

  update public.big_cut_marks set ended_at = v_c.at where round_id = v_round.id and tree_no = p_tree and ended_at is null;
  insert into public.big_cut_marks (id, orchard_id, round_id, tree_no, marked_by, note, marked_at)
  values (p_command, p_orchard, v_round.id, p_tree, p_person, p_note, v_c.at);
  return private.accept(v_c, 'big_cuts_marked', jsonb_build_object('tree', p_tree));
end $$;
grant execute on function public.mark_big_cuts to authenticated;

create function public.unmark_big_cuts(p_orchard uuid, p_command uuid, p_person uuid, p_tree integer) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
begin
  v_c := private.begin_command('unmark_big_cuts', p_orchard, p_command, p_person, 'lead', jsonb_build_object('tree', p_tree));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.tree_or_fail(p_orchard, p_tree);

  update public.big_cut_marks set ended_at = v_c.at
  where round_id = (private.work_round(p_orchard)).id and tree_no = p_tree and ended_at is null;
  return private.accept(v_c, 'big_cuts_unmarked', jsonb_build_object('tree', p_tree));
end $$;
grant execute on function public.unmark_big_cuts to authenticated;
