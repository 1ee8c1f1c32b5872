-- Orchards, and the narrow row that every command locks.

create table public.orchards (
  id uuid primary key,
  name text not null constraint orchards_name_length check (char_length(name) between 1 and 80),
  time_zone text not null,
  language text not null default 'en' constraint orchards_language_known check (language in ('en', 'es')),
  units text not null default 'metric' constraint orchards_units_known check (units in ('metric', 'us')),
  house_rules jsonb not null default '{}',
  emergency jsonb not null default '{}',
  emergency_version integer not null default 0,
  aerial_version integer not null default 0,
  min_client integer not null default 0,
  created_at timestamptz not null
);
comment on column public.orchards.house_rules is
  'Only what differs from private.house_rule defaults: {"ladder_from_cm": 250}.';
comment on column public.orchards.emergency is
  'The emergency card: texts by key (private.is_emergency_card has the keys). Names and numbers may stand in it, so events carry its version only.';

create table public.orchard_heads (
  orchard_id uuid primary key constraint orchard_heads_orchard references public.orchards on delete cascade,
  head bigint not null default 0,
  epoch uuid not null default gen_random_uuid(),
  channel_epoch integer not null default 1,
  sheet_version integer not null default 0,
  last_tree_no integer not null default 0
);
comment on table public.orchard_heads is
  'Locked for no key update by every command: numbers have no holes and commit in order.';
comment on column public.orchard_heads.epoch is 'Changes at a restore; phones then send again what they sent lately.';
comment on column public.orchard_heads.channel_epoch is
  'Part of the topic. Raised when somebody is put out, since a joined channel keeps its right until its token ends.';
comment on column public.orchard_heads.last_tree_no is 'Tree numbers are never used twice.';

create table public.setup_codes (
  code_hash text primary key,
  made_at timestamptz not null,
  expires_at timestamptz not null,
  used_at timestamptz
);
comment on table public.setup_codes is
  'Each lets one first manager create an orchard. Made outside the API only (private.make_setup_code).';

alter table public.orchards enable row level security;
alter table public.orchard_heads enable row level security;
alter table public.setup_codes enable row level security;
