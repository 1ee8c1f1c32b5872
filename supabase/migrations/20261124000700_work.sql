-- Work on trees: who holds which, for whom one is kept, how far each is in its round, and every visit.

create table public.claims (
  id uuid primary key,
  orchard_id uuid not null,
  round_id uuid not null,
  shift_id uuid not null,
  tree_no integer,
  block_no integer,
  row_no integer,
  purpose text not null constraint claims_purpose_known check (purpose in ('work', 'teaching')),
  kind text not null constraint claims_kind_known check (kind in ('prune', 'brush', 'other')),
  ladder boolean not null default false,
  buddy_id uuid,
  opened_at timestamptz not null,
  ended_at timestamptz,
  ended_how text constraint claims_ended_how_known
    check (ended_how in ('finished', 'released', 'flagged', 'ended_by_lead', 'left', 'removed', 'shift_closed')),
  ended_note text constraint claims_ended_note_length check (char_length(ended_note) <= 300),
  constraint claims_in_orchard unique (orchard_id, id),
  constraint claims_tree foreign key (orchard_id, tree_no) references public.trees (orchard_id, no) on delete no action,
  constraint claims_shift_of_round foreign key (orchard_id, round_id, shift_id)
    references public.shifts (orchard_id, round_id, id) on delete no action,
  constraint claims_buddy foreign key (orchard_id, buddy_id) references public.people (orchard_id, id) on delete no action,
  constraint claims_tree_or_row check ((tree_no is not null) <> (block_no is not null and row_no is not null)),
  constraint claims_only_brush_takes_rows check (tree_no is not null or kind = 'brush'),
  constraint claims_end_whole check ((ended_at is null) = (ended_how is null))
);
create unique index claims_one_open_a_tree on public.claims (orchard_id, tree_no) where ended_at is null;
create unique index claims_one_open_a_row on public.claims (orchard_id, block_no, row_no)
  where ended_at is null and tree_no is null;
comment on index public.claims_one_open_a_tree is 'At most one open claim a tree, over all rounds.';
comment on column public.claims.ended_note is 'When a lead ends somebody''s claim: how the person was reached.';

create table public.claim_people (
  id uuid primary key default gen_random_uuid(),
  orchard_id uuid not null,
  claim_id uuid not null,
  person_id uuid not null,
  part text not null constraint claim_people_part_known check (part in ('holder', 'helper', 'learner')),
  from_at timestamptz not null,
  to_at timestamptz,
  how_reached text constraint claim_people_how_reached_length check (char_length(how_reached) <= 300),
  constraint claim_people_claim foreign key (orchard_id, claim_id) references public.claims (orchard_id, id) on delete cascade,
  constraint claim_people_person foreign key (orchard_id, person_id) references public.people (orchard_id, id) on delete cascade
);
create unique index claim_people_one_tree_a_person on public.claim_people (person_id) where to_at is null;
create index claim_people_by_claim on public.claim_people (claim_id);
create index claim_people_by_person on public.claim_people (person_id, from_at desc);
comment on column public.claim_people.how_reached is 'When a lead hands somebody''s tree on: how that person was reached.';
create unique index claim_people_one_holder on public.claim_people (claim_id) where to_at is null and part = 'holder';

create table public.deals (
  id uuid primary key default gen_random_uuid(),
  orchard_id uuid not null,
  round_id uuid not null,
  tree_no integer not null,
  people uuid[] not null constraint deals_people_one_or_two check (cardinality(people) between 1 and 2),
  dealt_by uuid not null,
  dealt_at timestamptz not null,
  ended_at timestamptz,
  constraint deals_tree foreign key (orchard_id, tree_no) references public.trees (orchard_id, no) on delete no action,
  constraint deals_round foreign key (orchard_id, round_id) references public.rounds (orchard_id, id) on delete cascade
);
create unique index deals_one_open on public.deals (orchard_id, tree_no) where ended_at is null;

create table public.tree_work (
  orchard_id uuid not null,
  round_id uuid not null,
  tree_no integer not null,
  state text not null constraint tree_work_state_known check (state in ('begun', 'done', 'left_out')),
  share integer constraint tree_work_share_range check (share between 1 and 99),
  note text constraint tree_work_note_length check (char_length(note) <= 300),
  changed_at timestamptz not null,
  constraint tree_work_key primary key (round_id, tree_no),
  constraint tree_work_round foreign key (orchard_id, round_id) references public.rounds (orchard_id, id) on delete cascade,
  constraint tree_work_tree foreign key (orchard_id, tree_no) references public.trees (orchard_id, no) on delete no action,
  constraint tree_work_share_when_begun check (share is null or state = 'begun')
);
create index tree_work_not_done on public.tree_work (round_id) where state <> 'done';
comment on table public.tree_work is 'No row: unpruned in that round. left_out: not this round, the note says why.';

