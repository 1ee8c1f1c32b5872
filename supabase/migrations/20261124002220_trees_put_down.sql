-- Trees that are put down for somebody: when a person is put out, leaves, or the shift closes.

alter table public.tool_holdings add column returned_why text
  constraint tool_holdings_returned_why_length check (char_length(returned_why) <= 300);
comment on column public.tool_holdings.returned_why is 'What a lead wrote when closing the shift with this tool not returned.';

create function private.put_down(p_c private.command, p_claim uuid, p_how text, p_note text default null) returns jsonb
language plpgsql volatile set search_path = '' as $$
declare
  v_claim public.claims;
  v_work public.tree_work;
  v_holder uuid;
  v_dirty jsonb;
begin
  select * into v_claim from public.claims where id = p_claim;
  v_dirty := jsonb_build_object('dirty', private.soil_tools(p_c.orchard_id, v_claim.tree_no, private.people_in(p_claim)));
  select person_id into v_holder from public.claim_people where claim_id = p_claim and to_at is null and part = 'holder';
  perform private.end_claim(p_claim, p_c.at, p_how, p_note);
  -- Brush does not prune a tree, and a tree that was begun or done before stays what it was.
  if v_claim.tree_no is null or v_claim.kind <> 'prune' then return v_dirty; end if;
  select * into v_work from public.tree_work where round_id = v_claim.round_id and tree_no = v_claim.tree_no;

  -- Without the note: what a lead wrote about somebody is not a note on the tree, which everybody may read.
  if v_holder is not null then
    insert into public.visits (id, orchard_id, round_id, shift_id, tree_no, claim_id, person_id, result, share, at, before_state, before_share)
    values (gen_random_uuid(), v_claim.orchard_id, v_claim.round_id, v_claim.shift_id, v_claim.tree_no, p_claim, v_holder,
      'begun', v_work.share, p_c.at, v_work.state, v_work.share);
  end if;
  if v_work.state is not null then return v_dirty; end if;
  insert into public.tree_work (orchard_id, round_id, tree_no, state, changed_at)
  values (v_claim.orchard_id, v_claim.round_id, v_claim.tree_no, 'begun', p_c.at);
  return v_dirty || jsonb_build_object('work', jsonb_build_array(v_claim.tree_no, 'begun', null));
end $$;
comment on function private.put_down is 'Ends a claim that nobody finished. The tree counts as begun: somebody has to look. Gives {work, dirty}, its part of the changes.';

create function private.put_down_all(p_c private.command, p_claims uuid[], p_how text, p_notes jsonb default '{}') returns jsonb
language sql volatile set search_path = '' as $$
  select jsonb_build_object(
    'claimsEnded', coalesce(jsonb_agg(claim), '[]'),
    'work', coalesce(jsonb_agg(changed -> 'work') filter (where changed ? 'work'), '[]'),
    'dirty', coalesce(jsonb_path_query_array(jsonb_agg(changed -> 'dirty'), '$[*][*] ? (@ != null)'), '[]'))
  from (
    select claim, private.put_down(p_c, claim, p_how, p_notes ->> claim::text) as changed
    from unnest(p_claims) claim
    offset 0) put_down
$$;

create function private.deals_left_by(p_person uuid, p_still_for uuid[]) returns integer[]
language sql stable set search_path = '' as $$
  select array_agg(tree_no) from public.deals
  where ended_at is null and p_person = any (people) and not (array_remove(people, p_person) && p_still_for)
$$;
comment on function private.deals_left_by is 'Trees dealt to this person, and to nobody who still may come to them.';

create function private.return_tools(p_c private.command, p_tools integer[], p_why jsonb default '{}') returns jsonb
language sql volatile set search_path = '' as $$
  with returned as (
    update public.tool_holdings set returned_at = p_c.at, returned_by = p_c.by_person_id, returned_why = p_why ->> tool_no::text
    where orchard_id = p_c.orchard_id and tool_no = any (p_tools) and returned_at is null
    returning tool_no
  )
  select coalesce(jsonb_agg(tool_no order by tool_no), '[]') from returned
$$;

create function private.sign_out(p_c private.command, p_attendance uuid, p_at timestamptz, p_why text default null) returns void
language sql volatile set search_path = '' as $$
  update public.breaks set to_at = greatest(from_at, p_at) where attendance_id = p_attendance and to_at is null;
  update public.attendances set left_at = p_at, left_by = p_c.by_person_id, left_why = p_why where id = p_attendance
$$;
