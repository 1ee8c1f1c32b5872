-- Checks of what clients send. A value of the wrong shape is 400 malformed, never a fault of the database.

create function private.need(p_ok boolean, p_message text) returns void
language plpgsql volatile set search_path = '' as $$
begin
  if p_ok is not true then perform private.fail(400, 'malformed', p_message); end if;
end $$;
comment on function private.need is 'Null counts as not ok, so that a missing argument is malformed too.';

create function private.is_line(p_text text, p_longest integer) returns boolean
language sql immutable set search_path = '' as $$
  select btrim(p_text) <> '' and char_length(p_text) <= p_longest and p_text !~ '[\u0001-\u001f\u007f]'
$$;
comment on function private.is_line is 'Something to read, on one line. Null for null.';

create function private.are_codes(p_codes text[], p_most integer) returns boolean
language sql immutable set search_path = '' as $$
  select cardinality(p_codes) <= p_most
    and not exists (select 1 from unnest(p_codes) x where x is null or x !~ '^[a-z][a-z0-9_]{0,39}$')
$$;
comment on function private.are_codes is 'A list of words of a program (species, items of a check), not of people. Null for null.';

create function private.is_species(p_code text) returns boolean
language sql immutable set search_path = '' as $$
  select p_code in ('apple', 'pear', 'plum', 'european_plum', 'japanese_plum', 'apricot', 'peach', 'nectarine', 'cherry',
    'sour_cherry', 'quince', 'walnut', 'fig', 'persimmon', 'almond', 'pomegranate', 'other')
$$;
comment on function private.is_species is 'The same list as lib/domain/orchard/types.ts.';

create function private.is_day(p_day date) returns boolean
language sql immutable set search_path = '' as $$ select p_day between '2000-01-01' and '2200-12-31' $$;

create function private.is_moment(p_at timestamptz) returns boolean
language sql immutable set search_path = '' as $$
  select p_at between '2000-01-01 00:00:00+00' and '2200-12-31 00:00:00+00'
$$;

create function private.sha256_of(p_text text) returns text
language sql immutable set search_path = '' as $$ select encode(sha256(convert_to(p_text, 'UTF8')), 'hex') $$;
comment on function private.sha256_of is 'Codes are kept only like this; long arguments are compared by it.';

create function private.filled(p_body jsonb) returns jsonb
language sql immutable set search_path = '' as $$
  select coalesce(jsonb_object_agg(key, value), '{}') from jsonb_each(p_body) where value not in ('null', '[]')
$$;
comment on function private.filled is 'Without what is null or an empty list.';

create function private.has_role(p_person uuid, p_roles text[]) returns boolean
language sql stable set search_path = '' as $$
  select exists (select 1 from public.people where id = p_person and role = any (p_roles) and removed_at is null)
$$;

create function private.person_or_fail(p_orchard uuid, p_person uuid) returns public.people
language plpgsql stable set search_path = '' as $$
declare
  v_person public.people;
begin
  select * into v_person from public.people where orchard_id = p_orchard and id = p_person and removed_at is null;
  if not found then perform private.fail(404, 'no_such_person', 'This person is not in the orchard.'); end if;
  return v_person;
end $$;

create function private.shift_or_fail(p_orchard uuid, p_shift uuid) returns public.shifts
language plpgsql stable set search_path = '' as $$
declare
  v_shift public.shifts;
begin
  select * into v_shift from public.shifts where orchard_id = p_orchard and id = p_shift;
  if not found then perform private.fail(404, 'no_such_shift', 'There is no such shift.'); end if;
  return v_shift;
end $$;

create function private.shift_over(p_shift public.shifts) returns jsonb
language plpgsql immutable set search_path = '' as $$
begin
  return case p_shift.state
    when 'closed' then private.code('shift_closed') when 'cancelled' then private.code('shift_cancelled') end;
end $$;
comment on function private.shift_over is 'Why nothing can be planned in this shift any more, as a refusal; else null.';

create function private.round_or_fail(p_orchard uuid, p_round uuid) returns public.rounds
language plpgsql stable set search_path = '' as $$
declare
  v_round public.rounds;
begin
  select * into v_round from public.rounds where orchard_id = p_orchard and id = p_round;
  if not found then perform private.fail(404, 'no_such_round', 'There is no such round.'); end if;
  return v_round;
end $$;
