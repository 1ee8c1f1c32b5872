-- The orchard's own picture from above: one, plain JPEG, laid over the map by three points. Read apart; events carry its version.

create table public.aerial_pictures (
  orchard_id uuid primary key constraint aerial_pictures_orchard references public.orchards on delete cascade,
  jpeg bytea not null,
  points jsonb not null,
  opacity integer not null,
  placed_by uuid not null,
  placed_at timestamptz not null,
  constraint aerial_pictures_person foreign key (orchard_id, placed_by) references public.people (orchard_id, id) on delete no action,
  constraint aerial_pictures_small check (octet_length(jpeg) <= 600000),
  constraint aerial_pictures_are_jpeg check (substring(jpeg from 1 for 3) = '\xffd8ff'::bytea),
  constraint aerial_pictures_tell_nothing_else check (
    position('\x457869660000'::bytea in jpeg) = 0
    and position('http://ns.adobe.com/xap'::bytea in jpeg) = 0
    and position('Photoshop 3.0'::bytea in jpeg) = 0),
  constraint aerial_pictures_opacity_is_a_share check (opacity between 10 and 100)
);
alter table public.aerial_pictures enable row level security;
comment on column public.aerial_pictures.points is
  'Three of [x, y, latE7, lonE7]: x and y in ten-thousandths of the picture''s width and height, from its upper left.';

create function private.are_aerial_points(p_points jsonb) returns boolean
language plpgsql immutable set search_path = '' as $$
declare
  v_n bigint[];
begin
  if jsonb_typeof(p_points) <> 'array' or jsonb_array_length(p_points) <> 3 then return false; end if;
  if exists (
    select 1 from jsonb_array_elements(p_points) point
    where case when jsonb_typeof(point) = 'array' then jsonb_array_length(point) else 0 end <> 4
      or exists (
        select 1 from jsonb_array_elements(case when jsonb_typeof(point) = 'array' then point else '[]' end) number
        where jsonb_typeof(number) <> 'number' or number #>> '{}' !~ '^-?[0-9]{1,10}$')) then return false; end if;
  select array_agg((number #>> '{}')::bigint order by p.at, n.at) into v_n
  from jsonb_array_elements(p_points) with ordinality p(point, at), jsonb_array_elements(p.point) with ordinality n(number, at);
  for v_i in 0..2 loop
    if v_n[4 * v_i + 1] not between 0 and 10000 or v_n[4 * v_i + 2] not between 0 and 10000
      or v_n[4 * v_i + 3] not between -900000000 and 900000000 or v_n[4 * v_i + 4] not between -1800000000 and 1800000000 then
      return false;
    end if;
  end loop;
  -- On one line they say nothing about what lies beside it: a twentieth of the picture must lie between them.
  return abs((v_n[5] - v_n[1]) * (v_n[10] - v_n[2]) - (v_n[9] - v_n[1]) * (v_n[6] - v_n[2])) >= 5000000
    and (v_n[7] - v_n[3]) * (v_n[12] - v_n[4]) <> (v_n[11] - v_n[3]) * (v_n[8] - v_n[4]);
end $$;

create function public.place_aerial(
  p_orchard uuid, p_command uuid, p_person uuid, p_points jsonb, p_opacity integer, p_jpeg text default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_jpeg bytea;
  v_version integer;
begin
  -- The picture itself is not kept with the answer, only what it hashes to.
  v_c := private.begin_command('place_aerial', p_orchard, p_command, p_person, 'manager', jsonb_build_object(
    'points', p_points, 'opacity', p_opacity, 'jpeg_sha256', encode(sha256(convert_to(coalesce(p_jpeg, ''), 'UTF8')), 'hex')));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_opacity between 10 and 100, 'p_opacity: 10 to 100.');
  perform private.need(private.are_aerial_points(p_points), 'p_points: three of [x, y, latE7, lonE7] that are not on one line.');
  if p_jpeg is null then
    select jpeg into v_jpeg from public.aerial_pictures where orchard_id = p_orchard;
    if v_jpeg is null then return private.refuse(v_c, private.code('no_picture')); end if;
  else
    -- 600,000 bytes are 800,000 characters of base64; line ends may come in between.
    if length(p_jpeg) > 830000 then return private.refuse(v_c, private.code('photo_too_large')); end if;
    v_jpeg := private.jpeg_or_fail(p_jpeg);
    if octet_length(v_jpeg) > 600000 then return private.refuse(v_c, private.code('photo_too_large')); end if;
    if not private.is_plain_jpeg(v_jpeg) then return private.refuse(v_c, private.code('photo_not_plain')); end if;
  end if;

  insert into public.aerial_pictures (orchard_id, jpeg, points, opacity, placed_by, placed_at)
  values (p_orchard, v_jpeg, p_points, p_opacity, p_person, v_c.at)
  on conflict (orchard_id) do update set jpeg = excluded.jpeg, points = excluded.points, opacity = excluded.opacity,
    placed_by = excluded.placed_by, placed_at = excluded.placed_at;
  update public.orchards set aerial_version = aerial_version + 1 where id = p_orchard returning aerial_version into v_version;
  return private.accept(v_c, 'orchard_changed', jsonb_build_object('aerialVersion', v_version));
end $$;
comment on function public.place_aerial is 'p_jpeg null: the picture that is there, placed anew.';
grant execute on function public.place_aerial to authenticated;

create function public.remove_aerial(p_orchard uuid, p_command uuid, p_person uuid) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_version integer;
begin
  v_c := private.begin_command('remove_aerial', p_orchard, p_command, p_person, 'manager', '{}');
  if v_c.answer is not null then return v_c.answer; end if;
  if not exists (select 1 from public.aerial_pictures where orchard_id = p_orchard) then
    return private.refuse(v_c, private.code('no_picture'));
  end if;

  delete from public.aerial_pictures where orchard_id = p_orchard;
  update public.orchards set aerial_version = aerial_version + 1 where id = p_orchard returning aerial_version into v_version;
  return private.accept(v_c, 'orchard_changed', jsonb_build_object('aerialVersion', v_version));
end $$;
grant execute on function public.remove_aerial to authenticated;

create function public.read_aerial(p_orchard uuid) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
begin
  perform private.begin_read(p_orchard, null, 'lead');
  return (
    select jsonb_build_object('jpeg', translate(encode(jpeg, 'base64'), E'\n', ''), 'points', points, 'opacity', opacity)
    from public.aerial_pictures where orchard_id = p_orchard
  );
end $$;
comment on function public.read_aerial is 'Null where there is none.';
grant execute on function public.read_aerial to authenticated;
