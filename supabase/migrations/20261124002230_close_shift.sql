-- Closing the shift: everybody signed out, trees put down, tools back, or a lead says why for each.

create function private.without_why(p_ids jsonb, p_whys jsonb) returns jsonb
language sql immutable set search_path = '' as $$
  select coalesce(jsonb_agg(id), '[]') from jsonb_array_elements(p_ids) id where p_whys -> (id #>> '{}') is null
$$;

create function private.are_whys(p_why jsonb) returns boolean
language sql immutable set search_path = '' as $$
  select jsonb_typeof(p_why) = 'object' and not exists (
    select 1 from jsonb_each(case when jsonb_typeof(p_why) = 'object' then p_why else '{}' end) list
    where list.key not in ('people', 'claims', 'tools') or jsonb_typeof(list.value) <> 'object'
      or exists (
        select 1 from jsonb_each(case when jsonb_typeof(list.value) = 'object' then list.value else '{}' end) why
        where jsonb_typeof(why.value) <> 'string' or private.is_line(why.value #>> '{}', 300) is not true))
$$;
comment on function private.are_whys is '{"people": {id: why}, "claims": {id: why}, "tools": {no: why}}';

create function private.left_open(p_shift public.shifts) returns jsonb
language sql stable set search_path = '' as $$
  select jsonb_build_object(
    'people', (select coalesce(jsonb_agg(person_id order by arrived_at), '[]')
      from public.attendances where shift_id = p_shift.id and left_at is null),
    'claims', (select coalesce(jsonb_agg(id order by opened_at), '[]')
      from public.claims where orchard_id = p_shift.orchard_id and ended_at is null),
    'tools', (select coalesce(jsonb_agg(tool_no order by tool_no), '[]')
      from public.tool_holdings where orchard_id = p_shift.orchard_id and returned_at is null))
$$;

create function private.left_without_why(p_left jsonb, p_why jsonb) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_people jsonb := private.without_why(p_left -> 'people', p_why -> 'people');
  v_claims jsonb := private.without_why(p_left -> 'claims', p_why -> 'claims');
  v_tools jsonb := private.without_why(p_left -> 'tools', p_why -> 'tools');
  v_refused jsonb := '[]';
begin
  if v_people <> '[]' then
    v_refused := v_refused || private.code('still_signed_in', jsonb_build_object('people', v_people));
  end if;
  if v_claims <> '[]' then
    v_refused := v_refused || private.code('trees_held', jsonb_build_object('claims', v_claims, 'trees', (
      select coalesce(jsonb_agg(tree_no order by tree_no), '[]') from public.claims
      where tree_no is not null and v_claims ? id::text)));
  end if;
  if v_tools <> '[]' then v_refused := v_refused || private.code('tools_out', jsonb_build_object('tools', v_tools)); end if;
  return v_refused;
end $$;

create function public.close_shift(
  p_orchard uuid, p_command uuid, p_person uuid, p_why jsonb default '{}', p_not_found uuid[] default '{}'
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_shift public.shifts;
  v_why jsonb := coalesce(p_why, '{}');
  v_left jsonb;
  v_refused jsonb;
  v_body jsonb;
  v_not_found uuid[];
begin
  v_c := private.begin_command('close_shift', p_orchard, p_command, p_person, 'lead',
    jsonb_build_object('why', v_why, 'not_found', coalesce(p_not_found, '{}')));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(private.are_whys(v_why), 'p_why: {people, claims, tools}, each {id: up to 300 characters}.');
  v_shift := private.open_shift(p_orchard);
  if v_shift.id is null then return private.refuse(v_c, private.code('shift_not_open')); end if;
  v_left := private.left_open(v_shift);
  v_refused := private.left_without_why(v_left, v_why);
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  v_body := jsonb_build_object('shift', v_shift.id, 'left', v_left -> 'people')
    || private.put_down_all(v_c, (select array_agg(x::uuid) from jsonb_array_elements_text(v_left -> 'claims') x), 'shift_closed', v_why -> 'claims')
    || jsonb_build_object(
      'returned', private.return_tools(v_c, (select array_agg(x::integer) from jsonb_array_elements_text(v_left -> 'tools') x), v_why -> 'tools'),
      'dealsEnded', private.end_deals(p_orchard, (
        select array_agg(tree_no) from public.deals where orchard_id = p_orchard and ended_at is null), v_c.at),
      'callsEnded', private.end_calls(v_c, (select array_agg(id) from public.calls where shift_id = v_shift.id and ended_at is null)));
  perform private.sign_out(v_c, id, v_c.at, v_why -> 'people' ->> person_id::text)
  from public.attendances where shift_id = v_shift.id and left_at is null;
  update public.attendances set not_found = true
  where shift_id = v_shift.id and left_at = v_c.at and person_id = any (p_not_found) and v_left -> 'people' ? person_id::text;
  select array_agg(distinct person_id) into v_not_found from public.attendances where shift_id = v_shift.id and not_found;
  -- Also a link that was made when no shift was open: it would let in at once on any other day.
  update public.invites set ended_at = v_c.at
  where orchard_id = p_orchard and kind = 'join' and coalesce(shift_id, v_shift.id) = v_shift.id and ended_at is null;
  update public.shifts set state = 'closed', closed_at = v_c.at where id = v_shift.id;
  return private.accept(v_c, 'shift_closed', private.filled(v_body),
    case when v_not_found is not null then jsonb_build_object('notFound', v_not_found) end);
end $$;
comment on function public.close_shift is
  'p_not_found: of those who are not signed out, whom nobody found. They stay on the leads'' list until found_person.';
grant execute on function public.close_shift to authenticated;
