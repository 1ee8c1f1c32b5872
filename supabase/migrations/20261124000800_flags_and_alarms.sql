-- What is wrong: flags on trees with their photos, calls for help, stops, incidents.

create table public.flags (
  id uuid primary key,
  orchard_id uuid not null,
  tree_no integer not null,
  kind text not null constraint flags_kind_known check (kind in ('disease', 'arborist')),
  state text not null constraint flags_state_known check (state in ('suspected', 'confirmed', 'open', 'withdrawn', 'cleared')),
  sign text not null,
  severity text not null constraint flags_severity_known check (severity in ('low', 'high', 'danger_now')),
  part text,
  note text constraint flags_note_length check (char_length(note) <= 500),
  keep_out_m numeric(5, 1) constraint flags_keep_out_range check (keep_out_m >= 0 and keep_out_m <= 200),
  reasons jsonb constraint flags_reasons_are_a_list check (jsonb_typeof(reasons) = 'array'),
  limb jsonb constraint flags_limb_is_an_object check (jsonb_typeof(limb) = 'object'),
  raised_by uuid not null,
  raised_at timestamptz not null,
  confirmed_by uuid,
  acted_at timestamptz,
  ended_by uuid,
  ended_at timestamptz,
  ended_note text constraint flags_ended_note_length check (char_length(ended_note) <= 500),
  done_by text constraint flags_done_by_length check (char_length(done_by) <= 120),
  done_on date,
  constraint flags_in_orchard unique (orchard_id, id),
  constraint flags_tree foreign key (orchard_id, tree_no) references public.trees (orchard_id, no) on delete no action,
  constraint flags_state_fits_kind check (
    (kind = 'disease' and state in ('suspected', 'confirmed', 'withdrawn'))
    or (kind = 'arborist' and state in ('open', 'withdrawn', 'cleared'))),
  constraint flags_reasons_of_hazards check (kind = 'arborist' or (reasons is null and limb is null)),
  constraint flags_end_whole check ((ended_at is null) = (state in ('suspected', 'confirmed', 'open'))),
  constraint flags_cleared_whole check ((state = 'cleared') = (done_by is not null and done_on is not null))
);
create index flags_open on public.flags (orchard_id, tree_no) where ended_at is null;
create index flags_by_reporter on public.flags (raised_by, raised_at desc);
comment on column public.flags.reasons is
  'Why it is the arborist''s: [{code, seen, value, limit}], as private.are_refer_reasons. Null: nobody was asked; empty: the rules found nothing, and it was flagged all the same.';
comment on column public.flags.limb is 'Which limb: {cm, bearingDeg}, each where it is known.';
comment on column public.flags.acted_at is 'A lead did something about it: from then on the reporter does not take it back.';
comment on column public.flags.ended_note is 'Why it was withdrawn, or what the arborist did.';
comment on column public.flags.done_by is 'The arborist or the company, as the manager wrote it.';

create table public.flag_notes (
  id uuid primary key,
  orchard_id uuid not null,
  flag_id uuid not null,
  person_id uuid not null,
  at timestamptz not null,
  note text not null constraint flag_notes_length check (char_length(note) between 1 and 500),
  constraint flag_notes_flag foreign key (orchard_id, flag_id) references public.flags (orchard_id, id) on delete cascade,
  constraint flag_notes_person foreign key (orchard_id, person_id) references public.people (orchard_id, id) on delete cascade
);
create index flag_notes_by_flag on public.flag_notes (flag_id, at);
comment on table public.flag_notes is 'What leads write about a flag while it is open: who was rung, when to look again.';

create table public.keep_out_people (
  orchard_id uuid not null,
  flag_id uuid not null,
  person_id uuid not null,
  tree_no integer,
  told_at timestamptz not null,
  out_at timestamptz,
  out_by uuid,
  constraint keep_out_people_key primary key (flag_id, person_id),
  constraint keep_out_people_flag foreign key (orchard_id, flag_id) references public.flags (orchard_id, id) on delete cascade,
  constraint keep_out_people_person foreign key (orchard_id, person_id) references public.people (orchard_id, id) on delete cascade
);
comment on table public.keep_out_people is
  'Who was at a tree inside a keep-out when it was set: told to come out, and when they said that they are. No tree: a row of brush.';

create table public.photos (
  id uuid primary key,
  orchard_id uuid not null,
  tree_no integer,
  flag_id uuid,
  claim_id uuid,
  mark_id uuid,
  purpose text not null constraint photos_purpose_known check (purpose in ('flag', 'before', 'after', 'mark')),
  jpeg bytea not null,
  taken_by uuid not null,
  added_at timestamptz not null,
  constraint photos_tree foreign key (orchard_id, tree_no) references public.trees (orchard_id, no) on delete no action,
  constraint photos_flag foreign key (orchard_id, flag_id) references public.flags (orchard_id, id) on delete cascade,
  constraint photos_claim foreign key (orchard_id, claim_id) references public.claims (orchard_id, id) on delete cascade,
  constraint photos_mark foreign key (orchard_id, mark_id) references public.big_cut_marks (orchard_id, id) on delete cascade,
  constraint photos_mark_has_purpose check ((mark_id is not null) = (purpose = 'mark')),
  constraint photos_small check (octet_length(jpeg) <= 200000),
  constraint photos_are_jpeg check (substring(jpeg from 1 for 3) = '\xffd8ff'::bytea),
  constraint photos_tell_nothing_else check (
    position('\x457869660000'::bytea in jpeg) = 0
    and position('http://ns.adobe.com/xap'::bytea in jpeg) = 0
    and position('Photoshop 3.0'::bytea in jpeg) = 0)
);
comment on constraint photos_tell_nothing_else on public.photos is
  'No EXIF, XMP or IPTC: a photo from a phone would say where its owner lives.';
