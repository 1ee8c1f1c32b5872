-- Every event as a manager reads it: a page at a time, the newest first. Nothing here changes anything.

create function private.is_about_person(p_event public.events, p_person uuid) returns boolean
language plpgsql stable set search_path = '' as $$
begin
  -- Whose work it was, who tapped, or named in it: an id stands nowhere else than as itself.
  return p_person in (p_event.person_id, p_event.by_person_id)
    or strpos(p_event.body::text, p_person::text) > 0 or strpos(p_event.lead_body::text, p_person::text) > 0;
end $$;

create function private.things_of_tree(p_orchard uuid, p_tree integer) returns text[]
language plpgsql stable set search_path = '' as $$
begin
  return array(
    select id::text from public.claims where orchard_id = p_orchard and tree_no = p_tree
    union all select id::text from public.flags where orchard_id = p_orchard and tree_no = p_tree
    union all select id::text from public.calls where orchard_id = p_orchard and tree_no = p_tree);
end $$;

create function private.is_about_tree(p_event public.events, p_tree integer, p_things text[]) returns boolean
language plpgsql immutable set search_path = '' as $$
declare
  v_bodies jsonb[] := array[coalesce(p_event.body, '{}'), coalesce(p_event.lead_body, '{}')];
  v_body jsonb;
begin
  foreach v_body in array v_bodies loop
    if v_body -> 'tree' = to_jsonb(p_tree) or v_body -> 'trees' @> to_jsonb(p_tree)
      or coalesce(v_body ->> 'claim', v_body ->> 'flag', v_body ->> 'call') = any (p_things)
      or v_body -> 'dealsEnded' @> to_jsonb(p_tree) or v_body -> 'hauled' @> to_jsonb(p_tree)
      or exists (
        select 1 from jsonb_array_elements(coalesce(v_body -> 'work', '[]')) one where one -> 0 = to_jsonb(p_tree))
    then return true; end if;
  end loop;
  return false;
end $$;

create function public.audit_trail(
  p_orchard uuid, p_before bigint default null, p_about uuid default null, p_tree integer default null,
  p_kinds text[] default null, p_day date default null
) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
declare
  v_things text[];
  v_number text := '[[ ]' || p_tree || '[],}]';
  v_from timestamptz;
  v_to timestamptz;
  v_page jsonb;
begin
  perform private.begin_read(p_orchard, null, 'manager');
  perform private.need(p_kinds is null or private.are_codes(p_kinds, 200), 'p_kinds: kinds of events.');
  perform private.need(p_day is null or private.is_day(p_day), 'p_day: a day.');
  if p_tree is not null then v_things := private.things_of_tree(p_orchard, p_tree); end if;
  select p_day::timestamp at time zone time_zone, (p_day + 1)::timestamp at time zone time_zone into v_from, v_to
  from public.orchards where id = p_orchard;

  select coalesce(jsonb_agg(jsonb_build_object('n', e.n, 'at', private.instant(e.at), 'commandId', e.command_id,
    'personId', e.person_id, 'byPersonId', e.by_person_id, 'kind', e.kind, 'body', e.body, 'leadBody', e.lead_body)
    order by e.n desc), '[]') into v_page
  from (
    select * from public.events e
    where e.orchard_id = p_orchard and (p_before is null or e.n < p_before)
      and (p_day is null or e.at >= v_from and e.at < v_to)
      and (p_kinds is null or e.kind = any (p_kinds))
      and (p_about is null or private.is_about_person(e, p_about))
      -- The number stands in the text, else a thing of this tree does: only then is it worth looking closer.
      and (p_tree is null
        or coalesce(e.body ->> 'claim', e.body ->> 'flag', e.body ->> 'call', e.lead_body ->> 'flag') = any (v_things)
        or (e.body::text ~ v_number or e.lead_body::text ~ v_number) and private.is_about_tree(e, p_tree, v_things))
    order by e.n desc limit 100) e;
  return jsonb_build_object(
    'events', v_page,
    'names', private.names_of(p_orchard, array(
      select distinct each_id[1]::uuid
      from regexp_matches(v_page::text, '[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}', 'g') each_id)),
    -- What events name by id and only the past knows.
    'claims', (
      select coalesce(jsonb_object_agg(id, tree_no), '{}') from public.claims
      where orchard_id = p_orchard and tree_no is not null and id::text in (select x -> 'body' ->> 'claim' from jsonb_array_elements(v_page) x)),
    'flags', (
      select coalesce(jsonb_object_agg(id, tree_no), '{}') from public.flags
      where orchard_id = p_orchard and id::text in (
        select coalesce(x -> 'body' ->> 'flag', x -> 'leadBody' ->> 'flag') from jsonb_array_elements(v_page) x)),
    'shifts', (
      select coalesce(jsonb_object_agg(id, on_date), '{}') from public.shifts
      where orchard_id = p_orchard and id::text in (select x -> 'body' ->> 'shift' from jsonb_array_elements(v_page) x)),
    'rounds', (
      select coalesce(jsonb_object_agg(id, jsonb_build_array(kind, season)), '{}') from public.rounds
      where orchard_id = p_orchard and id::text in (select x -> 'body' ->> 'round' from jsonb_array_elements(v_page) x)));
end $$;
comment on function public.audit_trail is
  'For managers. At most 100 events before number p_before (null: the newest): of one person, tree, day of the orchard''s calendar, of some kinds.';
grant execute on function public.audit_trail to authenticated;
