-- What leads and managers do about flags: confirm a disease, write down what was done next, clear a hazard.

create function private.note_on_flag(p_c private.command, p_flag uuid, p_note text) returns integer
language plpgsql volatile set search_path = '' as $$
begin
  insert into public.flag_notes (id, orchard_id, flag_id, person_id, at, note)
  select p_c.command_id, p_c.orchard_id, p_flag, p_c.by_person_id, p_c.at, btrim(p_note)
  where btrim(p_note) <> '';
  return (select count(*) from public.flag_notes where flag_id = p_flag);
end $$;
comment on function private.note_on_flag is 'Gives how many there are now.';

create function public.confirm_flag(
  p_orchard uuid, p_command uuid, p_person uuid, p_flag uuid, p_sign text, p_severity text,
  p_part text default null, p_note text default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_flag public.flags;
begin
  v_c := private.begin_command('confirm_flag', p_orchard, p_command, p_person, 'lead', jsonb_build_object(
    'flag', p_flag, 'sign', p_sign, 'severity', p_severity, 'part', p_part, 'note', p_note));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(coalesce(p_sign, '') ~ '^[a-z_]{1,40}$', 'p_sign: what is seen.');
  perform private.need(coalesce(p_severity, '') in ('low', 'high', 'danger_now'), 'p_severity: low, high or danger_now.');
  perform private.need(p_part is null or char_length(p_part) <= 40, 'p_part: up to 40 characters.');
  perform private.need(p_note is null or char_length(p_note) <= 500, 'p_note: up to 500 characters.');
  v_flag := private.flag_or_fail(p_orchard, p_flag);
  perform private.need(v_flag.kind = 'disease', 'p_flag: only a disease is confirmed.');
  if v_flag.ended_at is not null then return private.refuse(v_c, private.code('flag_over')); end if;

  update public.flags
  set state = 'confirmed', confirmed_by = v_c.by_person_id, sign = p_sign, severity = p_severity, part = coalesce(p_part, part)
  where id = p_flag;
  return private.accept(v_c, 'flag_confirmed',
    jsonb_build_object('flag', p_flag, 'sign', p_sign, 'severity', p_severity),
    jsonb_build_object('notes', private.note_on_flag(v_c, p_flag, p_note)));
end $$;
comment on function public.confirm_flag is 'What the lead saw replaces what was reported. Again: a correction.';
grant execute on function public.confirm_flag to authenticated;

create function public.follow_up_flag(p_orchard uuid, p_command uuid, p_person uuid, p_flag uuid, p_note text) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
begin
  v_c := private.begin_command('follow_up_flag', p_orchard, p_command, p_person, 'lead', jsonb_build_object('flag', p_flag, 'note', p_note));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(coalesce(char_length(btrim(p_note)), 0) between 1 and 500, 'p_note: 1 to 500 characters.');
  if (private.flag_or_fail(p_orchard, p_flag)).ended_at is not null then
    return private.refuse(v_c, private.code('flag_over'));
  end if;

  update public.flags set acted_at = v_c.at where id = p_flag;
  return private.accept(v_c, 'flag_followed_up', null,
    jsonb_build_object('flag', p_flag, 'notes', private.note_on_flag(v_c, p_flag, p_note)));
end $$;
comment on function public.follow_up_flag is 'Who was rung, when to look again, what was seen then.';
grant execute on function public.follow_up_flag to authenticated;

create function public.clear_flag(
  p_orchard uuid, p_command uuid, p_person uuid, p_flag uuid, p_done text, p_done_by text, p_done_on date
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_flag public.flags;
begin
  v_c := private.begin_command('clear_flag', p_orchard, p_command, p_person, 'manager', jsonb_build_object(
    'flag', p_flag, 'done', p_done, 'done_by', p_done_by, 'done_on', p_done_on));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(coalesce(char_length(btrim(p_done)), 0) between 1 and 500, 'p_done: 1 to 500 characters.');
  perform private.need(coalesce(char_length(btrim(p_done_by)), 0) between 1 and 120, 'p_done_by: 1 to 120 characters.');
  perform private.need(p_done_on is not null and p_done_on <= private.today(p_orchard), 'p_done_on: a day up to today.');
  v_flag := private.flag_or_fail(p_orchard, p_flag);
  perform private.need(v_flag.kind = 'arborist', 'p_flag: a disease is withdrawn.');
  if v_flag.ended_at is not null then return private.refuse(v_c, private.code('flag_over')); end if;

  update public.flags
  set state = 'cleared', ended_by = v_c.by_person_id, ended_at = v_c.at, ended_note = btrim(p_done), done_by = btrim(p_done_by), done_on = p_done_on
  where id = p_flag;
  return private.accept(v_c, 'flag_cleared', jsonb_build_object('flag', p_flag));
end $$;
comment on function public.clear_flag is 'What the licensed arborist did, who it was and when, as the manager writes it: in the table only.';
grant execute on function public.clear_flag to authenticated;
