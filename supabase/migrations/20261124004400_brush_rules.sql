-- Where cut wood lies, and why somebody cannot take a row to haul it. lib/events/brush.ts says the same on the phone.

create function private.is_brush(p_claim uuid) returns boolean
language plpgsql stable set search_path = '' as $$
begin
  return exists (select 1 from public.claims where id = p_claim and kind = 'brush');
end $$;

create function private.haul(p_c private.command, p_claim uuid, p_round uuid, p_trees integer[]) returns jsonb
language plpgsql volatile set search_path = '' as $$
declare
  v_trees integer[];
begin
  select array_agg(tree_no order by tree_no) into v_trees from public.tree_work
  where round_id = p_round and tree_no = any (p_trees) and state in ('begun', 'done');
  insert into public.brush_hauled (orchard_id, round_id, tree_no, claim_id, by_person_id, at)
  select p_c.orchard_id, p_round, x, p_claim, p_c.person_id, p_c.at from unnest(v_trees) x
  on conflict do nothing;
  if p_round is distinct from (private.work_round(p_c.orchard_id)).id then return null; end if;
  return to_jsonb(v_trees);
end $$;
comment on function private.haul is
  'Only where somebody pruned: elsewhere nothing lies. The list for hauled; null when it is not the round that phones carry.';

create function private.wood_in_row(p_orchard uuid, p_round uuid, p_block integer, p_row integer) returns setof public.trees
language plpgsql stable set search_path = '' as $$
begin
  return query
    select t.* from public.trees t
    join public.tree_work w on w.round_id = p_round and w.tree_no = t.no and w.state in ('begun', 'done')
    where t.orchard_id = p_orchard and t.block_no = p_block and t.row_no = p_row
      and not exists (select 1 from public.brush_hauled h where h.round_id = p_round and h.tree_no = t.no);
end $$;

create function private.hazard_at(p_tree public.trees) returns integer
language plpgsql stable set search_path = '' as $$
begin
  return coalesce(
    (select f.tree_no from public.flags f
     where f.orchard_id = p_tree.orchard_id and f.tree_no = p_tree.no and f.kind = 'arborist' and f.ended_at is null limit 1),
    (private.keep_out_over(p_tree)).tree_no);
end $$;
comment on function private.hazard_at is 'The flagged tree that this one is, or is too close to; null where one may go.';

create function private.missing_of_row(p_orchard uuid, p_shift public.shifts, p_block integer, p_row integer) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_claim public.claims;
  v_wood integer;
  v_open integer;
  v_hazard integer;
  v_missing jsonb := private.stopped_in(p_block, p_shift);
begin
  select * into v_claim from public.claims
  where orchard_id = p_orchard and block_no = p_block and row_no = p_row and tree_no is null and ended_at is null;
  if found then
    v_missing := v_missing || private.code('row_held', jsonb_build_object('row', private.row_of(v_claim), 'person', (
      select person_id from public.claim_people where claim_id = v_claim.id and part = 'holder' and to_at is null)));
  end if;
  select count(*), count(*) filter (where hazard is null), min(hazard) into v_wood, v_open, v_hazard
  from (select private.hazard_at(w) as hazard from private.wood_in_row(p_orchard, p_shift.round_id, p_block, p_row) w) wood;
  if v_wood = 0 then return v_missing || private.code('nothing_to_haul'); end if;
  -- Wood near a hazard stays where it is. Where only such wood lies, nobody has business in the row.
  if v_open = 0 then v_missing := v_missing || private.code('inside_keep_out', jsonb_build_object('tree', v_hazard)); end if;
  return v_missing;
end $$;

create function private.row_or_fail(p_orchard uuid, p_block integer, p_row integer) returns void
language plpgsql stable set search_path = '' as $$
begin
  if not exists (select 1 from public.trees where orchard_id = p_orchard and block_no = p_block and row_no = p_row) then
    perform private.fail(404, 'no_such_row', 'There is no row with this number in this block.');
  end if;
end $$;
