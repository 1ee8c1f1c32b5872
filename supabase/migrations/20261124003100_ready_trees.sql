-- Why a tree cannot be claimed by this person now, as a list of refusals.

create function private.metres_apart(p_a public.trees, p_b public.trees) returns numeric
language plpgsql stable set search_path = '' as $$
begin
  return (
    select case
      when p_a.lat_e7 is not null and p_b.lat_e7 is not null then (
        -- A degree of latitude is 111,320 m to within 0.6 %; good to centimetres at a keep-out's size.
        sqrt(power((p_a.lat_e7 - p_b.lat_e7) / 1e7 * 111320, 2)
           + power((p_a.lon_e7 - p_b.lon_e7) / 1e7 * 111320 * cos(radians(p_a.lat_e7 / 1e7)), 2)))::numeric
      when p_a.block_no = p_b.block_no then (
        select sqrt(power((p_a.row_no - p_b.row_no) * b.row_spacing_m, 2) + power((p_a.place - p_b.place) * b.tree_spacing_m, 2))
        from public.blocks b where b.orchard_id = p_a.orchard_id and b.no = p_a.block_no)
    end);
end $$;
comment on function private.metres_apart is 'From positions, else from row and place and the block''s spacings; null between blocks that are not surveyed.';

create function private.are_neighbours(p_a public.trees, p_b public.trees) returns boolean
language plpgsql stable set search_path = '' as $$
begin
  return p_a.no <> p_b.no and (
    (p_a.block_no = p_b.block_no and abs(p_a.row_no - p_b.row_no) <= 1 and abs(p_a.place - p_b.place) <= 1)
    or coalesce(private.metres_apart(p_a, p_b) <= private.house_rule(p_a.orchard_id, 'overhead_apart_m'), false));
end $$;
comment on function private.are_neighbours is 'A cut limb of one can reach a person at the other.';

create function private.keep_out_over(p_tree public.trees) returns public.flags
language plpgsql stable set search_path = '' as $$
begin
  return (
    select f from public.flags f
    join public.trees t on t.orchard_id = f.orchard_id and t.no = f.tree_no
    where f.orchard_id = p_tree.orchard_id and f.kind = 'arborist' and f.ended_at is null
      and f.tree_no <> p_tree.no and private.metres_apart(p_tree, t) <= f.keep_out_m
    order by f.raised_at limit 1);
end $$;

create function private.asks_ladder(p_tree public.trees) returns boolean
language plpgsql stable set search_path = '' as $$
begin
  return coalesce(p_tree.height_cm > private.house_rule(p_tree.orchard_id, 'ladder_from_cm'), false);
end $$;
comment on function private.asks_ladder is 'Height unknown: feet on the ground, so it does not ask.';

create function private.dealt_to(p_orchard uuid, p_tree integer) returns uuid[]
language plpgsql stable set search_path = '' as $$
begin
  return (
    select d.people from public.deals d where d.orchard_id = p_orchard and d.tree_no = p_tree and d.ended_at is null);
end $$;

create function private.has_disease_flag(p_orchard uuid, p_tree integer) returns boolean
language plpgsql stable set search_path = '' as $$
begin
  return (
    select exists (select 1 from public.flags f
      where f.orchard_id = p_orchard and f.tree_no = p_tree and f.kind = 'disease' and f.ended_at is null));
end $$;

-- Standing, in the round, not done, not on the way to somebody else: what also stops a deal.
create function private.closed_for_work(p_tree public.trees, p_round public.rounds) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_state text;
  v_keep_out public.flags := private.keep_out_over(p_tree);
  v_missing jsonb := '[]';
begin
  if p_tree.life <> 'standing' then v_missing := v_missing || private.code('tree_not_standing'); end if;
  if not p_tree.species = any (p_round.species) then v_missing := v_missing || private.code('tree_not_in_round'); end if;
  select state into v_state from public.tree_work where round_id = p_round.id and tree_no = p_tree.no;
  if v_state = 'done' then v_missing := v_missing || private.code('tree_done'); end if;
  if v_state = 'left_out' then v_missing := v_missing || private.code('tree_left_out'); end if;
  if exists (select 1 from public.flags f where f.orchard_id = p_tree.orchard_id and f.tree_no = p_tree.no
      and f.kind = 'arborist' and f.ended_at is null)
  then v_missing := v_missing || private.code('arborist_flag'); end if;
  if v_keep_out.id is not null then
    v_missing := v_missing || private.code('inside_keep_out', jsonb_build_object('tree', v_keep_out.tree_no));
  end if;
  return v_missing;
