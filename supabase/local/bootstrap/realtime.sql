-- Stand-in for the part of Supabase's schema realtime that Rowcall uses. Run by the owner, again at each start.

create schema if not exists realtime;
grant usage on schema realtime to anon, authenticated, service_role;

create table if not exists realtime.messages (
  id uuid not null default gen_random_uuid(),
  topic text not null,
  extension text not null,
  event text,
  payload jsonb,
  private boolean not null default false,
  inserted_at timestamp not null default now(),
  updated_at timestamp not null default now(),
  primary key (id, inserted_at)
);
create index if not exists messages_by_age on realtime.messages (inserted_at);
alter table realtime.messages enable row level security;
grant select, insert on realtime.messages to anon, authenticated, service_role;

create or replace function realtime.topic() returns text
language sql stable set search_path = '' as $$
  select nullif(current_setting('realtime.topic', true), '')
$$;
grant execute on function realtime.topic() to anon, authenticated, service_role;

create or replace function realtime.send(payload jsonb, event text, topic text, private boolean default true)
returns void
language plpgsql set search_path = '' as $$
declare
  v_id uuid := gen_random_uuid();
begin
  perform set_config('realtime.topic', topic, true);
  insert into realtime.messages (id, topic, extension, event, payload, private)
  values (v_id, topic, 'broadcast', event,
          case when payload ? 'id' then payload else payload || jsonb_build_object('id', v_id) end, private);
exception when others then
  raise warning 'The message was not sent: %', sqlerrm;
end $$;
comment on function realtime.send is
  'As on Supabase: runs as its caller, and an error is only a warning, so call it from security definer functions.';
grant execute on function realtime.send(jsonb, text, text, boolean) to anon, authenticated, service_role;

create or replace function realtime.announce() returns trigger
language plpgsql set search_path = '' as $$
declare
  v_message jsonb := jsonb_build_object(
    'topic', new.topic, 'event', new.event, 'id', new.id, 'payload', new.payload);
begin
  -- A notification takes fewer than 8000 bytes. What does not fit goes as its number alone: whoever
  -- hears it asks for what they have missed.
  if octet_length(v_message::text) >= 8000 then
    v_message := v_message || jsonb_build_object('payload', jsonb_strip_nulls(jsonb_build_object(
      'n', new.payload -> 'n', 'id', new.payload -> 'id')));
  end if;
  perform pg_notify('realtime', v_message::text);
  return null;
end $$;

create or replace trigger announce after insert on realtime.messages
  for each row when (new.extension = 'broadcast') execute function realtime.announce();
