-- A link becomes a person, or one more login of a person.

create function private.own_person(p_invite public.invites, p_name text) returns public.people
language sql stable set search_path = '' as $$
  select p from public.people p join public.logins l on l.person_id = p.id and l.ended_at is null
  where l.user_id = auth.uid() and p.orchard_id = p_invite.orchard_id and p.removed_at is null
    and case when p_invite.person_id is null then p.name = p_name and p.role = p_invite.role else p.id = p_invite.person_id end
  order by l.linked_at limit 1
$$;
comment on function private.own_person is 'Whom this login came in as before, by the same name.';

create function private.comes_in_at_once(p_invite public.invites) returns boolean
language sql stable set search_path = '' as $$
  -- A lead's link that went to the wrong chat makes nobody a lead: a manager lets in whoever came by it.
  select p_invite.kind = 'role' and p_invite.made_by is null or p_invite.kind <> 'role' and (
    exists (
      select 1 from public.shifts s
      where s.orchard_id = p_invite.orchard_id and s.state = 'open' and s.id = coalesce(p_invite.shift_id, s.id))
    -- Who was put out waits for a lead, whatever link they kept.
    and not exists (
      select 1 from public.logins l join public.people p on p.id = l.person_id
      where l.user_id = auth.uid() and l.orchard_id = p_invite.orchard_id and p.removed_at is not null))
$$;

create function private.use_invite(p_c private.command, p_invite public.invites, p_kind text, p_body jsonb, p_lead_body jsonb) returns jsonb
language plpgsql volatile set search_path = '' as $$
begin
  perform private.link_login(p_c);
  update public.invites set uses_left = uses_left - 1, used = used + 1 where id = p_invite.id;
  return private.accept(p_c, p_kind, p_body, p_lead_body, true,
    jsonb_build_object('orchard', p_c.orchard_id, 'person', p_c.person_id));
end $$;

create function private.join_anew(p_c private.command, p_invite public.invites, p_name text, p_age_band text) returns jsonb
language plpgsql volatile set search_path = '' as $$
declare
  v_at_once boolean := private.comes_in_at_once(p_invite);
begin
  if (
    select count(*) from public.logins l join public.people p on p.id = l.person_id
    where l.user_id = auth.uid() and l.orchard_id = p_c.orchard_id and l.linked_at > now() - interval '1 day'
  ) >= 10 then perform private.fail(429, 'too_many', 'Ten people a day on one phone are enough.'); end if;

  insert into public.people (id, orchard_id, name, role, age_band, added_at, admitted_at)
  values (p_c.person_id, p_c.orchard_id, p_name, p_invite.role, p_age_band, p_c.at, case when v_at_once then p_c.at end);
  return private.use_invite(p_c, p_invite, 'person_joined',
    jsonb_build_object('person', p_c.person_id, 'role', p_invite.role, 'admitted', v_at_once),
    case when p_age_band = 'minor' then jsonb_build_object('person', p_c.person_id, 'minor', true) end);
end $$;

create function private.join_again(p_c private.command, p_invite public.invites, p_known public.people) returns jsonb
language plpgsql volatile set search_path = '' as $$
declare
  v_result jsonb := jsonb_build_object('orchard', p_c.orchard_id, 'person', p_known.id);
begin
  if p_known.admitted_at is null and private.comes_in_at_once(p_invite) then
    update public.people set admitted_at = p_c.at where id = p_known.id;
    return private.accept(p_c, 'person_admitted', jsonb_build_object('person', p_known.id), null, false, v_result);
  end if;
  return private.accept(p_c, 'login_linked', null, jsonb_build_object('person', p_known.id), true, v_result);
end $$;
comment on function private.join_again is 'The same link again, say on the morning after: nobody new, and nothing is used up.';

create function public.redeem(p_code text, p_command uuid, p_name text default null, p_age_band text default null) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_hash text := private.begin_code(p_code, p_command);
  v_invite public.invites;
  v_known public.people;
  v_age_band text := coalesce(p_age_band, 'adult');
  v_lacks text;
begin
  select * into v_invite from public.invites where code_hash = v_hash;
  if not found then return private.wrong_code(); end if;
  perform 1 from public.orchard_heads where orchard_id = v_invite.orchard_id for no key update;
  select * into v_invite from public.invites where code_hash = v_hash;
  v_c := ('redeem', v_invite.orchard_id, p_command, p_command, p_command, false,
    jsonb_strip_nulls(jsonb_build_object('user', auth.uid(), 'code', v_hash, 'name', p_name, 'age_band', p_age_band)), clock_timestamp(), null);
  v_c.answer := private.seen_before(v_c);
  if v_c.answer is not null then return v_c.answer; end if;

  if v_invite.person_id is null then
    perform private.need(private.is_line(p_name, 60), 'p_name: up to 60 characters.');
    perform private.need(v_age_band in ('adult', 'minor'), 'p_age_band: adult or minor.');
    perform private.need(v_age_band = 'adult' or v_invite.role = 'volunteer', 'A minor is no lead.');
  end if;
  v_known := private.own_person(v_invite, btrim(p_name));
  v_lacks := private.invite_lacks(v_invite);
  -- A link that this login itself used up still shows the way back in.
  if v_lacks is not null and not (v_lacks = 'code_used' and v_known.id is not null) then
    return private.refuse(v_c, private.code(v_lacks));
  end if;

  if v_known.id is null and v_invite.person_id is null then return private.join_anew(v_c, v_invite, btrim(p_name), v_age_band); end if;
  v_c.person_id := coalesce(v_known.id, v_invite.person_id);
  v_c.by_person_id := v_c.person_id;
  if v_known.id is not null then return private.join_again(v_c, v_invite, v_known); end if;
  return private.use_invite(v_c, v_invite, 'login_linked', null, jsonb_build_object('person', v_c.person_id));
end $$;
comment on function public.redeem is 'A new person gets the command''s id. Refusals are stored under that id too, though nobody has it.';
grant execute on function public.redeem to authenticated;
