-- What makes a person ready: the briefing given and signed, the equipment checked, the tools in hand.

create table public.briefings (
  orchard_id uuid not null,
  shift_id uuid not null,
  version integer not null,
  topics jsonb not null constraint briefings_topics_list check (jsonb_typeof(topics) = 'array'),
  change text not null constraint briefings_change_known check (change in ('first', 'before_next_tree', 'come_down')),
  written_by uuid not null,
  written_at timestamptz not null,
  constraint briefings_key primary key (shift_id, version),
  constraint briefings_shift foreign key (orchard_id, shift_id) references public.shifts (orchard_id, id) on delete cascade
);
comment on column public.briefings.topics is '[{"code": "ladders", "en": "…", "es": "…"}]; en and es only where the lead wrote other words.';

create table public.briefings_given (
  orchard_id uuid not null,
  shift_id uuid not null,
  version integer not null,
  person_id uuid not null,
  given_by uuid not null,
  given_at timestamptz not null,
  constraint briefings_given_key primary key (shift_id, version, person_id),
  constraint briefings_given_version foreign key (shift_id, version) references public.briefings (shift_id, version) on delete cascade,
  constraint briefings_given_person foreign key (orchard_id, person_id) references public.people (orchard_id, id) on delete cascade
);
comment on table public.briefings_given is 'The lead''s "I briefed these people": a person gives the briefing, the phone records it.';

create table public.briefing_signatures (
  orchard_id uuid not null,
  shift_id uuid not null,
  version integer not null,
  person_id uuid not null,
  language text not null constraint briefing_signatures_language_known check (language in ('en', 'es')),
  how text not null constraint briefing_signatures_how_known check (how in ('heard', 'read_to_me', 'read')),
  signed_by uuid not null,
  signed_at timestamptz not null,
  constraint briefing_signatures_key primary key (shift_id, version, person_id),
  constraint briefing_signatures_version foreign key (shift_id, version) references public.briefings (shift_id, version) on delete cascade,
  constraint briefing_signatures_person foreign key (orchard_id, person_id) references public.people (orchard_id, id) on delete cascade
);

create table public.equipment_checks (
  id uuid primary key,
  orchard_id uuid not null,
  shift_id uuid not null,
  person_id uuid not null,
  failed_items text[] not null default '{}',
  checked_by uuid not null,
  checked_at timestamptz not null,
  constraint equipment_checks_shift foreign key (orchard_id, shift_id) references public.shifts (orchard_id, id) on delete cascade,
  constraint equipment_checks_person foreign key (orchard_id, person_id) references public.people (orchard_id, id) on delete cascade
);
create index equipment_checks_latest on public.equipment_checks (shift_id, person_id, checked_at desc);

create table public.tools (
  orchard_id uuid not null constraint tools_orchard references public.orchards on delete cascade,
  no integer not null,
  label text not null constraint tools_label_length check (char_length(label) between 1 and 30),
  kind text not null constraint tools_kind_known check (kind in ('pruner', 'lopper', 'saw', 'pole_pruner', 'ladder', 'other')),
  owned_by uuid,
  state text not null default 'fit' constraint tools_state_known check (state in ('fit', 'failed')),
  clean boolean not null default true,
  constraint tools_key primary key (orchard_id, no),
  constraint tools_owner foreign key (orchard_id, owned_by) references public.people (orchard_id, id) on delete no action
);
comment on column public.tools.owned_by is 'Null: the orchard''s own.';

create table public.tool_holdings (
  id uuid primary key default gen_random_uuid(),
  orchard_id uuid not null,
  tool_no integer not null,
  person_id uuid not null,
  shift_id uuid,
  taken_at timestamptz not null,
  returned_at timestamptz,
  returned_by uuid,
  constraint tool_holdings_tool foreign key (orchard_id, tool_no) references public.tools (orchard_id, no) on delete cascade,
  constraint tool_holdings_person foreign key (orchard_id, person_id) references public.people (orchard_id, id) on delete cascade
);
create unique index tool_holdings_one_open on public.tool_holdings (orchard_id, tool_no) where returned_at is null;

create table public.tool_checks (
  id uuid primary key default gen_random_uuid(),
  orchard_id uuid not null,
  tool_no integer not null,
  failed_items text[] not null default '{}',
  note text constraint tool_checks_note_length check (char_length(note) <= 300),
  checked_by uuid not null,
  checked_at timestamptz not null,
  constraint tool_checks_tool foreign key (orchard_id, tool_no) references public.tools (orchard_id, no) on delete cascade
);

alter table public.briefings enable row level security;
alter table public.briefings_given enable row level security;
alter table public.briefing_signatures enable row level security;
alter table public.equipment_checks enable row level security;
alter table public.tools enable row level security;
alter table public.tool_holdings enable row level security;
alter table public.tool_checks enable row level security;
