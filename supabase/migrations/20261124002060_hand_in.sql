-- The unsent work of somebody who was removed: once, within 48 hours. And what a restore changes.

create function public.hand_in(p_orchard uuid, p_command uuid, p_person uuid, p_work jsonb) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
begin
  if auth.uid() is null then perform private.fail(401, 'signed_out', 'Sign in first.'); end if;
  -- The login that was put out with the person, not one that was ended before.
  if p_command is null or not exists (
    select 1 from public.logins l join public.people p on p.id = l.person_id
    where l.user_id = auth.uid() and l.orchard_id = p_orchard and p.id = p_person
      and l.ended_at = p.removed_at and p.removed_at > now() - interval '48 hours'
  ) then perform private.fail(403, 'not_allowed', 'You cannot do this here.'); end if;
  if octet_length(p_work::text) > 200000 then perform private.fail(413, 'too_large', 'At most 200,000 bytes.'); end if;
  perform private.need(jsonb_typeof(p_work) = 'array', 'p_work: a list.');

  perform 1 from public.orchard_heads where orchard_id = p_orchard for no key update;
  v_c := ('hand_in', p_orchard, p_command, p_person, p_person, false,
    jsonb_build_object('person', p_person, 'work', private.sha256_of(p_work::text)), clock_timestamp(), null);
  v_c.answer := private.seen_before(v_c);
  if v_c.answer is not null then return v_c.answer; end if;
  if exists (select 1 from public.hand_ins where person_id = p_person) then
    return private.refuse(v_c, private.code('handed_in_before'));
  end if;

  insert into public.hand_ins (id, orchard_id, person_id, work, handed_in_at) values (p_command, p_orchard, p_person, p_work, v_c.at);
  return private.accept(v_c, 'handed_in', null, jsonb_build_object('person', p_person));
end $$;
grant execute on function public.hand_in to authenticated;

create function private.after_restore() returns void
language sql volatile set search_path = '' as $$
  update public.orchard_heads set epoch = gen_random_uuid(), channel_epoch = channel_epoch + 1
$$;
comment on function private.after_restore is
  'For the owner: numbers after this one may have been heard before with other contents, so phones start again and send again what they sent lately.';
