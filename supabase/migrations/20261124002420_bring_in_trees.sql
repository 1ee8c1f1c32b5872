-- Bringing an inventory in: all of it or nothing, every bad row named.

create function private.wrong_trees(p_orchard uuid, p_blocks jsonb, p_cultivars jsonb, p_trees jsonb)
returns table (index integer, field text, code text)
language sql stable set search_path = '' as $$
  select t.index, w.field, w.code
  from (
    select r.*, b.code is not null as knows_block, c.name is not null as knows_cultivar,
      o.no is not null or (r.life <> 'removed'
        and count(*) filter (where r.life <> 'removed') over (partition by r.block, r.row_no, r.place) > 1) as taken
    from private.tree_rows(p_trees) r
    left join (
      select code from public.blocks where orchard_id = p_orchard
      union select code from private.block_rows(p_blocks)) b on b.code = r.block
    left join (
      select species, name from public.cultivars where orchard_id = p_orchard
      union select species, name from private.cultivar_rows(p_cultivars)) c on c.species = r.species and c.name = r.cultivar
    left join (
      select x.no, x.row_no, x.place, y.code from public.trees x
      join public.blocks y on y.orchard_id = x.orchard_id and y.no = x.block_no
      where x.orchard_id = p_orchard and x.life <> 'removed'
    ) o on o.code = r.block and o.row_no = r.row_no and o.place = r.place and r.life <> 'removed'
  ) t
  cross join lateral (values
    ('block', case when not t.knows_block then 'not_one_of' end),
    ('row', case when t.row_no is null then 'out_of_range' end),
    ('place', case when t.place is null then 'out_of_range' when t.taken then 'place_taken' end),
    ('species', case when private.is_species(t.species) is not true then 'not_one_of' end),
    ('cultivar', case when private.is_said(t.said -> 'cultivar') and not t.knows_cultivar then 'not_one_of' end),
    ('size', case when t.size_class not in ('young', 'small', 'medium', 'large') then 'not_one_of' end),
    ('planted', case when t.planted_year is null and private.is_said(t.said -> 'planted') then 'out_of_range' end),
    ('heightCm', case when t.height_cm is null and private.is_said(t.said -> 'heightCm') then 'out_of_range' end),
    ('trunkMm', case when t.trunk_mm is null and private.is_said(t.said -> 'trunkMm') then 'out_of_range' end),
    ('asksSaw', case when jsonb_typeof(t.said -> 'asksSaw') not in ('boolean', 'null') then 'not_one_of' end),
    ('life', case when t.life not in ('standing', 'dead', 'removed', 'gap') then 'not_one_of' end),
    ('latE7', case when t.lat_e7 is null and private.is_said(t.said -> 'latE7') then 'out_of_range' end),
    ('lonE7', case when t.lon_e7 is null and private.is_said(t.said -> 'lonE7') then 'out_of_range' end),
    ('latE7', case when (t.lat_e7 is null) <> (t.lon_e7 is null) then 'position_half' end)
  ) w (field, code) where w.code is not null
$$;

create function private.wrong_rows(p_orchard uuid, p_blocks jsonb, p_cultivars jsonb, p_trees jsonb, p_changes jsonb) returns jsonb
language sql stable set search_path = '' as $$
  select jsonb_agg(jsonb_build_object('list', list, 'index', index, 'field', field, 'code', code) order by list, index, field, code)
  from (
    select 'blocks' as list, * from private.wrong_blocks(p_blocks)
    union all select 'cultivars', * from private.wrong_cultivars(p_cultivars)
    union all select 'trees', * from private.wrong_trees(p_orchard, p_blocks, p_cultivars, p_trees)
    union all select 'changes', * from private.wrong_changes(p_orchard, p_cultivars, p_changes)
    order by 1, 2 limit 1000) wrong
$$;
comment on function private.wrong_rows is 'The first 1,000; null when all is well. index counts from 0 in its list.';

create function private.insert_inventory(p_orchard uuid, p_blocks jsonb, p_cultivars jsonb, p_trees jsonb) returns integer
language plpgsql volatile set search_path = '' as $$
declare
  v_last integer;
  v_count integer;
