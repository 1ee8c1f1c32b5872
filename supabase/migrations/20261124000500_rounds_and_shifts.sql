-- Rounds (which trees, which season), the shifts of a round, and who is there.

create table public.rounds (
  id uuid primary key,
  orchard_id uuid not null constraint rounds_orchard references public.orchards on delete cascade,
  kind text not null constraint rounds_kind_known check (kind in ('winter', 'summer', 'after_harvest', 'training')),
  season integer not null constraint rounds_season_range check (season between 2000 and 2200),
  species text[] not null constraint rounds_species_some check (cardinality(species) > 0),
  from_on date not null,
  to_on date not null,
  opened_at timestamptz not null,
  closed_at timestamptz,
  constraint rounds_in_orchard unique (orchard_id, id),
  constraint rounds_days_in_order check (from_on <= to_on)
);

create table public.shifts (
  id uuid primary key,
  orchard_id uuid not null,
  round_id uuid not null,
  on_date date not null,
  starts_at timestamptz not null,
  ends_at timestamptz not null,
  state text not null default 'scheduled' constraint shifts_state_known check (state in ('scheduled', 'open', 'closed', 'cancelled')),
  signal text not null default 'horn' constraint shifts_signal_known check (signal in ('horn', 'whistle', 'voice')),
  opened_at timestamptz,
  closed_at timestamptz,
  constraint shifts_in_orchard unique (orchard_id, id),
  constraint shifts_in_round unique (orchard_id, round_id, id),
  constraint shifts_round foreign key (orchard_id, round_id) references public.rounds (orchard_id, id) on delete no action,
  constraint shifts_times_in_order check (starts_at < ends_at)
);
create unique index shifts_one_open on public.shifts (orchard_id) where state = 'open';
comment on column public.shifts.signal is 'How this site calls a stop. The phone is never the alarm.';

alter table public.invites add constraint invites_shift
  foreign key (orchard_id, shift_id) references public.shifts (orchard_id, id) on delete cascade;

create table public.shift_offs (
  orchard_id uuid not null,
  shift_id uuid not null,
  what text not null,
  reason text not null constraint shift_offs_reason_known
    check (reason in ('season', 'rain', 'wet_wood', 'wind', 'thunder', 'heat', 'lead')),
  set_by uuid not null,
  set_at timestamptz not null,
  constraint shift_offs_key primary key (shift_id, what),
  constraint shift_offs_shift foreign key (orchard_id, shift_id) references public.shifts (orchard_id, id) on delete cascade
);
comment on column public.shift_offs.what is 'A species, or ''ladder'' for all ladder work.';

create table public.attendances (
  id uuid primary key,
  orchard_id uuid not null,
  shift_id uuid not null,
  person_id uuid not null,
  arrived_at timestamptz not null,
  arrived_by uuid not null,
  left_at timestamptz,
  left_by uuid,
  left_why text constraint attendances_left_why_length check (char_length(left_why) <= 300),
  not_found boolean not null default false,
  found_at timestamptz,
  found_by uuid,
  constraint attendances_shift foreign key (orchard_id, shift_id) references public.shifts (orchard_id, id) on delete cascade,
  constraint attendances_person foreign key (orchard_id, person_id) references public.people (orchard_id, id) on delete cascade
);
create unique index attendances_one_open on public.attendances (shift_id, person_id) where left_at is null;
comment on column public.attendances.left_why is 'What a lead wrote when closing the shift without this person signing out.';
create index attendances_not_found on public.attendances (orchard_id) where not_found and found_at is null;
comment on column public.attendances.not_found is 'Nobody knew where they were when the shift closed; until a lead says that they are found.';

create table public.breaks (
  id uuid primary key,
  attendance_id uuid not null constraint breaks_attendance references public.attendances on delete cascade,
  from_at timestamptz not null,
  to_at timestamptz
);
create index breaks_by_attendance on public.breaks (attendance_id, from_at desc);
create unique index breaks_one_open on public.breaks (attendance_id) where to_at is null;

alter table public.rounds enable row level security;
alter table public.shifts enable row level security;
alter table public.shift_offs enable row level security;
alter table public.attendances enable row level security;
alter table public.breaks enable row level security;
