-- The ground around a hazard: who is at a tree inside is told to come out, their claims end, and each says that they are out.

create function private.claims_within(p_flag public.flags) returns uuid[]
language plpgsql stable set search_path = '' as $$
declare
  v_hazard public.trees := private.tree_or_fail(p_flag.orchard_id, p_flag.tree_no);
begin
  return (
    select coalesce(array_agg(distinct near.id), '{}')
    from (
      select c.id, t from public.claims c
      join public.trees t on t.orchard_id = c.orchard_id and t.no = c.tree_no
      where c.orchard_id = p_flag.orchard_id and c.ended_at is null
      union all
      -- Brush: a row is inside as soon as one of its trees is.
      select c.id, t from public.claims c
      join public.trees t on t.orchard_id = c.orchard_id and t.block_no = c.block_no and t.row_no = c.row_no
      where c.orchard_id = p_flag.orchard_id and c.ended_at is null and c.tree_no is null) near
    where (near.t).no = v_hazard.no or private.metres_apart(near.t, v_hazard) <= p_flag.keep_out_m);
end $$;

-- Everybody at these trees but who does this: they know.
create function private.tell_to_come_out(p_c private.command, p_flag uuid, p_claims uuid[]) returns jsonb
language plpgsql volatile set search_path = '' as $$
declare
  v_inside jsonb;
begin
  with told as (
    insert into public.keep_out_people (orchard_id, flag_id, person_id, tree_no, told_at)
    select p_c.orchard_id, p_flag, cp.person_id, c.tree_no, p_c.at
    from public.claims c join public.claim_people cp on cp.claim_id = c.id and cp.to_at is null
    where c.id = any (p_claims) and cp.person_id <> p_c.person_id
    -- Told before, came back when it was narrower.
    on conflict on constraint keep_out_people_key do update
      set tree_no = excluded.tree_no, told_at = excluded.told_at, out_at = null, out_by = null
    returning person_id, tree_no
  )
  select jsonb_object_agg(person_id, jsonb_build_object('tree', tree_no, 'out', false)) into v_inside from told;
  return jsonb_build_object('inside', v_inside);
end $$;

-- Who holds the tree says how far it is; a bystander does not.
create function private.end_own_claim(p_c private.command, p_claim public.claims, p_share integer) returns jsonb
language plpgsql volatile set search_path = '' as $$
declare
  v_people uuid[] := private.people_in(p_claim.id);
  v_ended jsonb := jsonb_build_object('dirty', private.soil_tools(p_c.orchard_id, p_claim.tree_no, v_people));
begin
  if p_share is not null and p_claim.kind = 'prune' then
    perform private.keep_visit(p_c, p_claim.tree_no,
      ('holder', p_claim.id, p_claim.shift_id, p_claim.round_id, p_claim.opened_at, v_people, null::text[]), 'begun', p_share, null, null, null);
    v_ended := v_ended || jsonb_build_object('work',
      private.set_work(p_c.orchard_id, p_claim.round_id, p_claim.tree_no, 'begun', p_share, null, p_c.at));
  end if;
  perform private.end_claim(p_claim.id, p_c.at, 'flagged');
  return v_ended;
end $$;

create function private.close_off(p_c private.command, p_flag uuid, p_share integer default null) returns jsonb
language plpgsql volatile set search_path = '' as $$
declare
  v_flag public.flags := private.flag_or_fail(p_c.orchard_id, p_flag);
  v_claims uuid[] := private.claims_within(v_flag);
  v_inside jsonb := private.tell_to_come_out(p_c, p_flag, v_claims);
  v_own public.claims;
  v_own_ended jsonb := '{}';
  v_ended jsonb;
begin
  select c.* into v_own from public.claims c
  join public.claim_people cp on cp.claim_id = c.id and cp.person_id = p_c.person_id and cp.to_at is null
  where c.id = any (v_claims) and c.tree_no = v_flag.tree_no;
  if found then v_own_ended := private.filled(private.end_own_claim(p_c, v_own, p_share)); end if;

  -- Nobody said how far the others are: their trees count as begun, and somebody has to look.
  v_ended := private.put_down_all(p_c, array_remove(v_claims, v_own.id), 'flagged');
  return private.filled(v_inside || jsonb_build_object(
    'claimsEnded', coalesce(to_jsonb(v_own.id), '[]') || (v_ended -> 'claimsEnded'),
    'work', coalesce(v_own_ended -> 'work', '[]') || (v_ended -> 'work'),
    'dirty', coalesce(v_own_ended -> 'dirty', '[]') || (v_ended -> 'dirty')));
end $$;
comment on function private.close_off is
  'Ends the claims inside the keep-out of a flag and tells the people at them: {inside: {person: {tree, out}}} and the changes.';

create function public.change_keep_out(
  p_orchard uuid, p_command uuid, p_person uuid, p_flag uuid, p_keep_out_m numeric
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_flag public.flags;
begin
  v_c := private.begin_command('change_keep_out', p_orchard, p_command, p_person, 'lead',
    jsonb_build_object('flag', p_flag, 'keep_out_m', p_keep_out_m));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_keep_out_m between 0 and 200, 'p_keep_out_m: 0 to 200.');
  v_flag := private.flag_or_fail(p_orchard, p_flag);
  perform private.need(v_flag.kind = 'arborist', 'p_flag: only a hazard has a keep-out.');
  if v_flag.ended_at is not null then return private.refuse(v_c, private.code('flag_over')); end if;
  if p_keep_out_m < v_flag.keep_out_m
    and not exists (select 1 from public.people where id = v_c.by_person_id and role = 'manager')
  then return private.refuse(v_c, private.code('only_manager_narrows')); end if;

  update public.flags set keep_out_m = p_keep_out_m, acted_at = v_c.at where id = p_flag;
  return private.accept(v_c, 'keep_out_changed',
    jsonb_build_object('flag', p_flag, 'keepOutM', p_keep_out_m) || private.close_off(v_c, p_flag));
end $$;
comment on function public.change_keep_out is 'A lead sets and widens; only a manager narrows or takes it away (0).';
grant execute on function public.change_keep_out to authenticated;

create function public.answer_keep_out(p_orchard uuid, p_command uuid, p_person uuid, p_flag uuid) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
begin
  v_c := private.begin_command('answer_keep_out', p_orchard, p_command, p_person, 'self', jsonb_build_object('flag', p_flag));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.flag_or_fail(p_orchard, p_flag);

  update public.keep_out_people set out_at = v_c.at, out_by = v_c.by_person_id
  where flag_id = p_flag and person_id = p_person and out_at is null;
  return private.accept(v_c, 'keep_out_answered', jsonb_build_object('flag', p_flag, 'person', p_person));
end $$;
comment on function public.answer_keep_out is '"I am out", or a lead who saw somebody come out. Never refused, like every answer.';
grant execute on function public.answer_keep_out to authenticated;
