-- What events never carry: names, contacts, the emergency card, briefing texts, notes, photos, and the trees that rarely change.

create function public.tree_sheet(p_orchard uuid, p_version integer) returns text
language plpgsql stable security definer set search_path = '' as $$
begin
  perform private.begin_read(p_orchard);
  return (select body from public.tree_sheets where orchard_id = p_orchard order by version desc limit 1);
end $$;
comment on function public.tree_sheet is
  'The newest sheet, whatever p_version says: that one only gives each version an address of its own.';
grant execute on function public.tree_sheet to authenticated;

create function public.names(p_orchard uuid, p_people uuid[] default null) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
begin
  perform private.begin_read(p_orchard);
  return (
    select coalesce(jsonb_object_agg(id, name), '{}')
    from public.people
    where orchard_id = p_orchard and name is not null
      and case when p_people is null then removed_at is null else id = any (p_people) end
  );
end $$;
comment on function public.names is 'Asked for by id, people who left have names too; forgotten people have none.';
grant execute on function public.names to authenticated;

create function public.emergency_card(p_orchard uuid) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
begin
  perform private.begin_read(p_orchard);
  return (
    select jsonb_build_object('version', o.emergency_version, 'epoch', h.epoch, 'card', o.emergency)
    from public.orchards o join public.orchard_heads h on h.orchard_id = o.id
    where o.id = p_orchard
  );
end $$;
comment on function public.emergency_card is 'epoch: after a restore the same version may say something else.';
grant execute on function public.emergency_card to authenticated;

create function public.private_people(p_orchard uuid) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
begin
  perform private.begin_read(p_orchard, null, 'lead');
  return (
    select coalesce(jsonb_object_agg(p.id, jsonb_build_object(
      'phone', p.phone, 'heardAt', private.instant(heard.heard_at), 'heardHead', heard.heard_head,
      'joinedBy', added.by_person_id, 'lastTree', last.tree_no)), '{}')
    from public.people p
    left join lateral (
      -- Whoever opened a link was heard then.
      select coalesce(l.heard_at, l.linked_at) as heard_at, l.heard_head from public.logins l
      where l.orchard_id = p_orchard and l.person_id = p.id and l.ended_at is null
      order by 1 desc limit 1) heard on true
    left join lateral (
      select c.tree_no from public.claim_people cp join public.claims c on c.id = cp.claim_id
      where cp.person_id = p.id and c.tree_no is not null
        and c.shift_id = (select s.id from public.shifts s where s.orchard_id = p_orchard and s.state = 'open')
      order by cp.from_at desc limit 1) last on true
    -- A person's id is the id of the command that made them.
    left join public.events added
      on added.orchard_id = p_orchard and added.command_id = p.id and added.by_person_id <> p.id
    where p.orchard_id = p_orchard and p.removed_at is null
  );
end $$;
comment on function public.private_people is
  'joinedBy: the lead who added this person; null when they came by a link of their own. lastTree: the last one held or helped at in this shift.';
grant execute on function public.private_people to authenticated;

create function public.read_briefing(p_orchard uuid, p_shift uuid, p_version integer default null) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
begin
  perform private.begin_read(p_orchard);
  if not exists (select 1 from public.shifts where orchard_id = p_orchard and id = p_shift) then
    perform private.fail(404, 'no_such_shift', 'There is no such shift.');
  end if;
  return (
    select jsonb_build_object('version', version, 'change', change, 'topics', topics)
    from public.briefings where shift_id = p_shift and version = coalesce(p_version, version)
    order by version desc limit 1
  );
end $$;
comment on function public.read_briefing is 'The newest version, or the one asked for: what somebody signed can be read again.';
grant execute on function public.read_briefing to authenticated;

create function public.read_photo(p_orchard uuid, p_photo uuid) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
declare
  v_reader private.reader := private.begin_read(p_orchard);
  v_photo public.photos;
begin
  select * into v_photo from public.photos where orchard_id = p_orchard and id = p_photo;
  if not v_reader.is_lead and (v_photo.taken_by = any (v_reader.own)) is not true
    and not exists (select 1 from public.big_cut_marks where id = v_photo.mark_id and ended_at is null) then
    perform private.fail(403, 'not_allowed', 'You cannot read this.');
  end if;
  if v_photo.id is null then perform private.fail(404, 'no_such_photo', 'There is no such photo.'); end if;
  return jsonb_build_object('jpeg', translate(encode(v_photo.jpeg, 'base64'), e'\n', ''));
end $$;
grant execute on function public.read_photo to authenticated;

create function public.tree_notes(p_orchard uuid, p_tree integer) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
declare
  v_round uuid;
begin
  perform private.begin_read(p_orchard);
  if not exists (select 1 from public.trees where orchard_id = p_orchard and no = p_tree) then
    perform private.fail(404, 'no_such_tree', 'There is no tree with this number.');
  end if;
  v_round := (private.work_round(p_orchard)).id;

  return (
    select coalesce(jsonb_agg(jsonb_build_object(
      'kind', kind, 'note', note, 'at', private.instant(at), 'personId', person_id) order by at desc), '[]')
    from (
      select 'begun' as kind, note, at, person_id from public.visits
      where orchard_id = p_orchard and tree_no = p_tree and round_id = v_round and result = 'begun' and undone_at is null
      union all
      -- Without saying so: what a lead found is for who worked there, what is left to do is for whoever comes.
      select 'begun', note, at, by_person_id from public.looked_over
      where orchard_id = p_orchard and tree_no = p_tree and round_id = v_round and result = 'reopened'
      union all
      select 'flag', note, raised_at, raised_by from public.flags
      where orchard_id = p_orchard and tree_no = p_tree and ended_at is null
      union all
      select 'mark', note, marked_at, marked_by from public.big_cut_marks
      where orchard_id = p_orchard and tree_no = p_tree and round_id = v_round and ended_at is null
      union all
      select 'left_out', note, changed_at, left_out_by from public.tree_work
      where tree_no = p_tree and round_id = v_round and state = 'left_out' and left_out_by is not null) notes
    where note is not null
  );
end $$;
grant execute on function public.tree_notes to authenticated;
