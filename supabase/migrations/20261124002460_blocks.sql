-- A block as a whole: what it is called and how it lies, and taking one away that was a mistake.

create function private.block_or_fail(p_orchard uuid, p_block integer) returns public.blocks
language plpgsql stable set search_path = '' as $$
declare
  v_block public.blocks;
begin
  select * into v_block from public.blocks where orchard_id = p_orchard and no = p_block;
  if not found then perform private.fail(404, 'no_such_block', 'There is no block with this number.'); end if;
  return v_block;
end $$;

create function public.change_block(
  p_orchard uuid, p_command uuid, p_person uuid, p_block integer, p_code text, p_name text,
  p_row_spacing_m numeric, p_tree_spacing_m numeric, p_bearing_deg numeric default null, p_tagged_end text default 'low'
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_other integer;
begin
  v_c := private.begin_command('change_block', p_orchard, p_command, p_person, 'manager', jsonb_build_object(
    'block', p_block, 'code', p_code, 'name', p_name, 'rows', p_row_spacing_m, 'trees', p_tree_spacing_m,
    'bearing', p_bearing_deg, 'end', p_tagged_end));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.block_or_fail(p_orchard, p_block);
  perform private.need(private.is_line(p_code, 4) and private.is_line(p_name, 60), 'p_code: up to 4 letters; p_name: up to 60.');
  perform private.need(round(p_row_spacing_m, 2) between 0.5 and 30 and round(p_tree_spacing_m, 2) between 0.5 and 30,
    'Spacings: 0.5 to 30 m.');
  perform private.need(p_bearing_deg is null or round(p_bearing_deg, 2) between 0 and 359.99, 'p_bearing_deg: 0 to 359.99.');
  perform private.need(p_tagged_end in ('low', 'high'), 'p_tagged_end: low or high.');

  select no into v_other from public.blocks where orchard_id = p_orchard and code = btrim(p_code) and no <> p_block;
  if found then return private.refuse(v_c, private.code('code_taken', jsonb_build_object('block', v_other))); end if;
  update public.blocks set code = btrim(p_code), name = btrim(p_name), row_spacing_m = p_row_spacing_m,
    tree_spacing_m = p_tree_spacing_m, bearing_deg = p_bearing_deg, tagged_end = p_tagged_end
  where orchard_id = p_orchard and no = p_block;
  return private.accept(v_c, 'block_changed', jsonb_build_object('block', p_block, 'sheet', private.write_tree_sheet(p_orchard)));
end $$;
grant execute on function public.change_block to authenticated;

create function private.delete_block(p_orchard uuid, p_block integer) returns boolean
language plpgsql volatile set search_path = '' as $$
begin
  delete from public.trees where orchard_id = p_orchard and block_no = p_block;
  delete from public.blocks where orchard_id = p_orchard and no = p_block;
  return true;
exception when foreign_key_violation then
  return false;
end $$;
comment on function private.delete_block is
  'False, and nothing is done, when anything was ever recorded there: every record holds its tree or block by a foreign key.';

create function public.remove_block(p_orchard uuid, p_command uuid, p_person uuid, p_block integer) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
begin
  v_c := private.begin_command('remove_block', p_orchard, p_command, p_person, 'manager', jsonb_build_object('block', p_block));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.block_or_fail(p_orchard, p_block);
  if not private.delete_block(p_orchard, p_block) then
    return private.refuse(v_c, private.code('block_has_history', jsonb_build_object('block', p_block)));
  end if;
  return private.accept(v_c, 'block_removed', jsonb_build_object('block', p_block, 'sheet', private.write_tree_sheet(p_orchard)));
end $$;
grant execute on function public.remove_block to authenticated;
