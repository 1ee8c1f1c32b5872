-- Who is in the orchard: added by a lead, changed, let in.

create function private.may_give(p_by uuid, p_role text) returns boolean
language sql stable set search_path = '' as $$
  select p_role in ('volunteer', 'visitor') or private.has_role(p_by, array['manager'])
$$;
comment on function private.may_give is 'A lead adds, changes and removes volunteers and visitors; a manager anybody.';

create function private.is_last_manager(p_person public.people, p_without_login uuid default null) returns boolean
language sql stable set search_path = '' as $$
  select p_person.role = 'manager' and not exists (
    select 1 from public.people p join public.logins l on l.person_id = p.id and l.ended_at is null
    where p.orchard_id = p_person.orchard_id and p.role = 'manager' and p.removed_at is null
      and case when p_without_login is null then p.id <> p_person.id else l.id <> p_without_login end)
$$;
comment on function private.is_last_manager is
  'Nobody else could manage: a manager without a login cannot. p_without_login asks what were if only that login ended.';

create function private.need_person(p_orchard uuid, p_name text, p_role text, p_age_band text, p_guardian uuid, p_phone text) returns void
language plpgsql volatile set search_path = '' as $$
begin
  perform private.need(private.is_line(p_name, 60), 'p_name: up to 60 characters.');
  perform private.need(p_role in ('manager', 'lead', 'volunteer', 'visitor'), 'p_role: manager, lead, volunteer or visitor.');
  perform private.need(p_age_band in ('adult', 'minor'), 'p_age_band: adult or minor.');
  perform private.need(p_age_band = 'adult' or not private.is_lead_role(p_role), 'A minor is no lead.');
  perform private.need(p_phone is null or p_phone = '' or private.is_line(p_phone, 40), 'p_phone: up to 40 characters.');
  if p_guardian is null then return; end if;
  perform private.need(p_age_band = 'minor', 'Only a minor has a guardian.');
  perform private.need((private.person_or_fail(p_orchard, p_guardian)).age_band = 'adult', 'A guardian is an adult.');
end $$;

create function public.add_person(
  p_orchard uuid, p_command uuid, p_person uuid, p_name text, p_role text default 'volunteer',
  p_age_band text default 'adult', p_guardian uuid default null, p_phone text default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
begin
  v_c := private.begin_command('add_person', p_orchard, p_command, p_person, 'lead', jsonb_build_object(
    'name', p_name, 'role', p_role, 'age_band', p_age_band, 'guardian', p_guardian, 'phone', p_phone));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need_person(p_orchard, p_name, p_role, p_age_band, p_guardian, p_phone);
  if not private.may_give(v_c.by_person_id, p_role) then return private.refuse(v_c, private.code('not_yours_to_give')); end if;

  insert into public.people (id, orchard_id, name, role, age_band, guardian_id, phone, added_at, admitted_at)
  values (p_command, p_orchard, btrim(p_name), p_role, p_age_band, p_guardian, nullif(p_phone, ''), v_c.at, v_c.at);
  return private.accept(v_c, 'person_added', jsonb_build_object('person', p_command, 'role', p_role),
    case when p_age_band = 'minor' then jsonb_build_object('minor', true, 'guardianId', p_guardian) end,
    false, jsonb_build_object('person', p_command));
end $$;
grant execute on function public.add_person to authenticated;

create function public.change_person(
  p_orchard uuid, p_command uuid, p_person uuid, p_subject uuid, p_name text default null, p_role text default null,
  p_age_band text default null, p_guardian uuid default null, p_phone text default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_old public.people;
  v_new public.people;
begin
  -- Of the person who is changed, so that their own phone hears what only leads hear of others.
  v_c := private.begin_command('change_person', p_orchard, p_command, p_subject, 'lead', jsonb_build_object('by', p_person,
    'name', p_name, 'role', p_role, 'age_band', p_age_band, 'guardian', p_guardian, 'phone', p_phone));
  if v_c.answer is not null then return v_c.answer; end if;
  v_old := private.person_or_fail(p_orchard, p_subject);
  v_new := v_old;
  v_new.name := coalesce(btrim(p_name), v_old.name);
  v_new.role := coalesce(p_role, v_old.role);
  v_new.age_band := coalesce(p_age_band, v_old.age_band);
  v_new.guardian_id := case when v_new.age_band = 'minor' then coalesce(p_guardian, v_old.guardian_id) else p_guardian end;
  v_new.phone := nullif(coalesce(p_phone, v_old.phone), '');
  perform private.need_person(p_orchard, v_new.name, v_new.role, v_new.age_band, p_guardian, v_new.phone);
  perform private.need(p_guardian is distinct from p_subject, 'Nobody is their own guardian.');

  -- A lead may set right what is written about the lead, but not give or take a role.
  if not (private.may_give(v_c.by_person_id, v_old.role) and private.may_give(v_c.by_person_id, v_new.role))
    and not (p_subject = v_c.by_person_id and v_new.role = v_old.role)
  then return private.refuse(v_c, private.code('not_yours_to_give')); end if;
  if v_new.role <> 'manager' and private.is_last_manager(v_old) then return private.refuse(v_c, private.code('last_manager')); end if;

  update public.people set name = v_new.name, role = v_new.role, age_band = v_new.age_band, guardian_id = v_new.guardian_id,
    phone = v_new.phone where id = p_subject;
  -- Nobody gives by an older link what they may not give any more.
  update public.invites set ended_at = v_c.at
  where orchard_id = p_orchard and made_by = p_subject and ended_at is null
    and case kind when 'role' then v_new.role <> 'manager' when 'join' then not private.is_lead_role(v_new.role) else false end;
  return private.accept(v_c, 'person_changed', jsonb_build_object('person', p_subject, 'role', v_new.role),
    jsonb_build_object('person', p_subject, 'minor', v_new.age_band = 'minor', 'guardianId', v_new.guardian_id), true);
end $$;
comment on function public.change_person is 'Null: unchanged. An empty p_phone takes the phone away.';
grant execute on function public.change_person to authenticated;

create function public.admit_person(p_orchard uuid, p_command uuid, p_person uuid, p_subject uuid) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
begin
  v_c := private.begin_command('admit_person', p_orchard, p_command, p_person, 'lead', jsonb_build_object('subject', p_subject));
  if v_c.answer is not null then return v_c.answer; end if;
  if not private.may_give(v_c.by_person_id, (private.person_or_fail(p_orchard, p_subject)).role) then
    return private.refuse(v_c, private.code('not_yours_to_give'));
  end if;

  update public.people set admitted_at = coalesce(admitted_at, v_c.at) where id = p_subject;
  return private.accept(v_c, 'person_admitted', jsonb_build_object('person', p_subject));
end $$;
grant execute on function public.admit_person to authenticated;
