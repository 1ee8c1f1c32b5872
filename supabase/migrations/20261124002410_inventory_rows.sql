-- An inventory as it is sent: what each row says, and what is wrong with it.

create function private.whole_in(p_value jsonb, p_least integer, p_most integer) returns integer
language plpgsql immutable set search_path = '' as $$
begin
  return case when jsonb_typeof(p_value) = 'number' then
    case when p_value::numeric between p_least and p_most and p_value::numeric = trunc(p_value::numeric)
      then p_value::numeric::integer end end;
end $$;

create function private.number_in(p_value jsonb, p_least numeric, p_most numeric) returns numeric
language plpgsql immutable set search_path = '' as $$
begin
  return case when jsonb_typeof(p_value) = 'number' then
    case when round(p_value::numeric, 2) between p_least and p_most then round(p_value::numeric, 2) end end;
end $$;

create function private.line_in(p_value jsonb, p_longest integer) returns text
language plpgsql immutable set search_path = '' as $$
begin
  return case when jsonb_typeof(p_value) = 'string' and private.is_line(p_value #>> '{}', p_longest) then btrim(p_value #>> '{}') end;
end $$;

create function private.is_said(p_value jsonb) returns boolean
language plpgsql immutable set search_path = '' as $$
begin
  return coalesce(p_value <> 'null', false);
end $$;
comment on function private.is_said is 'What may be left out is wrong only when something is said that cannot be read.';

create function private.block_rows(p_blocks jsonb) returns table (
  index integer, said jsonb, code text, name text, row_spacing_m numeric, tree_spacing_m numeric, bearing_deg numeric,
  first_lat_e7 integer, first_lon_e7 integer, tagged_end text)
language sql immutable set search_path = '' as $$
  select (n - 1)::integer, r, private.line_in(r -> 'code', 4), private.line_in(r -> 'name', 60),
    private.number_in(r -> 'rowSpacingM', 0.5, 30), private.number_in(r -> 'treeSpacingM', 0.5, 30),
    private.number_in(r -> 'bearingDeg', 0, 359.99),
    private.whole_in(r -> 'firstLatE7', -900000000, 900000000), private.whole_in(r -> 'firstLonE7', -1800000000, 1800000000),
    coalesce(r ->> 'taggedEnd', 'low')
  from jsonb_array_elements(p_blocks) with ordinality as x (r, n)
$$;

create function private.cultivar_rows(p_cultivars jsonb) returns table (index integer, species text, name text, habit text, buds text)
language sql immutable set search_path = '' as $$
  select (n - 1)::integer, r ->> 'species', private.line_in(r -> 'name', 60), coalesce(r ->> 'habit', 'unknown'),
    coalesce(r ->> 'buds', 'unknown')
  from jsonb_array_elements(p_cultivars) with ordinality as x (r, n)
$$;

create function private.tree_rows(p_trees jsonb) returns table (
  index integer, said jsonb, block text, row_no integer, place integer, species text, cultivar text, size_class text,
  planted_year integer, height_cm integer, trunk_mm integer, asks_saw boolean, life text, lat_e7 integer, lon_e7 integer)
language sql immutable set search_path = '' as $$
  select (n - 1)::integer, r, r ->> 'block', private.whole_in(r -> 'row', 1, 9999), private.whole_in(r -> 'place', 1, 9999),
    r ->> 'species', private.line_in(r -> 'cultivar', 60), r ->> 'size',
    private.whole_in(r -> 'planted', 1700, 2200), private.whole_in(r -> 'heightCm', 10, 5000), private.whole_in(r -> 'trunkMm', 1, 9999),
    coalesce(r -> 'asksSaw' = 'true', false), coalesce(r ->> 'life', 'standing'),
    private.whole_in(r -> 'latE7', -900000000, 900000000), private.whole_in(r -> 'lonE7', -1800000000, 1800000000)
  from jsonb_array_elements(p_trees) with ordinality as x (r, n)
$$;

create function private.wrong_blocks(p_blocks jsonb) returns table (index integer, field text, code text)
language sql immutable set search_path = '' as $$
  select b.index, w.field, w.code
  from (select *, count(*) over (partition by block_rows.code) as alike from private.block_rows(p_blocks)) b
  cross join lateral (values
    ('code', case when b.code is null then 'out_of_range' when b.alike > 1 then 'twice' end),
    ('name', case when b.name is null then 'out_of_range' end),
    ('rowSpacingM', case when b.row_spacing_m is null then 'out_of_range' end),
    ('treeSpacingM', case when b.tree_spacing_m is null then 'out_of_range' end),
    ('bearingDeg', case when b.bearing_deg is null and private.is_said(b.said -> 'bearingDeg') then 'out_of_range' end),
    ('firstLatE7', case when b.first_lat_e7 is null and private.is_said(b.said -> 'firstLatE7') then 'out_of_range' end),
    ('firstLonE7', case when b.first_lon_e7 is null and private.is_said(b.said -> 'firstLonE7') then 'out_of_range' end),
    ('firstLatE7', case when (b.first_lat_e7 is null) <> (b.first_lon_e7 is null) then 'position_half' end),
    ('taggedEnd', case when b.tagged_end not in ('low', 'high') then 'not_one_of' end)
  ) w (field, code) where w.code is not null
$$;

create function private.wrong_cultivars(p_cultivars jsonb) returns table (index integer, field text, code text)
language sql immutable set search_path = '' as $$
  select c.index, w.field, w.code
  from (select *, count(*) over (partition by cultivar_rows.species, cultivar_rows.name) as alike from private.cultivar_rows(p_cultivars)) c
  cross join lateral (values
    ('species', case when private.is_species(c.species) is not true then 'not_one_of' end),
    ('name', case when c.name is null then 'out_of_range' when c.alike > 1 then 'twice' end),
    ('habit', case when c.habit not in ('spur', 'shoot', 'both', 'unknown') then 'not_one_of' end),
    ('buds', case when c.buds not in ('base', 'middle', 'tip', 'unknown') then 'not_one_of' end)
  ) w (field, code) where w.code is not null
$$;
