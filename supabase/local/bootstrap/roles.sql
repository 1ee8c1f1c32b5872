-- What only an administrator may make. Hosted Supabase has these roles from the start.
-- Safe to run again: every start on PostgreSQL as an administrator does.

do $$
begin
  if not exists (select from pg_catalog.pg_roles where rolname = 'anon') then
    create role anon nologin noinherit;
  end if;
  if not exists (select from pg_catalog.pg_roles where rolname = 'authenticated') then
    create role authenticated nologin noinherit;
  end if;
  if not exists (select from pg_catalog.pg_roles where rolname = 'service_role') then
    create role service_role nologin noinherit bypassrls;
  end if;
  if not exists (select from pg_catalog.pg_roles where rolname = 'rowcall_owner') then
    create role rowcall_owner nologin;
  end if;
end $$;

grant anon, authenticated, service_role to rowcall_owner;

do $$
begin
  execute format('grant create, connect, temporary on database %I to rowcall_owner', current_database());
end $$;
alter schema public owner to rowcall_owner;
