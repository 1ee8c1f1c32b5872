-- Stand-in for the part of Supabase's schema auth that Rowcall uses. Run by the owner, again at each start.

create schema if not exists auth;
grant usage on schema auth to anon, authenticated, service_role;

create table if not exists auth.users (
  id uuid primary key default gen_random_uuid(),
  aud text not null default 'authenticated',
  role text not null default 'authenticated',
  is_anonymous boolean not null default true,
  created_at timestamptz not null default now(),
  updated_at timestamptz not null default now(),
  last_sign_in_at timestamptz not null default now()
);

create table if not exists auth.sessions (
  id uuid primary key default gen_random_uuid(),
  user_id uuid not null references auth.users (id) on delete cascade,
  created_at timestamptz not null default now(),
  refreshed_at timestamptz not null default now()
);
create index if not exists sessions_of_user on auth.sessions (user_id);

-- Rows of used tokens are kept while the session lives: an older one that comes back is how a theft shows.
create table if not exists auth.refresh_tokens (
  token_hash text primary key,
  session_id uuid not null references auth.sessions (id) on delete cascade,
  parent_hash text,
  is_active boolean not null default true,
  created_at timestamptz not null default now()
);
create index if not exists refresh_tokens_of_session on auth.refresh_tokens (session_id);
create unique index if not exists one_active_refresh_token on auth.refresh_tokens (session_id) where is_active;

alter table auth.users enable row level security;
alter table auth.sessions enable row level security;
alter table auth.refresh_tokens enable row level security;

-- No search_path on these three: then they are inlined, and they name nothing that could be shadowed.
create or replace function auth.jwt() returns jsonb
language sql stable as $$
  select nullif(current_setting('request.jwt.claims', true), '')::jsonb
$$;

create or replace function auth.uid() returns uuid
language sql stable as $$
  select (nullif(current_setting('request.jwt.claims', true), '')::jsonb ->> 'sub')::uuid
$$;

create or replace function auth.role() returns text
language sql stable as $$
  select nullif(current_setting('request.jwt.claims', true), '')::jsonb ->> 'role'
$$;

grant execute on function auth.jwt(), auth.uid(), auth.role() to anon, authenticated, service_role;
