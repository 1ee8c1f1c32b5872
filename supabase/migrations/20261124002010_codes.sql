-- Codes by which people get in: kept hashed, counted down, and wrong ones counted for each login.

create table public.wrong_codes (
  user_id uuid primary key,
  count integer not null,
  since timestamptz not null
);
comment on table public.wrong_codes is
  'By login and not by address: a whole crew shares one address. A row of a past hour counts for nothing.';
alter table public.wrong_codes enable row level security;

create function private.begin_code(p_code text, p_command uuid) returns text
language plpgsql volatile set search_path = '' as $$
declare
  v_wrong public.wrong_codes;
begin
  if auth.uid() is null then perform private.fail(401, 'signed_out', 'Sign in first.'); end if;
  perform private.need(p_command is not null and char_length(p_code) between 1 and 200, 'p_code and p_command are needed.');
  -- Locked, so that guesses sent at once are counted one after the other.
  select * into v_wrong from public.wrong_codes where user_id = auth.uid() for update;
  if v_wrong.count >= 10 and v_wrong.since > now() - interval '1 hour' then
    perform private.fail(429, 'too_many', 'Too many wrong codes. Try again in an hour.');
  end if;
  return private.sha256_of(p_code);
end $$;
comment on function private.begin_code is 'First step of a command of somebody who is nobody here yet. Gives the hash of the code.';

create function private.wrong_code() returns jsonb
language plpgsql volatile set search_path = '' as $$
begin
  insert into public.wrong_codes as w (user_id, count, since) values (auth.uid(), 1, now())
  on conflict (user_id) do update set
    count = case when w.since > now() - interval '1 hour' then w.count + 1 else 1 end,
    since = case when w.since > now() - interval '1 hour' then w.since else now() end;
  return jsonb_build_object('refused', private.code('code_wrong'));
end $$;
comment on function private.wrong_code is 'Not stored: no orchard to store it in, and the same code stays wrong.';

create function private.seen_before(p_c private.command) returns jsonb
language plpgsql stable set search_path = '' as $$
declare
  v_seen public.command_answers;
begin
  select * into v_seen from public.command_answers where orchard_id = p_c.orchard_id and command_id = p_c.command_id;
  if found and (v_seen.name <> p_c.name or v_seen.args_sha256 <> private.sha256_of(p_c.args::text)) then
    perform private.fail(409, 'command_id_used', 'This command id was used for something else.');
  end if;
  return v_seen.answer;
end $$;
comment on function private.seen_before is
  'Step 3 where there is no membership yet: args then name the user, so that nobody gets another''s answer.';

create function private.link_login(p_c private.command) returns void
language sql volatile set search_path = '' as $$
  insert into public.logins (orchard_id, person_id, user_id, linked_at)
  values (p_c.orchard_id, p_c.person_id, auth.uid(), p_c.at)
  on conflict (user_id, person_id) where ended_at is null do nothing
$$;
