-- Where the orchard is, and whether the sun is up there: the method of lib/domain/safety/sun.ts, where its source stands.

create index trees_placed on public.trees (orchard_id, no) where lat_e7 is not null;

create function private.sun_height(p_lat double precision, p_lon double precision, p_at timestamptz) returns double precision
language plpgsql immutable strict set search_path = '' as $$
declare
  v_minutes double precision := extract(epoch from p_at)::double precision / 60;
  v_t double precision := (v_minutes / 1440 + 2440587.5 - 2451545) / 36525;
  v_mean double precision := 280.46646 + v_t * (36000.76983 + v_t * 0.0003032);
  v_anomaly double precision := 357.52911 + v_t * (35999.05029 - 0.0001537 * v_t);
  v_centre double precision := sind(v_anomaly) * (1.914602 - v_t * (0.004817 + 0.000014 * v_t))
    + sind(2 * v_anomaly) * (0.019993 - 0.000101 * v_t) + sind(3 * v_anomaly) * 0.000289;
  v_node double precision := 125.04 - 1934.136 * v_t;
  v_longitude double precision := v_mean + v_centre - 0.00569 - 0.00478 * sind(v_node);
  v_seconds double precision := 21.448 - v_t * (46.815 + v_t * (0.00059 - v_t * 0.001813));
  v_obliquity double precision := 23 + (26 + v_seconds / 60) / 60 + 0.00256 * cosd(v_node);
  v_dec double precision := asind(sind(v_obliquity) * sind(v_longitude));
  v_e double precision := 0.016708634 - v_t * (0.000042037 + 0.0000001267 * v_t);
  v_y double precision := tand(v_obliquity / 2) ^ 2;
  v_equation double precision := 4 * degrees(
    v_y * sind(2 * v_mean) - 2 * v_e * sind(v_anomaly) + 4 * v_e * v_y * sind(v_anomaly) * cosd(2 * v_mean)
    - 0.5 * v_y * v_y * sind(4 * v_mean) - 1.25 * v_e * v_e * sind(2 * v_anomaly));
  v_hour_angle double precision := (v_minutes - 1440 * floor(v_minutes / 1440) + v_equation + 4 * p_lon) / 4 - 180;
begin
  return asind(least(1, greatest(-1,
    sind(p_lat) * sind(v_dec) + cosd(p_lat) * cosd(v_dec) * cosd(v_hour_angle))));
end $$;
comment on function private.sun_height is 'Degrees of the middle of the sun above the horizon, without refraction.';

create function private.orchard_place(p_orchard uuid) returns point
language plpgsql stable set search_path = '' as $$
declare
  v_place point;
begin
  select point(first_lat_e7 / 1e7, first_lon_e7 / 1e7) into v_place
  from public.blocks where orchard_id = p_orchard and first_lat_e7 is not null order by no limit 1;
  if v_place is null then
    select point(lat_e7 / 1e7, lon_e7 / 1e7) into v_place
    from public.trees where orchard_id = p_orchard and lat_e7 is not null order by no limit 1;
  end if;
  return v_place;
end $$;
comment on function private.orchard_place is
  '(latitude, longitude), as positionOf of lib/events/ground.ts. Null: nobody knows, so nobody knows whether it is dark.';

create function private.is_sun_up(p_orchard uuid, p_at timestamptz) returns boolean
language plpgsql stable set search_path = '' as $$
declare
  v_place point := private.orchard_place(p_orchard);
begin
  -- From rise to set, with refraction. Above the polar circles there are days without either.
  return private.sun_height(v_place[0], v_place[1], p_at) >= -0.833;
end $$;
comment on function private.is_sun_up is 'Null where nobody knows where the orchard is.';
