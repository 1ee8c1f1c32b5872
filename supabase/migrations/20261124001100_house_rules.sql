-- Numbers that an orchard may set for itself, and their defaults.

-- Where each comes from stands in lib/domain/safety/weather-rules.ts.
create function private.default_weather_rules() returns jsonb
language plpgsql immutable set search_path = '' as $$
begin
  return jsonb_build_object(
    'weather_minutes', 60,      -- older weather is no weather
    'thunder_minutes', 30,      -- NWS: after the last thunder
    'ladder_gust_kmh', 30,      -- Beaufort 5; common practice, no source for the limit
    'work_gust_kmh', 40,        -- Beaufort 6; common practice, no source for the limit
    'heat_stop_c', 39,          -- as it feels; NWS: danger
    'light_minutes', 30,        -- ladders end so long before sunset; common practice, no source
    'dry_hours', 4,             -- since apricots and cherries were wet; common practice, no source
    'rain_hours', 24,           -- UC Master Gardeners, Napa
    'rain_free_days', 42,       -- UC IPM; Ramos, Moller and English 1975
    'first_rain_month', 10,     -- California's months, by UC IPM
    'apricot_from_month', 7, 'apricot_to_month', 8,
    'cherry_from_month', 7, 'cherry_to_month', 8);
end $$;

create function private.default_house_rules() returns jsonb
language plpgsql immutable set search_path = '' as $$
begin
  return jsonb_build_object(
    'ladder_from_cm', 250,      -- higher trees ask for a ladder; common practice, no source
    'keep_out_m', 10,           -- around a hazard when nobody says otherwise; common practice, no source
    'limb_cm', 10,              -- thicker limbs are the arborist's; common practice, no source: 3 to 4 inches
    'pruner_cm', 1.905,         -- common practice, no source: 1/2 to 3/4 inch
    'lopper_cm', 3.81,          -- common practice, no source: 1 1/2 to 2 inches
    'pole_cm', 2.54,            -- live wood for a pole pruner; common practice, no source: up to an inch
    'three_cut_out_cm', 30.48,  -- sources differ: 6 to 24 inches
    'three_cut_further_cm', 5.08, -- sources differ: 1 to 2 inches
    'feet_cm', 183,             -- on a ladder; common practice, no source
    'lean_deg', 15,             -- a trunk that leans further is the arborist's; common practice, no source
    'clean_tools', 1,           -- a choice, by its place in lib/domain/disease/sanitation.ts; the sources differ
    'consent_version', 1,
    'overhead_apart_m', 6,      -- between ladder or saw work and the next person; common practice, no source
    'quiet_minutes', 15,        -- out of touch this long and the lead is told; common practice, no source
    'withdraw_minutes', 2,
    'undo_minutes', 10)
    || private.default_weather_rules();
end $$;

create function private.house_rule_range(p_key text) returns numeric[]
language plpgsql immutable set search_path = '' as $$
begin
  return case p_key
    when 'ladder_from_cm' then array[100, 400]
    when 'limb_cm' then array[2, 10]
    when 'pruner_cm' then array[1.27, 1.905]
    when 'lopper_cm' then array[2.54, 5.08]
    when 'pole_cm' then array[1.27, 2.54]
    when 'three_cut_out_cm' then array[15.24, 60.96]
    when 'three_cut_further_cm' then array[2.54, 5.08]
    when 'feet_cm' then array[0, 183]
    when 'lean_deg' then array[5, 15]
    when 'clean_tools' then array[1, 3]
    when 'keep_out_m' then array[3, 200]
    when 'overhead_apart_m' then array[3, 50]
    when 'consent_version' then array[1, 10000]
    when 'quiet_minutes' then array[2, 120]
    when 'withdraw_minutes' then array[0, 60]
    when 'undo_minutes' then array[0, 60]
    when 'weather_minutes' then array[15, 180]
    when 'thunder_minutes' then array[30, 120]
    when 'ladder_gust_kmh' then array[10, 39]
    when 'work_gust_kmh' then array[15, 50]
    when 'heat_stop_c' then array[27, 51]
    when 'light_minutes' then array[0, 120]
    when 'dry_hours' then array[0, 72]
    when 'rain_hours' then array[0, 72]
    when 'rain_free_days' then array[14, 90]
    else case when p_key like '%\_month' then array[1, 12] else array[0, 10000] end end;
end $$;
comment on function private.house_rule_range is 'Least and most, as lib/domain/safety/house-rules.ts. A limb may be thinner than usual for the arborist, never thicker; feet lower, never higher; a lean less, never more.';

create function private.house_rule(p_orchard uuid, p_key text) returns numeric
language plpgsql stable set search_path = '' as $$
begin
  return (
    select coalesce(
      (select (o.house_rules ->> p_key)::numeric from public.orchards o where o.id = p_orchard),
      (private.default_house_rules() ->> p_key)::numeric));
end $$;
