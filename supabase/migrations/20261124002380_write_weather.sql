-- Weather is written down in ten seconds; who is at a tree that it puts off says that they are out of it.

create function public.write_weather(
  p_orchard uuid, p_command uuid, p_person uuid, p_temperature_c numeric default null, p_humidity numeric default null,
  p_wind_kmh numeric default null, p_gust_kmh numeric default null, p_canopy text default null, p_thunder boolean default false,
  p_rain_in_h integer default null, p_at timestamptz default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_before jsonb;
  v_reading public.weather_readings;
begin
  v_c := private.begin_command('write_weather', p_orchard, p_command, p_person, 'lead', jsonb_build_object(
    'temperature_c', p_temperature_c, 'humidity', p_humidity, 'wind_kmh', p_wind_kmh, 'gust_kmh', p_gust_kmh,
    'canopy', p_canopy, 'thunder', p_thunder, 'rain_in_h', p_rain_in_h, 'at', p_at));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_temperature_c is null or p_temperature_c between -40 and 60, 'p_temperature_c: -40 to 60.');
  perform private.need(p_humidity is null or p_humidity between 1 and 100, 'p_humidity: 1 to 100.');
  perform private.need(p_wind_kmh is null or p_wind_kmh between 0 and 250, 'p_wind_kmh: 0 to 250.');
  perform private.need(p_gust_kmh is null or p_gust_kmh between 0 and 250, 'p_gust_kmh: 0 to 250.');
  perform private.need(p_canopy is null or p_canopy in ('wet', 'dry'), 'p_canopy: wet or dry.');
  perform private.need(p_thunder is not null, 'p_thunder: true or false.');
  perform private.need(p_rain_in_h is null or p_rain_in_h between 0 and 96, 'p_rain_in_h: 0 to 96.');
  perform private.need(p_at is null or private.is_moment(p_at), 'p_at: a moment, or null.');

  v_before := private.claims_put_off(p_orchard, v_c.at);
  insert into public.weather_readings (id, orchard_id, measured_at, temperature_c, humidity, wind_kmh, gust_kmh, canopy,
    thunder, rain_in_h, written_by, written_at)
  values (p_command, p_orchard, private.when_said(p_at, v_c.at - interval '12 hours', v_c.at), p_temperature_c, p_humidity,
    p_wind_kmh, p_gust_kmh, p_canopy, p_thunder, p_rain_in_h, v_c.by_person_id, v_c.at)
  returning * into v_reading;
  return private.accept(v_c, 'weather_written', private.weather_told(v_reading) || private.tell_to_leave(v_c, v_before));
end $$;
comment on function public.write_weather is 'Null: not said. What is not said is unknown, and puts nothing off.';
grant execute on function public.write_weather to authenticated;

create function public.answer_weather(p_orchard uuid, p_command uuid, p_person uuid) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
begin
  v_c := private.begin_command('answer_weather', p_orchard, p_command, p_person, 'self', '{}');
  if v_c.answer is not null then return v_c.answer; end if;

  update public.told_to_leave set left_at = v_c.at, left_by = v_c.by_person_id
  where shift_id = (private.open_shift(p_orchard)).id and person_id = p_person and left_at is null;
  return private.accept(v_c, 'weather_answered', jsonb_build_object('person', p_person));
end $$;
comment on function public.answer_weather is '"I am down", or a lead who saw somebody come down. Never refused, like every answer.';
grant execute on function public.answer_weather to authenticated;