begin
  select coalesce(max(no), 0) into v_last from public.blocks where orchard_id = p_orchard;
  insert into public.blocks (orchard_id, no, code, name, row_spacing_m, tree_spacing_m, bearing_deg, first_lat_e7, first_lon_e7, tagged_end)
  select p_orchard, v_last + row_number() over (order by index), code, name, row_spacing_m, tree_spacing_m, bearing_deg, first_lat_e7, first_lon_e7, tagged_end
  from private.block_rows(p_blocks) r
  where not exists (select 1 from public.blocks b where b.orchard_id = p_orchard and b.code = r.code);

  select coalesce(max(no), 0) into v_last from public.cultivars where orchard_id = p_orchard;
  insert into public.cultivars (orchard_id, no, species, name, habit, buds)
  select p_orchard, v_last + row_number() over (order by index), species, name, habit, buds
  from private.cultivar_rows(p_cultivars) r
  where not exists (select 1 from public.cultivars c where c.orchard_id = p_orchard and c.species = r.species and c.name = r.name);

  select last_tree_no into v_last from public.orchard_heads where orchard_id = p_orchard;
  insert into public.trees (orchard_id, no, block_no, row_no, place, species, cultivar_no, size_class, planted_year, height_cm,
    trunk_cm, asks_saw, life, lat_e7, lon_e7)
  select p_orchard, v_last + r.index + 1, b.no, r.row_no, r.place, r.species, c.no, r.size_class, r.planted_year, r.height_cm,
    r.trunk_mm / 10.0, r.asks_saw, r.life, r.lat_e7, r.lon_e7
  from private.tree_rows(p_trees) r
  join public.blocks b on b.orchard_id = p_orchard and b.code = r.block
  left join public.cultivars c on c.orchard_id = p_orchard and c.species = r.species and c.name = r.cultivar;
  get diagnostics v_count = row_count;
  update public.orchard_heads set last_tree_no = v_last + v_count where orchard_id = p_orchard;
  return v_count;
end $$;
comment on function private.insert_inventory is 'Blocks and cultivars that are there already stay as they are.';

create function public.bring_in_trees(
  p_orchard uuid, p_command uuid, p_person uuid, p_blocks jsonb, p_cultivars jsonb, p_trees jsonb, p_changes jsonb default '[]'
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_wrong jsonb;
  v_count integer;
  v_changed integer;
  v_sheet integer;
begin
  v_c := private.begin_command('bring_in_trees', p_orchard, p_command, p_person, 'manager', jsonb_build_object(
    'sha256', private.sha256_of(concat_ws(' ', p_blocks, p_cultivars, p_trees, nullif(p_changes, '[]')))));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(jsonb_typeof(p_blocks) = 'array' and jsonb_typeof(p_cultivars) = 'array' and jsonb_typeof(p_trees) = 'array'
    and jsonb_typeof(p_changes) = 'array', 'p_blocks, p_cultivars, p_trees and p_changes: lists.');
  if jsonb_array_length(p_blocks) > 500 or jsonb_array_length(p_cultivars) > 2000
    or jsonb_array_length(p_trees) + jsonb_array_length(p_changes) > 100000 then
    perform private.fail(413, 'too_large', 'At most 500 blocks, 2,000 cultivars and 100,000 trees at once.');
  end if;
  v_wrong := private.wrong_rows(p_orchard, p_blocks, p_cultivars, p_trees, p_changes);
  if v_wrong is not null then return private.refuse(v_c, private.code('rows_wrong', jsonb_build_object('rows', v_wrong))); end if;

  v_count := private.insert_inventory(p_orchard, p_blocks, p_cultivars, p_trees);
  v_changed := private.change_trees(p_orchard, p_changes);
  v_sheet := private.write_tree_sheet(p_orchard);
  return private.accept(v_c, 'trees_brought_in', jsonb_build_object('sheet', v_sheet, 'count', v_count, 'changed', nullif(v_changed, 0)));
end $$;
grant execute on function public.bring_in_trees to authenticated;
