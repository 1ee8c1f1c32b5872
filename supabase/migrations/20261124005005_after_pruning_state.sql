-- Of the state of the day: what came of trees after they were done.

create function private.looked_over_state(p_reader private.reader) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_round uuid := (private.work_round(p_reader.orchard_id)).id;
begin
  return (
    with told as (
      select distinct on (l.tree_no) l.*
      from public.looked_over l
      where l.round_id = v_round and (p_reader.is_lead or l.people && p_reader.own)
      order by l.tree_no, l.at desc
    )
    select jsonb_build_object('lookedOver', jsonb_build_object(
      'passed', (
        select coalesce(jsonb_agg(edge), '[]')
        from (select range_agg(int4range(tree_no, tree_no, '[]')) as ranges from told where result = 'passed') passed,
        unnest(passed.ranges) as run,
        lateral (values (lower(run)), (upper(run) - 1)) as edges (edge)),
      'reopened', (
        select coalesce(jsonb_agg(jsonb_build_array(tree_no, reason, by_person_id, private.instant(at)) order by tree_no), '[]')
        from told where result = 'reopened')))
  );
end $$;
comment on function private.looked_over_state is 'The last that was said of each tree; to a volunteer only of trees they had worked on.';

create function private.brush_state(p_orchard uuid) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_round uuid := (private.work_round(p_orchard)).id;
begin
  return jsonb_build_object(
    'hauled', (
      select coalesce(jsonb_agg(edge), '[]')
      from (select range_agg(int4range(tree_no, tree_no, '[]')) as ranges from public.brush_hauled where round_id = v_round) hauled,
      unnest(hauled.ranges) as run,
      lateral (values (lower(run)), (upper(run) - 1)) as edges (edge)),
    'brushGoes', (
      select coalesce(jsonb_object_agg(block_no || ':' || row_no, goes), '{}') from public.brush_ways where round_id = v_round));
end $$;
