-- Stop work: anyone calls it, each person answers, only a lead resumes. Rowcall counts; the horn is the alarm.

create function public.stop_work(
  p_orchard uuid, p_command uuid, p_person uuid, p_block integer default null, p_reason text default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_shift public.shifts;
begin
  v_c := private.begin_command('stop_work', p_orchard, p_command, p_person, 'self',
    jsonb_build_object('block', p_block, 'reason', p_reason));
  if v_c.answer is not null then return v_c.answer; end if;
  if p_block is not null and not exists (select 1 from public.blocks where orchard_id = p_orchard and no = p_block) then
    perform private.fail(404, 'no_such_block', 'There is no block with this number.');
  end if;
  v_shift := private.open_shift(p_orchard);
  if v_shift.id is null then return private.refuse(v_c, private.code('shift_not_open')); end if;

  -- Too many words are cut: a stop is not lost for them.
  insert into public.stops (id, orchard_id, shift_id, block_no, called_by, reason, called_at)
  values (p_command, p_orchard, v_shift.id, p_block, p_person, left(p_reason, 200), v_c.at);
  return private.accept(v_c, 'stop_called', jsonb_build_object('stop', p_command, 'block', p_block, 'calledBy', p_person,
    'calledAt', private.instant(v_c.at), 'resumed', false, 'answers', '{}'::jsonb));
end $$;
grant execute on function public.stop_work to authenticated;

create function private.stop_or_fail(p_orchard uuid, p_stop uuid) returns public.stops
language plpgsql stable set search_path = '' as $$
declare
  v_stop public.stops;
begin
  select * into v_stop from public.stops where orchard_id = p_orchard and id = p_stop;
  if not found then perform private.fail(404, 'no_such_stop', 'There is no such stop.'); end if;
  return v_stop;
end $$;

create function public.answer_stop(
  p_orchard uuid, p_command uuid, p_person uuid, p_stop uuid, p_answer text default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_stop public.stops;
  v_phase text;
begin
  v_c := private.begin_command('answer_stop', p_orchard, p_command, p_person, 'self',
    jsonb_build_object('stop', p_stop, 'answer', p_answer));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_answer is null or p_answer in ('stopped', 'resumed'), 'p_answer: stopped, resumed or null.');
  v_stop := private.stop_or_fail(p_orchard, p_stop);

  -- "I came down", sent late, does not say that this person knows that work goes on.
  v_phase := case when v_stop.resumed_at is null or p_answer = 'stopped' then 'stopped' else 'resumed' end;
  insert into public.stop_answers (orchard_id, stop_id, person_id, phase, how, by_person_id, at)
  values (p_orchard, p_stop, p_person, v_phase, case when v_c.by_person_id = p_person then 'self' else 'seen_by_lead' end, v_c.by_person_id, v_c.at)
  on conflict do nothing;
  select min(phase) into v_phase from public.stop_answers where stop_id = p_stop and person_id = p_person;
  return private.accept(v_c, 'stop_answered', jsonb_build_object('stop', p_stop, 'answer', v_phase, 'person', p_person));
end $$;
comment on function public.answer_stop is 'Null: to whatever the stop asks now. resumed outweighs stopped.';
grant execute on function public.answer_stop to authenticated;

create function public.resume_work(p_orchard uuid, p_command uuid, p_person uuid, p_stop uuid) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
begin
  v_c := private.begin_command('resume_work', p_orchard, p_command, p_person, 'lead', jsonb_build_object('stop', p_stop));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.stop_or_fail(p_orchard, p_stop);

  update public.stops set resumed_at = v_c.at, resumed_by = v_c.by_person_id where id = p_stop and resumed_at is null;
  return private.accept(v_c, 'work_resumed', jsonb_build_object('stop', p_stop));
end $$;
grant execute on function public.resume_work to authenticated;
