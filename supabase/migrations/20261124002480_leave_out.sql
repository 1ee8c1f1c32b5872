-- Trees that are not pruned in this round, and why; and back again.

alter table public.tree_work add column left_out_by uuid;
comment on column public.tree_work.left_out_by is 'Who said so; the note says why.';

create function private.bring_back(p_round uuid, p_trees integer[], p_at timestamptz) returns jsonb
language plpgsql volatile set search_path = '' as $$
declare
  v_back integer[];
begin
  select array_agg(tree_no) into v_back from public.tree_work
  where round_id = p_round and tree_no = any (p_trees) and state = 'left_out';
  -- Begun before it was left out: somebody has been in it, and whoever comes next should know.
  update public.tree_work w set state = 'begun', share = v.share, note = v.note, left_out_by = null, changed_at = p_at
  from (
    select distinct on (tree_no) tree_no, share, note from public.visits
    where round_id = p_round and tree_no = any (v_back) and undone_at is null and result = 'begun'
    order by tree_no, at desc) v
  where w.round_id = p_round and w.tree_no = v.tree_no;
  delete from public.tree_work where round_id = p_round and tree_no = any (v_back) and state = 'left_out';
  return (
    select jsonb_agg(jsonb_build_array(t, coalesce(w.state, 'unpruned'), w.share) order by t)
    from unnest(v_back) t left join public.tree_work w on w.round_id = p_round and w.tree_no = t);
end $$;

create function public.leave_out_trees(
  p_orchard uuid, p_command uuid, p_person uuid, p_trees integer[], p_reason text default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_round uuid;
  v_refused jsonb;
  v_done jsonb;
  v_work jsonb;
begin
  v_c := private.begin_command('leave_out_trees', p_orchard, p_command, p_person, 'lead',
    jsonb_build_object('trees', p_trees, 'reason', p_reason));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_reason is null or private.is_line(p_reason, 300), 'p_reason: a line of up to 300 letters, or null.');
  perform private.trees_or_fail(p_orchard, p_trees);
  v_round := (private.work_round(p_orchard)).id;
  if v_round is null then return private.refuse(v_c, private.code('no_round')); end if;

  if p_reason is null then
    return private.accept(v_c, 'trees_left_out', jsonb_build_object('work', private.bring_back(v_round, p_trees, v_c.at)));
  end if;
  v_refused := private.in_use(p_orchard, p_trees);
  select jsonb_agg(tree_no order by tree_no) into v_done from public.tree_work
  where round_id = v_round and tree_no = any (p_trees) and state = 'done';
  if v_done is not null then v_refused := v_refused || private.code('trees_done', jsonb_build_object('trees', v_done)); end if;
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  delete from public.brush_hauled where round_id = v_round and tree_no = any (p_trees);
  insert into public.tree_work (orchard_id, round_id, tree_no, state, note, left_out_by, changed_at)
  select p_orchard, v_round, x, 'left_out', btrim(p_reason), v_c.by_person_id, v_c.at from unnest(p_trees) x
  on conflict (round_id, tree_no) do update
    set state = 'left_out', share = null, note = excluded.note, left_out_by = excluded.left_out_by, changed_at = excluded.changed_at;
  select jsonb_agg(jsonb_build_array(x, 'left_out', null) order by x) into v_work from unnest(p_trees) x;
  return private.accept(v_c, 'trees_left_out', jsonb_build_object('work', v_work));
end $$;
grant execute on function public.leave_out_trees to authenticated;
