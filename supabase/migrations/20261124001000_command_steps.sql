-- The seven steps that every command takes, so that a command itself reads as its rules and its writes:
-- 1 right, 2 lock, 3 seen before (begin_command); 4 rules and 5 writes (the command);
-- 6 number, event and broadcast, 7 stored answer (accept or refuse).

create type private.command as (
  name text,
  orchard_id uuid,
  command_id uuid,
  person_id uuid,
  by_person_id uuid,
  by_lead boolean,
  args jsonb,
  at timestamptz,
  answer jsonb
);
comment on type private.command is
  'by_person_id tapped, person_id is whose work it is; answer is filled when this command was seen before.';

create function private.fail(p_status integer, p_code text, p_message text) returns void
language plpgsql volatile set search_path = '' as $$
begin
  raise exception using errcode = 'PT' || p_status, message = p_message, detail = p_code;
end $$;
comment on function private.fail is 'For malformed input, no permission and faults. What a rule refuses is an answer (private.refuse).';

create function private.is_lead_role(p_role text) returns boolean
language plpgsql immutable set search_path = '' as $$
begin
  return p_role in ('lead', 'manager');
end $$;

create function private.acting_person(p_orchard uuid, p_person uuid, p_right text) returns public.people
language plpgsql volatile set search_path = '' as $$
declare
  v_acting public.people;
begin
  select p.* into v_acting
  from public.logins l
  join public.people p on p.id = l.person_id
  where l.user_id = auth.uid() and l.orchard_id = p_orchard
    and l.ended_at is null and p.removed_at is null
    and case p_right
      when 'self' then p.id = p_person or private.is_lead_role(p.role)
      when 'lead' then private.is_lead_role(p.role)
      when 'manager' then p.role = 'manager'
    end
  -- The person named, if this login is theirs; else the one with the most rights.
  order by (p.id = p_person) desc, (p.role = 'manager') desc, l.linked_at
  limit 1;
  return v_acting;
end $$;
comment on function private.acting_person is
  'Who taps: the person of this login that has the right (self, lead or manager), or a null row.';

create function private.acting_or_fail(p_orchard uuid, p_person uuid, p_right text) returns public.people
language plpgsql volatile set search_path = '' as $$
declare
  v_acting public.people := private.acting_person(p_orchard, p_person, p_right);
begin
  if v_acting.id is null then perform private.fail(403, 'not_allowed', 'You cannot do this here.'); end if;
  -- Whoever kept a link is no member yet: they would end claims by a flag, or stop everybody.
  if v_acting.admitted_at is null then perform private.fail(403, 'not_admitted', 'A lead has not let you in yet.'); end if;
  return v_acting;
end $$;

create function private.begin_command(
  p_name text, p_orchard uuid, p_command uuid, p_person uuid, p_right text, p_args jsonb
) returns private.command
language plpgsql volatile set search_path = '' as $$
declare
  v_c private.command;
  v_acting public.people;
  v_seen public.command_answers;
begin
  if auth.uid() is null then perform private.fail(401, 'signed_out', 'Sign in first.'); end if;
  if p_orchard is null or p_command is null or p_person is null then
    perform private.fail(400, 'malformed', 'p_orchard, p_command and p_person are needed.');
  end if;

  -- Before the lock only this, so that a stranger cannot hold it; rights after it, since they may go while one waits.
  if not exists (select 1 from public.logins where user_id = auth.uid() and orchard_id = p_orchard and ended_at is null)
  then perform private.fail(403, 'not_allowed', 'You cannot do this here.'); end if;
  perform 1 from public.orchard_heads where orchard_id = p_orchard for no key update;
  v_acting := private.acting_or_fail(p_orchard, p_person, p_right);

  v_c := (p_name, p_orchard, p_command, p_person, v_acting.id, private.is_lead_role(v_acting.role),
          jsonb_strip_nulls(p_args), clock_timestamp(), null);

  select * into v_seen from public.command_answers where orchard_id = p_orchard and command_id = p_command;
  if found then
    if v_seen.name <> p_name or v_seen.person_id <> p_person or v_seen.args_sha256 <> private.sha256_of(v_c.args::text) then
      perform private.fail(409, 'command_id_used', 'This command id was used for something else.');
    end if;
    v_c.answer := v_seen.answer;
    return v_c;
  end if;

  if not exists (select 1 from public.people where orchard_id = p_orchard and id = p_person and removed_at is null) then
    perform private.fail(404, 'no_such_person', 'This person is not in the orchard.');
  end if;
  return v_c;
