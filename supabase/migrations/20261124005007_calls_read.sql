-- Calls for help and incidents as they are read. Notes are typed text: they are read here and never in events.

create function private.calls_state(p_reader private.reader) returns jsonb
language plpgsql stable set search_path = '' as $$
begin
  return jsonb_build_object('calls', (
    select coalesce(jsonb_object_agg(c.id, private.call_told(c) - 'call'), '{}')
    from public.calls c
    where c.orchard_id = p_reader.orchard_id and c.ended_at is null
      and (p_reader.is_lead or c.kind = 'lost_person' or c.person_id = any (p_reader.own))));
end $$;

create function public.read_calls(p_orchard uuid) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
declare
  v_shift uuid;
begin
  perform private.begin_read(p_orchard, null, 'lead');
  select id into v_shift from public.shifts
  where orchard_id = p_orchard and state <> 'scheduled'
  order by state = 'open' desc, closed_at desc limit 1;

  return (
    select coalesce(jsonb_agg(private.call_told(c) || jsonb_build_object(
      'note', c.note, 'endedBy', c.ended_by, 'endedAt', private.instant(c.ended_at), 'outcome', c.outcome,
      'hasIncident', exists (select 1 from public.incidents i where i.orchard_id = p_orchard and i.call_id = c.id))
      order by c.called_at desc), '[]')
    from (
      select * from public.calls
      where orchard_id = p_orchard and (shift_id = v_shift or ended_at is null)
      order by called_at desc limit 200) c
  );
end $$;
comment on function public.read_calls is 'Of the open shift, else of the last one; and whatever nobody has ended.';
grant execute on function public.read_calls to authenticated;

create function public.read_incidents(p_orchard uuid) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
begin
  perform private.begin_read(p_orchard, null, 'lead');
  return (
    select coalesce(jsonb_agg(jsonb_build_object(
      'incident', i.id, 'kind', i.kind, 'tree', i.tree_no, 'note', i.note, 'call', i.call_id,
      'happenedAt', private.instant(i.happened_at), 'writtenBy', i.written_by, 'writtenAt', private.instant(i.written_at))
      order by i.happened_at desc), '[]')
    from (select * from public.incidents where orchard_id = p_orchard order by happened_at desc limit 200) i
  );
end $$;
comment on function public.read_incidents is 'The newest 200.';
grant execute on function public.read_incidents to authenticated;
