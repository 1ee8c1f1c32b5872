-- Who reads: every read asks this first, so that it knows what may be told.

create type private.reader as (
  orchard_id uuid,
  person_id uuid,
  role text,
  is_lead boolean,
  own uuid[]
);
comment on type private.reader is 'own: every person of this orchard that the login acts for.';

create function private.begin_read(p_orchard uuid, p_person uuid default null, p_right text default 'member') returns private.reader
language plpgsql stable set search_path = '' as $$
declare
  v_user uuid := auth.uid();
  v_reader private.reader;
  v_admitted boolean;
begin
  if v_user is null then perform private.fail(401, 'signed_out', 'Sign in first.'); end if;

  select p.orchard_id, p.id, p.role, private.is_lead_role(p.role), array_agg(p.id) over (), p.admitted_at is not null
  into v_reader.orchard_id, v_reader.person_id, v_reader.role, v_reader.is_lead, v_reader.own, v_admitted
  from public.logins l
  join public.people p on p.id = l.person_id
  where l.user_id = v_user and l.orchard_id = p_orchard and l.ended_at is null and p.removed_at is null
  -- The person named; without one, whoever of this login may read most.
  order by (p.id = p_person) desc nulls last, (p.admitted_at is not null) desc, (p.role = 'manager') desc,
    private.is_lead_role(p.role) desc, l.linked_at
  limit 1;

  if v_reader.person_id is null
    or (p_person is not null and v_reader.person_id <> p_person)
    or (p_right = 'lead' and not v_reader.is_lead)
    or (p_right = 'manager' and v_reader.role <> 'manager')
  then perform private.fail(403, 'not_allowed', 'You cannot read this.'); end if;
  -- Told apart from not_allowed, so that a phone waits instead of putting itself out.
  if not v_admitted then perform private.fail(403, 'not_admitted', 'A lead has not let you in yet.'); end if;
  return v_reader;
end $$;
comment on function private.begin_read is
  'The reader, or 401 or 403. p_person: that person''s own login; null: any member. p_right: member, lead or manager.';

create function public.my_orchards() returns jsonb
language plpgsql stable security definer set search_path = '' as $$
begin
  if auth.uid() is null then perform private.fail(401, 'signed_out', 'Sign in first.'); end if;
  return (
    select coalesce(jsonb_agg(jsonb_build_object(
      'orchard', o.id, 'name', o.name, 'language', o.language,
      'person', p.id, 'personName', p.name, 'role', p.role, 'admitted', p.admitted_at is not null)
      order by l.linked_at, p.id), '[]')
    from public.logins l
    join public.people p on p.id = l.person_id
    join public.orchards o on o.id = l.orchard_id
    where l.user_id = auth.uid() and l.ended_at is null and p.removed_at is null
  );
end $$;
grant execute on function public.my_orchards to authenticated;
