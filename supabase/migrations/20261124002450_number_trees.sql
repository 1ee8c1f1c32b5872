-- Rows and places get other numbers. A tree's own number stays what it is.

create function private.numbers_said(p_numbers jsonb) returns table (no integer, row_no integer, place integer)
language sql immutable set search_path = '' as $$
  select private.whole_in(n -> 0, 1, 2000000000), private.whole_in(n -> 1, 1, 9999), private.whole_in(n -> 2, 1, 9999)
  from jsonb_array_elements(p_numbers) n
$$;

create function private.forget_brush_ways(p_orchard uuid, p_block integer) returns jsonb
language plpgsql volatile set search_path = '' as $$
declare
  v_rows jsonb;
begin
  with forgotten as (
    delete from public.brush_ways
    where round_id = (private.work_round(p_orchard)).id and block_no = p_block returning row_no
  )
  select jsonb_agg(row_no order by row_no) into v_rows from forgotten;
  return v_rows;
end $$;
comment on function private.forget_brush_ways is 'Where the wood of a row goes is said by the row''s number; under new numbers it would be said of another.';

create function public.number_trees(p_orchard uuid, p_command uuid, p_person uuid, p_block integer, p_numbers jsonb) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_trees integer[];
  v_moves_rows boolean;
  v_refused jsonb;
  v_taken jsonb;
begin
  v_c := private.begin_command('number_trees', p_orchard, p_command, p_person, 'manager', jsonb_build_object(
    'block', p_block, 'sha256', private.sha256_of(p_numbers::text)));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.block_or_fail(p_orchard, p_block);
  perform private.need(jsonb_typeof(p_numbers) = 'array', 'p_numbers: a list of [tree, row, place].');
  perform private.need((select bool_and(no is not null and row_no is not null and place is not null)
    from private.numbers_said(p_numbers)), 'p_numbers: [tree, row, place], rows and places 1 to 9999.');
  select array_agg(no) into v_trees from private.numbers_said(p_numbers);
  perform private.trees_or_fail(p_orchard, v_trees);
  perform private.need(not exists (select 1 from public.trees where orchard_id = p_orchard and no = any (v_trees)
    and (block_no <> p_block or life = 'removed')), 'p_numbers: trees of this block that were not removed.');

  v_refused := private.in_use(p_orchard, v_trees);
  select jsonb_agg(distinct t.no order by t.no) into v_taken
  from (select n.no, coalesce(s.row_no, n.row_no) as row_no, coalesce(s.place, n.place) as place, s.no is not null as is_said,
      count(*) over (partition by coalesce(s.row_no, n.row_no), coalesce(s.place, n.place)) as alike
    from public.trees n left join private.numbers_said(p_numbers) s on s.no = n.no
    where n.orchard_id = p_orchard and n.block_no = p_block and n.life <> 'removed') t
  where t.alike > 1 and t.is_said;
  if v_taken is not null then v_refused := v_refused || private.code('places_taken', jsonb_build_object('trees', v_taken)); end if;
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  v_moves_rows := exists (select 1 from public.trees t join private.numbers_said(p_numbers) s on s.no = t.no
    where t.orchard_id = p_orchard and t.row_no <> s.row_no);
  -- Out of the way first: no two trees may ever share a place, not even while they exchange them.
  update public.trees set row_no = row_no + 100000 where orchard_id = p_orchard and no = any (v_trees);
  update public.trees t set row_no = s.row_no, place = s.place from private.numbers_said(p_numbers) s
  where t.orchard_id = p_orchard and t.no = s.no;
  return private.accept(v_c, 'trees_numbered', jsonb_build_object('block', p_block, 'sheet', private.write_tree_sheet(p_orchard),
    'rows', case when v_moves_rows then private.forget_brush_ways(p_orchard, p_block) end));
end $$;
grant execute on function public.number_trees to authenticated;
