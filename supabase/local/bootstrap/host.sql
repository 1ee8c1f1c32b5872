-- What the host itself keeps and calls. No role but the owner may use this schema.

create schema if not exists local_host;
create schema if not exists private;

grant usage on schema public to anon, authenticated, service_role;

-- As on Supabase, what is new in public starts open to these roles: migrations must close it themselves.
-- Once only, or a later start would open again what a migration has closed.
do $$
begin
  if to_regclass('local_host.migrations') is not null then return; end if;
  alter default privileges in schema public grant all on tables to anon, authenticated, service_role;
  alter default privileges in schema public grant all on functions to anon, authenticated, service_role;
  alter default privileges in schema public grant all on sequences to anon, authenticated, service_role;
end $$;

create table if not exists local_host.migrations (
  name text primary key,
  applied_at timestamptz not null default now()
);

create or replace function local_host.call(p_claims text, p_role text, p_sql text, p_arguments jsonb)
returns text
language plpgsql volatile set search_path = '' as $$
declare
  v_answer text;
begin
  perform set_config('request.jwt.claims', p_claims, true), set_config('role', p_role, true);
  execute p_sql using p_arguments into v_answer;
  return v_answer;
end $$;
comment on function local_host.call is
  'A whole call in one statement. The function is executed inside, so the right to execute it is the caller''s.';

create or replace function local_host.calls(p_calls jsonb)
returns table (answer text, code text, message text, detail text, hint text)
language plpgsql volatile set search_path = '' as $$
declare
  v_call record;
begin
  for v_call in select * from jsonb_to_recordset(p_calls) as c(claims text, role text, sql text, values text) loop
    answer := null; code := null; message := null; detail := null; hint := null;
    -- What one of them raises is undone and told to that one alone; so its values are read in here.
    begin
      answer := local_host.call(v_call.claims, v_call.role, v_call.sql, v_call.values::jsonb);
    exception when others then
      get stacked diagnostics code = returned_sqlstate, message = message_text,
        detail = pg_exception_detail, hint = pg_exception_hint;
    end;
    perform set_config('role', 'none', true);
    return next;
  end loop;
end $$;
comment on function local_host.calls is
  'Calls of several people in one transaction, in their order; the answers are worth something once it is committed.';

create or replace function local_host.may_join(p_claims text, p_role text, p_topic text) returns boolean
language plpgsql volatile set search_path = '' as $$
declare
  v_id uuid := gen_random_uuid();
  v_is_visible boolean := false;
begin
  begin
    insert into realtime.messages (id, topic, extension, event, payload, private)
    values (v_id, p_topic, 'broadcast', 'probe', '{}', true);
    perform set_config('request.jwt.claims', p_claims, true),
            set_config('realtime.topic', p_topic, true),
            set_config('role', p_role, true);
    select exists (select from realtime.messages where id = v_id) into v_is_visible;
    raise exception 'undo' using errcode = 'UNDO1';
  exception
    when sqlstate 'UNDO1' then null;
    when insufficient_privilege then return false;
  end;
  return v_is_visible;
end $$;
comment on function local_host.may_join is
  'As Supabase asks: is a message of this topic visible to this person? The probe and the role are undone.';

create or replace function local_host.refresh(p_hash text, p_next_hash text)
returns table (outcome text, user_id uuid, session_id uuid)
language plpgsql volatile set search_path = '' as $$
#variable_conflict use_column
declare
  v_session auth.sessions;
  v_used auth.refresh_tokens;
  v_active auth.refresh_tokens;
begin
  select s.* into v_session from auth.sessions s
  join auth.refresh_tokens t on t.session_id = s.id where t.token_hash = p_hash
  for update of s;
  if v_session.id is null then return query select 'unknown', null::uuid, null::uuid; return; end if;

  select * into v_used from auth.refresh_tokens where token_hash = p_hash;
  select * into v_active from auth.refresh_tokens where session_id = v_session.id and is_active;

  if v_used.is_active then
    update auth.refresh_tokens set is_active = false where token_hash = p_hash;
    insert into auth.refresh_tokens (token_hash, session_id, parent_hash)
    values (p_next_hash, v_session.id, p_hash);
  elsif v_active.parent_hash = p_hash then
    -- The answer was lost on its way. After a move to a machine with another secret the next token is
    -- another one than was stored, hence the update.
    update auth.refresh_tokens set token_hash = p_next_hash
    where token_hash = v_active.token_hash and token_hash <> p_next_hash;
  else
    delete from auth.sessions where id = v_session.id;
    return query select 'reused', v_session.user_id, v_session.id;
    return;
  end if;

  update auth.sessions set refreshed_at = now() where id = v_session.id;
  return query select 'refreshed', v_session.user_id, v_session.id;
end $$;
comment on function local_host.refresh is
  'unknown, refreshed or reused. Reuse is answered, not raised, so that the end of the session is committed.';
