-- What the weather puts off now: the rules of lib/domain/safety/weather.ts. Unknown weather puts nothing off.

create function private.thunder_at(p_orchard uuid) returns timestamptz
language plpgsql stable set search_path = '' as $$
begin
  return (select max(measured_at) from public.weather_readings where orchard_id = p_orchard and thunder);
end $$;

create function private.wet_at(p_orchard uuid) returns timestamptz
language plpgsql stable set search_path = '' as $$
begin
  return (
    select max(measured_at) from public.weather_readings
    where orchard_id = p_orchard and (canopy = 'wet' or (canopy is null and humidity >= 90)));
end $$;
comment on function private.wet_at is 'What somebody saw counts before what the air says.';

create function private.fresh_weather(p_orchard uuid, p_at timestamptz) returns public.weather_readings
language plpgsql stable set search_path = '' as $$
declare
  v_latest public.weather_readings;
begin
  select * into v_latest from public.weather_readings
  where orchard_id = p_orchard order by measured_at desc, written_at desc limit 1;
  if p_at - v_latest.measured_at > private.house_rule(p_orchard, 'weather_minutes') * interval '1 minute' then return null; end if;
  return v_latest;
end $$;
comment on function private.fresh_weather is 'Old weather is no weather: a null row.';

create function private.heat_index_f(p_t double precision, p_rh double precision) returns double precision
language plpgsql immutable set search_path = '' as $$
declare
  v_simple double precision := 0.5 * (p_t + 61 + (p_t - 68) * 1.2 + p_rh * 0.094);
  v_adjusted double precision := 0;
begin
  if p_t < 40 then return p_t; end if;
  if v_simple <= 79 then return v_simple; end if;
  if p_rh <= 13 and p_t between 80 and 112 then
    v_adjusted := -(13 - p_rh) / 4 * sqrt((17 - abs(p_t - 95)) / 17);
  elsif p_rh > 85 and p_t between 80 and 87 then
    v_adjusted := (p_rh - 85) / 10 * ((87 - p_t) / 5);
  end if;
  return -42.379 + 2.04901523 * p_t + 10.14333127 * p_rh - 0.22475541 * p_t * p_rh - 0.00683783 * p_t * p_t
    - 0.05481717 * p_rh * p_rh + 0.00122874 * p_t * p_t * p_rh + 0.00085282 * p_t * p_rh * p_rh
    - 0.00000199 * p_t * p_t * p_rh * p_rh + v_adjusted;
end $$;
comment on function private.heat_index_f is 'NWS; which reading of it, and why: lib/domain/safety/heat-index.ts.';

create function private.feels_c(p_r public.weather_readings) returns numeric
language plpgsql immutable set search_path = '' as $$
begin
  if p_r.temperature_c is null or p_r.humidity is null then return p_r.temperature_c; end if;
  return round(((private.heat_index_f(p_r.temperature_c::double precision * 1.8 + 32, p_r.humidity::double precision) - 32) / 1.8)::numeric, 2);
end $$;

create function private.weather_stops(p_orchard uuid, p_at timestamptz) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_fresh public.weather_readings := private.fresh_weather(p_orchard, p_at);
  v_over timestamptz := private.thunder_at(p_orchard) + private.house_rule(p_orchard, 'thunder_minutes') * interval '1 minute';
  v_missing jsonb := '[]';
begin
  if p_at < v_over then
    v_missing := private.code('thunder', jsonb_build_object('until', private.instant(v_over)));
  end if;
  if greatest(v_fresh.wind_kmh, v_fresh.gust_kmh) >= private.house_rule(p_orchard, 'work_gust_kmh') then
    v_missing := v_missing || private.code('too_windy');
  end if;
  if private.feels_c(v_fresh) >= private.house_rule(p_orchard, 'heat_stop_c') then
    v_missing := v_missing || private.code('too_hot');
  end if;
  if private.is_too_dark(p_orchard, p_at) then v_missing := v_missing || private.code('dark'); end if;
  return v_missing;
end $$;
comment on function private.weather_stops is 'What puts off all work, for everybody. To weather there is no exception.';

create function private.excepts_dark(p_orchard uuid, p_reason text) returns boolean
language plpgsql stable set search_path = '' as $$
begin
  return exists (
    select 1 from public.weather_exceptions
    where shift_id = (private.open_shift(p_orchard)).id and what = 'dark' and ended_at is null and p_reason = any (lifts));
end $$;

create function private.is_too_dark(p_orchard uuid, p_at timestamptz) returns boolean
language plpgsql stable set search_path = '' as $$
begin
  return private.is_sun_up(p_orchard, p_at) is false and not private.excepts_dark(p_orchard, 'dark');
end $$;
comment on function private.is_too_dark is 'Unknown where the orchard is: not known to be dark.';

create function private.ladders_lack_light(p_orchard uuid, p_at timestamptz) returns boolean
language plpgsql stable set search_path = '' as $$
declare
  v_soon timestamptz := p_at + private.house_rule(p_orchard, 'light_minutes') * interval '1 minute';
begin
  return (private.is_sun_up(p_orchard, p_at) is false or private.is_sun_up(p_orchard, v_soon) is false)
    and not private.excepts_dark(p_orchard, 'light');
end $$;
comment on function private.ladders_lack_light is 'Down with the light, not after it. Lamps lift darkness for the ground alone.';

create function private.is_prone(p_species text) returns boolean
language plpgsql immutable set search_path = '' as $$
begin
  return p_species in ('apricot', 'cherry', 'sour_cherry');
end $$;
comment on function private.is_prone is 'As proneSpecies of lib/domain/safety/species-season.ts.';

