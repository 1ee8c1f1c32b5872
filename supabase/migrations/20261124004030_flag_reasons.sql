-- What a hazard's flag says of why it is the arborist's, and of which limb. Codes and numbers only: the sentences are the client's.

create function private.is_number_within(p_value jsonb, p_least numeric, p_most numeric) returns boolean
language plpgsql immutable set search_path = '' as $$
begin
  if p_value is null or p_value = 'null' then return true; end if;
  if jsonb_typeof(p_value) <> 'number' then return false; end if;
  return (p_value #>> '{}')::numeric between p_least and p_most;
end $$;
comment on function private.is_number_within is 'Nothing said is well said.';

create function private.has_only_keys(p_object jsonb, p_keys text[]) returns boolean
language plpgsql immutable set search_path = '' as $$
begin
  if jsonb_typeof(p_object) is distinct from 'object' then return false; end if;
  return p_object - p_keys = '{}';
end $$;

create function private.is_refer_reason(p_reason jsonb) returns boolean
language plpgsql immutable set search_path = '' as $$
begin
  if not private.has_only_keys(p_reason, array['code', 'seen', 'value', 'limit']) then return false; end if;
  return coalesce(jsonb_typeof(p_reason -> 'code') = 'string' and p_reason ->> 'code' ~ '^[a-z_]{1,40}$', false)
    and coalesce(jsonb_typeof(p_reason -> 'seen') = 'boolean', false)
    and private.is_number_within(p_reason -> 'value', 0, 100000)
    and private.is_number_within(p_reason -> 'limit', 0, 100000);
end $$;
comment on function private.is_refer_reason is
  'code: lib/domain/safety/refer-rules.ts. seen: false says that nobody knows. value and limit: SI, in the unit of the rule.';

create function private.are_refer_reasons(p_reasons jsonb) returns boolean
language plpgsql immutable set search_path = '' as $$
begin
  if jsonb_typeof(p_reasons) is distinct from 'array' then return false; end if;
  return jsonb_array_length(p_reasons) <= 20 and not exists (
    select 1 from jsonb_array_elements(p_reasons) reason where not private.is_refer_reason(reason));
end $$;

create function private.is_limb(p_limb jsonb) returns boolean
language plpgsql immutable set search_path = '' as $$
begin
  return private.has_only_keys(p_limb, array['cm', 'bearingDeg'])
    and private.is_number_within(p_limb -> 'cm', 0, 300)
    and private.is_number_within(p_limb -> 'bearingDeg', 0, 360);
end $$;
comment on function private.is_limb is 'cm: its diameter where it would be cut. bearingDeg: to which side of the trunk it grows.';
