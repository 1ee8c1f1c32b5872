-- What an inventory says of trees that are there: each by its number, with all that is known of it from now on.

create function private.in_use(p_orchard uuid, p_trees integer[], p_flags text[] default '{}') returns jsonb
language plpgsql stable set search_path = '' as $$
begin
  return private.trees_with(coalesce((
    select jsonb_agg(jsonb_build_object('code', u.code, 'tree', u.tree_no)) from (
      select 'trees_in_progress' as code, c.tree_no from public.claims c
      where c.orchard_id = p_orchard and c.tree_no = any (p_trees) and c.ended_at is null
      union
      -- A row of brush is held with all of its trees.
      select 'rows_held', t.no from public.claims c
      join public.trees t on t.orchard_id = c.orchard_id and t.block_no = c.block_no and t.row_no = c.row_no
      where c.orchard_id = p_orchard and c.tree_no is null and c.ended_at is null and t.no = any (p_trees)
      union
      select 'trees_dealt', d.tree_no from public.deals d
      where d.orchard_id = p_orchard and d.tree_no = any (p_trees) and d.ended_at is null
      union
      select 'trees_flagged', f.tree_no from public.flags f
      where f.orchard_id = p_orchard and f.tree_no = any (p_trees) and f.ended_at is null and f.kind = any (p_flags)
    ) u), '[]'));
end $$;
comment on function private.in_use is
  'Of these trees those that somebody holds or is on the way to, and those with an open flag of these kinds; one refusal a code.';

create function private.wrong_changes(p_orchard uuid, p_cultivars jsonb, p_changes jsonb)
returns table (index integer, field text, code text)
language sql stable set search_path = '' as $$
  select t.index, w.field, w.code
  from (
    select r.*, x.no, x.life as life_now, c.name is not null as knows_cultivar,
      count(*) over (partition by r.said ->> 'tree') > 1 as is_twice,
      r.life <> 'removed' and x.life = 'removed' and exists (
        select 1 from public.trees o where o.orchard_id = p_orchard and o.block_no = x.block_no and o.row_no = x.row_no
          and o.place = x.place and o.life <> 'removed') as is_taken
    from private.tree_rows(p_changes) r
    left join public.trees x on x.orchard_id = p_orchard and x.no = private.whole_in(r.said -> 'tree', 1, 2147483647)
    left join (
      select species, name from public.cultivars where orchard_id = p_orchard
      union select species, name from private.cultivar_rows(p_cultivars)) c on c.species = r.species and c.name = r.cultivar
  ) t
  cross join lateral (values
    ('tree', case when t.no is null then 'not_one_of' when t.is_twice then 'twice' when t.is_taken then 'place_taken' end),
    ('species', case when private.is_species(t.species) is not true then 'not_one_of' end),
    ('cultivar', case when private.is_said(t.said -> 'cultivar') and not t.knows_cultivar then 'not_one_of' end),
    ('size', case when t.size_class not in ('young', 'small', 'medium', 'large') then 'not_one_of' end),
    ('planted', case when t.planted_year is null and private.is_said(t.said -> 'planted') then 'out_of_range' end),
    ('heightCm', case when t.height_cm is null and private.is_said(t.said -> 'heightCm') then 'out_of_range' end),
    ('trunkMm', case when t.trunk_mm is null and private.is_said(t.said -> 'trunkMm') then 'out_of_range' end),
    ('asksSaw', case when jsonb_typeof(t.said -> 'asksSaw') not in ('boolean', 'null') then 'not_one_of' end),
    ('life', case when t.life not in ('standing', 'dead', 'removed', 'gap') then 'not_one_of'
      when t.life <> 'standing' and t.life <> t.life_now and private.in_use(p_orchard, array[t.no],
        case when t.life = 'dead' then '{}'::text[] else array['disease', 'arborist'] end) <> '[]' then 'in_use' end),
    ('latE7', case when t.lat_e7 is null and private.is_said(t.said -> 'latE7') then 'out_of_range' end),
    ('lonE7', case when t.lon_e7 is null and private.is_said(t.said -> 'lonE7') then 'out_of_range' end),
    ('latE7', case when (t.lat_e7 is null) <> (t.lon_e7 is null) then 'position_half' end)
  ) w (field, code) where w.code is not null
$$;

create function private.change_trees(p_orchard uuid, p_changes jsonb) returns integer
language plpgsql volatile set search_path = '' as $$
declare
  v_count integer;
begin
  update public.trees t set species = r.species, cultivar_no = c.no, size_class = r.size_class, planted_year = r.planted_year,
    height_cm = r.height_cm, trunk_cm = r.trunk_mm / 10.0, asks_saw = r.asks_saw, life = r.life, lat_e7 = r.lat_e7, lon_e7 = r.lon_e7
  from private.tree_rows(p_changes) r
  left join public.cultivars c on c.orchard_id = p_orchard and c.species = r.species and c.name = r.cultivar
  where t.orchard_id = p_orchard and t.no = private.whole_in(r.said -> 'tree', 1, 2147483647);
  get diagnostics v_count = row_count;
  return v_count;
end $$;
