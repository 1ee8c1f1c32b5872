-- The count: who arrived, who is on a break, who left.

create function private.set_found(p_c private.command, p_person uuid) returns void
language sql volatile set search_path = '' as $$
  update public.attendances set found_at = p_c.at, found_by = p_c.by_person_id
  where orchard_id = p_c.orchard_id and person_id = p_person and not_found and found_at is null
$$;

create function public.found_person(p_orchard uuid, p_command uuid, p_person uuid, p_subject uuid) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
begin
  v_c := private.begin_command('found_person', p_orchard, p_command, p_person, 'lead', jsonb_build_object('subject', p_subject));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.person_or_fail(p_orchard, p_subject);
  perform private.set_found(v_c, p_subject);
  return private.accept(v_c, 'person_found', null, jsonb_build_object('person', p_subject));
end $$;
comment on function public.found_person is 'Somebody who was not found when a shift closed. Who arrives at a later shift is found, too.';
grant execute on function public.found_person to authenticated;

create function public.arrive(p_orchard uuid, p_command uuid, p_person uuid) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_shift public.shifts;
  v_refused jsonb := '[]';
begin
  v_c := private.begin_command('arrive', p_orchard, p_command, p_person, 'self', '{}');
  if v_c.answer is not null then return v_c.answer; end if;
  v_shift := private.open_shift(p_orchard);
  if v_shift.id is null then v_refused := v_refused || private.code('shift_not_open'); end if;
  if (private.person_or_fail(p_orchard, p_person)).admitted_at is null then v_refused := v_refused || private.code('not_admitted'); end if;
  if private.is_here(v_shift.id, p_person) then v_refused := v_refused || private.code('already_here'); end if;
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  insert into public.attendances (id, orchard_id, shift_id, person_id, arrived_at, arrived_by)
  values (p_command, p_orchard, v_shift.id, p_person, v_c.at, v_c.by_person_id);
  perform private.set_found(v_c, p_person);
  return private.accept(v_c, 'person_arrived', '{}');
end $$;
grant execute on function public.arrive to authenticated;

create function private.holds_another(p_person uuid) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_claim public.claims := private.open_claim_of(p_person);
begin
  if v_claim.id is null then return '[]'; end if;
  return private.code('holds_another', jsonb_build_object('claim', v_claim.id, 'tree', v_claim.tree_no,
    'row', private.row_of(v_claim)));
end $$;

create function public.start_break(p_orchard uuid, p_command uuid, p_person uuid, p_at timestamptz default null) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_here public.attendances;
  v_from timestamptz;
  v_refused jsonb := '[]';
begin
  v_c := private.begin_command('start_break', p_orchard, p_command, p_person, 'self', jsonb_build_object('at', p_at));
  if v_c.answer is not null then return v_c.answer; end if;
  if (private.open_shift(p_orchard)).id is null then return private.refuse(v_c, private.code('shift_not_open')); end if;
  v_here := private.attendance((private.open_shift(p_orchard)).id, p_person);
  if v_here.id is null then return private.refuse(v_c, private.code('not_arrived')); end if;
  if private.on_break(v_here.shift_id, p_person) then v_refused := v_refused || private.code('on_break'); end if;
  v_refused := v_refused || private.holds_another(p_person);
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  select private.when_said(p_at, greatest(v_here.arrived_at, max(to_at)), v_c.at) into v_from
  from public.breaks where attendance_id = v_here.id;
  insert into public.breaks (id, attendance_id, from_at) values (p_command, v_here.id, v_from);
  return private.accept(v_c, 'break_started', jsonb_build_object('at', private.instant(v_from)));
end $$;
grant execute on function public.start_break to authenticated;

create function public.end_break(p_orchard uuid, p_command uuid, p_person uuid, p_at timestamptz default null) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_here public.attendances;
  v_break public.breaks;
