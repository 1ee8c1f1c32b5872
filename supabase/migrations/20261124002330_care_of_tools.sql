-- Tools that fail, are mended, are cleaned.

create function public.fail_tool(
  p_orchard uuid, p_command uuid, p_person uuid, p_tool integer, p_failed_items text[], p_note text default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
begin
  v_c := private.begin_command('fail_tool', p_orchard, p_command, p_person, 'self',
    jsonb_build_object('tool', p_tool, 'failed_items', p_failed_items, 'note', p_note));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(private.are_codes(coalesce(p_failed_items, '{}'), 20), 'p_failed_items: a list of codes.');
  perform private.need(p_note is null or char_length(p_note) <= 300, 'p_note: up to 300 characters.');
  if (private.tool_in(p_orchard, p_tool)).no is null then return private.refuse(v_c, private.no_such_tool(array[p_tool])); end if;

  perform private.check_tool(v_c, p_tool, coalesce(p_failed_items, '{}'), false, p_note);
  return private.accept(v_c, 'tool_failed', jsonb_build_object('tool', p_tool));
end $$;
grant execute on function public.fail_tool to authenticated;

create function public.mend_tool(p_orchard uuid, p_command uuid, p_person uuid, p_tool integer) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
begin
  v_c := private.begin_command('mend_tool', p_orchard, p_command, p_person, 'lead', jsonb_build_object('tool', p_tool));
  if v_c.answer is not null then return v_c.answer; end if;
  if (private.tool_in(p_orchard, p_tool)).no is null then return private.refuse(v_c, private.no_such_tool(array[p_tool])); end if;

  perform private.check_tool(v_c, p_tool, '{}', true);
  return private.accept(v_c, 'tool_mended', jsonb_build_object('tool', p_tool));
end $$;
grant execute on function public.mend_tool to authenticated;

create function public.clean_tool(p_orchard uuid, p_command uuid, p_person uuid, p_tools integer[]) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_unknown integer[];
begin
  v_c := private.begin_command('clean_tool', p_orchard, p_command, p_person, 'self', jsonb_build_object('tools', p_tools));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(cardinality(p_tools) between 1 and 100 and array_position(p_tools, null) is null, 'p_tools: 1 to 100 tools.');
  select array_agg(x) into v_unknown from unnest(p_tools) x where (private.tool_in(p_orchard, x)).no is null;
  if v_unknown is not null then return private.refuse(v_c, private.no_such_tool(v_unknown)); end if;

  update public.tools set clean = true where orchard_id = p_orchard and no = any (p_tools);
  return private.accept(v_c, 'tools_cleaned', jsonb_build_object('tools', p_tools));
end $$;
grant execute on function public.clean_tool to authenticated;
