-- One number line of events an orchard, and the answer that each command got.

create table public.events (
  orchard_id uuid not null constraint events_orchard references public.orchards on delete cascade,
  n bigint not null,
  at timestamptz not null,
  command_id uuid not null,
  person_id uuid not null,
  by_person_id uuid not null,
  kind text not null,
  body jsonb,
  lead_body jsonb,
  own boolean not null default false,
  own_people uuid[] not null default '{}',
  constraint events_key primary key (orchard_id, n),
  constraint events_one_a_command unique (orchard_id, command_id)
);
comment on column public.events.body is
  'Ids and public facts, never typed text about people. Null: members hear the number and nothing else.';
comment on column public.events.lead_body is 'What only leads and managers get, through events_after.';
comment on column public.events.own is 'The person concerned gets lead_body too.';
comment on column public.events.own_people is 'And so do these, where it concerns somebody else than whose command it was.';

create table public.command_answers (
  orchard_id uuid not null constraint command_answers_orchard references public.orchards on delete cascade,
  command_id uuid not null,
  name text not null,
  person_id uuid not null,
  by_person_id uuid not null,
  args_sha256 text not null,
  answer jsonb not null,
  at timestamptz not null,
  constraint command_answers_key primary key (orchard_id, command_id)
);
comment on table public.command_answers is
  'Kept 90 days, longer than any phone keeps unsent work (14): the same command again gets the same answer.';
comment on column public.command_answers.args_sha256 is
  'Enough to tell another body under the same id: names, contacts and notes are not kept a second time, where forgetting would miss them.';
create index command_answers_old on public.command_answers (at);

alter table public.events enable row level security;
alter table public.command_answers enable row level security;

create function private.topic(p_orchard uuid, p_channel_epoch integer) returns text
language plpgsql immutable set search_path = '' as $$
begin
  return 'orchard:' || p_orchard || ':' || p_channel_epoch;
end $$;

create function private.may_listen(p_topic text) returns boolean
language sql stable security definer set search_path = '' as $$
  select exists (
    select 1
    from public.logins l
    join public.people p on p.id = l.person_id
    join public.orchard_heads h on h.orchard_id = l.orchard_id
    where l.user_id = (select auth.uid())
      and l.ended_at is null
      and p.removed_at is null
      and p.admitted_at is not null
      and private.topic(h.orchard_id, h.channel_epoch) = p_topic
  )
$$;
comment on function private.may_listen is 'The membership look-up behind the policy on realtime.messages.';

grant usage on schema private to authenticated;
grant execute on function private.may_listen(text) to authenticated;

create policy "members hear the current channel of their orchard"
  on realtime.messages for select to authenticated
  using ((select private.may_listen((select realtime.topic()))));
