-- The newest note on each tree, for the printed day.

create function public.notes_of_round(p_orchard uuid) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
declare
  v_round uuid;
begin
  perform private.begin_read(p_orchard, null, 'lead');
  v_round := (private.work_round(p_orchard)).id;
  return (
    select coalesce(jsonb_agg(jsonb_build_array(tree_no, note) order by tree_no), '[]')
    from (
      select distinct on (tree_no) tree_no, note
      from (
        select tree_no, note, at from public.visits
        where orchard_id = p_orchard and round_id = v_round and result = 'begun' and undone_at is null
        union all
        select tree_no, note, raised_at from public.flags where orchard_id = p_orchard and ended_at is null
        union all
        select tree_no, note, marked_at from public.big_cut_marks
        where orchard_id = p_orchard and round_id = v_round and ended_at is null) notes
      where note is not null and note <> ''
      order by tree_no, at desc) latest
  );
end $$;
comment on function public.notes_of_round is 'For leads: [[tree, note]], the newest of each tree, of the same kinds as tree_notes.';
grant execute on function public.notes_of_round to authenticated;
