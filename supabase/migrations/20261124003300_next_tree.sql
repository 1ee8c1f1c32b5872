-- Which tree next, for the answer to somebody who was second: dealt to them, else the same row, else the nearest allowed.
-- The phone computes the same with walking distances (lib/domain/planning); this one only has to be good and quick.

create function private.next_tree(p_orchard uuid, p_person uuid, p_from integer) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_shift public.shifts := private.open_shift(p_orchard);
  v_from public.trees;
  v_wish private.wish;
  v_next record;
begin
  if v_shift.id is null or private.missing_of_person(p_orchard, p_person, 'prune', 'holder') <> '[]' then
    return null;
  end if;
  select * into v_from from public.trees where orchard_id = p_orchard and no = p_from;

  for v_next in
    select t.no, d.people is not null as dealt, (t.block_no = v_from.block_no and t.row_no = v_from.row_no) as same_row
    from public.trees t
    join public.rounds r on r.id = v_shift.round_id and t.species = any (r.species)
    join public.blocks b on b.orchard_id = t.orchard_id and b.no = t.block_no
    left join public.deals d on d.orchard_id = t.orchard_id and d.tree_no = t.no and d.ended_at is null
    left join public.tree_work w on w.round_id = r.id and w.tree_no = t.no
    left join public.claims c on c.orchard_id = t.orchard_id and c.tree_no = t.no and c.ended_at is null
    where t.orchard_id = p_orchard and t.no <> p_from and t.life = 'standing' and c.id is null
      and (w.state is null or w.state = 'begun') and (d.people is null or p_person = any (d.people))
    order by (d.people is not null) desc, (t.block_no = v_from.block_no) desc, (t.row_no = v_from.row_no) desc,
      abs(t.row_no - v_from.row_no) * b.row_spacing_m + abs(t.place - v_from.place) * b.tree_spacing_m, t.no
    limit 60
  loop
    v_wish := (p_person, v_next.no, 'work', 'prune', false, '{}', '{}', null);
    if private.missing_for_claim(p_orchard, v_wish) = '[]' then
      return jsonb_build_object('tree', v_next.no, 'why',
        case when v_next.dealt then 'dealt' when v_next.same_row then 'same_row' else 'nearest' end);
    end if;
  end loop;
  return null;
end $$;
comment on function private.next_tree is '{"tree", "why": dealt, same_row or nearest}; null when none of the sixty nearest can be claimed.';
