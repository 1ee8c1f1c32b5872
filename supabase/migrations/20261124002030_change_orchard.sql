-- What an orchard says about itself: name, language, units, house rules, emergency card.

create function private.are_house_rules(p_rules jsonb) returns boolean
language sql immutable set search_path = '' as $$
  select jsonb_typeof(p_rules) = 'object' and not exists (
    select 1 from jsonb_each(case when jsonb_typeof(p_rules) = 'object' then p_rules else '{}' end)
    where not private.default_house_rules() ? key
      -- A case, since "and" promises no order and a word is no number.
      or case when jsonb_typeof(value) = 'number' then 
        value::numeric not between (private.house_rule_range(key))[1] and (private.house_rule_range(key))[2] else true end)
$$;

create function private.is_emergency_card(p_card jsonb) returns boolean
language sql immutable set search_path = '' as $$
  select jsonb_typeof(p_card) = 'object' and not exists (
    select 1 from jsonb_each(case when jsonb_typeof(p_card) = 'object' then p_card else '{}' end)
    where key not in ('number', 'call', 'where', 'access', 'hospital', 'first_aid', 'first_aider', 'meeting_point')
      or jsonb_typeof(value) <> 'string' or char_length(value #>> '{}') > 500)
$$;

create function public.change_orchard(
  p_orchard uuid, p_command uuid, p_person uuid, p_name text default null, p_language text default null,
  p_units text default null, p_house_rules jsonb default null, p_emergency jsonb default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
  v_orchard public.orchards;
begin
  v_c := private.begin_command('change_orchard', p_orchard, p_command, p_person, 'manager', jsonb_build_object(
    'name', p_name, 'language', p_language, 'units', p_units, 'house_rules', p_house_rules, 'emergency', p_emergency));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_name is null or private.is_line(p_name, 80), 'p_name: up to 80 characters.');
  perform private.need(p_language is null or p_language in ('en', 'es'), 'p_language: en or es.');
  perform private.need(p_units is null or p_units in ('metric', 'us'), 'p_units: metric or us.');
  perform private.need(p_house_rules is null or private.are_house_rules(p_house_rules), 'p_house_rules: known rules, each within its range.');
  perform private.need(p_emergency is null or private.is_emergency_card(p_emergency), 'p_emergency: known keys, up to 500 characters.');

  update public.orchards set
    name = coalesce(btrim(p_name), name), language = coalesce(p_language, language), units = coalesce(p_units, units),
    house_rules = house_rules || coalesce(p_house_rules, '{}'), emergency = emergency || coalesce(p_emergency, '{}'),
    emergency_version = emergency_version + (p_emergency is not null)::integer
  where id = p_orchard returning * into v_orchard;
  return private.accept(v_c, 'orchard_changed', jsonb_build_object(
    'name', btrim(p_name), 'language', p_language, 'units', p_units,
    'houseRules', case when p_house_rules is not null then private.default_house_rules() || v_orchard.house_rules end,
    'emergencyVersion', case when p_emergency is not null then v_orchard.emergency_version end));
end $$;
comment on function public.change_orchard is 'Null: unchanged. House rules and emergency card are changed key by key.';
grant execute on function public.change_orchard to authenticated;
