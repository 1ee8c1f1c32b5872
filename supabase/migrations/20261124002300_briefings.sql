-- The briefing: written before the shift opens, given by a person, signed by each.

create function private.are_topics(p_topics jsonb) returns boolean
language sql immutable set search_path = '' as $$
  select jsonb_typeof(p_topics) = 'array' and (
    select count(*) between 1 and 40 and bool_and(coalesce(
      jsonb_typeof(topic) = 'object' and private.are_codes(array[topic ->> 'code'], 1)
      and coalesce(jsonb_typeof(topic -> 'en') in ('string', 'null') and char_length(topic ->> 'en') <= 1000, true)
      and coalesce(jsonb_typeof(topic -> 'es') in ('string', 'null') and char_length(topic ->> 'es') <= 1000, true)
      and topic - array['code', 'en', 'es'] = '{}', false))
    from jsonb_array_elements(case when jsonb_typeof(p_topics) = 'array' then p_topics else '[]' end) topic)
$$;

create function public.write_briefing(
  p_orchard uuid, p_command uuid, p_person uuid, p_shift uuid, p_topics jsonb, p_change text default 'first'
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_shift public.shifts;
  v_version integer;
  v_change text;
begin
  v_c := private.begin_command('write_briefing', p_orchard, p_command, p_person, 'lead',
    jsonb_build_object('shift', p_shift, 'topics', p_topics, 'change', p_change));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(private.are_topics(p_topics), 'p_topics: 1 to 40 of {code, en, es}, each text up to 1000 characters.');
  v_shift := private.shift_or_fail(p_orchard, p_shift);
  if private.shift_over(v_shift) is not null then return private.refuse(v_c, private.shift_over(v_shift)); end if;
  v_version := coalesce(private.latest_briefing(p_shift), 0) + 1;
  v_change := case when v_version = 1 then 'first' else p_change end;
  perform private.need(v_version = 1 or v_change in ('before_next_tree', 'come_down'),
    'p_change: a briefing that changes says before_next_tree or come_down.');

  insert into public.briefings (orchard_id, shift_id, version, topics, change, written_by, written_at)
  values (p_orchard, p_shift, v_version, p_topics, v_change, v_c.by_person_id, v_c.at);
  return private.accept(v_c, 'briefing_written', jsonb_build_object('shift', p_shift, 'version', v_version, 'change', v_change));
end $$;
grant execute on function public.write_briefing to authenticated;

create function public.give_briefing(p_orchard uuid, p_command uuid, p_person uuid, p_people uuid[]) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_shift public.shifts;
  v_version integer;
  v_refused jsonb := '[]';
  v_away uuid[];
begin
  v_c := private.begin_command('give_briefing', p_orchard, p_command, p_person, 'lead', jsonb_build_object('people', p_people));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(cardinality(p_people) between 1 and 500 and array_position(p_people, null) is null, 'p_people: 1 to 500 people.');
  perform private.person_or_fail(p_orchard, x) from unnest(p_people) x;
  v_shift := private.open_shift(p_orchard);
  if v_shift.id is null then return private.refuse(v_c, private.code('shift_not_open')); end if;
  v_version := private.latest_briefing(v_shift.id);
  if v_version is null then v_refused := v_refused || private.code('briefing_missing'); end if;
  select array_agg(x) into v_away from unnest(p_people) x where not private.is_here(v_shift.id, x);
  if v_away is not null then v_refused := v_refused || private.code('not_arrived', jsonb_build_object('people', v_away)); end if;
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  insert into public.briefings_given (orchard_id, shift_id, version, person_id, given_by, given_at)
  select p_orchard, v_shift.id, v_version, x, v_c.by_person_id, v_c.at from unnest(p_people) x
  on conflict do nothing;
  return private.accept(v_c, 'briefing_given', jsonb_build_object('version', v_version, 'people', p_people));
end $$;
grant execute on function public.give_briefing to authenticated;

create function public.sign_briefing(
  p_orchard uuid, p_command uuid, p_person uuid, p_version integer, p_language text, p_how text
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_shift public.shifts;
  v_version integer;
begin
  v_c := private.begin_command('sign_briefing', p_orchard, p_command, p_person, 'self',
    jsonb_build_object('version', p_version, 'language', p_language, 'how', p_how));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_version is not null, 'p_version: the version that was read.');
  perform private.need(p_language in ('en', 'es'), 'p_language: en or es.');
  perform private.need(p_how in ('heard', 'read_to_me', 'read'), 'p_how: heard, read_to_me or read.');
  v_shift := private.open_shift(p_orchard);
  if v_shift.id is null then return private.refuse(v_c, private.code('shift_not_open')); end if;
  v_version := private.latest_briefing(v_shift.id);
  if p_version <> v_version then
    return private.refuse(v_c, private.code('briefing_changed', jsonb_build_object('version', v_version)));
  end if;

  insert into public.briefing_signatures as known (orchard_id, shift_id, version, person_id, language, how, signed_by, signed_at)
  values (p_orchard, v_shift.id, v_version, p_person, p_language, p_how, v_c.by_person_id, v_c.at)
  -- A lead signed for them before: one's own hand says more.
  on conflict (shift_id, version, person_id) do update
    set language = excluded.language, how = excluded.how, signed_by = excluded.signed_by, signed_at = excluded.signed_at
    where excluded.signed_by = excluded.person_id and known.signed_by <> known.person_id;
  return private.accept(v_c, 'briefing_signed', jsonb_build_object(
    'version', v_version, 'own', case when v_c.by_person_id = p_person then true end));
end $$;
comment on function public.sign_briefing is 'The event''s own: signed by this person''s own hand, not by a lead for them.';
grant execute on function public.sign_briefing to authenticated;
