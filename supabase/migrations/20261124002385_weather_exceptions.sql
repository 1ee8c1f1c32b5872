-- A lead lets a species be pruned although it is off, and says why. What protects people has no exception, but for
-- darkness: it is reckoned, not measured, and who stands there sees lamps, or that it is day.

create function private.is_because(p_what text, p_because text) returns boolean
language plpgsql immutable set search_path = '' as $$
begin
  return p_because = 'lead_judges' or case when p_what = 'dark' then p_because in ('lamps', 'day_here')
    else p_because in ('bark_is_dry', 'dead_wood_only', 'wounds_covered', 'young_tree', 'must_come_off') end;
end $$;

create function private.lifted_by(p_shift public.shifts, p_what text, p_because text, p_at timestamptz) returns text[]
language plpgsql stable set search_path = '' as $$
begin
  if p_what <> 'dark' then return private.all_species_offs(p_shift, p_what, p_at); end if;
  return case when p_because = 'day_here' then '{dark, light}' else '{dark}' end::text[];
end $$;
comment on function private.lifted_by is
  'The reasons in force, of a species. Darkness is foreseen: before it falls, too. No ladders by lamps, only where it is day.';

create function public.make_exception(
  p_orchard uuid, p_command uuid, p_person uuid, p_what text, p_because text, p_note text default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_shift public.shifts;
  v_lifts text[];
  v_before jsonb;
begin
  v_c := private.begin_command('make_exception', p_orchard, p_command, p_person, 'lead',
    jsonb_build_object('what', p_what, 'because', p_because, 'note', p_note));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_what = 'dark' or private.is_species(p_what), 'p_what: a species, or dark.');
  perform private.need(private.is_because(p_what, p_because),
    'p_because: bark_is_dry, dead_wood_only, wounds_covered, young_tree, must_come_off or lead_judges; of the dark: lamps, day_here or lead_judges.');
  perform private.need(p_note is null or char_length(p_note) <= 300, 'p_note: up to 300 characters.');
  v_shift := private.open_shift(p_orchard);
  if v_shift.id is null then return private.refuse(v_c, private.code('shift_not_open')); end if;

  v_lifts := private.lifted_by(v_shift, p_what, p_because, v_c.at);
  if v_lifts = '{}' then
    return private.refuse(v_c, private.code('not_off', jsonb_build_object('species', p_what)));
  end if;

  -- An older one is replaced, and what it lifted goes on being lifted if that is still so: lamps, where it was said to be day, lift less.
  v_before := private.claims_put_off(p_orchard, v_c.at);
  update public.weather_exceptions set ended_at = v_c.at, ended_by = v_c.by_person_id
  where shift_id = v_shift.id and what = p_what and ended_at is null;
  insert into public.weather_exceptions (id, orchard_id, shift_id, what, lifts, because, note, made_by, made_at)
  values (p_command, p_orchard, v_shift.id, p_what, v_lifts, p_because, nullif(btrim(p_note), ''), v_c.by_person_id, v_c.at);
  return private.accept(v_c, 'exception_made',
    jsonb_build_object('what', p_what, 'lifts', v_lifts, 'because', p_because) || private.tell_to_leave(v_c, v_before));
end $$;
comment on function public.make_exception is 'Lifts the reasons that are in force now; one that comes later is not lifted.';
grant execute on function public.make_exception to authenticated;

create function public.end_exception(p_orchard uuid, p_command uuid, p_person uuid, p_what text) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_shift public.shifts;
  v_before jsonb;
begin
  v_c := private.begin_command('end_exception', p_orchard, p_command, p_person, 'lead', jsonb_build_object('what', p_what));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_what = 'dark' or private.is_species(p_what), 'p_what: a species, or dark.');
  v_shift := private.open_shift(p_orchard);
  if v_shift.id is null then return private.refuse(v_c, private.code('shift_not_open')); end if;

  v_before := private.claims_put_off(p_orchard, v_c.at);
  update public.weather_exceptions set ended_at = v_c.at, ended_by = v_c.by_person_id
  where shift_id = v_shift.id and what = p_what and ended_at is null;
  return private.accept(v_c, 'exception_ended', jsonb_build_object('what', p_what) || private.tell_to_leave(v_c, v_before));
end $$;
grant execute on function public.end_exception to authenticated;

create function public.read_exceptions(p_orchard uuid) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
begin
  perform private.begin_read(p_orchard, null, 'lead');
  return (
    select coalesce(jsonb_agg(jsonb_build_object(
      'id', e.id, 'shiftDate', e.on_date, 'what', e.what, 'lifts', e.lifts, 'because', e.because, 'note', e.note,
      'madeBy', e.made_by, 'madeAt', private.instant(e.made_at), 'endedAt', private.instant(e.ended_at))
      order by e.made_at desc), '[]')
    from (
      select x.*, s.on_date from public.weather_exceptions x join public.shifts s on s.id = x.shift_id
      where x.orchard_id = p_orchard order by x.made_at desc limit 100) e
  );
end $$;
comment on function public.read_exceptions is 'The newest 100, with what was written: typed text is read here and never in events.';
grant execute on function public.read_exceptions to authenticated;
