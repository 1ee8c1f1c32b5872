-- Finishing a tree, leaving it half done or not begun, and a lead ending somebody's claim.

create function private.keep_visit(
  p_c private.command, p_tree integer, p_in private.coming_in, p_result text, p_share integer, p_note text,
  p_said_at timestamptz, p_elapsed_s integer
) returns integer
language plpgsql volatile set search_path = '' as $$
declare
  v_at timestamptz := private.when_said(p_said_at, p_in.begun_at, p_c.at);
  v_longest_s integer := extract(epoch from p_c.at - p_in.begun_at)::integer;
  -- On paper often nobody wrote when it was begun.
  v_seconds integer := case when v_longest_s is not null then
    least(greatest(coalesce(p_elapsed_s, extract(epoch from v_at - p_in.begun_at)::integer), 0), v_longest_s) end;
  v_before public.tree_work;
begin
  select * into v_before from public.tree_work where round_id = p_in.round_id and tree_no = p_tree;
  insert into public.visits (id, orchard_id, round_id, shift_id, tree_no, claim_id, person_id, result, share, note, at, seconds,
    before_state, before_share, came_in_late, from_paper, without_claim, lacked)
  values (p_c.command_id, p_c.orchard_id, p_in.round_id, p_in.shift_id, p_tree, p_in.claim_id, p_c.person_id, p_result,
    p_share, p_note, v_at, v_seconds, coalesce(v_before.state, 'unpruned'), v_before.share, p_in.how = 'late', p_c.name = 'enter_work',
    p_in.lacked is not null, coalesce(p_in.lacked, '{}'));
  return v_seconds;
end $$;
comment on function private.keep_visit is 'Records the visit and what the tree was before it. Seconds are for display only.';

create function private.bring_in_work(
  p_c private.command, p_claim uuid, p_tree integer, p_begun_at timestamptz, p_result text, p_share integer, p_note text,
  p_said_at timestamptz, p_elapsed_s integer
) returns jsonb
language plpgsql volatile set search_path = '' as $$
declare
  v_tree public.trees := private.tree_or_fail(p_c.orchard_id, p_tree);
  v_in private.coming_in;
begin
  v_in := case when p_claim is not null then private.comes_in_by_claim(p_c, v_tree, p_claim)
    else private.comes_in_by_deal(p_c, v_tree, p_begun_at) end;
  if v_in.how is null then return private.refuse(p_c, private.code('shift_not_open')); end if;
  return private.take_in_work(p_c, p_tree, v_in, p_result, p_share, p_note, p_said_at, p_elapsed_s);
end $$;

create function private.take_in_work(
  p_c private.command, p_tree integer, p_in private.coming_in, p_result text, p_share integer, p_note text,
  p_said_at timestamptz, p_elapsed_s integer, p_told jsonb default '{}'
) returns jsonb
language plpgsql volatile set search_path = '' as $$
declare
  v_in private.coming_in := p_in;
  v_shift public.shifts;
  v_body jsonb := jsonb_build_object('tree', p_tree);
  v_seconds integer;
  v_ended_how text := case when p_result = 'done' then 'finished' else 'released' end;
begin
  if v_in.how = 'dealt' then
    select * into v_shift from public.shifts where id = v_in.shift_id;
    -- Over at once: by now this person may hold another tree.
    perform private.open_claim(p_c, v_shift, (p_c.person_id, p_tree, 'work', 'prune', false, '{}', '{}', null), v_in.begun_at,
      p_c.at, v_ended_how);
    v_in.claim_id := p_c.command_id;
  end if;
  if v_in.how in ('dealt', 'paper', 'late') then
    v_body := v_body || jsonb_build_object('dealsEnded', private.end_deals(p_c.orchard_id, array[p_tree], p_c.at));
  end if;
  v_body := v_body || jsonb_build_object('dirty', private.soil_tools(p_c.orchard_id, p_tree, v_in.people));

  if v_in.how = 'also_worked' then
    v_seconds := private.keep_visit(p_c, p_tree, v_in, 'also_worked', p_share, p_note, p_said_at, p_elapsed_s);
    return private.accept(p_c, 'also_worked', v_body, jsonb_build_object('seconds', v_seconds), true,
      p_told || jsonb_build_object('kept', 'also_worked'));
  end if;

  if p_result is not null then
    v_seconds := private.keep_visit(p_c, p_tree, v_in, p_result, p_share, p_note, p_said_at, p_elapsed_s);
    if private.is_pruning(v_in.claim_id) then
      v_body := v_body || jsonb_build_object('work', private.set_work(
        p_c.orchard_id, v_in.round_id, p_tree, p_result, p_share, p_note, p_c.at));
    elsif p_result = 'done' and private.is_brush(v_in.claim_id) then
      v_body := v_body || jsonb_build_object('hauled', private.haul(p_c, v_in.claim_id, v_in.round_id, array[p_tree]));
    end if;
  end if;
  if v_in.how = 'holder' then
    perform private.end_claim(v_in.claim_id, p_c.at, v_ended_how);
    v_body := v_body || jsonb_build_object('claimsEnded', jsonb_build_array(v_in.claim_id));
  end if;
  if v_in.how = 'late' then v_body := v_body || jsonb_build_object('shift', v_in.shift_id); end if;
  return private.accept(p_c,
    case when p_result = 'done' then 'tree_finished' else 'tree_released' end || case when v_in.how = 'late' then '_late' else '' end,
    v_body, jsonb_build_object('seconds', v_seconds), true,
    p_told || case when v_in.how = 'late' then jsonb_build_object('kept', 'late') else '{}'::jsonb end);
