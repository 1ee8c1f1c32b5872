-- What went wrong, for leads and managers: written down by a person, never made from a call by itself.

create function public.write_incident(
  p_orchard uuid, p_command uuid, p_person uuid, p_kind text, p_tree integer default null,
  p_note text default null, p_at timestamptz default null, p_call uuid default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_shift uuid;
begin
  v_c := private.begin_command('write_incident', p_orchard, p_command, p_person, 'lead', jsonb_build_object(
    'kind', p_kind, 'tree', p_tree, 'note', p_note, 'at', p_at, 'call', p_call));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(
    p_kind in ('injury', 'near_miss', 'tool', 'ladder', 'power_line', 'lost_person', 'damage', 'other'),
    'p_kind: injury, near_miss, tool, ladder, power_line, lost_person, damage or other.');
  perform private.need(p_note is null or char_length(p_note) <= 1000, 'p_note: up to 1,000 characters.');
  perform private.need(p_at is null or private.is_moment(p_at), 'p_at: a moment, or null.');
  if p_tree is not null then perform private.tree_or_fail(p_orchard, p_tree); end if;
  if p_call is not null then v_shift := (private.call_or_fail(p_orchard, p_call)).shift_id; end if;

  insert into public.incidents (id, orchard_id, shift_id, call_id, tree_no, kind, note, happened_at, written_by, written_at)
  values (p_command, p_orchard, coalesce(v_shift, (private.open_shift(p_orchard)).id), p_call, p_tree, p_kind,
    nullif(btrim(p_note), ''), least(coalesce(p_at, v_c.at), v_c.at), p_person, v_c.at);
  return private.accept(v_c, 'incident_written', null, jsonb_build_object('incident', p_command));
end $$;
grant execute on function public.write_incident to authenticated;
