-- Keeping up: what happened since a number, and the sign of life by which leads see who was heard when.

create function public.events_after(p_orchard uuid, p_person uuid, p_epoch uuid, p_n bigint) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
declare
  v_reader private.reader := private.begin_read(p_orchard, p_person);
  v_head public.orchard_heads;
begin
  select * into v_head from public.orchard_heads where orchard_id = p_orchard;
  -- Another epoch, a number of the future, or so far behind that the snapshot is shorter.
  if (p_epoch = v_head.epoch and p_n between v_head.head - 5000 and v_head.head) is not true then
    return jsonb_build_object('reset', true);
  end if;
  if p_n = v_head.head then
    return jsonb_build_object('events', '[]'::jsonb, 'head', v_head.head);
  end if;

  return jsonb_build_object('head', v_head.head, 'events', (
    select jsonb_agg(private.event_told(e, v_reader) order by e.n)
    from (
      select * from public.events
      where orchard_id = p_orchard and n > p_n
      order by n limit 1000) e
  ));
end $$;
comment on function public.events_after is 'At most 1,000 at once; ask again while the last number is below head.';
grant execute on function public.events_after to authenticated;

create function private.event_told(p_event public.events, p_reader private.reader) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_told_more boolean := p_event.lead_body is not null
    and (p_reader.is_lead or (p_event.own and p_event.person_id = any (p_reader.own)) or p_event.own_people && p_reader.own);
begin
  if p_event.body is null and not v_told_more then
    return jsonb_build_object('n', p_event.n);
  end if;
  return jsonb_build_object(
    'n', p_event.n, 'at', private.instant(p_event.at), 'commandId', p_event.command_id,
    'personId', p_event.person_id, 'byPersonId', p_event.by_person_id, 'kind', p_event.kind,
    'body', p_event.body)
    || case when v_told_more then jsonb_build_object('leadBody', p_event.lead_body) else '{}' end;
end $$;
comment on function private.event_told is 'An event as this reader may know it: every number, not every content.';

create function public.heartbeat(p_orchard uuid, p_person uuid, p_head bigint) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_reader private.reader := private.begin_read(p_orchard, p_person);
begin
  update public.logins set heard_at = clock_timestamp(), heard_head = p_head
  where user_id = auth.uid() and person_id = v_reader.person_id and ended_at is null;

  return (
    select jsonb_build_object(
      'head', h.head, 'epoch', h.epoch, 'channelEpoch', h.channel_epoch,
      'minClient', o.min_client, 'now', private.instant(clock_timestamp()))
    from public.orchard_heads h join public.orchards o on o.id = h.orchard_id
    where h.orchard_id = p_orchard
  );
end $$;
comment on function public.heartbeat is 'No event and no broadcast: two hundred phones say it every minute.';
grant execute on function public.heartbeat to authenticated;
