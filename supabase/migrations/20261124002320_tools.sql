-- Tools: a short check at each hand-over, a failed one is out of use, a soiled one is cleaned before it goes on.

create function private.tool_in(p_orchard uuid, p_tool integer) returns public.tools
language sql stable set search_path = '' as $$
  select t from public.tools t where t.orchard_id = p_orchard and t.no = p_tool
$$;

create function private.no_such_tool(p_tools integer[]) returns jsonb
language sql immutable set search_path = '' as $$ select private.code('no_such_tool', jsonb_build_object('tools', p_tools)) $$;

create function private.check_tool(p_c private.command, p_tool integer, p_failed_items text[], p_fit boolean, p_note text default null) returns void
language sql volatile set search_path = '' as $$
  insert into public.tool_checks (orchard_id, tool_no, failed_items, note, checked_by, checked_at)
  values (p_c.orchard_id, p_tool, p_failed_items, p_note, p_c.by_person_id, p_c.at);
  update public.tools set state = case when p_fit then 'fit' else 'failed' end where orchard_id = p_c.orchard_id and no = p_tool
$$;

create function public.add_tool(
  p_orchard uuid, p_command uuid, p_person uuid, p_label text, p_kind text, p_owned_by uuid default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_no integer;
begin
  v_c := private.begin_command('add_tool', p_orchard, p_command, p_person, 'lead',
    jsonb_build_object('label', p_label, 'kind', p_kind, 'owned_by', p_owned_by));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(private.is_line(p_label, 30), 'p_label: up to 30 characters.');
  perform private.need(p_kind in ('pruner', 'lopper', 'saw', 'pole_pruner', 'ladder', 'other'), 'p_kind: a known kind of tool.');
  if p_owned_by is not null then perform private.person_or_fail(p_orchard, p_owned_by); end if;

  select coalesce(max(no), 0) + 1 into v_no from public.tools where orchard_id = p_orchard;
  insert into public.tools (orchard_id, no, label, kind, owned_by) values (p_orchard, v_no, btrim(p_label), p_kind, p_owned_by);
  return private.accept(v_c, 'tool_added', jsonb_build_object('tool', v_no, 'label', btrim(p_label), 'kind', p_kind, 'ownedBy', p_owned_by),
    null, false, jsonb_build_object('tool', v_no));
end $$;
grant execute on function public.add_tool to authenticated;

create function public.take_tool(
  p_orchard uuid, p_command uuid, p_person uuid, p_tool integer, p_failed_items text[]
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_shift public.shifts;
  v_tool public.tools;
  v_held_by uuid;
  v_refused jsonb := '[]';
begin
  v_c := private.begin_command('take_tool', p_orchard, p_command, p_person, 'self',
    jsonb_build_object('tool', p_tool, 'failed_items', p_failed_items));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_tool is not null and private.are_codes(p_failed_items, 20), 'p_failed_items: a list of codes, [] when all is well.');
  v_shift := private.open_shift(p_orchard);
  if v_shift.id is null then v_refused := v_refused || private.code('shift_not_open');
  elsif not private.is_here(v_shift.id, p_person) then v_refused := v_refused || private.code('not_arrived');
  end if;
  v_tool := private.tool_in(p_orchard, p_tool);
  if v_tool.no is null then return private.refuse(v_c, v_refused || private.no_such_tool(array[p_tool])); end if;
  select person_id into v_held_by from public.tool_holdings where orchard_id = p_orchard and tool_no = p_tool and returned_at is null;
  if v_held_by is not null then
    v_refused := v_refused || private.code('tool_held', jsonb_build_object('tool', p_tool, 'person', v_held_by));
  end if;
  if v_tool.state = 'failed' then v_refused := v_refused || private.code('tool_failed', jsonb_build_object('tool', p_tool)); end if;
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  perform private.check_tool(v_c, p_tool, p_failed_items, p_failed_items = '{}');
  if p_failed_items <> '{}' then return private.accept(v_c, 'tool_failed', jsonb_build_object('tool', p_tool)); end if;
  insert into public.tool_holdings (orchard_id, tool_no, person_id, shift_id, taken_at)
  values (p_orchard, p_tool, p_person, v_shift.id, v_c.at);
  return private.accept(v_c, 'tool_taken', jsonb_build_object('tool', p_tool));
end $$;
grant execute on function public.take_tool to authenticated;

create function public.return_tool(p_orchard uuid, p_command uuid, p_person uuid, p_tool integer) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_dirty jsonb;
begin
  v_c := private.begin_command('return_tool', p_orchard, p_command, p_person, 'self', jsonb_build_object('tool', p_tool));
  if v_c.answer is not null then return v_c.answer; end if;
  if not exists (
    select 1 from public.tool_holdings
    where orchard_id = p_orchard and tool_no = p_tool and person_id = p_person and returned_at is null
  ) then return private.refuse(v_c, private.code('not_in_hand', jsonb_build_object('tool', p_tool))); end if;

  -- From the middle of work on a diseased tree no tool goes to the next person as if it were clean.
  v_dirty := private.soil_tools(p_orchard, (private.open_claim_of(p_person)).tree_no, array[p_person]);
  perform private.return_tools(v_c, array[p_tool]);
  return private.accept(v_c, 'tool_returned', jsonb_build_object('tool', p_tool, 'dirty', v_dirty));
end $$;
grant execute on function public.return_tool to authenticated;