create index photos_by_flag on public.photos (flag_id) where flag_id is not null;

create table public.calls (
  id uuid primary key,
  orchard_id uuid not null,
  shift_id uuid,
  person_id uuid not null,
  tree_no integer,
  kind text not null constraint calls_kind_known check (kind in ('question', 'tool', 'injury', 'lost_person')),
  subject_id uuid,
  note text constraint calls_note_length check (char_length(note) <= 300),
  called_at timestamptz not null,
  answered_by uuid,
  answered_at timestamptz,
  ended_by uuid,
  ended_at timestamptz,
  outcome text constraint calls_outcome_length check (char_length(outcome) <= 300),
  constraint calls_in_orchard unique (orchard_id, id),
  constraint calls_shift foreign key (orchard_id, shift_id) references public.shifts (orchard_id, id) on delete cascade,
  constraint calls_person foreign key (orchard_id, person_id) references public.people (orchard_id, id) on delete cascade,
  constraint calls_subject foreign key (orchard_id, subject_id) references public.people (orchard_id, id) on delete cascade,
  constraint calls_tree foreign key (orchard_id, tree_no) references public.trees (orchard_id, no) on delete no action,
  constraint calls_answer_whole check ((answered_by is null) = (answered_at is null)),
  constraint calls_end_whole check ((ended_by is null) = (ended_at is null))
);
create index calls_open on public.calls (orchard_id) where ended_at is null;
create index calls_by_shift on public.calls (shift_id, called_at desc);
comment on column public.calls.shift_id is 'Null: no shift was open. A call is taken all the same.';
comment on column public.calls.subject_id is 'Who is lost; null: somebody who is not on the list.';
comment on column public.calls.answered_by is 'Who said last that they come; answered_at is when the first one did.';

create table public.stops (
  id uuid primary key,
  orchard_id uuid not null,
  shift_id uuid not null,
  block_no integer,
  called_by uuid not null,
  reason text,
  called_at timestamptz not null,
  resumed_at timestamptz,
  resumed_by uuid,
  constraint stops_in_orchard unique (orchard_id, id),
  constraint stops_shift foreign key (orchard_id, shift_id) references public.shifts (orchard_id, id) on delete cascade
);
comment on column public.stops.block_no is 'Null: the whole orchard.';

create table public.stop_answers (
  orchard_id uuid not null,
  stop_id uuid not null,
  person_id uuid not null,
  phase text not null constraint stop_answers_phase_known check (phase in ('stopped', 'resumed')),
  how text not null constraint stop_answers_how_known check (how in ('self', 'seen_by_lead')),
  by_person_id uuid not null,
  at timestamptz not null,
  constraint stop_answers_key primary key (stop_id, person_id, phase),
  constraint stop_answers_stop foreign key (orchard_id, stop_id) references public.stops (orchard_id, id) on delete cascade,
  constraint stop_answers_person foreign key (orchard_id, person_id) references public.people (orchard_id, id) on delete cascade
);
comment on column public.stop_answers.phase is 'stopped: came down and was counted. resumed: knows that work goes on; asked for before the next claim.';

create table public.incidents (
  id uuid primary key,
  orchard_id uuid not null,
  shift_id uuid,
  call_id uuid,
  tree_no integer,
  kind text not null constraint incidents_kind_known check (
    kind in ('injury', 'near_miss', 'tool', 'ladder', 'power_line', 'lost_person', 'damage', 'other')),
  note text constraint incidents_note_length check (char_length(note) <= 1000),
  happened_at timestamptz not null,
  written_by uuid not null,
  written_at timestamptz not null,
  constraint incidents_shift foreign key (orchard_id, shift_id) references public.shifts (orchard_id, id) on delete cascade,
  constraint incidents_call foreign key (orchard_id, call_id) references public.calls (orchard_id, id) on delete no action,
  constraint incidents_tree foreign key (orchard_id, tree_no) references public.trees (orchard_id, no) on delete no action
);
create index incidents_newest on public.incidents (orchard_id, happened_at desc);
comment on table public.incidents is 'For leads and managers. No medical detail, and nobody''s name but in the note.';

alter table public.flags enable row level security;
alter table public.flag_notes enable row level security;
alter table public.keep_out_people enable row level security;
alter table public.photos enable row level security;
alter table public.calls enable row level security;
alter table public.stops enable row level security;
alter table public.stop_answers enable row level security;
alter table public.incidents enable row level security;
