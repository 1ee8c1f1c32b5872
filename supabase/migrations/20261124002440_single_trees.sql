-- One tree more, and one tree elsewhere.

create function public.add_tree(
  p_orchard uuid, p_command uuid, p_person uuid, p_block integer, p_row integer, p_place integer, p_species text,
  p_cultivar integer default null, p_size text default null, p_planted integer default null,
  p_lat_e7 integer default null, p_lon_e7 integer default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_no integer;
  v_there public.trees;
begin
  v_c := private.begin_command('add_tree', p_orchard, p_command, p_person, 'manager', jsonb_build_object(
    'block', p_block, 'row', p_row, 'place', p_place, 'species', p_species, 'cultivar', p_cultivar, 'size', p_size,
    'planted', p_planted, 'lat', p_lat_e7, 'lon', p_lon_e7));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.block_or_fail(p_orchard, p_block);
  perform private.need(p_row between 1 and 9999 and p_place between 1 and 9999, 'p_row and p_place: 1 to 9999.');
  perform private.need(private.is_species(p_species), 'p_species: not known.');
  perform private.need(p_cultivar is null or exists (select 1 from public.cultivars
    where orchard_id = p_orchard and no = p_cultivar and species = p_species), 'p_cultivar: not of this species.');
  perform private.need(p_size is null or p_size in ('young', 'small', 'medium', 'large'), 'p_size: not known.');
  perform private.need(p_planted is null or p_planted between 1700 and 2200, 'p_planted: a year.');
  perform private.need_position(p_lat_e7, p_lon_e7);

  select * into v_there from public.trees
  where orchard_id = p_orchard and block_no = p_block and row_no = p_row and place = p_place and life <> 'removed';
  if v_there.life <> 'gap' then
    return private.refuse(v_c, private.code('places_taken', jsonb_build_object('trees', jsonb_build_array(v_there.no))));
  end if;
  perform private.clear_gap(v_there);
  update public.orchard_heads set last_tree_no = last_tree_no + 1 where orchard_id = p_orchard returning last_tree_no into v_no;
  insert into public.trees (orchard_id, no, block_no, row_no, place, species, cultivar_no, size_class, planted_year, lat_e7, lon_e7)
  values (p_orchard, v_no, p_block, p_row, p_place, p_species, p_cultivar, p_size, p_planted,
    coalesce(p_lat_e7, v_there.lat_e7), coalesce(p_lon_e7, v_there.lon_e7));
  return private.accept(v_c, 'tree_added', jsonb_build_object('tree', v_no, 'sheet', private.write_tree_sheet(p_orchard)));
end $$;
grant execute on function public.add_tree to authenticated;

create function private.clear_gap(p_gap public.trees) returns void
language plpgsql volatile set search_path = '' as $$
begin
  if p_gap.no is null then return; end if;
  delete from public.trees where orchard_id = p_gap.orchard_id and no = p_gap.no;
exception when foreign_key_violation then
  update public.trees set life = 'removed' where orchard_id = p_gap.orchard_id and no = p_gap.no;
end $$;
comment on function private.clear_gap is 'A new tree has a number of its own. A gap that once was a tree keeps its record as a removed one.';

create function private.need_position(p_lat_e7 integer, p_lon_e7 integer) returns void
language plpgsql volatile set search_path = '' as $$
begin
  perform private.need((p_lat_e7 is null) = (p_lon_e7 is null) and coalesce(p_lat_e7 between -900000000 and 900000000, true)
    and coalesce(p_lon_e7 between -1800000000 and 1800000000, true), 'p_lat_e7 and p_lon_e7: a position, or both null.');
end $$;

create function public.move_tree(
  p_orchard uuid, p_command uuid, p_person uuid, p_tree integer, p_lat_e7 integer default null, p_lon_e7 integer default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_refused jsonb;
begin
  v_c := private.begin_command('move_tree', p_orchard, p_command, p_person, 'manager',
    jsonb_build_object('tree', p_tree, 'lat', p_lat_e7, 'lon', p_lon_e7));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.tree_or_fail(p_orchard, p_tree);
  perform private.need_position(p_lat_e7, p_lon_e7);
  -- Somebody finds it by the map, and a keep-out would move over people whom nobody told.
  v_refused := private.in_use(p_orchard, array[p_tree], array['arborist']);
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  update public.trees set lat_e7 = p_lat_e7, lon_e7 = p_lon_e7 where orchard_id = p_orchard and no = p_tree;
  return private.accept(v_c, 'tree_moved', jsonb_build_object('tree', p_tree, 'sheet', private.write_tree_sheet(p_orchard)));
end $$;
grant execute on function public.move_tree to authenticated;