create table public.visits (
  id uuid primary key,
  orchard_id uuid not null,
  round_id uuid not null,
  shift_id uuid not null,
  tree_no integer not null,
  claim_id uuid,
  person_id uuid not null,
  result text not null constraint visits_result_known check (result in ('done', 'begun', 'also_worked')),
  share integer,
  note text constraint visits_note_length check (char_length(note) <= 300),
  at timestamptz not null,
  seconds integer,
  before_state text,
  before_share integer,
  came_in_late boolean not null default false,
  without_claim boolean not null default false,
  lacked text[] not null default '{}',
  undone_at timestamptz,
  constraint visits_round foreign key (orchard_id, round_id) references public.rounds (orchard_id, id) on delete cascade,
  constraint visits_shift foreign key (orchard_id, shift_id) references public.shifts (orchard_id, id) on delete cascade,
  constraint visits_tree foreign key (orchard_id, tree_no) references public.trees (orchard_id, no) on delete no action,
  constraint visits_claim foreign key (orchard_id, claim_id) references public.claims (orchard_id, id) on delete cascade,
  constraint visits_person foreign key (orchard_id, person_id) references public.people (orchard_id, id) on delete cascade
);
comment on table public.visits is 'Every time somebody worked on a tree: the record, and what undo goes back to. seconds are for display only.';
comment on column public.visits.lacked is 'Begun without signal and so without a claim: the codes that would have refused it. Kept all the same; a lead sees them.';
create index visits_by_tree on public.visits (orchard_id, tree_no, at desc);

create table public.big_cut_marks (
  id uuid primary key,
  orchard_id uuid not null,
  round_id uuid not null,
  tree_no integer not null,
  marked_by uuid not null,
  note text constraint big_cut_marks_note_length check (char_length(note) <= 300),
  marked_at timestamptz not null,
  ended_at timestamptz,
  constraint big_cut_marks_in_orchard unique (orchard_id, id),
  constraint big_cut_marks_round foreign key (orchard_id, round_id) references public.rounds (orchard_id, id) on delete cascade,
  constraint big_cut_marks_tree foreign key (orchard_id, tree_no) references public.trees (orchard_id, no) on delete no action
);
create unique index big_cut_marks_one_open on public.big_cut_marks (round_id, tree_no) where ended_at is null;

create table public.looked_over (
  id uuid primary key,
  orchard_id uuid not null,
  round_id uuid not null,
  tree_no integer not null,
  by_person_id uuid not null,
  result text not null constraint looked_over_result_known check (result in ('passed', 'reopened')),
  reason text constraint looked_over_reason_known check (reason in ('stubs_left', 'centre_closed', 'crossing_left',
    'dead_left', 'too_much_shortened', 'torn_bark', 'wood_hanging', 'not_tidy')),
  note text constraint looked_over_note_length check (char_length(note) <= 300),
  people uuid[] not null,
  at timestamptz not null,
  constraint looked_over_reason_when_reopened check ((result = 'reopened') = (reason is not null)),
  constraint looked_over_round foreign key (orchard_id, round_id) references public.rounds (orchard_id, id) on delete cascade,
  constraint looked_over_tree foreign key (orchard_id, tree_no) references public.trees (orchard_id, no) on delete no action
);

create index looked_over_by_tree on public.looked_over (round_id, tree_no, at desc);
comment on column public.looked_over.people is 'Who had worked on the tree by then: they hear what came of it.';
comment on column public.looked_over.note is 'What is left to do, for whoever comes to the tree next.';

create table public.hand_ins (
  id uuid primary key,
  orchard_id uuid not null,
  person_id uuid not null,
  work jsonb not null,
  handed_in_at timestamptz not null,
  accepted_by uuid,
  accepted_at timestamptz,
  constraint hand_ins_once unique (person_id),
  constraint hand_ins_person foreign key (orchard_id, person_id) references public.people (orchard_id, id) on delete cascade
);
comment on table public.hand_ins is 'Unsent work of a person who was removed: once, within 48 hours, for a lead to accept.';

alter table public.claims enable row level security;
alter table public.claim_people enable row level security;
alter table public.deals enable row level security;
alter table public.tree_work enable row level security;
alter table public.visits enable row level security;
alter table public.big_cut_marks enable row level security;
alter table public.looked_over enable row level security;
alter table public.hand_ins enable row level security;