end $$;
comment on function private.take_in_work is 'Once it is known how it comes in. p_told: what the answer says besides.';

create function public.finish_tree(
  p_orchard uuid, p_command uuid, p_person uuid, p_tree integer, p_claim uuid default null,
  p_begun_at timestamptz default null, p_at timestamptz default null, p_elapsed_s integer default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
begin
  v_c := private.begin_command('finish_tree', p_orchard, p_command, p_person, 'self', jsonb_build_object(
    'tree', p_tree, 'claim', p_claim, 'begun_at', p_begun_at, 'at', p_at, 'elapsed_s', p_elapsed_s));
  if v_c.answer is not null then return v_c.answer; end if;
  return private.bring_in_work(v_c, p_claim, p_tree, p_begun_at, 'done', null, null, p_at, p_elapsed_s);
end $$;
grant execute on function public.finish_tree to authenticated;

create function public.release_tree(
  p_orchard uuid, p_command uuid, p_person uuid, p_tree integer, p_claim uuid default null, p_share integer default null,
  p_note text default null, p_begun_at timestamptz default null, p_at timestamptz default null, p_elapsed_s integer default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
begin
  v_c := private.begin_command('release_tree', p_orchard, p_command, p_person, 'self', jsonb_build_object(
    'tree', p_tree, 'claim', p_claim, 'share', p_share, 'note', p_note, 'begun_at', p_begun_at, 'at', p_at, 'elapsed_s', p_elapsed_s));
  if v_c.answer is not null then return v_c.answer; end if;
  if p_share not between 1 and 99 or char_length(p_note) > 300 then
    perform private.fail(400, 'malformed', 'A share is 1 to 99 percent, a note has up to 300 characters.');
  end if;
  return private.bring_in_work(v_c, p_claim, p_tree, p_begun_at,
    case when p_share is not null then 'begun' end, p_share, p_note, p_at, p_elapsed_s);
end $$;
comment on function public.release_tree is 'p_share null: not begun, the tree is as it was before the claim.';
grant execute on function public.release_tree to authenticated;

create function public.end_claim(
  p_orchard uuid, p_command uuid, p_person uuid, p_claim uuid, p_how_reached text, p_share integer default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_claim public.claims;
  v_people uuid[];
  v_work jsonb;
begin
  v_c := private.begin_command('end_claim', p_orchard, p_command, p_person, 'lead',
    jsonb_build_object('claim', p_claim, 'how_reached', p_how_reached, 'share', p_share));
  if v_c.answer is not null then return v_c.answer; end if;
  if coalesce(char_length(p_how_reached), 0) not between 1 and 300 or p_share not between 1 and 99 then
    perform private.fail(400, 'malformed', 'Say how the person was reached, and how far the tree is.');
  end if;
  v_claim := private.claim_or_fail(p_orchard, p_claim);
  if v_claim.ended_at is not null then return private.refuse(v_c, private.code('claim_over')); end if;

  v_people := private.people_in(p_claim);
  perform private.end_claim(p_claim, v_c.at, 'ended_by_lead', p_how_reached);
  if p_share is not null and v_claim.tree_no is not null and v_claim.kind = 'prune' then
    v_work := private.set_work(p_orchard, v_claim.round_id, v_claim.tree_no, 'begun', p_share, null, v_c.at);
  end if;
  return private.accept(v_c, 'claim_ended', jsonb_build_object(
    'tree', v_claim.tree_no, 'claimsEnded', jsonb_build_array(p_claim), 'work', v_work,
    'dirty', private.soil_tools(p_orchard, v_claim.tree_no, v_people)));
end $$;
grant execute on function public.end_claim to authenticated;
