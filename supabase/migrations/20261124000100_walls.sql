-- The two walls: nobody touches a table; people only call functions that are granted one by one.

create schema if not exists private;
comment on schema private is 'What commands share. Nobody but the owner may use it.';

revoke all on schema private from public;
revoke create on schema public from public;
grant usage on schema public to anon, authenticated;

alter default privileges in schema public revoke execute on functions from public, anon, authenticated;
alter default privileges in schema public revoke all on tables from public, anon, authenticated;
alter default privileges in schema private revoke execute on functions from public;

-- A function that is new starts with execute for public whatever the schema's defaults say, because
-- the built-in default is global; so the global default goes too.
alter default privileges revoke execute on functions from public;
