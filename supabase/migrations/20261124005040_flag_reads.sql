-- What is written about flags, which events never carry.

create function public.flag_details(p_orchard uuid, p_flags uuid[]) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
begin
  perform private.begin_read(p_orchard, null, 'lead');
  return (
    select coalesce(jsonb_object_agg(f.id, jsonb_build_object(
      'part', f.part, 'note', f.note,
      'notes', (
        select coalesce(jsonb_agg(jsonb_build_object(
          'note', n.note, 'at', private.instant(n.at), 'personId', n.person_id) order by n.at), '[]')
        from public.flag_notes n where n.flag_id = f.id))), '{}')
    from public.flags f
    where f.orchard_id = p_orchard and f.id = any (p_flags)
  );
end $$;
comment on function public.flag_details is 'Photos are read by the ids in the snapshot.';
grant execute on function public.flag_details to authenticated;

create function public.my_flags(p_orchard uuid, p_person uuid) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
begin
  perform private.begin_read(p_orchard, p_person);
  return (
    select coalesce(jsonb_agg(jsonb_build_object(
      'flag', f.id, 'tree', f.tree_no, 'kind', f.kind, 'sign', f.sign, 'state', f.state,
      'raisedAt', private.instant(f.raised_at), 'confirmedBy', f.confirmed_by,
      'endedAt', private.instant(f.ended_at), 'endedBy', f.ended_by,
      -- What an arborist wrote down is for the manager.
      'why', case f.state when 'withdrawn' then f.ended_note end,
      'doneOn', f.done_on) order by f.raised_at desc), '[]')
    from (
      select * from public.flags
      where orchard_id = p_orchard and raised_by = p_person
      order by raised_at desc limit 20) f
  );
end $$;
comment on function public.my_flags is 'What became of the last things this person reported.';
grant execute on function public.my_flags to authenticated;
