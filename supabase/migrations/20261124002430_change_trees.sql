-- What is known about trees, set for many at once. Nobody's tree is taken away from under them.

create function private.trees_or_fail(p_orchard uuid, p_trees integer[]) returns void
language plpgsql stable set search_path = '' as $$
begin
  perform private.need(cardinality(p_trees) between 1 and 20000
    and cardinality(p_trees) = (select count(distinct x) from unnest(p_trees) x), 'p_trees: 1 to 20,000 different numbers.');
  if (select count(*) from public.trees where orchard_id = p_orchard and no = any (p_trees)) <> cardinality(p_trees) then
    perform private.fail(404, 'no_such_tree', 'There is no tree with one of these numbers.');
  end if;
end $$;

create function private.is_change_of_trees(p_orchard uuid, p_set jsonb) returns boolean
language sql stable set search_path = '' as $$
  select jsonb_typeof(p_set) = 'object' and p_set <> '{}' and bool_and(case key
    when 'species' then jsonb_typeof(value) = 'string' and private.is_species(value #>> '{}')
    when 'cultivar' then value = 'null' or exists (select 1 from public.cultivars
      where orchard_id = p_orchard and no = private.whole_in(value, 1, 1000000))
    when 'size' then value = 'null' or value #>> '{}' in ('young', 'small', 'medium', 'large')
    when 'planted' then value = 'null' or private.whole_in(value, 1700, 2200) is not null
    when 'heightCm' then value = 'null' or private.whole_in(value, 10, 5000) is not null
    when 'trunkMm' then value = 'null' or private.whole_in(value, 1, 9999) is not null
    when 'asksSaw' then jsonb_typeof(value) = 'boolean'
    when 'life' then value #>> '{}' in ('standing', 'dead', 'removed', 'gap')
    else false end)
  from jsonb_each(p_set)
$$;

create function private.cannot_be_changed(p_orchard uuid, p_trees integer[], p_set jsonb) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_refused jsonb := '[]';
  v_species text;
  v_trees jsonb;
begin
  -- Nothing else closes a tree to work, or takes it away.
  if coalesce(p_set ->> 'life', 'standing') <> 'standing' then
    v_refused := private.in_use(p_orchard, p_trees,
      case when p_set ->> 'life' = 'dead' then '{}'::text[] else array['disease', 'arborist'] end);
  end if;
  if p_set ? 'cultivar' then
    select species into v_species from public.cultivars where orchard_id = p_orchard and no = (p_set ->> 'cultivar')::integer;
    select jsonb_agg(no order by no) into v_trees from public.trees
    where orchard_id = p_orchard and no = any (p_trees) and coalesce(p_set ->> 'species', species) <> v_species;
    if v_trees is not null then
      v_refused := v_refused || private.code('other_species', jsonb_build_object('species', v_species, 'trees', v_trees));
    end if;
  end if;
  -- Back on its place: somebody else may have been planted there.
  if coalesce(p_set ->> 'life', 'removed') <> 'removed' then
    select jsonb_agg(distinct t.no order by t.no) into v_trees from public.trees t
    join public.trees o on o.orchard_id = t.orchard_id and o.block_no = t.block_no and o.row_no = t.row_no and o.place = t.place
      and o.no <> t.no and (o.life <> 'removed' or o.no = any (p_trees))
    where t.orchard_id = p_orchard and t.no = any (p_trees) and t.life = 'removed';
    if v_trees is not null then v_refused := v_refused || private.code('places_taken', jsonb_build_object('trees', v_trees)); end if;
  end if;
  return v_refused;
end $$;

create function public.change_trees(p_orchard uuid, p_command uuid, p_person uuid, p_trees integer[], p_set jsonb) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_refused jsonb;
begin
  -- As text: in an object null would be lost, and here it says "not known".
  v_c := private.begin_command('change_trees', p_orchard, p_command, p_person, 'manager',
    jsonb_build_object('trees', p_trees, 'set', p_set::text));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(private.is_change_of_trees(p_orchard, p_set), 'p_set: species, cultivar, size, planted, heightCm, trunkMm, asksSaw, life.');
  perform private.trees_or_fail(p_orchard, p_trees);
  v_refused := private.cannot_be_changed(p_orchard, p_trees, p_set);
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  update public.trees t set
    species = coalesce(p_set ->> 'species', t.species),
    -- A cultivar is of one species.
    cultivar_no = case
      when p_set ? 'cultivar' then (p_set ->> 'cultivar')::integer
      when coalesce(p_set ->> 'species', t.species) = t.species then t.cultivar_no end,
    size_class = case when p_set ? 'size' then p_set ->> 'size' else t.size_class end,
    planted_year = case when p_set ? 'planted' then (p_set ->> 'planted')::integer else t.planted_year end,
    height_cm = case when p_set ? 'heightCm' then (p_set ->> 'heightCm')::integer else t.height_cm end,
    trunk_cm = case when p_set ? 'trunkMm' then (p_set ->> 'trunkMm')::numeric / 10 else t.trunk_cm end,
    asks_saw = coalesce((p_set ->> 'asksSaw')::boolean, t.asks_saw),
    life = coalesce(p_set ->> 'life', t.life)
  where t.orchard_id = p_orchard and t.no = any (p_trees);
  return private.accept(v_c, 'trees_changed',
    jsonb_build_object('sheet', private.write_tree_sheet(p_orchard), 'count', cardinality(p_trees)));
end $$;
grant execute on function public.change_trees to authenticated;
