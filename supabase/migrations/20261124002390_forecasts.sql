-- The hours to come, as somebody brought them in. They refuse nothing: a lead writes down what is.

create table public.forecasts (
  orchard_id uuid not null constraint forecasts_orchard references public.orchards on delete cascade,
  id uuid not null,
  hours jsonb not null,
  brought_by uuid not null,
  brought_at timestamptz not null,
  constraint forecasts_key primary key (orchard_id)
);
comment on table public.forecasts is 'The newest only. hours: [[from, temperature, humidity, wind, gust, rain in mm], …]; null: not said.';

alter table public.forecasts enable row level security;

create function private.is_forecast_hour(p_hour jsonb) returns boolean
language sql immutable set search_path = '' as $$
  select jsonb_typeof(p_hour) = 'array' and jsonb_array_length(case when jsonb_typeof(p_hour) = 'array' then p_hour else '[]' end) = 6
    and (p_hour ->> 0) ~ '^2[01]\d\d-[01]\d-[0-3]\dT[0-2]\d:[0-5]\d:00\.000Z$'
    and not exists (
      select 1 from jsonb_array_elements(case when jsonb_typeof(p_hour) = 'array' then p_hour - 0 else '[]' end) x
      where jsonb_typeof(x) not in ('number', 'null')
        or case when jsonb_typeof(x) = 'number' then (x #>> '{}')::numeric not between -40 and 300 else false end)
$$;

create function public.bring_in_forecast(p_orchard uuid, p_command uuid, p_person uuid, p_hours jsonb) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
begin
  v_c := private.begin_command('bring_in_forecast', p_orchard, p_command, p_person, 'lead', jsonb_build_object('hours', p_hours));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(jsonb_typeof(p_hours) = 'array', 'p_hours: a list.');
  perform private.need(jsonb_array_length(p_hours) between 1 and 400, 'p_hours: 1 to 400.');
  perform private.need((select bool_and(coalesce(private.is_forecast_hour(x), false)) from jsonb_array_elements(p_hours) x),
    'p_hours: [from, temperature, humidity, wind, gust, rain] each.');

  insert into public.forecasts (orchard_id, id, hours, brought_by, brought_at)
  values (p_orchard, p_command, p_hours, v_c.by_person_id, v_c.at)
  on conflict on constraint forecasts_key do update
    set id = excluded.id, hours = excluded.hours, brought_by = excluded.brought_by, brought_at = excluded.brought_at;
  return private.accept(v_c, 'forecast_brought_in', jsonb_build_object('forecast', p_command));
end $$;
comment on function public.bring_in_forecast is 'Everything or nothing, and instead of the one before.';
grant execute on function public.bring_in_forecast to authenticated;

create function public.read_forecast(p_orchard uuid) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
begin
  perform private.begin_read(p_orchard, null);
  return (
    select jsonb_build_object('id', id, 'hours', hours, 'broughtBy', brought_by, 'broughtAt', private.instant(brought_at))
    from public.forecasts where orchard_id = p_orchard);
end $$;
comment on function public.read_forecast is 'Null: none was brought in.';
grant execute on function public.read_forecast to authenticated;