end $$;

create function private.store_answer(p_c private.command, p_answer jsonb) returns jsonb
language plpgsql volatile set search_path = '' as $$
begin
  insert into public.command_answers (orchard_id, command_id, name, person_id, by_person_id, args_sha256, answer, at)
  values (p_c.orchard_id, p_c.command_id, p_c.name, p_c.person_id, p_c.by_person_id, private.sha256_of(p_c.args::text), p_answer, p_c.at);
  return p_answer;
end $$;

create function private.instant(p_at timestamptz) returns text
language plpgsql immutable set search_path = '' as $$
begin
  return to_char(p_at at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"');
end $$;
comment on function private.instant is 'One spelling of an instant everywhere: UTC, milliseconds, as JavaScript prints it.';

create function private.event_heard(
  p_n bigint, p_c private.command, p_kind text, p_body jsonb, p_more boolean, p_own_people uuid[]
) returns jsonb
language plpgsql stable set search_path = '' as $$
begin
  -- Of what nobody hears, nobody hears either whom it concerns.
  return case when p_body is null then jsonb_build_object('n', p_n, 'more', p_more)
  else jsonb_build_object('n', p_n, 'at', private.instant(p_c.at), 'command_id', p_c.command_id,
    'person_id', p_c.person_id, 'by_person_id', p_c.by_person_id, 'kind', p_kind, 'body', p_body, 'more', p_more)
    || case when p_own_people = '{}' then '{}' else jsonb_build_object('concerns', p_own_people) end end;
end $$;
comment on function private.event_heard is
  'What is broadcast: never lead_body. more: leads, the person concerned and those of concerns should ask events_after.';

create function private.accept(
  p_c private.command, p_kind text, p_body jsonb,
  p_lead_body jsonb default null, p_own boolean default false, p_result jsonb default '{}', p_about uuid default null,
  p_own_people uuid[] default '{}'
) returns jsonb
language plpgsql volatile set search_path = '' as $$
declare
  v_head public.orchard_heads;
  v_body jsonb := jsonb_strip_nulls(p_body);
  v_told private.command := p_c;
begin
  v_told.person_id := coalesce(p_about, p_c.person_id);
  update public.orchard_heads set head = head + 1 where orchard_id = p_c.orchard_id returning * into v_head;
  insert into public.events (orchard_id, n, at, command_id, person_id, by_person_id, kind, body, lead_body, own, own_people)
  values (p_c.orchard_id, v_head.head, p_c.at, p_c.command_id, v_told.person_id, p_c.by_person_id, p_kind,
          v_body, jsonb_strip_nulls(p_lead_body), p_own, p_own_people);
  perform realtime.send(
    private.event_heard(v_head.head, v_told, p_kind, v_body, p_lead_body is not null, p_own_people),
    'event', private.topic(p_c.orchard_id, v_head.channel_epoch), true);
  return private.store_answer(p_c, jsonb_build_object('n', v_head.head) || jsonb_strip_nulls(p_result));
end $$;
comment on function private.accept is
  'Steps 6 and 7. The answer is {"n": number of the event, …result}. p_about: the person concerned, where it is not the one whose work it is.';

create function private.refuse(p_c private.command, p_refused jsonb, p_extra jsonb default '{}') returns jsonb
language plpgsql volatile set search_path = '' as $$
begin
  return private.store_answer(p_c, jsonb_build_object('refused', p_refused) || jsonb_strip_nulls(p_extra));
end $$;
comment on function private.refuse is 'A refusal by rule is an answer: {"refused": [{"code", "detail"}]}, stored like a success.';

create function private.code(p_code text, p_detail jsonb default null) returns jsonb
language plpgsql immutable set search_path = '' as $$
begin
  return jsonb_build_array(jsonb_strip_nulls(jsonb_build_object('code', p_code, 'detail', p_detail)));
end $$;
comment on function private.code is 'One refusal as a list of one, so that lists are joined with ||.';

create function private.when_said(p_said timestamptz, p_earliest timestamptz, p_latest timestamptz) returns timestamptz
language plpgsql immutable set search_path = '' as $$
begin
  return least(greatest(coalesce(p_said, p_latest), p_earliest), p_latest);
end $$;
comment on function private.when_said is 'A device''s time, clamped to what can be true. For minutes and display only.';
