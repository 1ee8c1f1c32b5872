-- Links by which people get in. The client makes the code and sends only its hash.

create function private.make_invite(
  p_id uuid, p_orchard uuid, p_kind text, p_role text, p_code_hash text, p_expires_at timestamptz,
  p_shift uuid default null, p_person uuid default null, p_made_by uuid default null
) returns void
language sql volatile set search_path = '' as $$
  insert into public.invites (id, orchard_id, code_hash, kind, role, person_id, shift_id, uses_left, made_by, made_at, expires_at)
  values (p_id, p_orchard, p_code_hash, p_kind, p_role, p_person, p_shift, case when p_kind = 'join' then 500 else 1 end,
    p_made_by, clock_timestamp(), p_expires_at)
$$;
comment on function private.make_invite is 'By itself for the owner: the demo and the links of the first start.';

create function private.longest_hours(p_kind text) returns integer
language sql immutable set search_path = '' as $$
  select case p_kind when 'join' then 336 when 'role' then 336 when 'device' then 24 when 'recovery' then 50000 end
$$;
comment on function private.longest_hours is 'A recovery code lies in a drawer for five years; a code for a second phone is used at once.';

create function public.make_invite(
  p_orchard uuid, p_command uuid, p_person uuid, p_kind text, p_code_hash text, p_role text default null,
  p_shift uuid default null, p_subject uuid default null, p_hours integer default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_is_for_person boolean := p_kind in ('device', 'recovery');
  v_subject public.people;
  v_shift public.shifts;
  v_role text;
begin
  v_c := private.begin_command('make_invite', p_orchard, p_command,
    case when v_is_for_person then coalesce(p_subject, p_person) else p_person end,
    case p_kind when 'join' then 'lead' when 'role' then 'manager' when 'recovery' then 'manager' else 'self' end,
    jsonb_build_object('kind', p_kind, 'code', p_code_hash, 'role', p_role, 'shift', p_shift, 'hours', p_hours));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_kind in ('join', 'role', 'device', 'recovery'), 'p_kind: join, role, device or recovery.');
  perform private.need(p_code_hash ~ '^[0-9a-f]{64}$', 'p_code_hash: sha256 of the code, in hex.');
  perform private.need(not exists (select 1 from public.invites where code_hash = p_code_hash), 'p_code_hash: make a new code.');
  perform private.need(p_hours is null or p_hours between 1 and private.longest_hours(p_kind), 'p_hours: too few or too many.');
  perform private.need(p_kind <> 'role' or p_role in ('lead', 'manager'), 'p_role: lead or manager.');

  if v_is_for_person then
    v_subject := private.person_or_fail(p_orchard, v_c.person_id);
    v_role := case when private.is_lead_role(v_subject.role) then v_subject.role else 'volunteer' end;
    -- Else a lead could make a phone that is the manager's.
    if v_c.by_person_id <> v_subject.id and not private.may_give(v_c.by_person_id, v_subject.role) then
      return private.refuse(v_c, private.code('not_yours_to_give'));
    end if;
    perform private.need(p_kind = 'device' or v_subject.role = 'manager', 'Recovery codes are for managers.');
    -- One at a time: the new one takes the place of the one that was lost or seen.
    update public.invites set ended_at = v_c.at where person_id = v_subject.id and kind = p_kind and ended_at is null;
  else
    v_role := case p_kind when 'join' then 'volunteer' else p_role end;
    v_shift := private.open_shift(p_orchard);
    if p_shift is not null then v_shift := private.shift_or_fail(p_orchard, p_shift); end if;
    if private.shift_over(v_shift) is not null then return private.refuse(v_c, private.shift_over(v_shift)); end if;
  end if;

  perform private.make_invite(p_command, p_orchard, p_kind, v_role, p_code_hash,
    v_c.at + coalesce(p_hours, private.longest_hours(p_kind)) * interval '1 hour',
    case when p_kind = 'join' then v_shift.id end, v_subject.id, v_c.by_person_id);
  return private.accept(v_c, 'invite_made', null, jsonb_build_object('invite', p_command, 'kind', p_kind, 'role', v_role),
    false, jsonb_build_object('invite', p_command));
end $$;
comment on function public.make_invite is
  'A join link is for p_shift, else the open one, and ends with it. device and recovery are for p_subject, else p_person.';
grant execute on function public.make_invite to authenticated;

create function public.end_invite(p_orchard uuid, p_command uuid, p_person uuid, p_invite uuid) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_invite public.invites;
begin
  v_c := private.begin_command('end_invite', p_orchard, p_command, p_person, 'lead', jsonb_build_object('invite', p_invite));
  if v_c.answer is not null then return v_c.answer; end if;
  select * into v_invite from public.invites where orchard_id = p_orchard and id = p_invite;
  if not found then perform private.fail(404, 'no_such_invite', 'There is no such link.'); end if;
  -- Else a lead could take a manager's way back in.
  if v_invite.made_by is distinct from v_c.by_person_id and not private.may_give(v_c.by_person_id, v_invite.role) then
    return private.refuse(v_c, private.code('not_yours_to_give'));
  end if;
  update public.invites set ended_at = coalesce(ended_at, v_c.at) where id = p_invite;
  return private.accept(v_c, 'invite_ended', null, jsonb_build_object('invite', p_invite));
end $$;
grant execute on function public.end_invite to authenticated;

create function private.invite_lacks(p_invite public.invites) returns text
language sql stable set search_path = '' as $$
  select case
    when p_invite.ended_at is not null or p_invite.expires_at < clock_timestamp()
      or exists (select 1 from public.shifts where id = p_invite.shift_id and state in ('closed', 'cancelled')) then 'code_expired'
    when p_invite.uses_left = 0 then 'code_used'
  end
$$;
comment on function private.invite_lacks is 'Null while it lets people in.';

create function public.look_at_invite(p_code text) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
declare
  v_invite public.invites;
begin
  if auth.uid() is null then perform private.fail(401, 'signed_out', 'Sign in first.'); end if;
  perform private.need(char_length(p_code) between 1 and 200, 'p_code is needed.');
  select * into v_invite from public.invites where code_hash = private.sha256_of(p_code);
  if not found then return null; end if;
  return (
    select jsonb_build_object('orchardName', o.name, 'language', o.language, 'kind', v_invite.kind, 'role', v_invite.role,
      'shiftDate', (select on_date from public.shifts where id = v_invite.shift_id), 'over', private.invite_lacks(v_invite))
    from public.orchards o where o.id = v_invite.orchard_id
  );
end $$;
grant execute on function public.look_at_invite to authenticated;
