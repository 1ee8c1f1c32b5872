-- The sheet: what rarely changes about blocks, cultivars and trees, as one text of columns and integers.

create function private.sheet_of_trees(p_orchard uuid, p_species text[], p_lat0 integer, p_lon0 integer) returns json
language sql stable set search_path = '' as $$
  select json_build_object(
    'no', array_agg(no order by no),
    'block', array_agg(block_no order by no),
    'row', array_agg(row_no order by no),
    'place', array_agg(place order by no),
    'species', array_agg(array_position(p_species, species) - 1 order by no),
    'cultivar', array_agg(coalesce(cultivar_no, 0) order by no),
    'size', array_agg(coalesce(array_position(array['young', 'small', 'medium', 'large'], size_class), 0) order by no),
    'planted', array_agg(coalesce(planted_year, 0) order by no),
    'height', array_agg(coalesce(height_cm, 0) order by no),
    'trunk', array_agg(coalesce((trunk_cm * 10)::integer, 0) order by no),
    'saw', array_agg(asks_saw::integer order by no),
    'life', array_agg(array_position(array['standing', 'dead', 'removed', 'gap'], life) - 1 order by no),
    'lat', array_agg(lat_e7 - p_lat0 order by no),
    'lon', array_agg(lon_e7 - p_lon0 order by no))
  from public.trees where orchard_id = p_orchard
$$;
comment on function private.sheet_of_trees is 'Columns in the order of tree numbers. What is not known is 0, and null for positions.';

create function private.write_tree_sheet(p_orchard uuid) returns integer
language plpgsql volatile set search_path = '' as $$
declare
  v_version integer;
  v_species text[];
  v_lat0 integer;
  v_lon0 integer;
begin
  update public.orchard_heads set sheet_version = sheet_version + 1 where orchard_id = p_orchard returning sheet_version into v_version;
  select array_agg(distinct species), coalesce(min(lat_e7), 0), coalesce(min(lon_e7), 0) into v_species, v_lat0, v_lon0
  from public.trees where orchard_id = p_orchard;

  delete from public.tree_sheets where orchard_id = p_orchard;
  insert into public.tree_sheets (orchard_id, version, body)
  select p_orchard, v_version, json_build_object(
    'v', v_version,
    'blocks', (select coalesce(json_agg(json_build_object('no', no, 'code', code, 'name', name,
        'rowSpacingM', trim_scale(row_spacing_m), 'treeSpacingM', trim_scale(tree_spacing_m), 'bearingDeg', trim_scale(bearing_deg),
        'firstLatE7', first_lat_e7, 'firstLonE7', first_lon_e7, 'taggedEnd', tagged_end) order by no), '[]')
      from public.blocks where orchard_id = p_orchard),
    'cultivars', (select coalesce(json_agg(json_build_object('no', no, 'species', species, 'name', name, 'habit', habit, 'buds', buds) order by no), '[]')
      from public.cultivars where orchard_id = p_orchard),
    'species', coalesce(to_json(v_species), '[]'),
    'lat0', v_lat0,
    'lon0', v_lon0,
    'trees', private.sheet_of_trees(p_orchard, v_species, v_lat0, v_lon0))::text;
  return v_version;
end $$;
comment on function private.write_tree_sheet is 'Makes the next version; only the newest is kept. Gives its number.';
