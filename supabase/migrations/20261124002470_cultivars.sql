-- Cultivars of the orchard, each with the wood that carries its fruit buds as far as it is known.

create function public.write_cultivar(
  p_orchard uuid, p_command uuid, p_person uuid, p_cultivar integer default null, p_species text default null,
  p_name text default null, p_habit text default 'unknown', p_buds text default 'unknown'
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_no integer := p_cultivar;
  v_other integer;
begin
  v_c := private.begin_command('write_cultivar', p_orchard, p_command, p_person, 'manager', jsonb_build_object(
    'cultivar', p_cultivar, 'species', p_species, 'name', p_name, 'habit', p_habit, 'buds', p_buds));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(private.is_species(p_species) and private.is_line(p_name, 60), 'p_species and p_name, up to 60 letters.');
  perform private.need(p_habit in ('spur', 'shoot', 'both', 'unknown'), 'p_habit: not known.');
  perform private.need(p_buds in ('base', 'middle', 'tip', 'unknown'), 'p_buds: not known.');
  -- The species of a cultivar is what its trees are: that cannot be written over.
  if p_cultivar is not null and not exists (
    select 1 from public.cultivars where orchard_id = p_orchard and no = p_cultivar and species = p_species)
  then perform private.fail(404, 'no_such_cultivar', 'There is no such cultivar of this species.'); end if;

  select no into v_other from public.cultivars
  where orchard_id = p_orchard and species = p_species and name = btrim(p_name) and no is distinct from p_cultivar;
  if found then return private.refuse(v_c, private.code('cultivar_known', jsonb_build_object('cultivar', v_other))); end if;
  if p_cultivar is null then
    select coalesce(max(no), 0) + 1 into v_no from public.cultivars where orchard_id = p_orchard;
    insert into public.cultivars (orchard_id, no, species, name, habit, buds)
    values (p_orchard, v_no, p_species, btrim(p_name), p_habit, p_buds);
  else
    update public.cultivars set name = btrim(p_name), habit = p_habit, buds = p_buds
    where orchard_id = p_orchard and no = p_cultivar;
  end if;
  return private.accept(v_c, 'cultivar_written',
    jsonb_build_object('cultivar', v_no, 'sheet', private.write_tree_sheet(p_orchard)));
end $$;
grant execute on function public.write_cultivar to authenticated;

create function public.remove_cultivar(p_orchard uuid, p_command uuid, p_person uuid, p_cultivar integer) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_trees jsonb;
begin
  v_c := private.begin_command('remove_cultivar', p_orchard, p_command, p_person, 'manager', jsonb_build_object('cultivar', p_cultivar));
  if v_c.answer is not null then return v_c.answer; end if;
  if not exists (select 1 from public.cultivars where orchard_id = p_orchard and no = p_cultivar) then
    perform private.fail(404, 'no_such_cultivar', 'There is no cultivar with this number.');
  end if;
  select jsonb_agg(no order by no) into v_trees from public.trees where orchard_id = p_orchard and cultivar_no = p_cultivar;
  if v_trees is not null then
    return private.refuse(v_c, private.code('cultivar_in_use', jsonb_build_object('trees', v_trees)));
  end if;
  delete from public.cultivars where orchard_id = p_orchard and no = p_cultivar;
  return private.accept(v_c, 'cultivar_removed',
    jsonb_build_object('cultivar', p_cultivar, 'sheet', private.write_tree_sheet(p_orchard)));
end $$;
grant execute on function public.remove_cultivar to authenticated;