create function private.weather_offs(p_orchard uuid, p_species text, p_at timestamptz) returns text[]
language plpgsql stable set search_path = '' as $$
declare
  v_fresh public.weather_readings := private.fresh_weather(p_orchard, p_at);
  v_dry_at timestamptz := private.wet_at(p_orchard) + private.house_rule(p_orchard, 'dry_hours') * interval '1 hour';
  v_offs text[] := '{}';
begin
  if (private.is_prone(p_species) and p_at < v_dry_at)
    or v_fresh.canopy = 'wet' or (v_fresh.canopy is null and v_fresh.humidity >= 90)
  then v_offs := v_offs || 'wet_wood'::text; end if;
  if v_fresh.measured_at + v_fresh.rain_in_h * interval '1 hour'
    <= p_at + private.house_rule(p_orchard, 'rain_hours') * interval '1 hour'
  then v_offs := v_offs || 'rain'::text; end if;
  return v_offs;
end $$;

create function private.all_species_offs(p_shift public.shifts, p_species text, p_at timestamptz) returns text[]
language plpgsql stable set search_path = '' as $$
begin
  return (
    select coalesce(array_agg(distinct reason), '{}')
    from (
      select o.reason from public.shift_offs o where o.shift_id = p_shift.id and o.what = p_species
      union all select unnest(private.weather_offs(p_shift.orchard_id, p_species, p_at))) x);
end $$;

create function private.species_offs(p_shift public.shifts, p_species text, p_at timestamptz) returns text[]
language plpgsql stable set search_path = '' as $$
begin
  return (
    select coalesce(array_agg(x.reason order by x.reason), '{}')
    from unnest(private.all_species_offs(p_shift, p_species, p_at)) x(reason)
    where not exists (
      select 1 from public.weather_exceptions e
      where e.shift_id = p_shift.id and e.what = p_species and e.ended_at is null and x.reason = any (e.lifts)));
end $$;
comment on function private.species_offs is 'Why trees of this species are off now, less what a lead excepts.';

create function private.ladders_off_because(p_shift public.shifts, p_at timestamptz) returns text
language plpgsql stable set search_path = '' as $$
declare
  v_fresh public.weather_readings := private.fresh_weather(p_shift.orchard_id, p_at);
begin
  return coalesce(
    (select o.reason from public.shift_offs o where o.shift_id = p_shift.id and o.what = 'ladder'),
    case when greatest(v_fresh.wind_kmh, v_fresh.gust_kmh) >= private.house_rule(p_shift.orchard_id, 'ladder_gust_kmh')
      then 'wind'
      when private.ladders_lack_light(p_shift.orchard_id, p_at) then 'light' end);
end $$;

create function private.put_off(p_tree public.trees, p_shift public.shifts, p_ladder boolean, p_at timestamptz) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_offs text[] := private.species_offs(p_shift, p_tree.species, p_at);
  v_ladders text := case when p_ladder then private.ladders_off_because(p_shift, p_at) end;
begin
  return case when v_offs = '{}' then '[]'::jsonb
      else private.code('species_off', jsonb_build_object('species', p_tree.species, 'reason', v_offs[1])) end
    || case when v_ladders is null then '[]'::jsonb else private.code('ladders_off', jsonb_build_object('reason', v_ladders)) end;
end $$;
comment on function private.put_off is 'Why nobody prunes this tree now, as refusals.';

-- Claim → why its people leave it now. The gravest reason alone.
create function private.claims_put_off(p_orchard uuid, p_at timestamptz) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_shift public.shifts := private.open_shift(p_orchard);
  v_stop text := private.weather_stops(p_orchard, p_at) -> 0 ->> 'code';
  v_ladders text := private.ladders_off_because(v_shift, p_at);
begin
  return (
    select coalesce(jsonb_object_agg(c.id, why), '{}')
    from public.claims c
    left join public.trees t on t.orchard_id = c.orchard_id and t.no = c.tree_no
    cross join lateral (select case
      when v_stop is not null then v_stop
      when c.kind <> 'prune' then null
      when c.ladder and v_ladders is not null then 'ladders_off'
      when private.species_offs(v_shift, t.species, p_at) <> '{}' then 'species_off' end as why) x
    where c.orchard_id = p_orchard and c.ended_at is null and why is not null);
end $$;

create function private.tell_to_leave(p_c private.command, p_before jsonb) returns jsonb
language plpgsql volatile set search_path = '' as $$
declare
  v_after jsonb := private.claims_put_off(p_c.orchard_id, p_c.at);
  v_told jsonb;
begin
  with told as (
    insert into public.told_to_leave (orchard_id, shift_id, person_id, claim_id, tree_no, why, told_at)
    select p_c.orchard_id, c.shift_id, cp.person_id, c.id, c.tree_no, v_after ->> c.id::text, p_c.at
    from public.claims c join public.claim_people cp on cp.claim_id = c.id and cp.to_at is null
    where c.orchard_id = p_c.orchard_id and c.ended_at is null and v_after ? c.id::text
      and (v_after ->> c.id::text) is distinct from (p_before ->> c.id::text)
    on conflict on constraint told_to_leave_key do update
      set claim_id = excluded.claim_id, tree_no = excluded.tree_no, why = excluded.why, told_at = excluded.told_at,
        left_at = null, left_by = null
    returning *
  )
  select jsonb_object_agg(person_id, jsonb_build_object('claim', claim_id, 'tree', tree_no, 'why', why)) into v_told from told;
  return jsonb_build_object('toLeave', v_told);
end $$;
comment on function private.tell_to_leave is
  'Tells everybody at a tree that was not off before (private.claims_put_off) and is now: {toLeave: {person: {claim, tree, why}}}.';
