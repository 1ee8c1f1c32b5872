-- What is wrong with a tree. A flag is never refused for state: bad news is always taken.

create function public.flag_tree(
  p_orchard uuid, p_command uuid, p_person uuid, p_tree integer, p_kind text, p_sign text, p_severity text,
  p_part text default null, p_note text default null, p_keep_out_m numeric default null, p_share integer default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_claim public.claims;
  v_keep_out_m numeric;
  v_state text := case p_kind when 'disease' then 'suspected' else 'open' end;
  v_body jsonb;
begin
  v_c := private.begin_command('flag_tree', p_orchard, p_command, p_person, 'self', jsonb_build_object(
    'tree', p_tree, 'kind', p_kind, 'sign', p_sign, 'severity', p_severity, 'part', p_part, 'note', p_note,
    'keep_out_m', p_keep_out_m, 'share', p_share));
  if v_c.answer is not null then return v_c.answer; end if;
  if coalesce(p_kind, '') not in ('disease', 'arborist') or coalesce(p_severity, '') not in ('low', 'high', 'danger_now')
    or coalesce(p_sign, '') !~ '^[a-z_]{1,40}$' or char_length(p_part) > 40 or char_length(p_note) > 500
    or p_keep_out_m not between 0 and 200 or p_share not between 1 and 99
  then perform private.fail(400, 'malformed', 'Name kind, sign and severity; a note has up to 500 characters.'); end if;
  perform private.tree_or_fail(p_orchard, p_tree);

  if p_kind = 'arborist' then v_keep_out_m := coalesce(p_keep_out_m, private.house_rule(p_orchard, 'keep_out_m')); end if;
  insert into public.flags (id, orchard_id, tree_no, kind, state, sign, severity, part, note, keep_out_m, raised_by, raised_at)
  values (p_command, p_orchard, p_tree, p_kind, v_state, p_sign, p_severity, p_part, p_note, v_keep_out_m, p_person, v_c.at);
  v_body := jsonb_build_object('flag', p_command, 'tree', p_tree, 'kind', p_kind, 'state', v_state, 'sign', p_sign,
    'severity', p_severity, 'keepOutM', v_keep_out_m, 'raisedBy', p_person, 'raisedAt', private.instant(v_c.at));

  -- A hazard ends the claim, whoever holds the tree: come down, leave it, tell your lead.
  if p_kind = 'arborist' then
    select * into v_claim from public.claims where orchard_id = p_orchard and tree_no = p_tree and ended_at is null;
    if found then
      v_body := v_body || jsonb_build_object('claimsEnded', jsonb_build_array(v_claim.id),
        'dirty', private.soil_tools(p_orchard, p_tree, private.people_in(v_claim.id)));
      perform private.end_claim(v_claim.id, v_c.at, 'flagged');
      if p_share is not null and v_claim.kind = 'prune' then
        v_body := v_body || jsonb_build_object('work', private.set_work(
          p_orchard, v_claim.round_id, p_tree, 'begun', p_share, null, v_c.at));
      end if;
    end if;
    v_body := v_body || jsonb_build_object('dealsEnded', private.end_deals(p_orchard, array[p_tree], v_c.at));
  end if;
  return private.accept(v_c, 'flag_raised', v_body);
end $$;
grant execute on function public.flag_tree to authenticated;

create function public.withdraw_flag(p_orchard uuid, p_command uuid, p_person uuid, p_flag uuid) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_flag public.flags;
begin
  v_c := private.begin_command('withdraw_flag', p_orchard, p_command, p_person, 'self', jsonb_build_object('flag', p_flag));
  if v_c.answer is not null then return v_c.answer; end if;
  select * into v_flag from public.flags where orchard_id = p_orchard and id = p_flag;
  if not found then perform private.fail(404, 'no_such_flag', 'There is no such flag.'); end if;

  if v_flag.raised_by <> p_person then return private.refuse(v_c, private.code('not_yours')); end if;
  -- Confirmed or cleared: somebody acted on it.
  if v_flag.state not in ('suspected', 'open')
    or v_flag.raised_at < v_c.at - make_interval(mins => private.house_rule(p_orchard, 'withdraw_minutes')::integer)
  then return private.refuse(v_c, private.code('too_late_to_withdraw')); end if;

  update public.flags set state = 'withdrawn', ended_by = p_person, ended_at = v_c.at where id = p_flag;
  return private.accept(v_c, 'flag_withdrawn', jsonb_build_object('flag', p_flag));
end $$;
grant execute on function public.withdraw_flag to authenticated;
