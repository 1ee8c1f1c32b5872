-- Claiming a tree: atomic under the orchard's lock, refused with everything that is missing.

create function private.claim_facts(p_claim uuid) returns jsonb
language plpgsql stable set search_path = '' as $$
begin
  return (
    select jsonb_build_object(
      'claim', c.id, 'tree', c.tree_no,
      'row', private.row_of(c),
      'purpose', c.purpose, 'kind', c.kind, 'ladder', c.ladder, 'buddyId', c.buddy_id,
      'openedAt', private.instant(c.opened_at),
      'people', (select jsonb_object_agg(cp.person_id, cp.part) from public.claim_people cp
                 where cp.claim_id = c.id and cp.to_at is null))
    from public.claims c where c.id = p_claim);
end $$;
comment on function private.claim_facts is 'The claim as events and snapshots spell it, with its id.';

create function private.open_claim(
  p_c private.command, p_shift public.shifts, p_wish private.wish, p_opened_at timestamptz,
  p_ended_at timestamptz default null, p_ended_how text default null
) returns void
language plpgsql volatile set search_path = '' as $$
begin
  insert into public.claims (id, orchard_id, round_id, shift_id, tree_no, purpose, kind, ladder, buddy_id, opened_at, ended_at, ended_how)
  values (p_c.command_id, p_c.orchard_id, p_shift.round_id, p_shift.id, p_wish.tree_no, p_wish.purpose, p_wish.kind,
          p_wish.ladder, p_wish.buddy_id, p_opened_at, p_ended_at, p_ended_how);
  insert into public.claim_people (orchard_id, claim_id, person_id, part, from_at, to_at)
  select p_c.orchard_id, p_c.command_id, x.id, x.part, p_opened_at, p_ended_at
  from (select p_wish.person_id as id, 'holder' as part
        union all select h, 'helper' from unnest(p_wish.helpers) h
        union all select l, 'learner' from unnest(p_wish.learners) l) x;
end $$;
comment on function private.open_claim is 'p_ended_at: it was over before the referee heard of it.';

create function private.end_claim(p_claim uuid, p_at timestamptz, p_how text, p_note text default null) returns void
language plpgsql volatile set search_path = '' as $$
begin
  update public.claims set ended_at = p_at, ended_how = p_how, ended_note = p_note where id = p_claim and ended_at is null;
  update public.claim_people set to_at = p_at where claim_id = p_claim and to_at is null;
end $$;

create function public.claim_tree(
  p_orchard uuid, p_command uuid, p_person uuid, p_tree integer,
  p_purpose text default 'work', p_kind text default 'prune', p_ladder boolean default false,
  p_helpers uuid[] default '{}', p_learners uuid[] default '{}', p_buddy uuid default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_wish private.wish := (p_person, p_tree, p_purpose, p_kind, coalesce(p_ladder, false),
    coalesce(p_helpers, '{}'), coalesce(p_learners, '{}'), p_buddy);
  v_others uuid[] := coalesce(p_helpers, '{}') || coalesce(p_learners, '{}');
  v_missing jsonb;
begin
  v_c := private.begin_command('claim_tree', p_orchard, p_command, p_person, 'self', to_jsonb(v_wish) - 'person_id');
  if v_c.answer is not null then return v_c.answer; end if;
  if p_tree is null or (p_purpose in ('work', 'teaching')) is not true or (p_kind in ('prune', 'brush', 'other')) is not true
    or cardinality(v_others) > 8 or p_person = any (v_others)
    or cardinality(v_others) <> (select count(distinct x) from unnest(v_others) x) or (p_ladder and p_kind <> 'prune')
  then perform private.fail(400, 'malformed', 'Name a tree, a purpose, a kind and up to eight different others; only pruning takes a ladder.');
  end if;

  v_missing := private.missing_for_claim(p_orchard, v_wish);
  if v_missing <> '[]' then
    return private.refuse(v_c, private.told_of_others(v_c, v_missing, v_others), jsonb_build_object('next', private.next_tree(p_orchard, p_person, p_tree)));
  end if;

  perform private.open_claim(v_c, private.open_shift(p_orchard), v_wish, v_c.at);
  return private.accept(v_c, 'tree_claimed', private.claim_facts(p_command)
    || jsonb_build_object('dealsEnded', private.end_deals(p_orchard, array[p_tree], v_c.at)));
end $$;
grant execute on function public.claim_tree to authenticated;