begin
  v_c := private.begin_command('end_break', p_orchard, p_command, p_person, 'self', jsonb_build_object('at', p_at));
  if v_c.answer is not null then return v_c.answer; end if;
  if (private.open_shift(p_orchard)).id is null then return private.refuse(v_c, private.code('shift_not_open')); end if;
  v_here := private.attendance((private.open_shift(p_orchard)).id, p_person);
  if v_here.id is null then return private.refuse(v_c, private.code('not_arrived')); end if;
  select * into v_break from public.breaks where attendance_id = v_here.id and to_at is null;
  if not found then return private.refuse(v_c, private.code('not_on_break')); end if;

  update public.breaks set to_at = private.when_said(p_at, from_at, v_c.at) where id = v_break.id returning * into v_break;
  return private.accept(v_c, 'break_ended', jsonb_build_object('at', private.instant(v_break.to_at)));
end $$;
grant execute on function public.end_break to authenticated;

create function private.cannot_leave(p_orchard uuid, p_person uuid) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_tools jsonb;
begin
  select jsonb_agg(tool_no order by tool_no) into v_tools
  from public.tool_holdings where orchard_id = p_orchard and person_id = p_person and returned_at is null;
  return private.holds_another(p_person)
    || case when v_tools is null then '[]'::jsonb else private.code('tools_out', jsonb_build_object('tools', v_tools)) end;
end $$;

create function private.leaving(p_orchard uuid, p_person uuid, p_shift uuid, p_at timestamptz) returns jsonb
language plpgsql volatile set search_path = '' as $$
begin
  return jsonb_build_object(
    'left', array[p_person],
    'dealsEnded', private.end_deals(p_orchard, private.deals_left_by(p_person, (
      select array_agg(person_id) from public.attendances where shift_id = p_shift and left_at is null)), p_at));
end $$;
comment on function private.leaving is 'Once signed out: the part of the changes, and the end of the deals that were only for them.';

create function public.leave(p_orchard uuid, p_command uuid, p_person uuid, p_at timestamptz default null) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_here public.attendances;
  v_refused jsonb;
begin
  v_c := private.begin_command('leave', p_orchard, p_command, p_person, 'self', jsonb_build_object('at', p_at));
  if v_c.answer is not null then return v_c.answer; end if;
  if (private.open_shift(p_orchard)).id is null then return private.refuse(v_c, private.code('shift_not_open')); end if;
  v_here := private.attendance((private.open_shift(p_orchard)).id, p_person);
  if v_here.id is null then return private.refuse(v_c, private.code('not_arrived')); end if;
  v_refused := private.cannot_leave(p_orchard, p_person);
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  perform private.sign_out(v_c, v_here.id, private.when_said(p_at, v_here.arrived_at, v_c.at));
  return private.accept(v_c, 'person_left', private.leaving(p_orchard, p_person, v_here.shift_id, v_c.at));
end $$;
grant execute on function public.leave to authenticated;

create function public.check_equipment(p_orchard uuid, p_command uuid, p_person uuid, p_failed_items text[]) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_shift public.shifts;
begin
  v_c := private.begin_command('check_equipment', p_orchard, p_command, p_person, 'self', jsonb_build_object('failed_items', p_failed_items));
  if v_c.answer is not null then return v_c.answer; end if;
  -- Nothing said is not "nothing failed".
  perform private.need(private.are_codes(p_failed_items, 20), 'p_failed_items: a list of codes, [] when all is well.');
  v_shift := private.open_shift(p_orchard);
  if v_shift.id is null then return private.refuse(v_c, private.code('shift_not_open')); end if;
  if not private.is_here(v_shift.id, p_person) then return private.refuse(v_c, private.code('not_arrived')); end if;

  insert into public.equipment_checks (id, orchard_id, shift_id, person_id, failed_items, checked_by, checked_at)
  values (p_command, p_orchard, v_shift.id, p_person, p_failed_items, v_c.by_person_id, v_c.at);
  if p_failed_items = '{}' then
    return private.accept(v_c, 'equipment_checked', jsonb_build_object('passed', true));
  end if;
  return private.accept(v_c, 'equipment_checked', null, jsonb_build_object('person', p_person, 'failed', p_failed_items), true);
end $$;
grant execute on function public.check_equipment to authenticated;
