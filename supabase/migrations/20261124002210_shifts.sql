-- Shifts: planned, opened when a briefing is written, and what is off today.

create function private.need_hours(p_date date, p_starts_at timestamptz, p_ends_at timestamptz, p_signal text) returns void
language plpgsql stable set search_path = '' as $$
begin
  perform private.need(private.is_day(p_date), 'p_date: a day.');
  perform private.need(private.is_moment(p_starts_at) and private.is_moment(p_ends_at)
    and p_ends_at > p_starts_at and p_ends_at - p_starts_at <= interval '24 hours', 'p_starts_at, p_ends_at: within 24 hours, in order.');
  perform private.need(p_signal in ('horn', 'whistle', 'voice'), 'p_signal: horn, whistle or voice.');
end $$;

create function public.schedule_shift(
  p_orchard uuid, p_command uuid, p_person uuid, p_round uuid, p_date date,
  p_starts_at timestamptz, p_ends_at timestamptz, p_signal text default 'horn'
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
begin
  v_c := private.begin_command('schedule_shift', p_orchard, p_command, p_person, 'lead', jsonb_build_object(
    'round', p_round, 'date', p_date, 'starts_at', p_starts_at, 'ends_at', p_ends_at, 'signal', p_signal));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need_hours(p_date, p_starts_at, p_ends_at, p_signal);
  if (private.round_or_fail(p_orchard, p_round)).closed_at is not null then
    return private.refuse(v_c, private.code('round_closed'));
  end if;

  insert into public.shifts (id, orchard_id, round_id, on_date, starts_at, ends_at, signal)
  values (p_command, p_orchard, p_round, p_date, p_starts_at, p_ends_at, p_signal);
  return private.accept(v_c, 'shift_scheduled', jsonb_build_object('shift', p_command, 'roundId', p_round, 'date', p_date,
    'startsAt', private.instant(p_starts_at), 'endsAt', private.instant(p_ends_at), 'state', 'scheduled', 'signal', p_signal,
    'briefingVersion', 0, 'off', '{}'::jsonb), null, false, jsonb_build_object('shift', p_command));
end $$;
grant execute on function public.schedule_shift to authenticated;

create function private.are_offs(p_off jsonb) returns boolean
language sql immutable set search_path = '' as $$
  select jsonb_typeof(p_off) = 'object' and (
    select count(*) <= 40 and bool_and(coalesce(private.are_codes(array[key], 1)
      and (value #>> '{}') in ('season', 'rain', 'wet_wood', 'wind', 'thunder', 'heat', 'lead'), false)) is not false
    from jsonb_each(case when jsonb_typeof(p_off) = 'object' then p_off else '{}' end))
$$;
comment on function private.are_offs is '{"cherry": "season", "ladder": "wind"}';

-- Lets Eutypa and bacterial canker in: months in which it is dry after harvest are the orchard's to set.
create function private.season_offs(p_orchard uuid, p_species text[], p_date date) returns jsonb
language plpgsql stable set search_path = '' as $$
begin
  return (
    select coalesce(jsonb_object_agg(s, 'season'), '{}')
    from unnest(p_species) s
    cross join lateral (select case s when 'apricot' then 'apricot' when 'cherry' then 'cherry' when 'sour_cherry' then 'cherry' end as months) m
    cross join lateral (select
      private.house_rule(p_orchard, months || '_from_month')::integer as from_month,
      private.house_rule(p_orchard, months || '_to_month')::integer as to_month) r
    -- Both ends count, and 11 to 2 goes over the end of the year.
    where months is not null
      and (extract(month from p_date)::integer - from_month + 12) % 12 > (to_month - from_month + 12) % 12);
end $$;
comment on function private.season_offs is 'Species whose months it is not, as lib/domain/safety/species-season.ts: {"cherry": "season"}.';

create function public.open_shift(
  p_orchard uuid, p_command uuid, p_person uuid, p_shift uuid, p_off jsonb default '{}'
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_shift public.shifts;
  v_off jsonb := coalesce(p_off, '{}');
  v_round public.rounds;
  v_refused jsonb := '[]';
begin
  v_c := private.begin_command('open_shift', p_orchard, p_command, p_person, 'lead',
    jsonb_build_object('shift', p_shift, 'off', v_off));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(private.are_offs(v_off), 'p_off: {species or "ladder": reason}.');
  v_shift := private.shift_or_fail(p_orchard, p_shift);
  if private.shift_over(v_shift) is not null then return private.refuse(v_c, private.shift_over(v_shift)); end if;

  if (private.open_shift(p_orchard)).id is not null then v_refused := v_refused || private.code('shift_open'); end if;
  v_round := private.round_or_fail(p_orchard, v_shift.round_id);
  if v_round.closed_at is not null then v_refused := v_refused || private.code('round_closed'); end if;
  if private.latest_briefing(p_shift) is null then v_refused := v_refused || private.code('briefing_missing'); end if;
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  -- Out of season is off, whatever the lead says; they make an exception, and say why.
  v_off := v_off || private.season_offs(p_orchard, v_round.species, v_shift.on_date);
  update public.shifts set state = 'open', opened_at = v_c.at where id = p_shift;
  insert into public.shift_offs (orchard_id, shift_id, what, reason, set_by, set_at)
  select p_orchard, p_shift, key, value, v_c.by_person_id, v_c.at from jsonb_each_text(v_off);
  return private.accept(v_c, 'shift_opened', jsonb_build_object('shift', p_shift, 'off', v_off));
end $$;
grant execute on function public.open_shift to authenticated;

create function public.set_off_today(
  p_orchard uuid, p_command uuid, p_person uuid, p_what text, p_reason text default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_shift public.shifts;
  v_before jsonb;
begin
  v_c := private.begin_command('set_off_today', p_orchard, p_command, p_person, 'lead',
    jsonb_build_object('what', p_what, 'reason', p_reason));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(private.are_codes(array[p_what], 1), 'p_what: a species or "ladder".');
  perform private.need(p_reason is null or private.are_offs(jsonb_build_object(p_what, p_reason)), 'p_reason: a known reason, or null.');
  v_shift := private.open_shift(p_orchard);
  if v_shift.id is null then return private.refuse(v_c, private.code('shift_not_open')); end if;
  if p_reason is distinct from 'season' and exists (
    select 1 from public.shift_offs where shift_id = v_shift.id and what = p_what and reason = 'season')
  then return private.refuse(v_c, private.code('exception_needed', jsonb_build_object('species', p_what))); end if;

  v_before := private.claims_put_off(p_orchard, v_c.at);
  delete from public.shift_offs where shift_id = v_shift.id and what = p_what;
  insert into public.shift_offs (orchard_id, shift_id, what, reason, set_by, set_at)
  select p_orchard, v_shift.id, p_what, p_reason, v_c.by_person_id, v_c.at where p_reason is not null;
  return private.accept(v_c, 'off_changed', jsonb_build_object('shift', v_shift.id, 'what', p_what, 'reason', p_reason)
    || private.tell_to_leave(v_c, v_before));
end $$;
grant execute on function public.set_off_today to authenticated;
