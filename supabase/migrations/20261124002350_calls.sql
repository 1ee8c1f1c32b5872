-- Calls for help. Never refused for state: whoever calls is heard, also late and outside a shift.
-- Leads hear of all, and the caller's own devices. That somebody is looked for is told to everybody, since
-- whoever saw them last may be anyone; an injury is not: leads act, and a crowd does not help.

create function public.call_for_help(
  p_orchard uuid, p_command uuid, p_person uuid, p_kind text, p_tree integer default null,
  p_subject uuid default null, p_note text default null, p_at timestamptz default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_shift public.shifts;
  v_call public.calls;
begin
  v_c := private.begin_command('call_for_help', p_orchard, p_command, p_person, 'self', jsonb_build_object(
    'kind', p_kind, 'tree', p_tree, 'subject', p_subject, 'note', p_note, 'at', p_at));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_kind in ('question', 'tool', 'injury', 'lost_person'), 'p_kind: question, tool, injury or lost_person.');
  if p_tree is not null then perform private.tree_or_fail(p_orchard, p_tree); end if;
  -- Also somebody who was removed meanwhile: that they are looked for is what counts.
  if p_subject is not null and not exists (select 1 from public.people where orchard_id = p_orchard and id = p_subject) then
    perform private.fail(404, 'no_such_person', 'This person is not in the orchard.');
  end if;

  v_shift := private.open_shift(p_orchard);
  -- Too many words are cut: a call is not lost for them.
  insert into public.calls (id, orchard_id, shift_id, person_id, tree_no, kind, subject_id, note, called_at)
  values (p_command, p_orchard, v_shift.id, p_person, p_tree, p_kind, case p_kind when 'lost_person' then p_subject end,
    left(nullif(btrim(p_note), ''), 300),
    private.when_said(p_at, coalesce(v_shift.opened_at, v_c.at - interval '12 hours'), v_c.at))
  returning * into v_call;
  return private.tell_of_call(v_c, v_call, 'call_made', private.call_told(v_call));
end $$;
grant execute on function public.call_for_help to authenticated;

create function private.call_told(p_call public.calls) returns jsonb
language plpgsql stable set search_path = '' as $$
begin
  return jsonb_build_object('call', p_call.id, 'kind', p_call.kind, 'tree', p_call.tree_no, 'subject', p_call.subject_id,
    'calledBy', p_call.person_id, 'calledAt', private.instant(p_call.called_at),
    'answeredBy', p_call.answered_by, 'answeredAt', private.instant(p_call.answered_at));
end $$;

create function private.tell_of_call(p_c private.command, p_call public.calls, p_kind text, p_facts jsonb) returns jsonb
language plpgsql volatile set search_path = '' as $$
begin
  if p_call.kind = 'lost_person' then
    return private.accept(p_c, p_kind, p_facts, p_about => p_call.person_id);
  end if;
  return private.accept(p_c, p_kind, null, p_facts, p_own => true, p_about => p_call.person_id);
end $$;
comment on function private.tell_of_call is 'Of the caller, whoever tapped, so that their own devices hear it.';

create function private.call_or_fail(p_orchard uuid, p_call uuid) returns public.calls
language plpgsql stable set search_path = '' as $$
declare
  v_call public.calls;
begin
  select * into v_call from public.calls where orchard_id = p_orchard and id = p_call;
  if not found then perform private.fail(404, 'no_such_call', 'There is no such call.'); end if;
  return v_call;
end $$;

create function public.answer_call(p_orchard uuid, p_command uuid, p_person uuid, p_call uuid) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_call public.calls;
begin
  v_c := private.begin_command('answer_call', p_orchard, p_command, p_person, 'lead', jsonb_build_object('call', p_call));
  if v_c.answer is not null then return v_c.answer; end if;
  v_call := private.call_or_fail(p_orchard, p_call);

  update public.calls set answered_by = p_person, answered_at = coalesce(answered_at, v_c.at)
  where id = p_call and ended_at is null
  returning * into v_call;
  if not found then v_call := private.call_or_fail(p_orchard, p_call); end if;
  return private.tell_of_call(v_c, v_call, 'call_answered', private.filled(jsonb_build_object(
    'call', p_call, 'answeredBy', v_call.answered_by, 'answeredAt', private.instant(v_call.answered_at))));
end $$;
comment on function public.answer_call is 'I am coming. Who says so last comes; the first answer is when the caller was heard.';
grant execute on function public.answer_call to authenticated;

create function private.end_calls(p_c private.command, p_calls uuid[]) returns jsonb
language plpgsql volatile set search_path = '' as $$
declare
  v_ended jsonb;
begin
  with ended as (
    update public.calls set ended_by = p_c.by_person_id, ended_at = p_c.at
    where orchard_id = p_c.orchard_id and id = any (p_calls) and ended_at is null
    returning id)
  select jsonb_agg(id order by id) into v_ended from ended;
  return coalesce(v_ended, '[]');
end $$;
comment on function private.end_calls is 'The change callsEnded.';

create function public.end_call(
  p_orchard uuid, p_command uuid, p_person uuid, p_call uuid, p_outcome text default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_call public.calls;
begin
  v_c := private.begin_command('end_call', p_orchard, p_command, p_person, 'self',
    jsonb_build_object('call', p_call, 'outcome', p_outcome));
  if v_c.answer is not null then return v_c.answer; end if;
  v_call := private.call_or_fail(p_orchard, p_call);
  if v_call.person_id <> p_person and not v_c.by_lead then return private.refuse(v_c, private.code('not_yours')); end if;

  perform private.end_calls(v_c, array[p_call]);
  -- What came of it may be told again, better.
  update public.calls set outcome = coalesce(left(nullif(btrim(p_outcome), ''), 300), outcome) where id = p_call;
  return private.tell_of_call(v_c, v_call, 'call_ended', jsonb_build_object('callsEnded', jsonb_build_array(p_call)));
end $$;
grant execute on function public.end_call to authenticated;
