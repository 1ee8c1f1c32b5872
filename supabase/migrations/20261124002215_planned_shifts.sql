-- A planned shift changes or does not happen. Once it is open it is closed like any other.

create function private.not_planned(p_shift public.shifts) returns jsonb
language plpgsql immutable set search_path = '' as $$
begin
  return case when p_shift.state = 'open' then private.code('shift_open') else private.shift_over(p_shift) end;
end $$;

create function public.change_shift(
  p_orchard uuid, p_command uuid, p_person uuid, p_shift uuid, p_date date,
  p_starts_at timestamptz, p_ends_at timestamptz, p_signal text default 'horn'
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_shift public.shifts;
begin
  v_c := private.begin_command('change_shift', p_orchard, p_command, p_person, 'lead', jsonb_build_object(
    'shift', p_shift, 'date', p_date, 'starts_at', p_starts_at, 'ends_at', p_ends_at, 'signal', p_signal));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need_hours(p_date, p_starts_at, p_ends_at, p_signal);
  v_shift := private.shift_or_fail(p_orchard, p_shift);
  if private.not_planned(v_shift) is not null then return private.refuse(v_c, private.not_planned(v_shift)); end if;

  update public.shifts set on_date = p_date, starts_at = p_starts_at, ends_at = p_ends_at, signal = p_signal where id = p_shift;
  return private.accept(v_c, 'shift_changed', jsonb_build_object('shift', p_shift, 'date', p_date,
    'startsAt', private.instant(p_starts_at), 'endsAt', private.instant(p_ends_at), 'signal', p_signal));
end $$;
comment on function public.change_shift is 'Day, hours and signal, all four; what is written for it (briefing, join links) stays.';
grant execute on function public.change_shift to authenticated;

create function public.cancel_shift(p_orchard uuid, p_command uuid, p_person uuid, p_shift uuid) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_shift public.shifts;
begin
  v_c := private.begin_command('cancel_shift', p_orchard, p_command, p_person, 'lead', jsonb_build_object('shift', p_shift));
  if v_c.answer is not null then return v_c.answer; end if;
  v_shift := private.shift_or_fail(p_orchard, p_shift);
  if private.not_planned(v_shift) is not null then return private.refuse(v_c, private.not_planned(v_shift)); end if;

  update public.shifts set state = 'cancelled' where id = p_shift;
  return private.accept(v_c, 'shift_cancelled', jsonb_build_object('shift', p_shift));
end $$;
comment on function public.cancel_shift is 'Rained out: its join links end with it, and no work ever belongs to it.';
grant execute on function public.cancel_shift to authenticated;
