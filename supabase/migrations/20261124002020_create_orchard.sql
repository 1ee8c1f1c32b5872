-- The first manager: a set-up code, made outside the API, becomes an orchard.

create function private.make_setup_code(p_code_hash text, p_hours integer default 24) returns void
language sql volatile set search_path = '' as $$
  insert into public.setup_codes (code_hash, made_at, expires_at) values (p_code_hash, now(), now() + p_hours * interval '1 hour')
$$;
comment on function private.make_setup_code is 'For the owner: printed by the first start on an empty data directory.';

create function private.is_time_zone(p_name text) returns boolean
language plpgsql stable set search_path = '' as $$
begin
  -- Postgres also takes abbreviations, home-made rules and its own folders, which browsers do not know: every phone would fail.
  if (p_name ~ '^(UTC|GMT|[A-Za-z_]+(/[A-Za-z0-9_+-]+)+)$' and p_name !~* '^(posix|right)/' and char_length(p_name) <= 60) is not true
  then return false; end if;
  perform now() at time zone p_name;
  return true;
exception when invalid_parameter_value then
  return false;
end $$;

create function public.create_orchard(
  p_code text, p_command uuid, p_name text, p_person_name text, p_time_zone text, p_language text, p_units text
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_hash text := private.begin_code(p_code, p_command);
  v_code public.setup_codes;
begin
  select * into v_code from public.setup_codes where code_hash = v_hash for update;
  if not found then return private.wrong_code(); end if;
  v_c := ('create_orchard', p_command, p_command, p_command, p_command, true,
    jsonb_build_object('user', auth.uid(), 'code', v_hash), clock_timestamp(), null);
  v_c.answer := private.seen_before(v_c);
  if v_c.answer is not null then return v_c.answer; end if;

  -- Not stored either: what is used or over stays so.
  if v_code.used_at is not null then return jsonb_build_object('refused', private.code('code_used')); end if;
  if v_code.expires_at < v_c.at then return jsonb_build_object('refused', private.code('code_expired')); end if;
  perform private.need(private.is_line(p_name, 80), 'p_name: up to 80 characters.');
  perform private.need(private.is_line(p_person_name, 60), 'p_person_name: up to 60 characters.');
  perform private.need(private.is_time_zone(p_time_zone), 'p_time_zone: an IANA name such as Europe/Madrid.');
  perform private.need(p_language in ('en', 'es'), 'p_language: en or es.');
  perform private.need(p_units in ('metric', 'us'), 'p_units: metric or us.');

  insert into public.orchards (id, name, time_zone, language, units, created_at)
  values (p_command, btrim(p_name), p_time_zone, p_language, p_units, v_c.at);
  insert into public.orchard_heads (orchard_id) values (p_command);
  insert into public.people (id, orchard_id, name, role, added_at, admitted_at)
  values (p_command, p_command, btrim(p_person_name), 'manager', v_c.at, v_c.at);
  perform private.link_login(v_c);
  update public.setup_codes set used_at = v_c.at where code_hash = v_hash;
  return private.accept(v_c, 'orchard_created', '{}', null, false,
    jsonb_build_object('orchard', p_command, 'person', p_command));
end $$;
comment on function public.create_orchard is 'The command''s id becomes the id of the orchard and of its first manager.';
grant execute on function public.create_orchard to authenticated;
