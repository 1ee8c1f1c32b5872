-- Hauling brush, a third of the work: a row is taken like a tree, and given back with the trees whose wood is gone.

create function public.take_brush(
  p_orchard uuid, p_command uuid, p_person uuid, p_block integer, p_row integer, p_helpers uuid[] default '{}'
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_shift public.shifts;
  v_helpers uuid[] := coalesce(p_helpers, '{}');
  v_missing jsonb;
begin
  v_c := private.begin_command('take_brush', p_orchard, p_command, p_person, 'self',
    jsonb_build_object('block', p_block, 'row', p_row, 'helpers', v_helpers));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(cardinality(v_helpers) <= 8 and not p_person = any (v_helpers)
    and cardinality(v_helpers) = (select count(distinct x) from unnest(v_helpers) x), 'p_helpers: up to eight different others.');
  perform private.row_or_fail(p_orchard, p_block, p_row);

  v_shift := private.open_shift(p_orchard);
  v_missing := private.missing_of_person(p_orchard, p_person, 'brush', 'holder')
    || private.missing_of_others(p_orchard, v_shift, (p_person, null, 'work', 'brush', false, v_helpers, '{}', null)::private.wish);
  if v_shift.id is not null then v_missing := v_missing || private.missing_of_row(p_orchard, v_shift, p_block, p_row); end if;
  if v_missing <> '[]' then return private.refuse(v_c, private.told_of_others(v_c, v_missing, v_helpers)); end if;

  insert into public.claims (id, orchard_id, round_id, shift_id, block_no, row_no, purpose, kind, opened_at)
  values (p_command, p_orchard, v_shift.round_id, v_shift.id, p_block, p_row, 'work', 'brush', v_c.at);
  insert into public.claim_people (orchard_id, claim_id, person_id, part, from_at)
  select p_orchard, p_command, p_person, 'holder', v_c.at
  union all select p_orchard, p_command, h, 'helper', v_c.at from unnest(v_helpers) h;
  return private.accept(v_c, 'brush_taken', private.claim_facts(p_command));
end $$;
comment on function public.take_brush is 'Others come by join_tree, go by leave_tree, and take it over by hand_over.';
grant execute on function public.take_brush to authenticated;

create function public.finish_brush(p_orchard uuid, p_command uuid, p_person uuid, p_claim uuid, p_trees integer[]) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_claim public.claims;
  v_ended jsonb;
begin
  v_c := private.begin_command('finish_brush', p_orchard, p_command, p_person, 'self',
    jsonb_build_object('claim', p_claim, 'trees', p_trees));
  if v_c.answer is not null then return v_c.answer; end if;
  v_claim := private.claim_or_fail(p_orchard, p_claim);
  perform private.need(v_claim.tree_no is null and cardinality(p_trees) <= 1000 and not exists (
      select 1 from unnest(p_trees) x
      left join public.trees t on t.orchard_id = p_orchard and t.no = x and t.block_no = v_claim.block_no and t.row_no = v_claim.row_no
      where t.no is null), 'p_trees: trees of the row that was taken; [] when nothing was hauled.');
  if not exists (select 1 from public.claim_people where claim_id = p_claim and person_id = p_person and part <> 'learner') then
    return private.refuse(v_c, private.code('not_in_claim'));
  end if;

  -- What was hauled is hauled, also when somebody ended the claim meanwhile.
  if v_claim.ended_at is null and coalesce(private.part_in(p_claim, p_person), 'learner') <> 'learner' then
    perform private.end_claim(p_claim, v_c.at, case when p_trees = '{}' then 'released' else 'finished' end);
    v_ended := jsonb_build_array(p_claim);
  end if;
  return private.accept(v_c, 'brush_finished', jsonb_build_object(
    'claimsEnded', v_ended, 'hauled', private.haul(v_c, p_claim, v_claim.round_id, p_trees)));
end $$;
grant execute on function public.finish_brush to authenticated;

create function public.mark_brush(p_orchard uuid, p_command uuid, p_person uuid, p_trees integer[], p_hauled boolean) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_round public.rounds;
  v_lying jsonb;
begin
  v_c := private.begin_command('mark_brush', p_orchard, p_command, p_person, 'lead',
    jsonb_build_object('trees', p_trees, 'hauled', p_hauled));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(cardinality(p_trees) between 1 and 1000 and p_hauled is not null
    and array_position(p_trees, null) is null, 'p_trees: 1 to 1000 trees; p_hauled: true or false.');
  v_round := private.work_round(p_orchard);
  if v_round.id is null then return private.refuse(v_c, private.code('no_round')); end if;

  if p_hauled then
    return private.accept(v_c, 'brush_marked', jsonb_build_object('hauled', private.haul(v_c, null, v_round.id, p_trees)));
  end if;
  with lies as (
    delete from public.brush_hauled where round_id = v_round.id and tree_no = any (p_trees) returning tree_no
  )
  select jsonb_agg(tree_no order by tree_no) into v_lying from lies;
  return private.accept(v_c, 'brush_marked', jsonb_build_object('lying', v_lying));
end $$;
comment on function public.mark_brush is 'For people without a phone, and where somebody tapped wrong.';
grant execute on function public.mark_brush to authenticated;

create function public.direct_brush(
  p_orchard uuid, p_command uuid, p_person uuid, p_block integer, p_rows integer[], p_goes text default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_round public.rounds;
begin
  v_c := private.begin_command('direct_brush', p_orchard, p_command, p_person, 'lead',
    jsonb_build_object('block', p_block, 'rows', p_rows, 'goes', p_goes));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(cardinality(p_rows) between 1 and 500 and array_position(p_rows, null) is null
    and (p_goes is null or p_goes in ('burn', 'chip', 'bag', 'pile')), 'p_rows: 1 to 500 rows; p_goes: burn, chip, bag, pile or null.');
  perform private.row_or_fail(p_orchard, p_block, x) from unnest(p_rows) x;
  v_round := private.work_round(p_orchard);
  if v_round.id is null then return private.refuse(v_c, private.code('no_round')); end if;

  delete from public.brush_ways where round_id = v_round.id and block_no = p_block and row_no = any (p_rows);
  insert into public.brush_ways (orchard_id, round_id, block_no, row_no, goes, said_by, said_at)
  select p_orchard, v_round.id, p_block, x, p_goes, v_c.by_person_id, v_c.at
  from (select distinct unnest(p_rows) as x) rows where p_goes is not null;
  return private.accept(v_c, 'brush_directed', jsonb_build_object('block', p_block, 'rows', p_rows, 'goes', p_goes));
end $$;
grant execute on function public.direct_brush to authenticated;
