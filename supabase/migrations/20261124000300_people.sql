-- Person, login and device are three things: one person may have two phones, one phone may serve two people.

create table public.people (
  id uuid primary key,
  orchard_id uuid not null constraint people_orchard references public.orchards on delete cascade,
  name text constraint people_name_length check (char_length(name) between 1 and 60),
  role text not null constraint people_role_known check (role in ('manager', 'lead', 'volunteer', 'visitor')),
  age_band text not null default 'adult' constraint people_age_band_known check (age_band in ('adult', 'minor')),
  guardian_id uuid,
  phone text constraint people_phone_length check (char_length(phone) <= 40),
  added_at timestamptz not null,
  admitted_at timestamptz,
  removed_at timestamptz,
  forgotten_at timestamptz,
  constraint people_in_orchard unique (orchard_id, id),
  constraint people_guardian foreign key (orchard_id, guardian_id) references public.people (orchard_id, id) on delete no action,
  constraint people_named_until_forgotten check ((name is null) = (forgotten_at is not null))
);
comment on column public.people.phone is 'Shown to leads and managers only.';
comment on column public.people.admitted_at is 'Null while somebody who joined outside an open shift waits for a lead.';

create table public.logins (
  id uuid primary key default gen_random_uuid(),
  orchard_id uuid not null,
  person_id uuid not null,
  user_id uuid not null,
  linked_at timestamptz not null,
  ended_at timestamptz,
  heard_at timestamptz,
  heard_head bigint,
  constraint logins_person foreign key (orchard_id, person_id) references public.people (orchard_id, id) on delete cascade
);
comment on table public.logins is 'A signed-in user acts for a person. Many to many; ended, never deleted.';
create unique index logins_one_open on public.logins (user_id, person_id) where ended_at is null;
create index logins_by_person on public.logins (orchard_id, person_id) where ended_at is null;

create table public.invites (
  id uuid primary key,
  orchard_id uuid not null constraint invites_orchard references public.orchards on delete cascade,
  code_hash text not null constraint invites_code unique,
  kind text not null constraint invites_kind_known check (kind in ('join', 'role', 'device', 'recovery')),
  role text not null constraint invites_role_known check (role in ('manager', 'lead', 'volunteer')),
  person_id uuid,
  shift_id uuid,
  uses_left integer constraint invites_uses_left_positive check (uses_left >= 0),
  used integer not null default 0,
  made_by uuid,
  made_at timestamptz not null,
  expires_at timestamptz not null,
  ended_at timestamptz,
  constraint invites_person foreign key (orchard_id, person_id) references public.people (orchard_id, id) on delete cascade,
  constraint invites_join_is_volunteer check (kind <> 'join' or role = 'volunteer')
);
comment on table public.invites is
  'join: volunteers, many uses, ends with the shift. role: one lead or manager. device: a second phone for person_id. recovery: the last way back for a manager.';

create table public.skills (
  id uuid primary key,
  orchard_id uuid not null,
  person_id uuid not null,
  skill text not null constraint skills_skill_known check (skill in ('hand_saw', 'ladder', 'prunes_alone')),
  granted_by uuid not null,
  granted_at timestamptz not null,
  until date,
  ended_at timestamptz,
  constraint skills_person foreign key (orchard_id, person_id) references public.people (orchard_id, id) on delete cascade,
  constraint skills_not_to_oneself check (granted_by <> person_id)
);
create unique index skills_one_open on public.skills (person_id, skill) where ended_at is null;

create table public.consents (
  id uuid primary key,
  orchard_id uuid not null,
  person_id uuid not null,
  by_person_id uuid not null,
  season integer not null,
  text_version integer not null,
  given_at timestamptz not null,
  constraint consents_person foreign key (orchard_id, person_id) references public.people (orchard_id, id) on delete cascade,
  constraint consents_by foreign key (orchard_id, by_person_id) references public.people (orchard_id, id) on delete cascade
);
create index consents_by_person on public.consents (person_id, season);

alter table public.people enable row level security;
alter table public.logins enable row level security;
alter table public.invites enable row level security;
alter table public.skills enable row level security;
alter table public.consents enable row level security;
