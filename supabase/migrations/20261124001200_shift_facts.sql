-- Small look-ups that rules share. All are asked after the lock, so they see the truth.

create function private.open_shift(p_orchard uuid) returns public.shifts
language plpgsql stable set search_path = '' as $$
begin
  return (
    select s from public.shifts s where s.orchard_id = p_orchard and s.state = 'open');
end $$;

create function private.attendance(p_shift uuid, p_person uuid) returns public.attendances
language plpgsql stable set search_path = '' as $$
begin
  return (
    select a from public.attendances a where a.shift_id = p_shift and a.person_id = p_person and a.left_at is null);
end $$;

create function private.rested_at(p_attendance public.attendances) returns timestamptz
language plpgsql stable set search_path = '' as $$
begin
  return coalesce((
    select max(to_at) from public.breaks
    where attendance_id = p_attendance.id and to_at - from_at >= interval '10 minutes'), p_attendance.arrived_at);
end $$;
comment on function private.rested_at is
  'Since when somebody has worked. Cal. Code Regs. Title 8 §3395 (e)(6): ten minutes net; a shorter break is no rest.';

create function private.is_here(p_shift uuid, p_person uuid) returns boolean
language plpgsql stable set search_path = '' as $$
begin
  return (
    select exists (select 1 from public.attendances a where a.shift_id = p_shift and a.person_id = p_person and a.left_at is null));
end $$;

create function private.on_break(p_shift uuid, p_person uuid) returns boolean
language plpgsql stable set search_path = '' as $$
begin
  return (
    select exists (
      select 1 from public.attendances a join public.breaks b on b.attendance_id = a.id
      where a.shift_id = p_shift and a.person_id = p_person and a.left_at is null and b.to_at is null));
end $$;

create function private.has_skill(p_person uuid, p_skill text, p_on date) returns boolean
language plpgsql stable set search_path = '' as $$
begin
  return (
    select exists (
      select 1 from public.skills s
      where s.person_id = p_person and s.skill = p_skill and s.ended_at is null and (s.until is null or s.until >= p_on)));
end $$;

create function private.latest_briefing(p_shift uuid) returns integer
language plpgsql stable set search_path = '' as $$
begin
  return (
    select max(version) from public.briefings where shift_id = p_shift);
end $$;

create function private.come_down_version(p_shift uuid) returns integer
language plpgsql stable set search_path = '' as $$
begin
  return (
    select coalesce(max(version), 0) from public.briefings where shift_id = p_shift and change = 'come_down');
end $$;
comment on function private.come_down_version is 'The last change for which everybody came down; 0 without one.';

create function private.told_version(p_shift uuid, p_person uuid) returns integer
language plpgsql stable set search_path = '' as $$
declare
  v_given integer;
begin
  select max(version) into v_given from public.briefings_given where shift_id = p_shift and person_id = p_person;
  if v_given is null then return 0; end if;
  -- Who was briefed once has what they sign by their own hand; what a lead signs for them they may never have heard.
  return (
    select greatest(v_given, max(version)) from public.briefing_signatures
    where shift_id = p_shift and person_id = p_person and signed_by = person_id);
end $$;
comment on function private.told_version is 'Up to which version a person told this person; 0 when nobody did.';

create function private.open_claim_of(p_person uuid) returns public.claims
language plpgsql stable set search_path = '' as $$
begin
  return (
    select c from public.claims c join public.claim_people cp on cp.claim_id = c.id
    where cp.person_id = p_person and cp.to_at is null and c.ended_at is null);
end $$;

create function private.row_of(p_claim public.claims) returns jsonb
language plpgsql immutable set search_path = '' as $$
begin
  return case when p_claim.tree_no is null then jsonb_build_object('block', p_claim.block_no, 'row', p_claim.row_no) end;
end $$;
comment on function private.row_of is '{block, row} of a claim that is of a row; null of a tree''s.';

create function private.people_in(p_claim uuid) returns uuid[]
language plpgsql stable set search_path = '' as $$
begin
  return (
    select array_agg(person_id) from public.claim_people where claim_id = p_claim and to_at is null);
end $$;

create function private.today(p_orchard uuid) returns date
language plpgsql stable set search_path = '' as $$
begin
  return (
    select (now() at time zone o.time_zone)::date from public.orchards o where o.id = p_orchard);
end $$;
comment on function private.today is 'The orchard''s time zone decides what "today" is.';
