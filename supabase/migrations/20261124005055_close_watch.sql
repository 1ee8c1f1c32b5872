-- Whom a lead watches closely in heat: who is new, and how hot the days before were.

create function public.close_watch(p_orchard uuid) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
declare
  v_today date := private.today(p_orchard);
  v_round uuid;
begin
  perform private.begin_read(p_orchard, null, 'lead');
  v_round := (private.work_round(p_orchard)).id;
  return jsonb_build_object(
    'worked', (
      select coalesce(jsonb_object_agg(person_id, days), '{}')
      from (
        select a.person_id, count(distinct s.on_date) as days
        from public.attendances a join public.shifts s on s.id = a.shift_id
        where a.orchard_id = p_orchard and s.round_id = v_round and s.state = 'closed' and s.on_date < v_today
        group by a.person_id) them),
    'highs', (
      select coalesce(jsonb_agg(jsonb_build_array(day, high) order by day), '[]')
      from (
        select (r.measured_at at time zone o.time_zone)::date as day, max(r.temperature_c) as high
        from public.weather_readings r join public.orchards o on o.id = r.orchard_id
        where r.orchard_id = p_orchard and r.measured_at > now() - interval '7 days' and r.temperature_c is not null
        group by 1) days
      where day between v_today - 5 and v_today));
end $$;
comment on function public.close_watch is
  'For leads. worked: on how many days before today each person was here in the round that is worked in; nobody is named whose first day it is. highs: [[date, °C]], the highest written down today and on each of the five days before.';
grant execute on function public.close_watch to authenticated;
