-- The weather as leads write it down, what they except, and who was told to come out because of it.

create table public.weather_readings (
  id uuid primary key,
  orchard_id uuid not null constraint weather_readings_orchard references public.orchards on delete cascade,
  measured_at timestamptz not null,
  temperature_c numeric(5, 2) constraint weather_readings_temperature_range check (temperature_c between -40 and 60),
  humidity numeric(4, 1) constraint weather_readings_humidity_range check (humidity between 1 and 100),
  wind_kmh numeric(5, 2) constraint weather_readings_wind_range check (wind_kmh between 0 and 250),
  gust_kmh numeric(5, 2) constraint weather_readings_gust_range check (gust_kmh between 0 and 250),
  canopy text constraint weather_readings_canopy_known check (canopy in ('wet', 'dry')),
  thunder boolean not null,
  rain_in_h integer constraint weather_readings_rain_range check (rain_in_h between 0 and 96),
  written_by uuid not null,
  written_at timestamptz not null
);
create index weather_readings_newest on public.weather_readings (orchard_id, measured_at desc, written_at desc);
create index weather_readings_thunder on public.weather_readings (orchard_id, measured_at desc) where thunder;
create index weather_readings_wet on public.weather_readings (orchard_id, measured_at desc)
  where canopy = 'wet' or (canopy is null and humidity >= 90);
comment on table public.weather_readings is 'Null: not said. rain_in_h 96: none in sight.';

create table public.weather_exceptions (
  id uuid primary key,
  orchard_id uuid not null,
  shift_id uuid not null,
  what text not null,
  lifts text[] not null,
  because text not null constraint weather_exceptions_because_known
    check (because in ('bark_is_dry', 'dead_wood_only', 'wounds_covered', 'young_tree', 'must_come_off', 'lead_judges', 'lamps', 'day_here')),
  note text constraint weather_exceptions_note_length check (char_length(note) <= 300),
  made_by uuid not null,
  made_at timestamptz not null,
  ended_by uuid,
  ended_at timestamptz,
  constraint weather_exceptions_shift foreign key (orchard_id, shift_id) references public.shifts (orchard_id, id) on delete cascade
);
create unique index weather_exceptions_one_open on public.weather_exceptions (shift_id, what) where ended_at is null;
comment on table public.weather_exceptions is 'A lead lets a species be pruned although it is off, or work go on in the dark (what: dark).';
comment on column public.weather_exceptions.lifts is 'The reasons in force when it was made; a new one is not lifted.';

create table public.told_to_leave (
  orchard_id uuid not null,
  shift_id uuid not null,
  person_id uuid not null,
  claim_id uuid not null,
  tree_no integer,
  why text not null constraint told_to_leave_why_known
    check (why in ('thunder', 'too_windy', 'too_hot', 'dark', 'ladders_off', 'species_off')),
  told_at timestamptz not null,
  left_at timestamptz,
  left_by uuid,
  constraint told_to_leave_key primary key (shift_id, person_id),
  constraint told_to_leave_shift foreign key (orchard_id, shift_id) references public.shifts (orchard_id, id) on delete cascade,
  constraint told_to_leave_person foreign key (orchard_id, person_id) references public.people (orchard_id, id) on delete cascade,
  constraint told_to_leave_claim foreign key (orchard_id, claim_id) references public.claims (orchard_id, id) on delete cascade
);
comment on table public.told_to_leave is
  'Who was at a tree when weather put it off: told to come out, and when they said that they are. No tree: a row of brush.';

alter table public.weather_readings enable row level security;
alter table public.weather_exceptions enable row level security;
alter table public.told_to_leave enable row level security;

create function private.weather_told(p_r public.weather_readings) returns jsonb
language plpgsql immutable set search_path = '' as $$
begin
  return jsonb_build_object(
    'measuredAt', private.instant(p_r.measured_at), 'temperatureC', p_r.temperature_c, 'humidity', p_r.humidity,
    'windKmh', p_r.wind_kmh, 'gustKmh', p_r.gust_kmh, 'canopy', p_r.canopy, 'thunder', p_r.thunder, 'rainInH', p_r.rain_in_h);
end $$;

create function private.weather_state(p_orchard uuid) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_shift uuid := (private.open_shift(p_orchard)).id;
begin
  return jsonb_build_object(
    'weather', jsonb_build_object(
      'latest', (
        select private.weather_told(r) from public.weather_readings r
        where r.orchard_id = p_orchard order by r.measured_at desc, r.written_at desc limit 1),
      'thunderAt', private.instant(private.thunder_at(p_orchard)),
      'wetAt', private.instant(private.wet_at(p_orchard))),
    'forecast', (select f.id from public.forecasts f where f.orchard_id = p_orchard),
    'exceptions', (
      select coalesce(jsonb_object_agg(e.what, jsonb_build_object(
        'lifts', e.lifts, 'because', e.because, 'madeBy', e.made_by, 'madeAt', private.instant(e.made_at))), '{}')
      from public.weather_exceptions e where e.shift_id = v_shift and e.ended_at is null),
    'toLeave', (
      select coalesce(jsonb_object_agg(t.person_id, jsonb_build_object(
        'claim', t.claim_id, 'tree', t.tree_no, 'why', t.why, 'toldAt', private.instant(t.told_at))), '{}')
      from public.told_to_leave t where t.shift_id = v_shift and t.left_at is null));
end $$;
