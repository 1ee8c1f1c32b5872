-- Rounds: which species are pruned in which season.

create function public.open_round(
  p_orchard uuid, p_command uuid, p_person uuid, p_kind text, p_season integer, p_species text[], p_from date, p_to date
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
begin
  v_c := private.begin_command('open_round', p_orchard, p_command, p_person, 'manager', jsonb_build_object(
    'kind', p_kind, 'season', p_season, 'species', p_species, 'from', p_from, 'to', p_to));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_kind in ('winter', 'summer', 'after_harvest', 'training'),
    'p_kind: winter, summer, after_harvest or training.');
  perform private.need(p_season between 2000 and 2200, 'p_season: a year.');
  perform private.need(cardinality(p_species) between 1 and 30
    and (select bool_and(private.is_species(x) is true) from unnest(p_species) x), 'p_species: 1 to 30 known species.');
  perform private.need(private.is_day(p_from) and private.is_day(p_to) and p_from <= p_to, 'p_from and p_to: days in order.');

  insert into public.rounds (id, orchard_id, kind, season, species, from_on, to_on, opened_at)
  values (p_command, p_orchard, p_kind, p_season, p_species, p_from, p_to, v_c.at);
  return private.accept(v_c, 'round_opened', jsonb_build_object('round', p_command, 'kind', p_kind, 'season', p_season,
    'species', p_species, 'from', p_from, 'to', p_to), null, false, jsonb_build_object('round', p_command));
end $$;
grant execute on function public.open_round to authenticated;

create function private.planned_in(p_round uuid) returns uuid[]
language plpgsql stable set search_path = '' as $$
begin
  return array(select id from public.shifts where round_id = p_round and state = 'scheduled' order by starts_at, id);
end $$;

create function public.close_round(
  p_orchard uuid, p_command uuid, p_person uuid, p_round uuid, p_call_off uuid[] default '{}'
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_planned uuid[];
  v_deals integer[];
begin
  v_c := private.begin_command('close_round', p_orchard, p_command, p_person, 'manager',
    jsonb_build_object('round', p_round, 'call_off', coalesce(p_call_off, '{}')));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.round_or_fail(p_orchard, p_round);
  if (private.open_shift(p_orchard)).round_id = p_round then return private.refuse(v_c, private.code('shift_open')); end if;
  -- People were told to come: whoever closes the round says of each planned shift that it is called off.
  v_planned := private.planned_in(p_round);
  if not v_planned <@ coalesce(p_call_off, '{}') then
    return private.refuse(v_c, private.code('shifts_planned', jsonb_build_object('shifts', v_planned)));
  end if;

  update public.shifts set state = 'cancelled' where id = any (v_planned);
  update public.rounds set closed_at = coalesce(closed_at, v_c.at) where id = p_round;
  select array_agg(tree_no) into v_deals from public.deals where round_id = p_round and ended_at is null;
  return private.accept(v_c, 'round_closed', private.filled(jsonb_build_object(
    'round', p_round, 'calledOff', to_jsonb(v_planned), 'dealsEnded', private.end_deals(p_orchard, v_deals, v_c.at))));
end $$;
comment on function public.close_round is 'p_call_off: the planned shifts of this round, all of them; they are called off with it.';
grant execute on function public.close_round to authenticated;

create function public.reopen_round(p_orchard uuid, p_command uuid, p_person uuid, p_round uuid) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
begin
  v_c := private.begin_command('reopen_round', p_orchard, p_command, p_person, 'manager', jsonb_build_object('round', p_round));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.round_or_fail(p_orchard, p_round);

  update public.rounds set closed_at = null where id = p_round;
  return private.accept(v_c, 'round_reopened', jsonb_build_object('round', p_round));
end $$;
comment on function public.reopen_round is 'For one that was closed by mistake: its trees are as they were; deals and called off shifts do not come back.';
grant execute on function public.reopen_round to authenticated;
