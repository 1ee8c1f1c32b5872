-- What is wrong with a tree. A flag is never refused for state: bad news is always taken.

create function public.flag_tree(
  p_orchard uuid, p_command uuid, p_person uuid, p_tree integer, p_kind text, p_sign text, p_severity text,
  p_part text default null, p_note text default null, p_keep_out_m numeric default null, p_share integer default null,
  p_reasons jsonb default null, p_limb jsonb default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_keep_out_m numeric;
  v_state text := case p_kind when 'disease' then 'suspected' else 'open' end;
  v_body jsonb;
begin
  v_c := private.begin_command('flag_tree', p_orchard, p_command, p_person, 'self', jsonb_build_object(
    'tree', p_tree, 'kind', p_kind, 'sign', p_sign, 'severity', p_severity, 'part', p_part, 'note', p_note,
    'keep_out_m', p_keep_out_m, 'share', p_share, 'reasons', p_reasons, 'limb', p_limb));
  if v_c.answer is not null then return v_c.answer; end if;
  if coalesce(p_kind, '') not in ('disease', 'arborist') or coalesce(p_severity, '') not in ('low', 'high', 'danger_now')
    or coalesce(p_sign, '') !~ '^[a-z_]{1,40}$' or char_length(p_part) > 40 or char_length(p_note) > 500
    or p_keep_out_m not between 0 and 200 or p_share not between 1 and 99
  then perform private.fail(400, 'malformed', 'Name kind, sign and severity; a note has up to 500 characters.'); end if;
  perform private.need(p_reasons is null or (p_kind = 'arborist' and private.are_refer_reasons(p_reasons)),
    'p_reasons: of a hazard, up to 20 of {code, seen, value, limit}.');
  perform private.need(p_limb is null or (p_kind = 'arborist' and private.is_limb(p_limb)),
    'p_limb: of a hazard, {cm, bearingDeg}.');
  perform private.tree_or_fail(p_orchard, p_tree);

  if p_kind = 'arborist' then v_keep_out_m := coalesce(p_keep_out_m, private.house_rule(p_orchard, 'keep_out_m')); end if;
  insert into public.flags (
    id, orchard_id, tree_no, kind, state, sign, severity, part, note, keep_out_m, reasons, limb, raised_by, raised_at)
  values (p_command, p_orchard, p_tree, p_kind, v_state, p_sign, p_severity, p_part, p_note, v_keep_out_m,
    p_reasons, p_limb, p_person, v_c.at);
  v_body := jsonb_build_object('flag', p_command, 'tree', p_tree, 'kind', p_kind, 'state', v_state, 'sign', p_sign,
    'severity', p_severity, 'keepOutM', v_keep_out_m, 'reasons', p_reasons, 'limb', p_limb, 'raisedBy', p_person, 'raisedAt', private.instant(v_c.at));

  if p_kind = 'arborist' then
    v_body := v_body || private.close_off(v_c, p_command, p_share)
      || jsonb_build_object('dealsEnded', private.end_deals(p_orchard, array[p_tree], v_c.at));
  end if;
  return private.accept(v_c, 'flag_raised', v_body);
end $$;
grant execute on function public.flag_tree to authenticated;

create function private.flag_or_fail(p_orchard uuid, p_flag uuid) returns public.flags
language plpgsql stable set search_path = '' as $$
declare
  v_flag public.flags;
begin
  select * into v_flag from public.flags where orchard_id = p_orchard and id = p_flag;
  if not found then perform private.fail(404, 'no_such_flag', 'There is no such flag.'); end if;
  return v_flag;
end $$;

-- Who reported it takes it back for a short while, if nobody acted on it.
create function private.cannot_take_back(p_c private.command, p_flag public.flags) returns jsonb
language plpgsql stable set search_path = '' as $$
begin
  if p_flag.raised_by <> p_c.person_id then return private.code('not_yours'); end if;
  if p_flag.state not in ('suspected', 'open') or p_flag.acted_at is not null
    or p_flag.raised_at < p_c.at - make_interval(mins => private.house_rule(p_c.orchard_id, 'withdraw_minutes')::integer)
  then return private.code('too_late_to_withdraw'); end if;
  return '[]';
end $$;

create function public.withdraw_flag(
  p_orchard uuid, p_command uuid, p_person uuid, p_flag uuid, p_note text default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_flag public.flags;
  v_refused jsonb;
begin
  v_c := private.begin_command('withdraw_flag', p_orchard, p_command, p_person, 'self', jsonb_build_object('flag', p_flag, 'note', p_note));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_note is null or char_length(p_note) <= 500, 'p_note: up to 500 characters.');
  v_flag := private.flag_or_fail(p_orchard, p_flag);

  v_refused := private.cannot_take_back(v_c, v_flag);
  if v_c.by_lead then
    v_refused := case
      when v_flag.ended_at is not null then private.code('flag_over')
      when v_flag.kind = 'disease' then '[]'::jsonb
      when v_refused <> '[]' then private.code('only_manager_clears')
      else v_refused end;
  end if;
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  update public.flags set state = 'withdrawn', ended_by = v_c.by_person_id, ended_at = v_c.at, ended_note = nullif(btrim(p_note), '')
  where id = p_flag;
  return private.accept(v_c, 'flag_withdrawn', jsonb_build_object('flag', p_flag));
end $$;
comment on function public.withdraw_flag is
  'By who reported it, for a short while; a disease also by a lead, at any time. A hazard is cleared by a manager (clear_flag).';
grant execute on function public.withdraw_flag to authenticated;
