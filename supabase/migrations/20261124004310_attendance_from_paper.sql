-- When somebody came, rested and went, from the sheet they wrote it on.

create type private.on_paper as (arrived_at timestamptz, breaks tstzrange[], left_at timestamptz);
comment on type private.on_paper is 'arrived_at null: the arrival is known already. left_at null: still here, or that is known already.';

create function private.read_breaks(p_breaks jsonb) returns tstzrange[]
language plpgsql stable set search_path = '' as $$
begin
  if jsonb_typeof(p_breaks) is distinct from 'array' or jsonb_array_length(p_breaks) > 12 then return null; end if;
  return array(
    select tstzrange((x ->> 0)::timestamptz, (x ->> 1)::timestamptz) from jsonb_array_elements(p_breaks) x);
exception when data_exception or invalid_datetime_format or datetime_field_overflow then
  return null;
end $$;
comment on function private.read_breaks is '[[from, to]] in order; null where it is none.';

create function private.times_are_whole(p_paper private.on_paper) returns boolean
language sql immutable set search_path = '' as $$
  select coalesce(p_paper.arrived_at, p_paper.left_at, lower(p_paper.breaks[1])) is not null
    and (p_paper.arrived_at < p_paper.left_at) is not false
    and not exists (
      select 1 from unnest(p_paper.breaks) b
      where isempty(b) or private.is_moment(lower(b)) is not true or private.is_moment(upper(b)) is not true
        or lower(b) < p_paper.arrived_at or upper(b) > p_paper.left_at)
    and not exists (
      select 1 from unnest(p_paper.breaks) with ordinality a (b, i)
      join unnest(p_paper.breaks) with ordinality c (b, i) on a.i < c.i and upper(a.b) > lower(c.b))
$$;
comment on function private.times_are_whole is 'Some time is there, and they come one after the other: arrived, breaks, left.';

create function private.attendance_on_paper(p_shift public.shifts, p_person uuid, p_paper private.on_paper) returns public.attendances
language plpgsql stable set search_path = '' as $$
begin
  return (
    select a from public.attendances a
    where a.shift_id = p_shift.id and a.person_id = p_person
      and a.arrived_at <= coalesce(p_paper.arrived_at, lower(p_paper.breaks[1]), p_paper.left_at)
    order by a.arrived_at desc limit 1);
end $$;

-- Signed out when the shift was closed, which says no more than that nobody knew.
create function private.left_by_closing(p_attendance public.attendances) returns boolean
language plpgsql stable set search_path = '' as $$
begin
  return p_attendance.left_at is not null and exists (
    select 1 from public.shifts s where s.id = p_attendance.shift_id and s.closed_at = p_attendance.left_at);
end $$;

create function private.times_cannot_be(
  p_shift public.shifts, p_known public.attendances, p_paper private.on_paper, p_person uuid, p_now timestamptz
) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_last timestamptz := coalesce(p_paper.left_at, upper(p_paper.breaks[cardinality(p_paper.breaks)]), p_paper.arrived_at);
  v_refused jsonb := '[]';
begin
  if p_shift.id is null or v_last > p_now or (private.shift_at(p_shift.orchard_id, p_person, v_last)).id is distinct from p_shift.id
  then return private.code('not_in_shift'); end if;

  if p_paper.arrived_at is not null then
    if exists (
      select 1 from public.attendances a where a.shift_id = p_shift.id and a.person_id = p_person
        and tstzrange(a.arrived_at, a.left_at, '[]') && tstzrange(p_paper.arrived_at, p_paper.left_at))
    then v_refused := v_refused || private.code('already_here'); end if;
    if p_paper.left_at is null and p_shift.state = 'closed' then v_refused := v_refused || private.code('leaving_missing'); end if;
    return v_refused;
  end if;
  if p_known.id is null then return private.code('not_arrived'); end if;
  if exists (
    select 1 from public.breaks b, unnest(p_paper.breaks) said
    where b.attendance_id = p_known.id and tstzrange(b.from_at, b.to_at) && said)
  then v_refused := v_refused || private.code('already_entered'); end if;
  if p_known.left_at is not null and (v_last > p_known.left_at or (p_paper.left_at is not null and not private.left_by_closing(p_known)))
  then v_refused := v_refused || private.code('left_before'); end if;
  return v_refused;