end $$;

create function private.stopped_in(p_block integer, p_shift public.shifts) returns jsonb
language plpgsql stable set search_path = '' as $$
begin
  return coalesce((
    select private.code('stopped', jsonb_build_object('stop', s.id)) from public.stops s
    where s.shift_id = p_shift.id and s.resumed_at is null and s.block_no = p_block limit 1), '[]');
end $$;

create function private.closed_around(p_tree public.trees, p_shift public.shifts) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_keep_out public.flags := private.keep_out_over(p_tree);
begin
  return private.stopped_in(p_tree.block_no, p_shift)
    || case when v_keep_out.id is null then '[]'::jsonb
       else private.code('inside_keep_out', jsonb_build_object('tree', v_keep_out.tree_no)) end;
end $$;
comment on function private.closed_around is 'Why nobody more comes to a tree that is or was in hand: its block is stopped, or a hazard is near.';

create function private.held_by(p_orchard uuid, p_tree integer) returns uuid
language plpgsql stable set search_path = '' as $$
begin
  return (
    select cp.person_id from public.claims c
    join public.claim_people cp on cp.claim_id = c.id and cp.part = 'holder' and cp.to_at is null
    where c.orchard_id = p_orchard and c.tree_no = p_tree and c.ended_at is null);
end $$;

create function private.overhead_next_to(p_tree public.trees, p_brings_overhead boolean) returns integer
language plpgsql stable set search_path = '' as $$
begin
  return (
    select t.no from public.claims c
    join public.trees t on t.orchard_id = c.orchard_id and t.no = c.tree_no
    where c.orchard_id = p_tree.orchard_id and c.ended_at is null
      and (p_brings_overhead or c.ladder or t.asks_saw) and private.are_neighbours(p_tree, t)
    order by t.no limit 1);
end $$;
comment on function private.overhead_next_to is 'A held neighbour, where ladder or saw work goes on at either tree.';

create function private.missing_of_tree(
  p_tree public.trees, p_shift public.shifts, p_person uuid, p_kind text, p_ladder boolean
) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_round public.rounds;
  v_dealt uuid[] := private.dealt_to(p_tree.orchard_id, p_tree.no);
  v_mine boolean := coalesce(p_person = any (v_dealt), false);
  v_holder uuid := private.held_by(p_tree.orchard_id, p_tree.no);
  v_near integer;
  v_missing jsonb;
begin
  select * into v_round from public.rounds where id = p_shift.round_id;
  v_missing := private.closed_for_work(p_tree, v_round);
  -- Brush is carried away from trees that are done.
  if p_kind = 'brush' then
    select coalesce(jsonb_agg(x), '[]') into v_missing from jsonb_array_elements(v_missing) x where x ->> 'code' <> 'tree_done';
  end if;
  if v_holder is not null then
    v_missing := v_missing || private.code('tree_held', jsonb_build_object('tree', p_tree.no, 'person', v_holder));
  end if;
  if v_dealt is not null and not v_mine then
    v_missing := v_missing || private.code('dealt_to_another', jsonb_build_object('people', v_dealt));
  end if;
  if p_kind = 'prune' then v_missing := v_missing || private.put_off(p_tree, p_shift, p_ladder, now()); end if;
  v_missing := v_missing || private.stopped_in(p_tree.block_no, p_shift);
  if private.has_disease_flag(p_tree.orchard_id, p_tree.no) and not v_mine then
    v_missing := v_missing || private.code('disease_not_dealt');
  end if;
  v_near := private.overhead_next_to(p_tree, p_kind = 'prune' and (p_ladder or p_tree.asks_saw));
  if v_near is not null and not v_mine then
    v_missing := v_missing || private.code('works_next_to_it', jsonb_build_object('tree', v_near));
  end if;
  return v_missing;
end $$;
