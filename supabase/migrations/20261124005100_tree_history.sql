-- What became of a tree over its rounds, as this reader may know it: minutes, notes and results of looking over are for
-- leads, and for whom they concern.

create function private.names_of(p_orchard uuid, p_people uuid[]) returns jsonb
language plpgsql stable set search_path = '' as $$
begin
  return (
    select coalesce(jsonb_object_agg(id, name), '{}') from public.people
    where orchard_id = p_orchard and id = any (p_people) and name is not null);
end $$;
comment on function private.names_of is 'Also of people who left; who was forgotten has none.';

create function private.visits_told(p_reader private.reader, p_tree integer) returns jsonb
language plpgsql stable set search_path = '' as $$
begin
  return (
    select coalesce(jsonb_agg(jsonb_strip_nulls(jsonb_build_object('what', v.result, 'id', v.id, 'at', private.instant(v.at),
      'round', v.round_id, 'person', v.person_id, 'share', v.share,
      'with', (
        select jsonb_agg(distinct cp.person_id) from public.claim_people cp
        where cp.claim_id = v.claim_id and cp.person_id <> v.person_id),
      'seconds', case when p_reader.is_lead or v.person_id = any (p_reader.own) then v.seconds end,
      'late', case when p_reader.is_lead then nullif(v.came_in_late, false) end,
      'paper', case when p_reader.is_lead then nullif(v.from_paper, false) end,
      'note', case when p_reader.is_lead or v.person_id = any (p_reader.own) then v.note end))), '[]')
    from public.visits v
    where v.orchard_id = p_reader.orchard_id and v.tree_no = p_tree and v.undone_at is null
      and (v.claim_id is null or private.is_pruning(v.claim_id)));
end $$;

create function private.looked_over_told(p_reader private.reader, p_tree integer) returns jsonb
language plpgsql stable set search_path = '' as $$
begin
  return (
    select coalesce(jsonb_agg(jsonb_strip_nulls(jsonb_build_object('what', l.result, 'id', l.id, 'at', private.instant(l.at),
      'round', l.round_id, 'person', l.by_person_id, 'reason', l.reason, 'note', l.note))), '[]')
    from public.looked_over l
    where l.orchard_id = p_reader.orchard_id and l.tree_no = p_tree and (p_reader.is_lead or l.people && p_reader.own));
end $$;

create function private.marks_told(p_reader private.reader, p_tree integer) returns jsonb
language plpgsql stable set search_path = '' as $$
begin
  return (
    select coalesce(jsonb_agg(jsonb_strip_nulls(jsonb_build_object('what', 'mark', 'id', m.id, 'at', private.instant(m.marked_at),
      'round', m.round_id, 'person', m.marked_by, 'endedAt', private.instant(m.ended_at),
      'note', case when p_reader.is_lead or m.ended_at is null then m.note end))), '[]')
    from public.big_cut_marks m where m.orchard_id = p_reader.orchard_id and m.tree_no = p_tree);
end $$;

create function private.flags_told(p_reader private.reader, p_tree integer) returns jsonb
language plpgsql stable set search_path = '' as $$
begin
  return (
    select coalesce(jsonb_agg(jsonb_strip_nulls(jsonb_build_object('what', 'flag', 'id', f.id, 'at', private.instant(f.raised_at),
      'person', f.raised_by, 'kind', f.kind, 'sign', f.sign, 'severity', f.severity, 'state', f.state,
      'confirmedBy', f.confirmed_by, 'endedAt', private.instant(f.ended_at), 'endedBy', f.ended_by, 'doneOn', f.done_on)
      || case when p_reader.is_lead then jsonb_build_object('note', f.note, 'endedNote', f.ended_note, 'doneBy', f.done_by)
        else '{}' end)), '[]')
    from public.flags f where f.orchard_id = p_reader.orchard_id and f.tree_no = p_tree);
end $$;

create function private.photos_told(p_reader private.reader, p_tree integer) returns jsonb
language plpgsql stable set search_path = '' as $$
begin
  return (
    select coalesce(jsonb_agg(jsonb_strip_nulls(jsonb_build_object('what', 'photo', 'id', p.id, 'at', private.instant(p.added_at),
      'person', p.taken_by, 'purpose', p.purpose))), '[]')
    from public.photos p
    left join public.flags f on f.id = p.flag_id
    left join public.big_cut_marks m on m.id = p.mark_id
    left join public.claims c on c.id = p.claim_id
    where p.orchard_id = p_reader.orchard_id and coalesce(p.tree_no, f.tree_no, m.tree_no, c.tree_no) = p_tree
      -- As private.read_photo.
      and (p_reader.is_lead or p.taken_by = any (p_reader.own) or m.ended_at is null and m.id is not null));
end $$;

create function private.rounds_of_tree(p_orchard uuid, p_tree integer) returns jsonb
language plpgsql stable set search_path = '' as $$
begin
  return (
    select coalesce(jsonb_agg(jsonb_build_object('round', r.id, 'kind', r.kind, 'season', r.season,
      'openedAt', private.instant(r.opened_at), 'closedAt', private.instant(r.closed_at),
      'state', coalesce(w.state, 'unpruned'), 'share', w.share) order by r.opened_at desc, r.id), '[]')
    from public.rounds r
    join public.trees t on t.orchard_id = r.orchard_id and t.no = p_tree
    left join public.tree_work w on w.round_id = r.id and w.tree_no = p_tree
    where r.orchard_id = p_orchard and (t.species = any (r.species) or w.tree_no is not null
      or exists (select 1 from public.visits v where v.orchard_id = p_orchard and v.round_id = r.id and v.tree_no = p_tree)));
end $$;

create function public.tree_history(p_orchard uuid, p_tree integer) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
declare
  v_reader private.reader := private.begin_read(p_orchard);
  v_things jsonb;
begin
  perform private.tree_or_fail(p_orchard, p_tree);
  v_things := private.visits_told(v_reader, p_tree) || private.looked_over_told(v_reader, p_tree)
    || private.marks_told(v_reader, p_tree) || private.flags_told(v_reader, p_tree) || private.photos_told(v_reader, p_tree);
  return jsonb_build_object(
    'tree', p_tree,
    'rounds', private.rounds_of_tree(p_orchard, p_tree),
    'things', (
      select coalesce(jsonb_agg(x order by x ->> 'at' desc, x ->> 'id'), '[]') from jsonb_array_elements(v_things) x),
    'names', private.names_of(p_orchard, (
      select array_agg(distinct id::uuid)
      from jsonb_array_elements(v_things) x,
      lateral (
        select unnest(array[x ->> 'person', x ->> 'confirmedBy', x ->> 'endedBy'])
        union all select jsonb_array_elements_text(coalesce(x -> 'with', '[]'))) who (id)
      where id is not null)));
end $$;
comment on function public.tree_history is 'What a volunteer hears of a tree at the time, and no more: no minutes, no notes, no results of others'' looking over.';
grant execute on function public.tree_history to authenticated;