end $$;

create function private.attendance_told(p_attendance uuid) returns jsonb
language plpgsql stable set search_path = '' as $$
begin
  return (
    select jsonb_build_object('state', case when b.id is not null and b.to_at is null then 'break' else 'here' end,
      'since', private.instant(coalesce(b.to_at, b.from_at, a.arrived_at)), 'restedAt', private.instant(private.rested_at(a)))
    from public.attendances a
    join public.shifts s on s.id = a.shift_id and s.state = 'open'
    left join lateral (
      select id, from_at, to_at from public.breaks where attendance_id = a.id order by from_at desc, to_at is null desc limit 1) b on true
    where a.id = p_attendance and a.left_at is null);
end $$;
comment on function private.attendance_told is 'As the snapshot has it; null for who is not here now.';

create function public.enter_attendance(
  p_orchard uuid, p_command uuid, p_person uuid, p_arrived_at timestamptz default null, p_breaks jsonb default '[]',
  p_left_at timestamptz default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_paper private.on_paper := (p_arrived_at, private.read_breaks(coalesce(p_breaks, '[]')), p_left_at);
  v_shift public.shifts;
  v_known public.attendances;
  v_refused jsonb;
  v_leaves boolean;
begin
  v_c := private.begin_command('enter_attendance', p_orchard, p_command, p_person, 'lead',
    jsonb_build_object('arrived_at', p_arrived_at, 'breaks', coalesce(p_breaks, '[]'), 'left_at', p_left_at));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(v_paper.breaks is not null and private.times_are_whole(v_paper)
    and coalesce(private.is_moment(p_arrived_at), true) and coalesce(private.is_moment(p_left_at), true),
    'Arrived, breaks [[from, to]] and left, one after the other.');
  v_shift := private.shift_at(p_orchard, p_person, coalesce(p_arrived_at, lower(v_paper.breaks[1]), p_left_at));
  v_known := private.attendance_on_paper(v_shift, p_person, v_paper);
  v_refused := private.times_cannot_be(v_shift, v_known, v_paper, p_person, v_c.at);
  v_leaves := p_left_at is not null and p_arrived_at is null and v_known.left_at is null;
  -- Who is still in the count leaves it as anybody does.
  if v_leaves then v_refused := v_refused || private.cannot_leave(p_orchard, p_person); end if;
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  if p_arrived_at is not null then
    insert into public.attendances (id, orchard_id, shift_id, person_id, arrived_at, arrived_by, left_at, left_by)
    values (p_command, p_orchard, v_shift.id, p_person, p_arrived_at, v_c.by_person_id, p_left_at,
      case when p_left_at is not null then v_c.by_person_id end)
    returning * into v_known;
  end if;
  insert into public.breaks (id, attendance_id, from_at, to_at)
  select gen_random_uuid(), v_known.id, lower(b), upper(b) from unnest(v_paper.breaks) b;
  if p_left_at is not null and p_arrived_at is null then perform private.sign_out(v_c, v_known.id, p_left_at); end if;
  return private.accept(v_c, 'attendance_entered', jsonb_build_object('attendance', private.attendance_told(v_known.id))
    || case when v_leaves then private.leaving(p_orchard, p_person, v_known.shift_id, v_c.at) else '{}'::jsonb end);
end $$;
comment on function public.enter_attendance is 'From paper, by a lead: when p_person came, rested and went; each part may be left out where it is known.';
grant execute on function public.enter_attendance to authenticated;
