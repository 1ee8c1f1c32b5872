-- Generated from migrations/ by `npm run schema`. Do not edit.

create type private.coming_in as (
  how text,
  claim_id uuid,
  shift_id uuid,
  round_id uuid,
  begun_at timestamp with time zone,
  people uuid[],
  lacked text[]
);

create type private.command as (
  name text,
  orchard_id uuid,
  command_id uuid,
  person_id uuid,
  by_person_id uuid,
  by_lead boolean,
  args jsonb,
  at timestamp with time zone,
  answer jsonb
);

create type private.on_paper as (
  arrived_at timestamp with time zone,
  breaks tstzrange[],
  left_at timestamp with time zone
);

create type private.reader as (
  orchard_id uuid,
  person_id uuid,
  role text,
  is_lead boolean,
  own uuid[]
);

create type private.wish as (
  person_id uuid,
  tree_no integer,
  purpose text,
  kind text,
  ladder boolean,
  helpers uuid[],
  learners uuid[],
  buddy_id uuid
);

create table aerial_pictures (
  orchard_id uuid not null,
  jpeg bytea not null,
  points jsonb not null,
  opacity integer not null,
  placed_by uuid not null,
  placed_at timestamp with time zone not null,
  constraint aerial_pictures_are_jpeg CHECK ((SUBSTRING(jpeg FROM 1 FOR 3) = '\xffd8ff'::bytea)),
  constraint aerial_pictures_opacity_is_a_share CHECK (((opacity >= 10) AND (opacity <= 100))),
  constraint aerial_pictures_small CHECK ((octet_length(jpeg) <= 600000)),
  constraint aerial_pictures_tell_nothing_else CHECK (((POSITION(('\x457869660000'::bytea) IN (jpeg)) = 0) AND (POSITION(('\x687474703a2f2f6e732e61646f62652e636f6d2f786170'::bytea) IN (jpeg)) = 0) AND (POSITION(('\x50686f746f73686f7020332e30'::bytea) IN (jpeg)) = 0))),
  constraint aerial_pictures_pkey PRIMARY KEY (orchard_id)
);
alter table aerial_pictures enable row level security;
comment on column aerial_pictures.points is 'Three of [x, y, latE7, lonE7]: x and y in ten-thousandths of the picture''s width and height, from its upper left.';

create table archive_parts (
  archive uuid not null,
  part integer not null,
  code_hash text not null,
  table_name text not null,
  columns text[] not null,
  body text not null,
  put_at timestamp with time zone not null,
  constraint archive_parts_part_range CHECK (((part >= 0) AND (part <= 19999))),
  constraint archive_parts_key PRIMARY KEY (archive, part)
);
alter table archive_parts enable row level security;
comment on table archive_parts is 'Of archives that are on their way in; gone when one is in, and after a day.';

create table attendances (
  id uuid not null,
  orchard_id uuid not null,
  shift_id uuid not null,
  person_id uuid not null,
  arrived_at timestamp with time zone not null,
  arrived_by uuid not null,
  left_at timestamp with time zone,
  left_by uuid,
  left_why text,
  not_found boolean not null default false,
  found_at timestamp with time zone,
  found_by uuid,
  constraint attendances_left_why_length CHECK ((char_length(left_why) <= 300)),
  constraint attendances_pkey PRIMARY KEY (id)
);
alter table attendances enable row level security;
comment on column attendances.left_why is 'What a lead wrote when closing the shift without this person signing out.';
comment on column attendances.not_found is 'Nobody knew where they were when the shift closed; until a lead says that they are found.';

create table big_cut_marks (
  id uuid not null,
  orchard_id uuid not null,
  round_id uuid not null,
  tree_no integer not null,
  marked_by uuid not null,
  note text,
  marked_at timestamp with time zone not null,
  ended_at timestamp with time zone,
  constraint big_cut_marks_note_length CHECK ((char_length(note) <= 300)),
  constraint big_cut_marks_pkey PRIMARY KEY (id),
  constraint big_cut_marks_in_orchard UNIQUE (orchard_id, id)
);
alter table big_cut_marks enable row level security;

create table blocks (
  orchard_id uuid not null,
  no integer not null,
  code text not null,
  name text not null,
  row_spacing_m numeric(5,2) not null,
  tree_spacing_m numeric(5,2) not null,
  bearing_deg numeric(5,2),
  first_lat_e7 integer,
  first_lon_e7 integer,
  tagged_end text not null default 'low'::text,
  constraint blocks_bearing_range CHECK (((bearing_deg >= (0)::numeric) AND (bearing_deg < (360)::numeric))),
  constraint blocks_code_length CHECK (((char_length(code) >= 1) AND (char_length(code) <= 4))),
  constraint blocks_name_length CHECK (((char_length(name) >= 1) AND (char_length(name) <= 60))),
  constraint blocks_row_spacing_range CHECK (((row_spacing_m >= 0.5) AND (row_spacing_m <= (30)::numeric))),
  constraint blocks_tagged_end_known CHECK ((tagged_end = ANY (ARRAY['low'::text, 'high'::text]))),
  constraint blocks_tree_spacing_range CHECK (((tree_spacing_m >= 0.5) AND (tree_spacing_m <= (30)::numeric))),
  constraint blocks_key PRIMARY KEY (orchard_id, no),
  constraint blocks_code UNIQUE (orchard_id, code)
);
alter table blocks enable row level security;
comment on column blocks.tagged_end is 'The end of each row where its tag hangs: at its lowest or highest place.';

create table breaks (
  id uuid not null,
  attendance_id uuid not null,
  from_at timestamp with time zone not null,
  to_at timestamp with time zone,
  constraint breaks_pkey PRIMARY KEY (id)
);
alter table breaks enable row level security;

create table briefing_signatures (
  orchard_id uuid not null,
  shift_id uuid not null,
  version integer not null,
  person_id uuid not null,
  language text not null,
  how text not null,
  signed_by uuid not null,
  signed_at timestamp with time zone not null,
  constraint briefing_signatures_how_known CHECK ((how = ANY (ARRAY['heard'::text, 'read_to_me'::text, 'read'::text]))),
  constraint briefing_signatures_language_known CHECK ((language = ANY (ARRAY['en'::text, 'es'::text]))),
  constraint briefing_signatures_key PRIMARY KEY (shift_id, version, person_id)
);
alter table briefing_signatures enable row level security;

create table briefings (
  orchard_id uuid not null,
  shift_id uuid not null,
  version integer not null,
  topics jsonb not null,
  change text not null,
  written_by uuid not null,
  written_at timestamp with time zone not null,
  constraint briefings_change_known CHECK ((change = ANY (ARRAY['first'::text, 'before_next_tree'::text, 'come_down'::text]))),
  constraint briefings_topics_list CHECK ((jsonb_typeof(topics) = 'array'::text)),
  constraint briefings_key PRIMARY KEY (shift_id, version)
);
alter table briefings enable row level security;
comment on column briefings.topics is '[{"code": "ladders", "en": "…", "es": "…"}]; en and es only where the lead wrote other words.';

create table briefings_given (
  orchard_id uuid not null,
  shift_id uuid not null,
  version integer not null,
  person_id uuid not null,
  given_by uuid not null,
  given_at timestamp with time zone not null,
  constraint briefings_given_key PRIMARY KEY (shift_id, version, person_id)
);
alter table briefings_given enable row level security;
comment on table briefings_given is 'The lead''s "I briefed these people": a person gives the briefing, the phone records it.';

create table brush_hauled (
  orchard_id uuid not null,
  round_id uuid not null,
  tree_no integer not null,
  claim_id uuid,
  by_person_id uuid not null,
  at timestamp with time zone not null,
  constraint brush_hauled_key PRIMARY KEY (round_id, tree_no)
);
alter table brush_hauled enable row level security;
comment on table brush_hauled is 'Trees whose wood is carried away. Every change of a tree''s work takes it out again: then new wood lies there.';

create table brush_ways (
  orchard_id uuid not null,
  round_id uuid not null,
  block_no integer not null,
  row_no integer not null,
  goes text not null,
  said_by uuid not null,
  said_at timestamp with time zone not null,
  constraint brush_ways_goes_known CHECK ((goes = ANY (ARRAY['burn'::text, 'chip'::text, 'bag'::text, 'pile'::text]))),
  constraint brush_ways_key PRIMARY KEY (round_id, block_no, row_no)
);
alter table brush_ways enable row level security;
comment on table brush_ways is 'Where the wood of a row goes, as a lead said. Nothing said: one asks.';

create table calls (
  id uuid not null,
  orchard_id uuid not null,
  shift_id uuid,
  person_id uuid not null,
  tree_no integer,
  kind text not null,
  subject_id uuid,
  note text,
  called_at timestamp with time zone not null,
  answered_by uuid,
  answered_at timestamp with time zone,
  ended_by uuid,
  ended_at timestamp with time zone,
  outcome text,
  constraint calls_answer_whole CHECK (((answered_by IS NULL) = (answered_at IS NULL))),
  constraint calls_end_whole CHECK (((ended_by IS NULL) = (ended_at IS NULL))),
  constraint calls_kind_known CHECK ((kind = ANY (ARRAY['question'::text, 'tool'::text, 'injury'::text, 'lost_person'::text]))),
  constraint calls_note_length CHECK ((char_length(note) <= 300)),
  constraint calls_outcome_length CHECK ((char_length(outcome) <= 300)),
  constraint calls_pkey PRIMARY KEY (id),
  constraint calls_in_orchard UNIQUE (orchard_id, id)
);
alter table calls enable row level security;
comment on column calls.shift_id is 'Null: no shift was open. A call is taken all the same.';
comment on column calls.subject_id is 'Who is lost; null: somebody who is not on the list.';
comment on column calls.answered_by is 'Who said last that they come; answered_at is when the first one did.';

create table claim_people (
  id uuid not null default gen_random_uuid(),
  orchard_id uuid not null,
  claim_id uuid not null,
  person_id uuid not null,
  part text not null,
  from_at timestamp with time zone not null,
  to_at timestamp with time zone,
  how_reached text,
  constraint claim_people_how_reached_length CHECK ((char_length(how_reached) <= 300)),
  constraint claim_people_part_known CHECK ((part = ANY (ARRAY['holder'::text, 'helper'::text, 'learner'::text]))),
  constraint claim_people_pkey PRIMARY KEY (id)
);
alter table claim_people enable row level security;
comment on column claim_people.how_reached is 'When a lead hands somebody''s tree on: how that person was reached.';

create table claims (
  id uuid not null,
  orchard_id uuid not null,
  round_id uuid not null,
  shift_id uuid not null,
  tree_no integer,
  block_no integer,
  row_no integer,
  purpose text not null,
  kind text not null,
  ladder boolean not null default false,
  buddy_id uuid,
  opened_at timestamp with time zone not null,
  ended_at timestamp with time zone,
  ended_how text,
  ended_note text,
  constraint claims_end_whole CHECK (((ended_at IS NULL) = (ended_how IS NULL))),
  constraint claims_ended_how_known CHECK ((ended_how = ANY (ARRAY['finished'::text, 'released'::text, 'flagged'::text, 'ended_by_lead'::text, 'left'::text, 'removed'::text, 'shift_closed'::text]))),
  constraint claims_ended_note_length CHECK ((char_length(ended_note) <= 300)),
  constraint claims_kind_known CHECK ((kind = ANY (ARRAY['prune'::text, 'brush'::text, 'other'::text]))),
  constraint claims_only_brush_takes_rows CHECK (((tree_no IS NOT NULL) OR (kind = 'brush'::text))),
  constraint claims_purpose_known CHECK ((purpose = ANY (ARRAY['work'::text, 'teaching'::text]))),
  constraint claims_tree_or_row CHECK (((tree_no IS NOT NULL) <> ((block_no IS NOT NULL) AND (row_no IS NOT NULL)))),
  constraint claims_pkey PRIMARY KEY (id),
  constraint claims_in_orchard UNIQUE (orchard_id, id)
);
alter table claims enable row level security;
comment on column claims.ended_note is 'When a lead ends somebody''s claim: how the person was reached.';

create table command_answers (
  orchard_id uuid not null,
  command_id uuid not null,
  name text not null,
  person_id uuid not null,
  by_person_id uuid not null,
  args_sha256 text not null,
  answer jsonb not null,
  at timestamp with time zone not null,
  constraint command_answers_key PRIMARY KEY (orchard_id, command_id)
);
alter table command_answers enable row level security;
comment on table command_answers is 'Kept 90 days, longer than any phone keeps unsent work (14): the same command again gets the same answer.';
comment on column command_answers.args_sha256 is 'Enough to tell another body under the same id: names, contacts and notes are not kept a second time, where forgetting would miss them.';

create table consents (
  id uuid not null,
  orchard_id uuid not null,
  person_id uuid not null,
  by_person_id uuid not null,
  season integer not null,
  text_version integer not null,
  given_at timestamp with time zone not null,
  constraint consents_pkey PRIMARY KEY (id)
);
alter table consents enable row level security;

create table cultivars (
  orchard_id uuid not null,
  no integer not null,
  species text not null,
  name text not null,
  habit text not null default 'unknown'::text,
  buds text not null default 'unknown'::text,
  constraint cultivars_buds_known CHECK ((buds = ANY (ARRAY['base'::text, 'middle'::text, 'tip'::text, 'unknown'::text]))),
  constraint cultivars_habit_known CHECK ((habit = ANY (ARRAY['spur'::text, 'shoot'::text, 'both'::text, 'unknown'::text]))),
  constraint cultivars_name_length CHECK (((char_length(name) >= 1) AND (char_length(name) <= 60))),
  constraint cultivars_key PRIMARY KEY (orchard_id, no),
  constraint cultivars_name UNIQUE (orchard_id, species, name)
);
alter table cultivars enable row level security;
comment on column cultivars.habit is 'Which wood carries the fruit buds. Unknown stays unknown.';
comment on column cultivars.buds is 'Where along last year''s shoots most fruit buds sit. Unknown stays unknown, and is not shortened.';

create table deals (
  id uuid not null default gen_random_uuid(),
  orchard_id uuid not null,
  round_id uuid not null,
  tree_no integer not null,
  people uuid[] not null,
  dealt_by uuid not null,
  dealt_at timestamp with time zone not null,
  ended_at timestamp with time zone,
  constraint deals_people_one_or_two CHECK (((cardinality(people) >= 1) AND (cardinality(people) <= 2))),
  constraint deals_pkey PRIMARY KEY (id)
);
alter table deals enable row level security;

create table equipment_checks (
  id uuid not null,
  orchard_id uuid not null,
  shift_id uuid not null,
  person_id uuid not null,
  failed_items text[] not null default '{}'::text[],
  checked_by uuid not null,
  checked_at timestamp with time zone not null,
  constraint equipment_checks_pkey PRIMARY KEY (id)
);
alter table equipment_checks enable row level security;

create table events (
  orchard_id uuid not null,
  n bigint not null,
  at timestamp with time zone not null,
  command_id uuid not null,
  person_id uuid not null,
  by_person_id uuid not null,
  kind text not null,
  body jsonb,
  lead_body jsonb,
  own boolean not null default false,
  own_people uuid[] not null default '{}'::uuid[],
  constraint events_key PRIMARY KEY (orchard_id, n),
  constraint events_one_a_command UNIQUE (orchard_id, command_id)
);
alter table events enable row level security;
comment on column events.body is 'Ids and public facts, never typed text about people. Null: members hear the number and nothing else.';
comment on column events.lead_body is 'What only leads and managers get, through events_after.';
comment on column events.own is 'The person concerned gets lead_body too.';
comment on column events.own_people is 'And so do these, where it concerns somebody else than whose command it was.';

create table flag_notes (
  id uuid not null,
  orchard_id uuid not null,
  flag_id uuid not null,
  person_id uuid not null,
  at timestamp with time zone not null,
  note text not null,
  constraint flag_notes_length CHECK (((char_length(note) >= 1) AND (char_length(note) <= 500))),
  constraint flag_notes_pkey PRIMARY KEY (id)
);
alter table flag_notes enable row level security;
comment on table flag_notes is 'What leads write about a flag while it is open: who was rung, when to look again.';

create table flags (
  id uuid not null,
  orchard_id uuid not null,
  tree_no integer not null,
  kind text not null,
  state text not null,
  sign text not null,
  severity text not null,
  part text,
  note text,
  keep_out_m numeric(5,1),
  reasons jsonb,
  limb jsonb,
  raised_by uuid not null,
  raised_at timestamp with time zone not null,
  confirmed_by uuid,
  acted_at timestamp with time zone,
  ended_by uuid,
  ended_at timestamp with time zone,
  ended_note text,
  done_by text,
  done_on date,
  constraint flags_cleared_whole CHECK (((state = 'cleared'::text) = ((done_by IS NOT NULL) AND (done_on IS NOT NULL)))),
  constraint flags_done_by_length CHECK ((char_length(done_by) <= 120)),
  constraint flags_end_whole CHECK (((ended_at IS NULL) = (state = ANY (ARRAY['suspected'::text, 'confirmed'::text, 'open'::text])))),
  constraint flags_ended_note_length CHECK ((char_length(ended_note) <= 500)),
  constraint flags_keep_out_range CHECK (((keep_out_m >= (0)::numeric) AND (keep_out_m <= (200)::numeric))),
  constraint flags_kind_known CHECK ((kind = ANY (ARRAY['disease'::text, 'arborist'::text]))),
  constraint flags_limb_is_an_object CHECK ((jsonb_typeof(limb) = 'object'::text)),
  constraint flags_note_length CHECK ((char_length(note) <= 500)),
  constraint flags_reasons_are_a_list CHECK ((jsonb_typeof(reasons) = 'array'::text)),
  constraint flags_reasons_of_hazards CHECK (((kind = 'arborist'::text) OR ((reasons IS NULL) AND (limb IS NULL)))),
  constraint flags_severity_known CHECK ((severity = ANY (ARRAY['low'::text, 'high'::text, 'danger_now'::text]))),
  constraint flags_state_fits_kind CHECK ((((kind = 'disease'::text) AND (state = ANY (ARRAY['suspected'::text, 'confirmed'::text, 'withdrawn'::text]))) OR ((kind = 'arborist'::text) AND (state = ANY (ARRAY['open'::text, 'withdrawn'::text, 'cleared'::text]))))),
  constraint flags_state_known CHECK ((state = ANY (ARRAY['suspected'::text, 'confirmed'::text, 'open'::text, 'withdrawn'::text, 'cleared'::text]))),
  constraint flags_pkey PRIMARY KEY (id),
  constraint flags_in_orchard UNIQUE (orchard_id, id)
);
alter table flags enable row level security;
comment on column flags.reasons is 'Why it is the arborist''s: [{code, seen, value, limit}], as private.are_refer_reasons. Null: nobody was asked; empty: the rules found nothing, and it was flagged all the same.';
comment on column flags.limb is 'Which limb: {cm, bearingDeg}, each where it is known.';
comment on column flags.acted_at is 'A lead did something about it: from then on the reporter does not take it back.';
comment on column flags.ended_note is 'Why it was withdrawn, or what the arborist did.';
comment on column flags.done_by is 'The arborist or the company, as the manager wrote it.';

create table forecasts (
  orchard_id uuid not null,
  id uuid not null,
  hours jsonb not null,
  brought_by uuid not null,
  brought_at timestamp with time zone not null,
  constraint forecasts_key PRIMARY KEY (orchard_id)
);
alter table forecasts enable row level security;
comment on table forecasts is 'The newest only. hours: [[from, temperature, humidity, wind, gust, rain in mm], …]; null: not said.';

create table hand_ins (
  id uuid not null,
  orchard_id uuid not null,
  person_id uuid not null,
  work jsonb not null,
  handed_in_at timestamp with time zone not null,
  accepted_by uuid,
  accepted_at timestamp with time zone,
  constraint hand_ins_pkey PRIMARY KEY (id),
  constraint hand_ins_once UNIQUE (person_id)
);
alter table hand_ins enable row level security;
comment on table hand_ins is 'Unsent work of a person who was removed: once, within 48 hours, for a lead to accept.';

create table incidents (
  id uuid not null,
  orchard_id uuid not null,
  shift_id uuid,
  call_id uuid,
  tree_no integer,
  kind text not null,
  note text,
  happened_at timestamp with time zone not null,
  written_by uuid not null,
  written_at timestamp with time zone not null,
  constraint incidents_kind_known CHECK ((kind = ANY (ARRAY['injury'::text, 'near_miss'::text, 'tool'::text, 'ladder'::text, 'power_line'::text, 'lost_person'::text, 'damage'::text, 'other'::text]))),
  constraint incidents_note_length CHECK ((char_length(note) <= 1000)),
  constraint incidents_pkey PRIMARY KEY (id)
);
alter table incidents enable row level security;
comment on table incidents is 'For leads and managers. No medical detail, and nobody''s name but in the note.';

create table invites (
  id uuid not null,
  orchard_id uuid not null,
  code_hash text not null,
  kind text not null,
  role text not null,
  person_id uuid,
  shift_id uuid,
  uses_left integer,
  used integer not null default 0,
  made_by uuid,
  made_at timestamp with time zone not null,
  expires_at timestamp with time zone not null,
  ended_at timestamp with time zone,
  constraint invites_join_is_volunteer CHECK (((kind <> 'join'::text) OR (role = 'volunteer'::text))),
  constraint invites_kind_known CHECK ((kind = ANY (ARRAY['join'::text, 'role'::text, 'device'::text, 'recovery'::text]))),
  constraint invites_role_known CHECK ((role = ANY (ARRAY['manager'::text, 'lead'::text, 'volunteer'::text]))),
  constraint invites_uses_left_positive CHECK ((uses_left >= 0)),
  constraint invites_pkey PRIMARY KEY (id),
  constraint invites_code UNIQUE (code_hash)
);
alter table invites enable row level security;
comment on table invites is 'join: volunteers, many uses, ends with the shift. role: one lead or manager. device: a second phone for person_id. recovery: the last way back for a manager.';

create table keep_out_people (
  orchard_id uuid not null,
  flag_id uuid not null,
  person_id uuid not null,
  tree_no integer,
  told_at timestamp with time zone not null,
  out_at timestamp with time zone,
  out_by uuid,
  constraint keep_out_people_key PRIMARY KEY (flag_id, person_id)
);
alter table keep_out_people enable row level security;
comment on table keep_out_people is 'Who was at a tree inside a keep-out when it was set: told to come out, and when they said that they are. No tree: a row of brush.';

create table logins (
  id uuid not null default gen_random_uuid(),
  orchard_id uuid not null,
  person_id uuid not null,
  user_id uuid not null,
  linked_at timestamp with time zone not null,
  ended_at timestamp with time zone,
  heard_at timestamp with time zone,
  heard_head bigint,
  constraint logins_pkey PRIMARY KEY (id)
);
alter table logins enable row level security;
comment on table logins is 'A signed-in user acts for a person. Many to many; ended, never deleted.';

create table looked_over (
  id uuid not null,
  orchard_id uuid not null,
  round_id uuid not null,
  tree_no integer not null,
  by_person_id uuid not null,
  result text not null,
  reason text,
  note text,
  people uuid[] not null,
  at timestamp with time zone not null,
  constraint looked_over_note_length CHECK ((char_length(note) <= 300)),
  constraint looked_over_reason_known CHECK ((reason = ANY (ARRAY['stubs_left'::text, 'centre_closed'::text, 'crossing_left'::text, 'dead_left'::text, 'too_much_shortened'::text, 'torn_bark'::text, 'wood_hanging'::text, 'not_tidy'::text]))),
  constraint looked_over_reason_when_reopened CHECK (((result = 'reopened'::text) = (reason IS NOT NULL))),
  constraint looked_over_result_known CHECK ((result = ANY (ARRAY['passed'::text, 'reopened'::text]))),
  constraint looked_over_pkey PRIMARY KEY (id)
);
alter table looked_over enable row level security;
comment on column looked_over.note is 'What is left to do, for whoever comes to the tree next.';
comment on column looked_over.people is 'Who had worked on the tree by then: they hear what came of it.';

create table orchard_heads (
  orchard_id uuid not null,
  head bigint not null default 0,
  epoch uuid not null default gen_random_uuid(),
  channel_epoch integer not null default 1,
  sheet_version integer not null default 0,
  last_tree_no integer not null default 0,
  constraint orchard_heads_pkey PRIMARY KEY (orchard_id)
);
alter table orchard_heads enable row level security;
comment on table orchard_heads is 'Locked for no key update by every command: numbers have no holes and commit in order.';
comment on column orchard_heads.epoch is 'Changes at a restore; phones then send again what they sent lately.';
comment on column orchard_heads.channel_epoch is 'Part of the topic. Raised when somebody is put out, since a joined channel keeps its right until its token ends.';
comment on column orchard_heads.last_tree_no is 'Tree numbers are never used twice.';

create table orchards (
  id uuid not null,
  name text not null,
  time_zone text not null,
  language text not null default 'en'::text,
  units text not null default 'metric'::text,
  house_rules jsonb not null default '{}'::jsonb,
  emergency jsonb not null default '{}'::jsonb,
  emergency_version integer not null default 0,
  aerial_version integer not null default 0,
  min_client integer not null default 0,
  created_at timestamp with time zone not null,
  constraint orchards_language_known CHECK ((language = ANY (ARRAY['en'::text, 'es'::text]))),
  constraint orchards_name_length CHECK (((char_length(name) >= 1) AND (char_length(name) <= 80))),
  constraint orchards_units_known CHECK ((units = ANY (ARRAY['metric'::text, 'us'::text]))),
  constraint orchards_pkey PRIMARY KEY (id)
);
alter table orchards enable row level security;
comment on column orchards.house_rules is 'Only what differs from private.house_rule defaults: {"ladder_from_cm": 250}.';
comment on column orchards.emergency is 'The emergency card: texts by key (private.is_emergency_card has the keys). Names and numbers may stand in it, so events carry its version only.';

create table people (
  id uuid not null,
  orchard_id uuid not null,
  name text,
  role text not null,
  age_band text not null default 'adult'::text,
  guardian_id uuid,
  phone text,
  added_at timestamp with time zone not null,
  admitted_at timestamp with time zone,
  removed_at timestamp with time zone,
  forgotten_at timestamp with time zone,
  constraint people_age_band_known CHECK ((age_band = ANY (ARRAY['adult'::text, 'minor'::text]))),
  constraint people_name_length CHECK (((char_length(name) >= 1) AND (char_length(name) <= 60))),
  constraint people_named_until_forgotten CHECK (((name IS NULL) = (forgotten_at IS NOT NULL))),
  constraint people_phone_length CHECK ((char_length(phone) <= 40)),
  constraint people_role_known CHECK ((role = ANY (ARRAY['manager'::text, 'lead'::text, 'volunteer'::text, 'visitor'::text]))),
  constraint people_pkey PRIMARY KEY (id),
  constraint people_in_orchard UNIQUE (orchard_id, id)
);
alter table people enable row level security;
comment on column people.phone is 'Shown to leads and managers only.';
comment on column people.admitted_at is 'Null while somebody who joined outside an open shift waits for a lead.';

create table photos (
  id uuid not null,
  orchard_id uuid not null,
  tree_no integer,
  flag_id uuid,
  claim_id uuid,
  mark_id uuid,
  purpose text not null,
  jpeg bytea not null,
  taken_by uuid not null,
  added_at timestamp with time zone not null,
  constraint photos_are_jpeg CHECK ((SUBSTRING(jpeg FROM 1 FOR 3) = '\xffd8ff'::bytea)),
  constraint photos_mark_has_purpose CHECK (((mark_id IS NOT NULL) = (purpose = 'mark'::text))),
  constraint photos_purpose_known CHECK ((purpose = ANY (ARRAY['flag'::text, 'before'::text, 'after'::text, 'mark'::text]))),
  constraint photos_small CHECK ((octet_length(jpeg) <= 200000)),
  constraint photos_tell_nothing_else CHECK (((POSITION(('\x457869660000'::bytea) IN (jpeg)) = 0) AND (POSITION(('\x687474703a2f2f6e732e61646f62652e636f6d2f786170'::bytea) IN (jpeg)) = 0) AND (POSITION(('\x50686f746f73686f7020332e30'::bytea) IN (jpeg)) = 0))),
  constraint photos_pkey PRIMARY KEY (id)
);
alter table photos enable row level security;

create table rounds (
  id uuid not null,
  orchard_id uuid not null,
  kind text not null,
  season integer not null,
  species text[] not null,
  from_on date not null,
  to_on date not null,
  opened_at timestamp with time zone not null,
  closed_at timestamp with time zone,
  constraint rounds_days_in_order CHECK ((from_on <= to_on)),
  constraint rounds_kind_known CHECK ((kind = ANY (ARRAY['winter'::text, 'summer'::text, 'after_harvest'::text, 'training'::text]))),
  constraint rounds_season_range CHECK (((season >= 2000) AND (season <= 2200))),
  constraint rounds_species_some CHECK ((cardinality(species) > 0)),
  constraint rounds_pkey PRIMARY KEY (id),
  constraint rounds_in_orchard UNIQUE (orchard_id, id)
);
alter table rounds enable row level security;

create table setup_codes (
  code_hash text not null,
  made_at timestamp with time zone not null,
  expires_at timestamp with time zone not null,
  used_at timestamp with time zone,
  constraint setup_codes_pkey PRIMARY KEY (code_hash)
);
alter table setup_codes enable row level security;
comment on table setup_codes is 'Each lets one first manager create an orchard. Made outside the API only (private.make_setup_code).';

create table shift_offs (
  orchard_id uuid not null,
  shift_id uuid not null,
  what text not null,
  reason text not null,
  set_by uuid not null,
  set_at timestamp with time zone not null,
  constraint shift_offs_reason_known CHECK ((reason = ANY (ARRAY['season'::text, 'rain'::text, 'wet_wood'::text, 'wind'::text, 'thunder'::text, 'heat'::text, 'lead'::text]))),
  constraint shift_offs_key PRIMARY KEY (shift_id, what)
);
alter table shift_offs enable row level security;
comment on column shift_offs.what is 'A species, or ''ladder'' for all ladder work.';

create table shifts (
  id uuid not null,
  orchard_id uuid not null,
  round_id uuid not null,
  on_date date not null,
  starts_at timestamp with time zone not null,
  ends_at timestamp with time zone not null,
  state text not null default 'scheduled'::text,
  signal text not null default 'horn'::text,
  opened_at timestamp with time zone,
  closed_at timestamp with time zone,
  constraint shifts_signal_known CHECK ((signal = ANY (ARRAY['horn'::text, 'whistle'::text, 'voice'::text]))),
  constraint shifts_state_known CHECK ((state = ANY (ARRAY['scheduled'::text, 'open'::text, 'closed'::text, 'cancelled'::text]))),
  constraint shifts_times_in_order CHECK ((starts_at < ends_at)),
  constraint shifts_pkey PRIMARY KEY (id),
  constraint shifts_in_orchard UNIQUE (orchard_id, id),
  constraint shifts_in_round UNIQUE (orchard_id, round_id, id)
);
alter table shifts enable row level security;
comment on column shifts.signal is 'How this site calls a stop. The phone is never the alarm.';

create table skills (
  id uuid not null,
  orchard_id uuid not null,
  person_id uuid not null,
  skill text not null,
  granted_by uuid not null,
  granted_at timestamp with time zone not null,
  until date,
  ended_at timestamp with time zone,
  constraint skills_not_to_oneself CHECK ((granted_by <> person_id)),
  constraint skills_skill_known CHECK ((skill = ANY (ARRAY['hand_saw'::text, 'ladder'::text, 'prunes_alone'::text]))),
  constraint skills_pkey PRIMARY KEY (id)
);
alter table skills enable row level security;

create table stop_answers (
  orchard_id uuid not null,
  stop_id uuid not null,
  person_id uuid not null,
  phase text not null,
  how text not null,
  by_person_id uuid not null,
  at timestamp with time zone not null,
  constraint stop_answers_how_known CHECK ((how = ANY (ARRAY['self'::text, 'seen_by_lead'::text]))),
  constraint stop_answers_phase_known CHECK ((phase = ANY (ARRAY['stopped'::text, 'resumed'::text]))),
  constraint stop_answers_key PRIMARY KEY (stop_id, person_id, phase)
);
alter table stop_answers enable row level security;
comment on column stop_answers.phase is 'stopped: came down and was counted. resumed: knows that work goes on; asked for before the next claim.';

create table stops (
  id uuid not null,
  orchard_id uuid not null,
  shift_id uuid not null,
  block_no integer,
  called_by uuid not null,
  reason text,
  called_at timestamp with time zone not null,
  resumed_at timestamp with time zone,
  resumed_by uuid,
  constraint stops_pkey PRIMARY KEY (id),
  constraint stops_in_orchard UNIQUE (orchard_id, id)
);
alter table stops enable row level security;
comment on column stops.block_no is 'Null: the whole orchard.';

create table told_to_leave (
  orchard_id uuid not null,
  shift_id uuid not null,
  person_id uuid not null,
  claim_id uuid not null,
  tree_no integer,
  why text not null,
  told_at timestamp with time zone not null,
  left_at timestamp with time zone,
  left_by uuid,
  constraint told_to_leave_why_known CHECK ((why = ANY (ARRAY['thunder'::text, 'too_windy'::text, 'too_hot'::text, 'dark'::text, 'ladders_off'::text, 'species_off'::text]))),
  constraint told_to_leave_key PRIMARY KEY (shift_id, person_id)
);
alter table told_to_leave enable row level security;
comment on table told_to_leave is 'Who was at a tree when weather put it off: told to come out, and when they said that they are. No tree: a row of brush.';

create table tool_checks (
  id uuid not null default gen_random_uuid(),
  orchard_id uuid not null,
  tool_no integer not null,
  failed_items text[] not null default '{}'::text[],
  note text,
  checked_by uuid not null,
  checked_at timestamp with time zone not null,
  constraint tool_checks_note_length CHECK ((char_length(note) <= 300)),
  constraint tool_checks_pkey PRIMARY KEY (id)
);
alter table tool_checks enable row level security;

create table tool_holdings (
  id uuid not null default gen_random_uuid(),
  orchard_id uuid not null,
  tool_no integer not null,
  person_id uuid not null,
  shift_id uuid,
  taken_at timestamp with time zone not null,
  returned_at timestamp with time zone,
  returned_by uuid,
  returned_why text,
  constraint tool_holdings_returned_why_length CHECK ((char_length(returned_why) <= 300)),
  constraint tool_holdings_pkey PRIMARY KEY (id)
);
alter table tool_holdings enable row level security;
comment on column tool_holdings.returned_why is 'What a lead wrote when closing the shift with this tool not returned.';

create table tools (
  orchard_id uuid not null,
  no integer not null,
  label text not null,
  kind text not null,
  owned_by uuid,
  state text not null default 'fit'::text,
  clean boolean not null default true,
  constraint tools_kind_known CHECK ((kind = ANY (ARRAY['pruner'::text, 'lopper'::text, 'saw'::text, 'pole_pruner'::text, 'ladder'::text, 'other'::text]))),
  constraint tools_label_length CHECK (((char_length(label) >= 1) AND (char_length(label) <= 30))),
  constraint tools_state_known CHECK ((state = ANY (ARRAY['fit'::text, 'failed'::text]))),
  constraint tools_key PRIMARY KEY (orchard_id, no)
);
alter table tools enable row level security;
comment on column tools.owned_by is 'Null: the orchard''s own.';

create table tree_sheets (
  orchard_id uuid not null,
  version integer not null,
  body text not null,
  constraint tree_sheets_key PRIMARY KEY (orchard_id, version)
);
alter table tree_sheets enable row level security;
comment on table tree_sheets is 'What rarely changes about trees, one text a version, as columns of integers: it costs a millisecond to serve, where ten thousand objects cost a hundred.';

create table tree_work (
  orchard_id uuid not null,
  round_id uuid not null,
  tree_no integer not null,
  state text not null,
  share integer,
  note text,
  changed_at timestamp with time zone not null,
  left_out_by uuid,
  constraint tree_work_note_length CHECK ((char_length(note) <= 300)),
  constraint tree_work_share_range CHECK (((share >= 1) AND (share <= 99))),
  constraint tree_work_share_when_begun CHECK (((share IS NULL) OR (state = 'begun'::text))),
  constraint tree_work_state_known CHECK ((state = ANY (ARRAY['begun'::text, 'done'::text, 'left_out'::text]))),
  constraint tree_work_key PRIMARY KEY (round_id, tree_no)
);
alter table tree_work enable row level security;
comment on table tree_work is 'No row: unpruned in that round. left_out: not this round, the note says why.';
comment on column tree_work.left_out_by is 'Who said so; the note says why.';

create table trees (
  orchard_id uuid not null,
  no integer not null,
  block_no integer not null,
  row_no integer not null,
  place integer not null,
  species text not null,
  cultivar_no integer,
  size_class text,
  planted_year integer,
  height_cm integer,
  trunk_cm numeric(5,1),
  asks_saw boolean not null default false,
  life text not null default 'standing'::text,
  lat_e7 integer,
  lon_e7 integer,
  constraint trees_height_range CHECK (((height_cm >= 10) AND (height_cm <= 5000))),
  constraint trees_lat_range CHECK (((lat_e7 >= '-900000000'::integer) AND (lat_e7 <= 900000000))),
  constraint trees_life_known CHECK ((life = ANY (ARRAY['standing'::text, 'dead'::text, 'removed'::text, 'gap'::text]))),
  constraint trees_lon_range CHECK (((lon_e7 >= '-1800000000'::integer) AND (lon_e7 <= 1800000000))),
  constraint trees_no_positive CHECK ((no > 0)),
  constraint trees_place_positive CHECK ((place > 0)),
  constraint trees_planted_year_range CHECK (((planted_year >= 1700) AND (planted_year <= 2200))),
  constraint trees_position_whole CHECK (((lat_e7 IS NULL) = (lon_e7 IS NULL))),
  constraint trees_row_positive CHECK ((row_no > 0)),
  constraint trees_size_class_known CHECK ((size_class = ANY (ARRAY['young'::text, 'small'::text, 'medium'::text, 'large'::text]))),
  constraint trees_trunk_range CHECK (((trunk_cm > (0)::numeric) AND (trunk_cm < (1000)::numeric))),
  constraint trees_key PRIMARY KEY (orchard_id, no)
);
alter table trees enable row level security;
comment on column trees.no is 'Unique in the orchard for ever; never used again.';

create table visits (
  id uuid not null,
  orchard_id uuid not null,
  round_id uuid not null,
  shift_id uuid not null,
  tree_no integer not null,
  claim_id uuid,
  person_id uuid not null,
  result text not null,
  share integer,
  note text,
  at timestamp with time zone not null,
  seconds integer,
  before_state text,
  before_share integer,
  came_in_late boolean not null default false,
  without_claim boolean not null default false,
  lacked text[] not null default '{}'::text[],
  undone_at timestamp with time zone,
  from_paper boolean not null default false,
  constraint visits_note_length CHECK ((char_length(note) <= 300)),
  constraint visits_result_known CHECK ((result = ANY (ARRAY['done'::text, 'begun'::text, 'also_worked'::text]))),
  constraint visits_pkey PRIMARY KEY (id)
);
alter table visits enable row level security;
comment on table visits is 'Every time somebody worked on a tree: the record, and what undo goes back to. seconds are for display only.';
comment on column visits.lacked is 'Begun without signal and so without a claim: the codes that would have refused it. Kept all the same; a lead sees them.';
comment on column visits.from_paper is 'Entered by a lead from what was written; the event says who did.';

create table weather_exceptions (
  id uuid not null,
  orchard_id uuid not null,
  shift_id uuid not null,
  what text not null,
  lifts text[] not null,
  because text not null,
  note text,
  made_by uuid not null,
  made_at timestamp with time zone not null,
  ended_by uuid,
  ended_at timestamp with time zone,
  constraint weather_exceptions_because_known CHECK ((because = ANY (ARRAY['bark_is_dry'::text, 'dead_wood_only'::text, 'wounds_covered'::text, 'young_tree'::text, 'must_come_off'::text, 'lead_judges'::text, 'lamps'::text, 'day_here'::text]))),
  constraint weather_exceptions_note_length CHECK ((char_length(note) <= 300)),
  constraint weather_exceptions_pkey PRIMARY KEY (id)
);
alter table weather_exceptions enable row level security;
comment on table weather_exceptions is 'A lead lets a species be pruned although it is off, or work go on in the dark (what: dark).';
comment on column weather_exceptions.lifts is 'The reasons in force when it was made; a new one is not lifted.';

create table weather_readings (
  id uuid not null,
  orchard_id uuid not null,
  measured_at timestamp with time zone not null,
  temperature_c numeric(5,2),
  humidity numeric(4,1),
  wind_kmh numeric(5,2),
  gust_kmh numeric(5,2),
  canopy text,
  thunder boolean not null,
  rain_in_h integer,
  written_by uuid not null,
  written_at timestamp with time zone not null,
  constraint weather_readings_canopy_known CHECK ((canopy = ANY (ARRAY['wet'::text, 'dry'::text]))),
  constraint weather_readings_gust_range CHECK (((gust_kmh >= (0)::numeric) AND (gust_kmh <= (250)::numeric))),
  constraint weather_readings_humidity_range CHECK (((humidity >= (1)::numeric) AND (humidity <= (100)::numeric))),
  constraint weather_readings_rain_range CHECK (((rain_in_h >= 0) AND (rain_in_h <= 96))),
  constraint weather_readings_temperature_range CHECK (((temperature_c >= ('-40'::integer)::numeric) AND (temperature_c <= (60)::numeric))),
  constraint weather_readings_wind_range CHECK (((wind_kmh >= (0)::numeric) AND (wind_kmh <= (250)::numeric))),
  constraint weather_readings_pkey PRIMARY KEY (id)
);
alter table weather_readings enable row level security;
comment on table weather_readings is 'Null: not said. rain_in_h 96: none in sight.';

create table wrong_codes (
  user_id uuid not null,
  count integer not null,
  since timestamp with time zone not null,
  constraint wrong_codes_pkey PRIMARY KEY (user_id)
);
alter table wrong_codes enable row level security;
comment on table wrong_codes is 'By login and not by address: a whole crew shares one address. A row of a past hour counts for nothing.';

alter table aerial_pictures add constraint aerial_pictures_orchard FOREIGN KEY (orchard_id) REFERENCES orchards(id) ON DELETE CASCADE;
alter table aerial_pictures add constraint aerial_pictures_person FOREIGN KEY (orchard_id, placed_by) REFERENCES people(orchard_id, id);
alter table attendances add constraint attendances_person FOREIGN KEY (orchard_id, person_id) REFERENCES people(orchard_id, id) ON DELETE CASCADE;
alter table attendances add constraint attendances_shift FOREIGN KEY (orchard_id, shift_id) REFERENCES shifts(orchard_id, id) ON DELETE CASCADE;
alter table big_cut_marks add constraint big_cut_marks_round FOREIGN KEY (orchard_id, round_id) REFERENCES rounds(orchard_id, id) ON DELETE CASCADE;
alter table big_cut_marks add constraint big_cut_marks_tree FOREIGN KEY (orchard_id, tree_no) REFERENCES trees(orchard_id, no);
alter table blocks add constraint blocks_orchard FOREIGN KEY (orchard_id) REFERENCES orchards(id) ON DELETE CASCADE;
alter table breaks add constraint breaks_attendance FOREIGN KEY (attendance_id) REFERENCES attendances(id) ON DELETE CASCADE;
alter table briefing_signatures add constraint briefing_signatures_person FOREIGN KEY (orchard_id, person_id) REFERENCES people(orchard_id, id) ON DELETE CASCADE;
alter table briefing_signatures add constraint briefing_signatures_version FOREIGN KEY (shift_id, version) REFERENCES briefings(shift_id, version) ON DELETE CASCADE;
alter table briefings add constraint briefings_shift FOREIGN KEY (orchard_id, shift_id) REFERENCES shifts(orchard_id, id) ON DELETE CASCADE;
alter table briefings_given add constraint briefings_given_person FOREIGN KEY (orchard_id, person_id) REFERENCES people(orchard_id, id) ON DELETE CASCADE;
alter table briefings_given add constraint briefings_given_version FOREIGN KEY (shift_id, version) REFERENCES briefings(shift_id, version) ON DELETE CASCADE;
alter table brush_hauled add constraint brush_hauled_claim FOREIGN KEY (orchard_id, claim_id) REFERENCES claims(orchard_id, id) ON DELETE CASCADE;
alter table brush_hauled add constraint brush_hauled_round FOREIGN KEY (orchard_id, round_id) REFERENCES rounds(orchard_id, id) ON DELETE CASCADE;
alter table brush_hauled add constraint brush_hauled_tree FOREIGN KEY (orchard_id, tree_no) REFERENCES trees(orchard_id, no);
alter table brush_ways add constraint brush_ways_block FOREIGN KEY (orchard_id, block_no) REFERENCES blocks(orchard_id, no);
alter table brush_ways add constraint brush_ways_round FOREIGN KEY (orchard_id, round_id) REFERENCES rounds(orchard_id, id) ON DELETE CASCADE;
alter table calls add constraint calls_person FOREIGN KEY (orchard_id, person_id) REFERENCES people(orchard_id, id) ON DELETE CASCADE;
alter table calls add constraint calls_shift FOREIGN KEY (orchard_id, shift_id) REFERENCES shifts(orchard_id, id) ON DELETE CASCADE;
alter table calls add constraint calls_subject FOREIGN KEY (orchard_id, subject_id) REFERENCES people(orchard_id, id) ON DELETE CASCADE;
alter table calls add constraint calls_tree FOREIGN KEY (orchard_id, tree_no) REFERENCES trees(orchard_id, no);
alter table claim_people add constraint claim_people_claim FOREIGN KEY (orchard_id, claim_id) REFERENCES claims(orchard_id, id) ON DELETE CASCADE;
alter table claim_people add constraint claim_people_person FOREIGN KEY (orchard_id, person_id) REFERENCES people(orchard_id, id) ON DELETE CASCADE;
alter table claims add constraint claims_buddy FOREIGN KEY (orchard_id, buddy_id) REFERENCES people(orchard_id, id);
alter table claims add constraint claims_shift_of_round FOREIGN KEY (orchard_id, round_id, shift_id) REFERENCES shifts(orchard_id, round_id, id);
alter table claims add constraint claims_tree FOREIGN KEY (orchard_id, tree_no) REFERENCES trees(orchard_id, no);
alter table command_answers add constraint command_answers_orchard FOREIGN KEY (orchard_id) REFERENCES orchards(id) ON DELETE CASCADE;
alter table consents add constraint consents_by FOREIGN KEY (orchard_id, by_person_id) REFERENCES people(orchard_id, id) ON DELETE CASCADE;
alter table consents add constraint consents_person FOREIGN KEY (orchard_id, person_id) REFERENCES people(orchard_id, id) ON DELETE CASCADE;
alter table cultivars add constraint cultivars_orchard FOREIGN KEY (orchard_id) REFERENCES orchards(id) ON DELETE CASCADE;
alter table deals add constraint deals_round FOREIGN KEY (orchard_id, round_id) REFERENCES rounds(orchard_id, id) ON DELETE CASCADE;
alter table deals add constraint deals_tree FOREIGN KEY (orchard_id, tree_no) REFERENCES trees(orchard_id, no);
alter table equipment_checks add constraint equipment_checks_person FOREIGN KEY (orchard_id, person_id) REFERENCES people(orchard_id, id) ON DELETE CASCADE;
alter table equipment_checks add constraint equipment_checks_shift FOREIGN KEY (orchard_id, shift_id) REFERENCES shifts(orchard_id, id) ON DELETE CASCADE;
alter table events add constraint events_orchard FOREIGN KEY (orchard_id) REFERENCES orchards(id) ON DELETE CASCADE;
alter table flag_notes add constraint flag_notes_flag FOREIGN KEY (orchard_id, flag_id) REFERENCES flags(orchard_id, id) ON DELETE CASCADE;
alter table flag_notes add constraint flag_notes_person FOREIGN KEY (orchard_id, person_id) REFERENCES people(orchard_id, id) ON DELETE CASCADE;
alter table flags add constraint flags_tree FOREIGN KEY (orchard_id, tree_no) REFERENCES trees(orchard_id, no);
alter table forecasts add constraint forecasts_orchard FOREIGN KEY (orchard_id) REFERENCES orchards(id) ON DELETE CASCADE;
alter table hand_ins add constraint hand_ins_person FOREIGN KEY (orchard_id, person_id) REFERENCES people(orchard_id, id) ON DELETE CASCADE;
alter table incidents add constraint incidents_call FOREIGN KEY (orchard_id, call_id) REFERENCES calls(orchard_id, id);
alter table incidents add constraint incidents_shift FOREIGN KEY (orchard_id, shift_id) REFERENCES shifts(orchard_id, id) ON DELETE CASCADE;
alter table incidents add constraint incidents_tree FOREIGN KEY (orchard_id, tree_no) REFERENCES trees(orchard_id, no);
alter table invites add constraint invites_orchard FOREIGN KEY (orchard_id) REFERENCES orchards(id) ON DELETE CASCADE;
alter table invites add constraint invites_person FOREIGN KEY (orchard_id, person_id) REFERENCES people(orchard_id, id) ON DELETE CASCADE;
alter table invites add constraint invites_shift FOREIGN KEY (orchard_id, shift_id) REFERENCES shifts(orchard_id, id) ON DELETE CASCADE;
alter table keep_out_people add constraint keep_out_people_flag FOREIGN KEY (orchard_id, flag_id) REFERENCES flags(orchard_id, id) ON DELETE CASCADE;
alter table keep_out_people add constraint keep_out_people_person FOREIGN KEY (orchard_id, person_id) REFERENCES people(orchard_id, id) ON DELETE CASCADE;
alter table logins add constraint logins_person FOREIGN KEY (orchard_id, person_id) REFERENCES people(orchard_id, id) ON DELETE CASCADE;
alter table looked_over add constraint looked_over_round FOREIGN KEY (orchard_id, round_id) REFERENCES rounds(orchard_id, id) ON DELETE CASCADE;
alter table looked_over add constraint looked_over_tree FOREIGN KEY (orchard_id, tree_no) REFERENCES trees(orchard_id, no);
alter table orchard_heads add constraint orchard_heads_orchard FOREIGN KEY (orchard_id) REFERENCES orchards(id) ON DELETE CASCADE;
alter table people add constraint people_guardian FOREIGN KEY (orchard_id, guardian_id) REFERENCES people(orchard_id, id);
alter table people add constraint people_orchard FOREIGN KEY (orchard_id) REFERENCES orchards(id) ON DELETE CASCADE;
alter table photos add constraint photos_claim FOREIGN KEY (orchard_id, claim_id) REFERENCES claims(orchard_id, id) ON DELETE CASCADE;
alter table photos add constraint photos_flag FOREIGN KEY (orchard_id, flag_id) REFERENCES flags(orchard_id, id) ON DELETE CASCADE;
alter table photos add constraint photos_mark FOREIGN KEY (orchard_id, mark_id) REFERENCES big_cut_marks(orchard_id, id) ON DELETE CASCADE;
alter table photos add constraint photos_tree FOREIGN KEY (orchard_id, tree_no) REFERENCES trees(orchard_id, no);
alter table rounds add constraint rounds_orchard FOREIGN KEY (orchard_id) REFERENCES orchards(id) ON DELETE CASCADE;
alter table shift_offs add constraint shift_offs_shift FOREIGN KEY (orchard_id, shift_id) REFERENCES shifts(orchard_id, id) ON DELETE CASCADE;
alter table shifts add constraint shifts_round FOREIGN KEY (orchard_id, round_id) REFERENCES rounds(orchard_id, id);
alter table skills add constraint skills_person FOREIGN KEY (orchard_id, person_id) REFERENCES people(orchard_id, id) ON DELETE CASCADE;
alter table stop_answers add constraint stop_answers_person FOREIGN KEY (orchard_id, person_id) REFERENCES people(orchard_id, id) ON DELETE CASCADE;
alter table stop_answers add constraint stop_answers_stop FOREIGN KEY (orchard_id, stop_id) REFERENCES stops(orchard_id, id) ON DELETE CASCADE;
alter table stops add constraint stops_shift FOREIGN KEY (orchard_id, shift_id) REFERENCES shifts(orchard_id, id) ON DELETE CASCADE;
alter table told_to_leave add constraint told_to_leave_claim FOREIGN KEY (orchard_id, claim_id) REFERENCES claims(orchard_id, id) ON DELETE CASCADE;
alter table told_to_leave add constraint told_to_leave_person FOREIGN KEY (orchard_id, person_id) REFERENCES people(orchard_id, id) ON DELETE CASCADE;
alter table told_to_leave add constraint told_to_leave_shift FOREIGN KEY (orchard_id, shift_id) REFERENCES shifts(orchard_id, id) ON DELETE CASCADE;
alter table tool_checks add constraint tool_checks_tool FOREIGN KEY (orchard_id, tool_no) REFERENCES tools(orchard_id, no) ON DELETE CASCADE;
alter table tool_holdings add constraint tool_holdings_person FOREIGN KEY (orchard_id, person_id) REFERENCES people(orchard_id, id) ON DELETE CASCADE;
alter table tool_holdings add constraint tool_holdings_tool FOREIGN KEY (orchard_id, tool_no) REFERENCES tools(orchard_id, no) ON DELETE CASCADE;
alter table tools add constraint tools_orchard FOREIGN KEY (orchard_id) REFERENCES orchards(id) ON DELETE CASCADE;
alter table tools add constraint tools_owner FOREIGN KEY (orchard_id, owned_by) REFERENCES people(orchard_id, id);
alter table tree_sheets add constraint tree_sheets_orchard FOREIGN KEY (orchard_id) REFERENCES orchards(id) ON DELETE CASCADE;
alter table tree_work add constraint tree_work_round FOREIGN KEY (orchard_id, round_id) REFERENCES rounds(orchard_id, id) ON DELETE CASCADE;
alter table tree_work add constraint tree_work_tree FOREIGN KEY (orchard_id, tree_no) REFERENCES trees(orchard_id, no);
alter table trees add constraint trees_block FOREIGN KEY (orchard_id, block_no) REFERENCES blocks(orchard_id, no);
alter table trees add constraint trees_cultivar FOREIGN KEY (orchard_id, cultivar_no) REFERENCES cultivars(orchard_id, no);
alter table visits add constraint visits_claim FOREIGN KEY (orchard_id, claim_id) REFERENCES claims(orchard_id, id) ON DELETE CASCADE;
alter table visits add constraint visits_person FOREIGN KEY (orchard_id, person_id) REFERENCES people(orchard_id, id) ON DELETE CASCADE;
alter table visits add constraint visits_round FOREIGN KEY (orchard_id, round_id) REFERENCES rounds(orchard_id, id) ON DELETE CASCADE;
alter table visits add constraint visits_shift FOREIGN KEY (orchard_id, shift_id) REFERENCES shifts(orchard_id, id) ON DELETE CASCADE;
alter table visits add constraint visits_tree FOREIGN KEY (orchard_id, tree_no) REFERENCES trees(orchard_id, no);
alter table weather_exceptions add constraint weather_exceptions_shift FOREIGN KEY (orchard_id, shift_id) REFERENCES shifts(orchard_id, id) ON DELETE CASCADE;
alter table weather_readings add constraint weather_readings_orchard FOREIGN KEY (orchard_id) REFERENCES orchards(id) ON DELETE CASCADE;

CREATE INDEX attendances_not_found ON public.attendances USING btree (orchard_id) WHERE (not_found AND (found_at IS NULL));
CREATE UNIQUE INDEX attendances_one_open ON public.attendances USING btree (shift_id, person_id) WHERE (left_at IS NULL);
CREATE UNIQUE INDEX big_cut_marks_one_open ON public.big_cut_marks USING btree (round_id, tree_no) WHERE (ended_at IS NULL);
CREATE INDEX breaks_by_attendance ON public.breaks USING btree (attendance_id, from_at DESC);
CREATE UNIQUE INDEX breaks_one_open ON public.breaks USING btree (attendance_id) WHERE (to_at IS NULL);
CREATE INDEX calls_by_shift ON public.calls USING btree (shift_id, called_at DESC);
CREATE INDEX calls_open ON public.calls USING btree (orchard_id) WHERE (ended_at IS NULL);
CREATE INDEX claim_people_by_claim ON public.claim_people USING btree (claim_id);
CREATE INDEX claim_people_by_person ON public.claim_people USING btree (person_id, from_at DESC);
CREATE UNIQUE INDEX claim_people_one_holder ON public.claim_people USING btree (claim_id) WHERE ((to_at IS NULL) AND (part = 'holder'::text));
CREATE UNIQUE INDEX claim_people_one_tree_a_person ON public.claim_people USING btree (person_id) WHERE (to_at IS NULL);
CREATE UNIQUE INDEX claims_one_open_a_row ON public.claims USING btree (orchard_id, block_no, row_no) WHERE ((ended_at IS NULL) AND (tree_no IS NULL));
CREATE UNIQUE INDEX claims_one_open_a_tree ON public.claims USING btree (orchard_id, tree_no) WHERE (ended_at IS NULL);
CREATE INDEX command_answers_old ON public.command_answers USING btree (at);
CREATE INDEX consents_by_person ON public.consents USING btree (person_id, season);
CREATE UNIQUE INDEX deals_one_open ON public.deals USING btree (orchard_id, tree_no) WHERE (ended_at IS NULL);
CREATE INDEX equipment_checks_latest ON public.equipment_checks USING btree (shift_id, person_id, checked_at DESC);
CREATE INDEX flag_notes_by_flag ON public.flag_notes USING btree (flag_id, at);
CREATE INDEX flags_by_reporter ON public.flags USING btree (raised_by, raised_at DESC);
CREATE INDEX flags_open ON public.flags USING btree (orchard_id, tree_no) WHERE (ended_at IS NULL);
CREATE INDEX incidents_newest ON public.incidents USING btree (orchard_id, happened_at DESC);
CREATE INDEX logins_by_person ON public.logins USING btree (orchard_id, person_id) WHERE (ended_at IS NULL);
CREATE UNIQUE INDEX logins_one_open ON public.logins USING btree (user_id, person_id) WHERE (ended_at IS NULL);
CREATE INDEX looked_over_by_tree ON public.looked_over USING btree (round_id, tree_no, at DESC);
CREATE INDEX photos_by_flag ON public.photos USING btree (flag_id) WHERE (flag_id IS NOT NULL);
CREATE UNIQUE INDEX shifts_one_open ON public.shifts USING btree (orchard_id) WHERE (state = 'open'::text);
CREATE UNIQUE INDEX skills_one_open ON public.skills USING btree (person_id, skill) WHERE (ended_at IS NULL);
CREATE UNIQUE INDEX tool_holdings_one_open ON public.tool_holdings USING btree (orchard_id, tool_no) WHERE (returned_at IS NULL);
CREATE INDEX tree_work_not_done ON public.tree_work USING btree (round_id) WHERE (state <> 'done'::text);
CREATE UNIQUE INDEX trees_one_a_place ON public.trees USING btree (orchard_id, block_no, row_no, place) WHERE (life <> 'removed'::text);
CREATE INDEX trees_placed ON public.trees USING btree (orchard_id, no) WHERE (lat_e7 IS NOT NULL);
CREATE INDEX visits_by_tree ON public.visits USING btree (orchard_id, tree_no, at DESC);
CREATE UNIQUE INDEX weather_exceptions_one_open ON public.weather_exceptions USING btree (shift_id, what) WHERE (ended_at IS NULL);
CREATE INDEX weather_readings_newest ON public.weather_readings USING btree (orchard_id, measured_at DESC, written_at DESC);
CREATE INDEX weather_readings_thunder ON public.weather_readings USING btree (orchard_id, measured_at DESC) WHERE thunder;
CREATE INDEX weather_readings_wet ON public.weather_readings USING btree (orchard_id, measured_at DESC) WHERE ((canopy = 'wet'::text) OR ((canopy IS NULL) AND (humidity >= (90)::numeric)));

create policy "members hear the current channel of their orchard" on realtime.messages for select to authenticated
  using (( SELECT private.may_listen(( SELECT realtime.topic() AS topic)) AS may_listen));

CREATE OR REPLACE FUNCTION public.accept_hand_in(p_orchard uuid, p_command uuid, p_person uuid, p_hand_in uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_hand_in public.hand_ins;
  v_shift public.shifts;
  v_work jsonb;
begin
  v_c := private.begin_command('accept_hand_in', p_orchard, p_command, p_person, 'lead', jsonb_build_object('hand_in', p_hand_in));
  if v_c.answer is not null then return v_c.answer; end if;
  select * into v_hand_in from public.hand_ins where orchard_id = p_orchard and id = p_hand_in;
  if not found then perform private.fail(404, 'no_such_hand_in', 'Nothing was handed in under this id.'); end if;
  if v_hand_in.accepted_at is not null then return private.refuse(v_c, private.code('accepted_before')); end if;

  update public.hand_ins set accepted_by = v_c.by_person_id, accepted_at = v_c.at where id = p_hand_in;
  select s.* into v_shift from public.attendances a join public.shifts s on s.id = a.shift_id
  where a.orchard_id = p_orchard and a.person_id = v_hand_in.person_id
  order by a.arrived_at desc limit 1;
  if found then
    select jsonb_agg(brought) filter (where brought is not null) into v_work
    from (
      select private.bring_in_handed(v_c, v_hand_in, v_shift, item) as brought
      from jsonb_array_elements(v_hand_in.work) with ordinality as handed (item, place)
      order by place offset 0) each_one;
  end if;
  return private.accept(v_c, 'hand_in_accepted',
    private.filled(jsonb_build_object(
      'work', coalesce(v_work, '[]'),
      'dealsEnded', private.end_deals(p_orchard, (
        select array_agg((x ->> 0)::integer) from jsonb_array_elements(v_work) x where x ->> 1 = 'done'), v_c.at))),
    jsonb_build_object('handIn', p_hand_in));
end $function$;
comment on function accept_hand_in(uuid,uuid,uuid,uuid) is 'The trees in it count: done or begun where they are free, else "also worked on". Flags and the rest a lead reads, and does what they ask for.';
grant execute on function accept_hand_in(uuid,uuid,uuid,uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.add_person(p_orchard uuid, p_command uuid, p_person uuid, p_name text, p_role text DEFAULT 'volunteer'::text, p_age_band text DEFAULT 'adult'::text, p_guardian uuid DEFAULT NULL::uuid, p_phone text DEFAULT NULL::text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
begin
  v_c := private.begin_command('add_person', p_orchard, p_command, p_person, 'lead', jsonb_build_object(
    'name', p_name, 'role', p_role, 'age_band', p_age_band, 'guardian', p_guardian, 'phone', p_phone));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need_person(p_orchard, p_name, p_role, p_age_band, p_guardian, p_phone);
  if not private.may_give(v_c.by_person_id, p_role) then return private.refuse(v_c, private.code('not_yours_to_give')); end if;

  insert into public.people (id, orchard_id, name, role, age_band, guardian_id, phone, added_at, admitted_at)
  values (p_command, p_orchard, btrim(p_name), p_role, p_age_band, p_guardian, nullif(p_phone, ''), v_c.at, v_c.at);
  return private.accept(v_c, 'person_added', jsonb_build_object('person', p_command, 'role', p_role),
    case when p_age_band = 'minor' then jsonb_build_object('minor', true, 'guardianId', p_guardian) end,
    false, jsonb_build_object('person', p_command));
end $function$;
grant execute on function add_person(uuid,uuid,uuid,text,text,text,uuid,text) to authenticated;

CREATE OR REPLACE FUNCTION public.add_photo(p_orchard uuid, p_command uuid, p_person uuid, p_jpeg text, p_purpose text, p_tree integer DEFAULT NULL::integer, p_flag uuid DEFAULT NULL::uuid, p_claim uuid DEFAULT NULL::uuid, p_mark uuid DEFAULT NULL::uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_jpeg bytea;
  v_mark public.big_cut_marks;
begin
  -- The picture itself is not kept with the answer, only what it hashes to.
  v_c := private.begin_command('add_photo', p_orchard, p_command, p_person, 'self', jsonb_build_object(
    'jpeg_sha256', encode(sha256(convert_to(coalesce(p_jpeg, ''), 'UTF8')), 'hex'), 'purpose', p_purpose,
    'tree', p_tree, 'flag', p_flag, 'claim', p_claim, 'mark', p_mark));
  if v_c.answer is not null then return v_c.answer; end if;
  if p_jpeg is null or coalesce(p_purpose, '') not in ('flag', 'before', 'after', 'mark')
    or (p_purpose = 'mark') <> (p_mark is not null) then
    perform private.fail(400, 'malformed', 'A photo and its purpose are needed.');
  end if;
  if p_tree is not null then perform private.tree_or_fail(p_orchard, p_tree); end if;
  if p_claim is not null then perform private.claim_or_fail(p_orchard, p_claim); end if;
  if p_flag is not null and not exists (select 1 from public.flags where orchard_id = p_orchard and id = p_flag) then
    perform private.fail(404, 'no_such_flag', 'There is no such flag.');
  end if;
  if p_mark is not null then
    select * into v_mark from public.big_cut_marks where orchard_id = p_orchard and id = p_mark and marked_by = p_person;
    if v_mark.id is null then perform private.fail(404, 'no_such_mark', 'This person marked no such cuts.'); end if;
  end if;
  -- 200,000 bytes are 266,668 characters of base64; line ends may come in between.
  if length(p_jpeg) > 280000 then return private.refuse(v_c, private.code('photo_too_large')); end if;
  v_jpeg := private.jpeg_or_fail(p_jpeg);
  if octet_length(v_jpeg) > 200000 then return private.refuse(v_c, private.code('photo_too_large')); end if;
  if not private.is_plain_jpeg(v_jpeg) then return private.refuse(v_c, private.code('photo_not_plain')); end if;

  insert into public.photos (id, orchard_id, tree_no, flag_id, claim_id, mark_id, purpose, jpeg, taken_by, added_at)
  values (p_command, p_orchard, coalesce(p_tree, v_mark.tree_no), p_flag, p_claim, p_mark, p_purpose, v_jpeg, p_person, v_c.at);
  -- What was marked is for whoever prunes the tree; every other photo is for leads and who took it.
  return private.accept(v_c, 'photo_added',
    case when v_mark.id is not null and v_mark.ended_at is null
      then jsonb_build_object('photo', p_command, 'tree', v_mark.tree_no, 'mark', p_mark) end,
    jsonb_build_object('photo', p_command, 'tree', coalesce(p_tree, v_mark.tree_no), 'flag', p_flag, 'purpose', p_purpose), true);
end $function$;
grant execute on function add_photo(uuid,uuid,uuid,text,text,integer,uuid,uuid,uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.add_tool(p_orchard uuid, p_command uuid, p_person uuid, p_label text, p_kind text, p_owned_by uuid DEFAULT NULL::uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_no integer;
begin
  v_c := private.begin_command('add_tool', p_orchard, p_command, p_person, 'lead',
    jsonb_build_object('label', p_label, 'kind', p_kind, 'owned_by', p_owned_by));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(private.is_line(p_label, 30), 'p_label: up to 30 characters.');
  perform private.need(p_kind in ('pruner', 'lopper', 'saw', 'pole_pruner', 'ladder', 'other'), 'p_kind: a known kind of tool.');
  if p_owned_by is not null then perform private.person_or_fail(p_orchard, p_owned_by); end if;

  select coalesce(max(no), 0) + 1 into v_no from public.tools where orchard_id = p_orchard;
  insert into public.tools (orchard_id, no, label, kind, owned_by) values (p_orchard, v_no, btrim(p_label), p_kind, p_owned_by);
  return private.accept(v_c, 'tool_added', jsonb_build_object('tool', v_no, 'label', btrim(p_label), 'kind', p_kind, 'ownedBy', p_owned_by),
    null, false, jsonb_build_object('tool', v_no));
end $function$;
grant execute on function add_tool(uuid,uuid,uuid,text,text,uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.add_tree(p_orchard uuid, p_command uuid, p_person uuid, p_block integer, p_row integer, p_place integer, p_species text, p_cultivar integer DEFAULT NULL::integer, p_size text DEFAULT NULL::text, p_planted integer DEFAULT NULL::integer, p_lat_e7 integer DEFAULT NULL::integer, p_lon_e7 integer DEFAULT NULL::integer)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_no integer;
  v_there public.trees;
begin
  v_c := private.begin_command('add_tree', p_orchard, p_command, p_person, 'manager', jsonb_build_object(
    'block', p_block, 'row', p_row, 'place', p_place, 'species', p_species, 'cultivar', p_cultivar, 'size', p_size,
    'planted', p_planted, 'lat', p_lat_e7, 'lon', p_lon_e7));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.block_or_fail(p_orchard, p_block);
  perform private.need(p_row between 1 and 9999 and p_place between 1 and 9999, 'p_row and p_place: 1 to 9999.');
  perform private.need(private.is_species(p_species), 'p_species: not known.');
  perform private.need(p_cultivar is null or exists (select 1 from public.cultivars
    where orchard_id = p_orchard and no = p_cultivar and species = p_species), 'p_cultivar: not of this species.');
  perform private.need(p_size is null or p_size in ('young', 'small', 'medium', 'large'), 'p_size: not known.');
  perform private.need(p_planted is null or p_planted between 1700 and 2200, 'p_planted: a year.');
  perform private.need_position(p_lat_e7, p_lon_e7);

  select * into v_there from public.trees
  where orchard_id = p_orchard and block_no = p_block and row_no = p_row and place = p_place and life <> 'removed';
  if v_there.life <> 'gap' then
    return private.refuse(v_c, private.code('places_taken', jsonb_build_object('trees', jsonb_build_array(v_there.no))));
  end if;
  perform private.clear_gap(v_there);
  update public.orchard_heads set last_tree_no = last_tree_no + 1 where orchard_id = p_orchard returning last_tree_no into v_no;
  insert into public.trees (orchard_id, no, block_no, row_no, place, species, cultivar_no, size_class, planted_year, lat_e7, lon_e7)
  values (p_orchard, v_no, p_block, p_row, p_place, p_species, p_cultivar, p_size, p_planted,
    coalesce(p_lat_e7, v_there.lat_e7), coalesce(p_lon_e7, v_there.lon_e7));
  return private.accept(v_c, 'tree_added', jsonb_build_object('tree', v_no, 'sheet', private.write_tree_sheet(p_orchard)));
end $function$;
grant execute on function add_tree(uuid,uuid,uuid,integer,integer,integer,text,integer,text,integer,integer,integer) to authenticated;

CREATE OR REPLACE FUNCTION public.admit_person(p_orchard uuid, p_command uuid, p_person uuid, p_subject uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
begin
  v_c := private.begin_command('admit_person', p_orchard, p_command, p_person, 'lead', jsonb_build_object('subject', p_subject));
  if v_c.answer is not null then return v_c.answer; end if;
  if not private.may_give(v_c.by_person_id, (private.person_or_fail(p_orchard, p_subject)).role) then
    return private.refuse(v_c, private.code('not_yours_to_give'));
  end if;

  update public.people set admitted_at = coalesce(admitted_at, v_c.at) where id = p_subject;
  return private.accept(v_c, 'person_admitted', jsonb_build_object('person', p_subject));
end $function$;
grant execute on function admit_person(uuid,uuid,uuid,uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.answer_call(p_orchard uuid, p_command uuid, p_person uuid, p_call uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_call public.calls;
begin
  v_c := private.begin_command('answer_call', p_orchard, p_command, p_person, 'lead', jsonb_build_object('call', p_call));
  if v_c.answer is not null then return v_c.answer; end if;
  v_call := private.call_or_fail(p_orchard, p_call);

  update public.calls set answered_by = p_person, answered_at = coalesce(answered_at, v_c.at)
  where id = p_call and ended_at is null
  returning * into v_call;
  if not found then v_call := private.call_or_fail(p_orchard, p_call); end if;
  return private.tell_of_call(v_c, v_call, 'call_answered', private.filled(jsonb_build_object(
    'call', p_call, 'answeredBy', v_call.answered_by, 'answeredAt', private.instant(v_call.answered_at))));
end $function$;
comment on function answer_call(uuid,uuid,uuid,uuid) is 'I am coming. Who says so last comes; the first answer is when the caller was heard.';
grant execute on function answer_call(uuid,uuid,uuid,uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.answer_keep_out(p_orchard uuid, p_command uuid, p_person uuid, p_flag uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
begin
  v_c := private.begin_command('answer_keep_out', p_orchard, p_command, p_person, 'self', jsonb_build_object('flag', p_flag));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.flag_or_fail(p_orchard, p_flag);

  update public.keep_out_people set out_at = v_c.at, out_by = v_c.by_person_id
  where flag_id = p_flag and person_id = p_person and out_at is null;
  return private.accept(v_c, 'keep_out_answered', jsonb_build_object('flag', p_flag, 'person', p_person));
end $function$;
comment on function answer_keep_out(uuid,uuid,uuid,uuid) is '"I am out", or a lead who saw somebody come out. Never refused, like every answer.';
grant execute on function answer_keep_out(uuid,uuid,uuid,uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.answer_stop(p_orchard uuid, p_command uuid, p_person uuid, p_stop uuid, p_answer text DEFAULT NULL::text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_stop public.stops;
  v_phase text;
begin
  v_c := private.begin_command('answer_stop', p_orchard, p_command, p_person, 'self',
    jsonb_build_object('stop', p_stop, 'answer', p_answer));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_answer is null or p_answer in ('stopped', 'resumed'), 'p_answer: stopped, resumed or null.');
  v_stop := private.stop_or_fail(p_orchard, p_stop);

  -- "I came down", sent late, does not say that this person knows that work goes on.
  v_phase := case when v_stop.resumed_at is null or p_answer = 'stopped' then 'stopped' else 'resumed' end;
  insert into public.stop_answers (orchard_id, stop_id, person_id, phase, how, by_person_id, at)
  values (p_orchard, p_stop, p_person, v_phase, case when v_c.by_person_id = p_person then 'self' else 'seen_by_lead' end, v_c.by_person_id, v_c.at)
  on conflict do nothing;
  select min(phase) into v_phase from public.stop_answers where stop_id = p_stop and person_id = p_person;
  return private.accept(v_c, 'stop_answered', jsonb_build_object('stop', p_stop, 'answer', v_phase, 'person', p_person));
end $function$;
comment on function answer_stop(uuid,uuid,uuid,uuid,text) is 'Null: to whatever the stop asks now. resumed outweighs stopped.';
grant execute on function answer_stop(uuid,uuid,uuid,uuid,text) to authenticated;

CREATE OR REPLACE FUNCTION public.answer_weather(p_orchard uuid, p_command uuid, p_person uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
begin
  v_c := private.begin_command('answer_weather', p_orchard, p_command, p_person, 'self', '{}');
  if v_c.answer is not null then return v_c.answer; end if;

  update public.told_to_leave set left_at = v_c.at, left_by = v_c.by_person_id
  where shift_id = (private.open_shift(p_orchard)).id and person_id = p_person and left_at is null;
  return private.accept(v_c, 'weather_answered', jsonb_build_object('person', p_person));
end $function$;
comment on function answer_weather(uuid,uuid,uuid) is '"I am down", or a lead who saw somebody come down. Never refused, like every answer.';
grant execute on function answer_weather(uuid,uuid,uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.arrive(p_orchard uuid, p_command uuid, p_person uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_shift public.shifts;
  v_refused jsonb := '[]';
begin
  v_c := private.begin_command('arrive', p_orchard, p_command, p_person, 'self', '{}');
  if v_c.answer is not null then return v_c.answer; end if;
  v_shift := private.open_shift(p_orchard);
  if v_shift.id is null then v_refused := v_refused || private.code('shift_not_open'); end if;
  if (private.person_or_fail(p_orchard, p_person)).admitted_at is null then v_refused := v_refused || private.code('not_admitted'); end if;
  if private.is_here(v_shift.id, p_person) then v_refused := v_refused || private.code('already_here'); end if;
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  insert into public.attendances (id, orchard_id, shift_id, person_id, arrived_at, arrived_by)
  values (p_command, p_orchard, v_shift.id, p_person, v_c.at, v_c.by_person_id);
  perform private.set_found(v_c, p_person);
  return private.accept(v_c, 'person_arrived', '{}');
end $function$;
grant execute on function arrive(uuid,uuid,uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.audit_trail(p_orchard uuid, p_before bigint DEFAULT NULL::bigint, p_about uuid DEFAULT NULL::uuid, p_tree integer DEFAULT NULL::integer, p_kinds text[] DEFAULT NULL::text[], p_day date DEFAULT NULL::date)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_things text[];
  v_number text := '[[ ]' || p_tree || '[],}]';
  v_from timestamptz;
  v_to timestamptz;
  v_page jsonb;
begin
  perform private.begin_read(p_orchard, null, 'manager');
  perform private.need(p_kinds is null or private.are_codes(p_kinds, 200), 'p_kinds: kinds of events.');
  perform private.need(p_day is null or private.is_day(p_day), 'p_day: a day.');
  if p_tree is not null then v_things := private.things_of_tree(p_orchard, p_tree); end if;
  select p_day::timestamp at time zone time_zone, (p_day + 1)::timestamp at time zone time_zone into v_from, v_to
  from public.orchards where id = p_orchard;

  select coalesce(jsonb_agg(jsonb_build_object('n', e.n, 'at', private.instant(e.at), 'commandId', e.command_id,
    'personId', e.person_id, 'byPersonId', e.by_person_id, 'kind', e.kind, 'body', e.body, 'leadBody', e.lead_body)
    order by e.n desc), '[]') into v_page
  from (
    select * from public.events e
    where e.orchard_id = p_orchard and (p_before is null or e.n < p_before)
      and (p_day is null or e.at >= v_from and e.at < v_to)
      and (p_kinds is null or e.kind = any (p_kinds))
      and (p_about is null or private.is_about_person(e, p_about))
      -- The number stands in the text, else a thing of this tree does: only then is it worth looking closer.
      and (p_tree is null
        or coalesce(e.body ->> 'claim', e.body ->> 'flag', e.body ->> 'call', e.lead_body ->> 'flag') = any (v_things)
        or (e.body::text ~ v_number or e.lead_body::text ~ v_number) and private.is_about_tree(e, p_tree, v_things))
    order by e.n desc limit 100) e;
  return jsonb_build_object(
    'events', v_page,
    'names', private.names_of(p_orchard, array(
      select distinct each_id[1]::uuid
      from regexp_matches(v_page::text, '[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}', 'g') each_id)),
    -- What events name by id and only the past knows.
    'claims', (
      select coalesce(jsonb_object_agg(id, tree_no), '{}') from public.claims
      where orchard_id = p_orchard and tree_no is not null and id::text in (select x -> 'body' ->> 'claim' from jsonb_array_elements(v_page) x)),
    'flags', (
      select coalesce(jsonb_object_agg(id, tree_no), '{}') from public.flags
      where orchard_id = p_orchard and id::text in (
        select coalesce(x -> 'body' ->> 'flag', x -> 'leadBody' ->> 'flag') from jsonb_array_elements(v_page) x)),
    'shifts', (
      select coalesce(jsonb_object_agg(id, on_date), '{}') from public.shifts
      where orchard_id = p_orchard and id::text in (select x -> 'body' ->> 'shift' from jsonb_array_elements(v_page) x)),
    'rounds', (
      select coalesce(jsonb_object_agg(id, jsonb_build_array(kind, season)), '{}') from public.rounds
      where orchard_id = p_orchard and id::text in (select x -> 'body' ->> 'round' from jsonb_array_elements(v_page) x)));
end $function$;
comment on function audit_trail(uuid,bigint,uuid,integer,text[],date) is 'For managers. At most 100 events before number p_before (null: the newest): of one person, tree, day of the orchard''s calendar, of some kinds.';
grant execute on function audit_trail(uuid,bigint,uuid,integer,text[],date) to authenticated;

CREATE OR REPLACE FUNCTION public.before_forgetting(p_orchard uuid, p_subject uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_reader private.reader := private.begin_read(p_orchard, null, 'manager');
  v_subject public.people := private.anybody_or_fail(p_orchard, p_subject);
begin
  return (
    select jsonb_build_object('person', v_subject.id, 'name', v_subject.name, 'role', v_subject.role,
      'addedAt', private.instant(v_subject.added_at), 'removedAt', private.instant(v_subject.removed_at),
      'shifts', count(distinct s.id), 'lastShift', max(s.on_date), 'workedS', coalesce(sum(h.here_s - h.break_s), 0),
      'trees', (
        select count(distinct tree_no) from public.visits v
        where v.person_id = p_subject and v.result = 'done' and v.undone_at is null),
      'inTheWay', private.in_the_way_of_forgetting(v_subject, v_reader.person_id),
      -- What nobody can find by an id, only by reading.
      'onCard', exists (
        select 1 from public.orchards where id = p_orchard and strpos(emergency::text, v_subject.name) > 0),
      'inBriefings', (
        select count(distinct b.shift_id) from public.briefings b
        where b.orchard_id = p_orchard and strpos(b.topics::text, v_subject.name) > 0),
      'incidents', (
        select count(*) from public.incidents where orchard_id = p_orchard and strpos(note, v_subject.name) > 0))
    from public.attendances a
    join public.shifts s on s.id = a.shift_id
    left join lateral private.hours_in(s, clock_timestamp()) h on h.person_id = p_subject
    where a.person_id = p_subject
      -- hours_in counts all stays of a shift, so each shift once.
      and not exists (
        select 1 from public.attendances earlier
        where earlier.shift_id = a.shift_id and earlier.person_id = p_subject and earlier.id < a.id));
end $function$;
comment on function before_forgetting(uuid,uuid) is 'Who it is, so that nobody forgets the wrong one of two with the same name; what is in the way, and where the name would still stand.';
grant execute on function before_forgetting(uuid,uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.bring_in_forecast(p_orchard uuid, p_command uuid, p_person uuid, p_hours jsonb)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
begin
  v_c := private.begin_command('bring_in_forecast', p_orchard, p_command, p_person, 'lead', jsonb_build_object('hours', p_hours));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(jsonb_typeof(p_hours) = 'array', 'p_hours: a list.');
  perform private.need(jsonb_array_length(p_hours) between 1 and 400, 'p_hours: 1 to 400.');
  perform private.need((select bool_and(coalesce(private.is_forecast_hour(x), false)) from jsonb_array_elements(p_hours) x),
    'p_hours: [from, temperature, humidity, wind, gust, rain] each.');

  insert into public.forecasts (orchard_id, id, hours, brought_by, brought_at)
  values (p_orchard, p_command, p_hours, v_c.by_person_id, v_c.at)
  on conflict on constraint forecasts_key do update
    set id = excluded.id, hours = excluded.hours, brought_by = excluded.brought_by, brought_at = excluded.brought_at;
  return private.accept(v_c, 'forecast_brought_in', jsonb_build_object('forecast', p_command));
end $function$;
comment on function bring_in_forecast(uuid,uuid,uuid,jsonb) is 'Everything or nothing, and instead of the one before.';
grant execute on function bring_in_forecast(uuid,uuid,uuid,jsonb) to authenticated;

CREATE OR REPLACE FUNCTION public.bring_in_orchard(p_code text, p_command uuid, p_orchard uuid, p_parts integer, p_person uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_hash text := private.begin_code(p_code, p_command);
  v_lacks text;
  v_head public.orchard_heads;
begin
  perform private.need(p_orchard is not null and p_person is not null and p_parts between 1 and 20000, 'p_orchard, p_parts and p_person are needed.');
  v_lacks := private.setup_code_lacks(v_hash);
  if v_lacks = 'code_wrong' then return private.wrong_code(); end if;
  v_c := ('bring_in_orchard', p_orchard, p_command, p_person, p_person, true,
    jsonb_build_object('user', auth.uid(), 'code', v_hash), clock_timestamp(), null);
  v_c.answer := private.seen_before(v_c);
  if v_c.answer is not null then return v_c.answer; end if;
  v_lacks := coalesce(v_lacks, private.archive_lacks(p_command, p_parts),
    case when exists (select 1 from public.orchards where id = p_orchard) then 'orchard_here' end);
  if v_lacks is not null then return jsonb_build_object('refused', private.code(v_lacks)); end if;

  begin
    perform private.load_archive(p_command, p_orchard);
    if not exists (select 1 from public.people where orchard_id = p_orchard and id = p_person and role = 'manager' and removed_at is null) then
      raise exception using errcode = 'data_exception', message = 'There is no such manager in it.';
    end if;
    if exists (select 1 from public.breaks b join public.archive_parts p on p.archive = p_command and p.table_name = 'breaks'
      cross join lateral json_populate_recordset(null::public.breaks, p.body::json) r
      join public.attendances a on a.id = b.attendance_id where b.id = r.id and a.orchard_id <> p_orchard) then
      raise exception using errcode = 'data_exception', message = 'A break is of another orchard.';
    end if;
    update public.orchard_heads set epoch = gen_random_uuid(), channel_epoch = channel_epoch + 1, sheet_version = greatest(sheet_version - 1, 0)
    where orchard_id = p_orchard returning * into v_head;
    if v_head.orchard_id is null or (select count(*) from public.events where orchard_id = p_orchard) <> v_head.head then
      raise exception using errcode = 'data_exception', message = 'Events are missing.';
    end if;
    perform private.write_tree_sheet(p_orchard);
  exception when data_exception or integrity_constraint_violation or syntax_error_or_access_rule_violation then
    return jsonb_build_object('refused', private.code('archive_damaged', jsonb_build_object('why', sqlerrm)));
  end;
  perform private.link_login(v_c);
  update public.setup_codes set used_at = v_c.at where code_hash = v_hash;
  delete from public.archive_parts where archive = p_command;
  return private.store_answer(v_c, jsonb_build_object('n', v_head.head, 'orchard', p_orchard, 'person', p_person));
end $function$;
comment on function bring_in_orchard(text,uuid,uuid,integer,uuid) is 'No event: what is seen afterwards is what was seen before. The epoch is another, so that phones that knew the orchard start anew.';
grant execute on function bring_in_orchard(text,uuid,uuid,integer,uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.bring_in_trees(p_orchard uuid, p_command uuid, p_person uuid, p_blocks jsonb, p_cultivars jsonb, p_trees jsonb, p_changes jsonb DEFAULT '[]'::jsonb)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_wrong jsonb;
  v_count integer;
  v_changed integer;
  v_sheet integer;
begin
  v_c := private.begin_command('bring_in_trees', p_orchard, p_command, p_person, 'manager', jsonb_build_object(
    'sha256', private.sha256_of(concat_ws(' ', p_blocks, p_cultivars, p_trees, nullif(p_changes, '[]')))));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(jsonb_typeof(p_blocks) = 'array' and jsonb_typeof(p_cultivars) = 'array' and jsonb_typeof(p_trees) = 'array'
    and jsonb_typeof(p_changes) = 'array', 'p_blocks, p_cultivars, p_trees and p_changes: lists.');
  if jsonb_array_length(p_blocks) > 500 or jsonb_array_length(p_cultivars) > 2000
    or jsonb_array_length(p_trees) + jsonb_array_length(p_changes) > 100000 then
    perform private.fail(413, 'too_large', 'At most 500 blocks, 2,000 cultivars and 100,000 trees at once.');
  end if;
  v_wrong := private.wrong_rows(p_orchard, p_blocks, p_cultivars, p_trees, p_changes);
  if v_wrong is not null then return private.refuse(v_c, private.code('rows_wrong', jsonb_build_object('rows', v_wrong))); end if;

  v_count := private.insert_inventory(p_orchard, p_blocks, p_cultivars, p_trees);
  v_changed := private.change_trees(p_orchard, p_changes);
  v_sheet := private.write_tree_sheet(p_orchard);
  return private.accept(v_c, 'trees_brought_in', jsonb_build_object('sheet', v_sheet, 'count', v_count, 'changed', nullif(v_changed, 0)));
end $function$;
grant execute on function bring_in_trees(uuid,uuid,uuid,jsonb,jsonb,jsonb,jsonb) to authenticated;

CREATE OR REPLACE FUNCTION public.call_for_help(p_orchard uuid, p_command uuid, p_person uuid, p_kind text, p_tree integer DEFAULT NULL::integer, p_subject uuid DEFAULT NULL::uuid, p_note text DEFAULT NULL::text, p_at timestamp with time zone DEFAULT NULL::timestamp with time zone)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_shift public.shifts;
  v_call public.calls;
begin
  v_c := private.begin_command('call_for_help', p_orchard, p_command, p_person, 'self', jsonb_build_object(
    'kind', p_kind, 'tree', p_tree, 'subject', p_subject, 'note', p_note, 'at', p_at));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_kind in ('question', 'tool', 'injury', 'lost_person'), 'p_kind: question, tool, injury or lost_person.');
  if p_tree is not null then perform private.tree_or_fail(p_orchard, p_tree); end if;
  -- Also somebody who was removed meanwhile: that they are looked for is what counts.
  if p_subject is not null and not exists (select 1 from public.people where orchard_id = p_orchard and id = p_subject) then
    perform private.fail(404, 'no_such_person', 'This person is not in the orchard.');
  end if;

  v_shift := private.open_shift(p_orchard);
  -- Too many words are cut: a call is not lost for them.
  insert into public.calls (id, orchard_id, shift_id, person_id, tree_no, kind, subject_id, note, called_at)
  values (p_command, p_orchard, v_shift.id, p_person, p_tree, p_kind, case p_kind when 'lost_person' then p_subject end,
    left(nullif(btrim(p_note), ''), 300),
    private.when_said(p_at, coalesce(v_shift.opened_at, v_c.at - interval '12 hours'), v_c.at))
  returning * into v_call;
  return private.tell_of_call(v_c, v_call, 'call_made', private.call_told(v_call));
end $function$;
grant execute on function call_for_help(uuid,uuid,uuid,text,integer,uuid,text,timestamp with time zone) to authenticated;

CREATE OR REPLACE FUNCTION public.came_in(p_orchard uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
begin
  perform private.begin_read(p_orchard, null, 'lead');
  return jsonb_build_object(
    'visits', (
      select coalesce(jsonb_agg(jsonb_build_object('id', id, 'tree', tree_no, 'person', person_id, 'result', result,
        'at', private.instant(at), 'late', came_in_late, 'withoutClaim', without_claim, 'lacked', lacked) order by at desc), '[]')
      from (
        select * from public.visits
        where orchard_id = p_orchard and undone_at is null and at > now() - interval '14 days'
          and (came_in_late or without_claim or result = 'also_worked')
        order by at desc limit 200) newest),
    'handIns', (
      select coalesce(jsonb_agg(jsonb_build_object('id', h.id, 'person', h.person_id, 'name', p.name,
        'at', private.instant(h.handed_in_at), 'things', private.handed_things(h.work)) order by h.handed_in_at desc), '[]')
      from public.hand_ins h join public.people p on p.id = h.person_id
      where h.orchard_id = p_orchard and h.accepted_at is null));
end $function$;
comment on function came_in(uuid) is 'visits: work that came late, without a claim, or on a tree that was not theirs any more; of the last 14 days.';
grant execute on function came_in(uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.cancel_shift(p_orchard uuid, p_command uuid, p_person uuid, p_shift uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_shift public.shifts;
begin
  v_c := private.begin_command('cancel_shift', p_orchard, p_command, p_person, 'lead', jsonb_build_object('shift', p_shift));
  if v_c.answer is not null then return v_c.answer; end if;
  v_shift := private.shift_or_fail(p_orchard, p_shift);
  if private.not_planned(v_shift) is not null then return private.refuse(v_c, private.not_planned(v_shift)); end if;

  update public.shifts set state = 'cancelled' where id = p_shift;
  return private.accept(v_c, 'shift_cancelled', jsonb_build_object('shift', p_shift));
end $function$;
comment on function cancel_shift(uuid,uuid,uuid,uuid) is 'Rained out: its join links end with it, and no work ever belongs to it.';
grant execute on function cancel_shift(uuid,uuid,uuid,uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.change_block(p_orchard uuid, p_command uuid, p_person uuid, p_block integer, p_code text, p_name text, p_row_spacing_m numeric, p_tree_spacing_m numeric, p_bearing_deg numeric DEFAULT NULL::numeric, p_tagged_end text DEFAULT 'low'::text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_other integer;
begin
  v_c := private.begin_command('change_block', p_orchard, p_command, p_person, 'manager', jsonb_build_object(
    'block', p_block, 'code', p_code, 'name', p_name, 'rows', p_row_spacing_m, 'trees', p_tree_spacing_m,
    'bearing', p_bearing_deg, 'end', p_tagged_end));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.block_or_fail(p_orchard, p_block);
  perform private.need(private.is_line(p_code, 4) and private.is_line(p_name, 60), 'p_code: up to 4 letters; p_name: up to 60.');
  perform private.need(round(p_row_spacing_m, 2) between 0.5 and 30 and round(p_tree_spacing_m, 2) between 0.5 and 30,
    'Spacings: 0.5 to 30 m.');
  perform private.need(p_bearing_deg is null or round(p_bearing_deg, 2) between 0 and 359.99, 'p_bearing_deg: 0 to 359.99.');
  perform private.need(p_tagged_end in ('low', 'high'), 'p_tagged_end: low or high.');

  select no into v_other from public.blocks where orchard_id = p_orchard and code = btrim(p_code) and no <> p_block;
  if found then return private.refuse(v_c, private.code('code_taken', jsonb_build_object('block', v_other))); end if;
  update public.blocks set code = btrim(p_code), name = btrim(p_name), row_spacing_m = p_row_spacing_m,
    tree_spacing_m = p_tree_spacing_m, bearing_deg = p_bearing_deg, tagged_end = p_tagged_end
  where orchard_id = p_orchard and no = p_block;
  return private.accept(v_c, 'block_changed', jsonb_build_object('block', p_block, 'sheet', private.write_tree_sheet(p_orchard)));
end $function$;
grant execute on function change_block(uuid,uuid,uuid,integer,text,text,numeric,numeric,numeric,text) to authenticated;

CREATE OR REPLACE FUNCTION public.change_keep_out(p_orchard uuid, p_command uuid, p_person uuid, p_flag uuid, p_keep_out_m numeric)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_flag public.flags;
begin
  v_c := private.begin_command('change_keep_out', p_orchard, p_command, p_person, 'lead',
    jsonb_build_object('flag', p_flag, 'keep_out_m', p_keep_out_m));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_keep_out_m between 0 and 200, 'p_keep_out_m: 0 to 200.');
  v_flag := private.flag_or_fail(p_orchard, p_flag);
  perform private.need(v_flag.kind = 'arborist', 'p_flag: only a hazard has a keep-out.');
  if v_flag.ended_at is not null then return private.refuse(v_c, private.code('flag_over')); end if;
  if p_keep_out_m < v_flag.keep_out_m
    and not exists (select 1 from public.people where id = v_c.by_person_id and role = 'manager')
  then return private.refuse(v_c, private.code('only_manager_narrows')); end if;

  update public.flags set keep_out_m = p_keep_out_m, acted_at = v_c.at where id = p_flag;
  return private.accept(v_c, 'keep_out_changed',
    jsonb_build_object('flag', p_flag, 'keepOutM', p_keep_out_m) || private.close_off(v_c, p_flag));
end $function$;
comment on function change_keep_out(uuid,uuid,uuid,uuid,numeric) is 'A lead sets and widens; only a manager narrows or takes it away (0).';
grant execute on function change_keep_out(uuid,uuid,uuid,uuid,numeric) to authenticated;

CREATE OR REPLACE FUNCTION public.change_orchard(p_orchard uuid, p_command uuid, p_person uuid, p_name text DEFAULT NULL::text, p_language text DEFAULT NULL::text, p_units text DEFAULT NULL::text, p_house_rules jsonb DEFAULT NULL::jsonb, p_emergency jsonb DEFAULT NULL::jsonb)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_orchard public.orchards;
begin
  v_c := private.begin_command('change_orchard', p_orchard, p_command, p_person, 'manager', jsonb_build_object(
    'name', p_name, 'language', p_language, 'units', p_units, 'house_rules', p_house_rules, 'emergency', p_emergency));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_name is null or private.is_line(p_name, 80), 'p_name: up to 80 characters.');
  perform private.need(p_language is null or p_language in ('en', 'es'), 'p_language: en or es.');
  perform private.need(p_units is null or p_units in ('metric', 'us'), 'p_units: metric or us.');
  perform private.need(p_house_rules is null or private.are_house_rules(p_house_rules), 'p_house_rules: known rules, each within its range.');
  perform private.need(p_emergency is null or private.is_emergency_card(p_emergency), 'p_emergency: known keys, up to 500 characters.');

  update public.orchards set
    name = coalesce(btrim(p_name), name), language = coalesce(p_language, language), units = coalesce(p_units, units),
    house_rules = house_rules || coalesce(p_house_rules, '{}'), emergency = emergency || coalesce(p_emergency, '{}'),
    emergency_version = emergency_version + (p_emergency is not null)::integer
  where id = p_orchard returning * into v_orchard;
  return private.accept(v_c, 'orchard_changed', jsonb_build_object(
    'name', btrim(p_name), 'language', p_language, 'units', p_units,
    'houseRules', case when p_house_rules is not null then private.default_house_rules() || v_orchard.house_rules end,
    'emergencyVersion', case when p_emergency is not null then v_orchard.emergency_version end));
end $function$;
comment on function change_orchard(uuid,uuid,uuid,text,text,text,jsonb,jsonb) is 'Null: unchanged. House rules and emergency card are changed key by key.';
grant execute on function change_orchard(uuid,uuid,uuid,text,text,text,jsonb,jsonb) to authenticated;

CREATE OR REPLACE FUNCTION public.change_person(p_orchard uuid, p_command uuid, p_person uuid, p_subject uuid, p_name text DEFAULT NULL::text, p_role text DEFAULT NULL::text, p_age_band text DEFAULT NULL::text, p_guardian uuid DEFAULT NULL::uuid, p_phone text DEFAULT NULL::text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_old public.people;
  v_new public.people;
begin
  -- Of the person who is changed, so that their own phone hears what only leads hear of others.
  v_c := private.begin_command('change_person', p_orchard, p_command, p_subject, 'lead', jsonb_build_object('by', p_person,
    'name', p_name, 'role', p_role, 'age_band', p_age_band, 'guardian', p_guardian, 'phone', p_phone));
  if v_c.answer is not null then return v_c.answer; end if;
  v_old := private.person_or_fail(p_orchard, p_subject);
  v_new := v_old;
  v_new.name := coalesce(btrim(p_name), v_old.name);
  v_new.role := coalesce(p_role, v_old.role);
  v_new.age_band := coalesce(p_age_band, v_old.age_band);
  v_new.guardian_id := case when v_new.age_band = 'minor' then coalesce(p_guardian, v_old.guardian_id) else p_guardian end;
  v_new.phone := nullif(coalesce(p_phone, v_old.phone), '');
  perform private.need_person(p_orchard, v_new.name, v_new.role, v_new.age_band, p_guardian, v_new.phone);
  perform private.need(p_guardian is distinct from p_subject, 'Nobody is their own guardian.');

  -- A lead may set right what is written about the lead, but not give or take a role.
  if not (private.may_give(v_c.by_person_id, v_old.role) and private.may_give(v_c.by_person_id, v_new.role))
    and not (p_subject = v_c.by_person_id and v_new.role = v_old.role)
  then return private.refuse(v_c, private.code('not_yours_to_give')); end if;
  if v_new.role <> 'manager' and private.is_last_manager(v_old) then return private.refuse(v_c, private.code('last_manager')); end if;

  update public.people set name = v_new.name, role = v_new.role, age_band = v_new.age_band, guardian_id = v_new.guardian_id,
    phone = v_new.phone where id = p_subject;
  -- Nobody gives by an older link what they may not give any more.
  update public.invites set ended_at = v_c.at
  where orchard_id = p_orchard and made_by = p_subject and ended_at is null
    and case kind when 'role' then v_new.role <> 'manager' when 'join' then not private.is_lead_role(v_new.role) else false end;
  return private.accept(v_c, 'person_changed', jsonb_build_object('person', p_subject, 'role', v_new.role),
    jsonb_build_object('person', p_subject, 'minor', v_new.age_band = 'minor', 'guardianId', v_new.guardian_id), true);
end $function$;
comment on function change_person(uuid,uuid,uuid,uuid,text,text,text,uuid,text) is 'Null: unchanged. An empty p_phone takes the phone away.';
grant execute on function change_person(uuid,uuid,uuid,uuid,text,text,text,uuid,text) to authenticated;

CREATE OR REPLACE FUNCTION public.change_shift(p_orchard uuid, p_command uuid, p_person uuid, p_shift uuid, p_date date, p_starts_at timestamp with time zone, p_ends_at timestamp with time zone, p_signal text DEFAULT 'horn'::text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_shift public.shifts;
begin
  v_c := private.begin_command('change_shift', p_orchard, p_command, p_person, 'lead', jsonb_build_object(
    'shift', p_shift, 'date', p_date, 'starts_at', p_starts_at, 'ends_at', p_ends_at, 'signal', p_signal));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need_hours(p_date, p_starts_at, p_ends_at, p_signal);
  v_shift := private.shift_or_fail(p_orchard, p_shift);
  if private.not_planned(v_shift) is not null then return private.refuse(v_c, private.not_planned(v_shift)); end if;

  update public.shifts set on_date = p_date, starts_at = p_starts_at, ends_at = p_ends_at, signal = p_signal where id = p_shift;
  return private.accept(v_c, 'shift_changed', jsonb_build_object('shift', p_shift, 'date', p_date,
    'startsAt', private.instant(p_starts_at), 'endsAt', private.instant(p_ends_at), 'signal', p_signal));
end $function$;
comment on function change_shift(uuid,uuid,uuid,uuid,date,timestamp with time zone,timestamp with time zone,text) is 'Day, hours and signal, all four; what is written for it (briefing, join links) stays.';
grant execute on function change_shift(uuid,uuid,uuid,uuid,date,timestamp with time zone,timestamp with time zone,text) to authenticated;

CREATE OR REPLACE FUNCTION public.change_trees(p_orchard uuid, p_command uuid, p_person uuid, p_trees integer[], p_set jsonb)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_refused jsonb;
begin
  -- As text: in an object null would be lost, and here it says "not known".
  v_c := private.begin_command('change_trees', p_orchard, p_command, p_person, 'manager',
    jsonb_build_object('trees', p_trees, 'set', p_set::text));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(private.is_change_of_trees(p_orchard, p_set), 'p_set: species, cultivar, size, planted, heightCm, trunkMm, asksSaw, life.');
  perform private.trees_or_fail(p_orchard, p_trees);
  v_refused := private.cannot_be_changed(p_orchard, p_trees, p_set);
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  update public.trees t set
    species = coalesce(p_set ->> 'species', t.species),
    -- A cultivar is of one species.
    cultivar_no = case
      when p_set ? 'cultivar' then (p_set ->> 'cultivar')::integer
      when coalesce(p_set ->> 'species', t.species) = t.species then t.cultivar_no end,
    size_class = case when p_set ? 'size' then p_set ->> 'size' else t.size_class end,
    planted_year = case when p_set ? 'planted' then (p_set ->> 'planted')::integer else t.planted_year end,
    height_cm = case when p_set ? 'heightCm' then (p_set ->> 'heightCm')::integer else t.height_cm end,
    trunk_cm = case when p_set ? 'trunkMm' then (p_set ->> 'trunkMm')::numeric / 10 else t.trunk_cm end,
    asks_saw = coalesce((p_set ->> 'asksSaw')::boolean, t.asks_saw),
    life = coalesce(p_set ->> 'life', t.life)
  where t.orchard_id = p_orchard and t.no = any (p_trees);
  return private.accept(v_c, 'trees_changed',
    jsonb_build_object('sheet', private.write_tree_sheet(p_orchard), 'count', cardinality(p_trees)));
end $function$;
grant execute on function change_trees(uuid,uuid,uuid,integer[],jsonb) to authenticated;

CREATE OR REPLACE FUNCTION public.check_equipment(p_orchard uuid, p_command uuid, p_person uuid, p_failed_items text[])
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_shift public.shifts;
begin
  v_c := private.begin_command('check_equipment', p_orchard, p_command, p_person, 'self', jsonb_build_object('failed_items', p_failed_items));
  if v_c.answer is not null then return v_c.answer; end if;
  -- Nothing said is not "nothing failed".
  perform private.need(private.are_codes(p_failed_items, 20), 'p_failed_items: a list of codes, [] when all is well.');
  v_shift := private.open_shift(p_orchard);
  if v_shift.id is null then return private.refuse(v_c, private.code('shift_not_open')); end if;
  if not private.is_here(v_shift.id, p_person) then return private.refuse(v_c, private.code('not_arrived')); end if;

  insert into public.equipment_checks (id, orchard_id, shift_id, person_id, failed_items, checked_by, checked_at)
  values (p_command, p_orchard, v_shift.id, p_person, p_failed_items, v_c.by_person_id, v_c.at);
  if p_failed_items = '{}' then
    return private.accept(v_c, 'equipment_checked', jsonb_build_object('passed', true));
  end if;
  return private.accept(v_c, 'equipment_checked', null, jsonb_build_object('person', p_person, 'failed', p_failed_items), true);
end $function$;
grant execute on function check_equipment(uuid,uuid,uuid,text[]) to authenticated;

CREATE OR REPLACE FUNCTION public.claim_tree(p_orchard uuid, p_command uuid, p_person uuid, p_tree integer, p_purpose text DEFAULT 'work'::text, p_kind text DEFAULT 'prune'::text, p_ladder boolean DEFAULT false, p_helpers uuid[] DEFAULT '{}'::uuid[], p_learners uuid[] DEFAULT '{}'::uuid[], p_buddy uuid DEFAULT NULL::uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_wish private.wish := (p_person, p_tree, p_purpose, p_kind, coalesce(p_ladder, false),
    coalesce(p_helpers, '{}'), coalesce(p_learners, '{}'), p_buddy);
  v_others uuid[] := coalesce(p_helpers, '{}') || coalesce(p_learners, '{}');
  v_missing jsonb;
begin
  v_c := private.begin_command('claim_tree', p_orchard, p_command, p_person, 'self', to_jsonb(v_wish) - 'person_id');
  if v_c.answer is not null then return v_c.answer; end if;
  if p_tree is null or (p_purpose in ('work', 'teaching')) is not true or (p_kind in ('prune', 'brush', 'other')) is not true
    or cardinality(v_others) > 8 or p_person = any (v_others)
    or cardinality(v_others) <> (select count(distinct x) from unnest(v_others) x) or (p_ladder and p_kind <> 'prune')
  then perform private.fail(400, 'malformed', 'Name a tree, a purpose, a kind and up to eight different others; only pruning takes a ladder.');
  end if;

  v_missing := private.missing_for_claim(p_orchard, v_wish);
  if v_missing <> '[]' then
    return private.refuse(v_c, private.told_of_others(v_c, v_missing, v_others), jsonb_build_object('next', private.next_tree(p_orchard, p_person, p_tree)));
  end if;

  perform private.open_claim(v_c, private.open_shift(p_orchard), v_wish, v_c.at);
  return private.accept(v_c, 'tree_claimed', private.claim_facts(p_command)
    || jsonb_build_object('dealsEnded', private.end_deals(p_orchard, array[p_tree], v_c.at)));
end $function$;
grant execute on function claim_tree(uuid,uuid,uuid,integer,text,text,boolean,uuid[],uuid[],uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.clean_tool(p_orchard uuid, p_command uuid, p_person uuid, p_tools integer[])
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_unknown integer[];
begin
  v_c := private.begin_command('clean_tool', p_orchard, p_command, p_person, 'self', jsonb_build_object('tools', p_tools));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(cardinality(p_tools) between 1 and 100 and array_position(p_tools, null) is null, 'p_tools: 1 to 100 tools.');
  select array_agg(x) into v_unknown from unnest(p_tools) x where (private.tool_in(p_orchard, x)).no is null;
  if v_unknown is not null then return private.refuse(v_c, private.no_such_tool(v_unknown)); end if;

  update public.tools set clean = true where orchard_id = p_orchard and no = any (p_tools);
  return private.accept(v_c, 'tools_cleaned', jsonb_build_object('tools', p_tools));
end $function$;
grant execute on function clean_tool(uuid,uuid,uuid,integer[]) to authenticated;

CREATE OR REPLACE FUNCTION public.clear_flag(p_orchard uuid, p_command uuid, p_person uuid, p_flag uuid, p_done text, p_done_by text, p_done_on date)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_flag public.flags;
begin
  v_c := private.begin_command('clear_flag', p_orchard, p_command, p_person, 'manager', jsonb_build_object(
    'flag', p_flag, 'done', p_done, 'done_by', p_done_by, 'done_on', p_done_on));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(coalesce(char_length(btrim(p_done)), 0) between 1 and 500, 'p_done: 1 to 500 characters.');
  perform private.need(coalesce(char_length(btrim(p_done_by)), 0) between 1 and 120, 'p_done_by: 1 to 120 characters.');
  perform private.need(p_done_on is not null and p_done_on <= private.today(p_orchard), 'p_done_on: a day up to today.');
  v_flag := private.flag_or_fail(p_orchard, p_flag);
  perform private.need(v_flag.kind = 'arborist', 'p_flag: a disease is withdrawn.');
  if v_flag.ended_at is not null then return private.refuse(v_c, private.code('flag_over')); end if;

  update public.flags
  set state = 'cleared', ended_by = v_c.by_person_id, ended_at = v_c.at, ended_note = btrim(p_done), done_by = btrim(p_done_by), done_on = p_done_on
  where id = p_flag;
  return private.accept(v_c, 'flag_cleared', jsonb_build_object('flag', p_flag));
end $function$;
comment on function clear_flag(uuid,uuid,uuid,uuid,text,text,date) is 'What the licensed arborist did, who it was and when, as the manager writes it: in the table only.';
grant execute on function clear_flag(uuid,uuid,uuid,uuid,text,text,date) to authenticated;

CREATE OR REPLACE FUNCTION public.close_round(p_orchard uuid, p_command uuid, p_person uuid, p_round uuid, p_call_off uuid[] DEFAULT '{}'::uuid[])
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_planned uuid[];
  v_deals integer[];
begin
  v_c := private.begin_command('close_round', p_orchard, p_command, p_person, 'manager',
    jsonb_build_object('round', p_round, 'call_off', coalesce(p_call_off, '{}')));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.round_or_fail(p_orchard, p_round);
  if (private.open_shift(p_orchard)).round_id = p_round then return private.refuse(v_c, private.code('shift_open')); end if;
  -- People were told to come: whoever closes the round says of each planned shift that it is called off.
  v_planned := private.planned_in(p_round);
  if not v_planned <@ coalesce(p_call_off, '{}') then
    return private.refuse(v_c, private.code('shifts_planned', jsonb_build_object('shifts', v_planned)));
  end if;

  update public.shifts set state = 'cancelled' where id = any (v_planned);
  update public.rounds set closed_at = coalesce(closed_at, v_c.at) where id = p_round;
  select array_agg(tree_no) into v_deals from public.deals where round_id = p_round and ended_at is null;
  return private.accept(v_c, 'round_closed', private.filled(jsonb_build_object(
    'round', p_round, 'calledOff', to_jsonb(v_planned), 'dealsEnded', private.end_deals(p_orchard, v_deals, v_c.at))));
end $function$;
comment on function close_round(uuid,uuid,uuid,uuid,uuid[]) is 'p_call_off: the planned shifts of this round, all of them; they are called off with it.';
grant execute on function close_round(uuid,uuid,uuid,uuid,uuid[]) to authenticated;

CREATE OR REPLACE FUNCTION public.close_shift(p_orchard uuid, p_command uuid, p_person uuid, p_why jsonb DEFAULT '{}'::jsonb, p_not_found uuid[] DEFAULT '{}'::uuid[])
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_shift public.shifts;
  v_why jsonb := coalesce(p_why, '{}');
  v_left jsonb;
  v_refused jsonb;
  v_body jsonb;
  v_not_found uuid[];
begin
  v_c := private.begin_command('close_shift', p_orchard, p_command, p_person, 'lead',
    jsonb_build_object('why', v_why, 'not_found', coalesce(p_not_found, '{}')));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(private.are_whys(v_why), 'p_why: {people, claims, tools}, each {id: up to 300 characters}.');
  v_shift := private.open_shift(p_orchard);
  if v_shift.id is null then return private.refuse(v_c, private.code('shift_not_open')); end if;
  v_left := private.left_open(v_shift);
  v_refused := private.left_without_why(v_left, v_why);
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  v_body := jsonb_build_object('shift', v_shift.id, 'left', v_left -> 'people')
    || private.put_down_all(v_c, (select array_agg(x::uuid) from jsonb_array_elements_text(v_left -> 'claims') x), 'shift_closed', v_why -> 'claims')
    || jsonb_build_object(
      'returned', private.return_tools(v_c, (select array_agg(x::integer) from jsonb_array_elements_text(v_left -> 'tools') x), v_why -> 'tools'),
      'dealsEnded', private.end_deals(p_orchard, (
        select array_agg(tree_no) from public.deals where orchard_id = p_orchard and ended_at is null), v_c.at),
      'callsEnded', private.end_calls(v_c, (select array_agg(id) from public.calls where shift_id = v_shift.id and ended_at is null)));
  perform private.sign_out(v_c, id, v_c.at, v_why -> 'people' ->> person_id::text)
  from public.attendances where shift_id = v_shift.id and left_at is null;
  update public.attendances set not_found = true
  where shift_id = v_shift.id and left_at = v_c.at and person_id = any (p_not_found) and v_left -> 'people' ? person_id::text;
  select array_agg(distinct person_id) into v_not_found from public.attendances where shift_id = v_shift.id and not_found;
  -- Also a link that was made when no shift was open: it would let in at once on any other day.
  update public.invites set ended_at = v_c.at
  where orchard_id = p_orchard and kind = 'join' and coalesce(shift_id, v_shift.id) = v_shift.id and ended_at is null;
  update public.shifts set state = 'closed', closed_at = v_c.at where id = v_shift.id;
  return private.accept(v_c, 'shift_closed', private.filled(v_body),
    case when v_not_found is not null then jsonb_build_object('notFound', v_not_found) end);
end $function$;
comment on function close_shift(uuid,uuid,uuid,jsonb,uuid[]) is 'p_not_found: of those who are not signed out, whom nobody found. They stay on the leads'' list until found_person.';
grant execute on function close_shift(uuid,uuid,uuid,jsonb,uuid[]) to authenticated;

CREATE OR REPLACE FUNCTION public.close_watch(p_orchard uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_today date := private.today(p_orchard);
  v_round uuid;
begin
  perform private.begin_read(p_orchard, null, 'lead');
  v_round := (private.work_round(p_orchard)).id;
  return jsonb_build_object(
    'worked', (
      select coalesce(jsonb_object_agg(person_id, days), '{}')
      from (
        select a.person_id, count(distinct s.on_date) as days
        from public.attendances a join public.shifts s on s.id = a.shift_id
        where a.orchard_id = p_orchard and s.round_id = v_round and s.state = 'closed' and s.on_date < v_today
        group by a.person_id) them),
    'highs', (
      select coalesce(jsonb_agg(jsonb_build_array(day, high) order by day), '[]')
      from (
        select (r.measured_at at time zone o.time_zone)::date as day, max(r.temperature_c) as high
        from public.weather_readings r join public.orchards o on o.id = r.orchard_id
        where r.orchard_id = p_orchard and r.measured_at > now() - interval '7 days' and r.temperature_c is not null
        group by 1) days
      where day between v_today - 5 and v_today));
end $function$;
comment on function close_watch(uuid) is 'For leads. worked: on how many days before today each person was here in the round that is worked in; nobody is named whose first day it is. highs: [[date, °C]], the highest written down today and on each of the five days before.';
grant execute on function close_watch(uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.confirm_flag(p_orchard uuid, p_command uuid, p_person uuid, p_flag uuid, p_sign text, p_severity text, p_part text DEFAULT NULL::text, p_note text DEFAULT NULL::text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_flag public.flags;
begin
  v_c := private.begin_command('confirm_flag', p_orchard, p_command, p_person, 'lead', jsonb_build_object(
    'flag', p_flag, 'sign', p_sign, 'severity', p_severity, 'part', p_part, 'note', p_note));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(coalesce(p_sign, '') ~ '^[a-z_]{1,40}$', 'p_sign: what is seen.');
  perform private.need(coalesce(p_severity, '') in ('low', 'high', 'danger_now'), 'p_severity: low, high or danger_now.');
  perform private.need(p_part is null or char_length(p_part) <= 40, 'p_part: up to 40 characters.');
  perform private.need(p_note is null or char_length(p_note) <= 500, 'p_note: up to 500 characters.');
  v_flag := private.flag_or_fail(p_orchard, p_flag);
  perform private.need(v_flag.kind = 'disease', 'p_flag: only a disease is confirmed.');
  if v_flag.ended_at is not null then return private.refuse(v_c, private.code('flag_over')); end if;

  update public.flags
  set state = 'confirmed', confirmed_by = v_c.by_person_id, sign = p_sign, severity = p_severity, part = coalesce(p_part, part)
  where id = p_flag;
  return private.accept(v_c, 'flag_confirmed',
    jsonb_build_object('flag', p_flag, 'sign', p_sign, 'severity', p_severity),
    jsonb_build_object('notes', private.note_on_flag(v_c, p_flag, p_note)));
end $function$;
comment on function confirm_flag(uuid,uuid,uuid,uuid,text,text,text,text) is 'What the lead saw replaces what was reported. Again: a correction.';
grant execute on function confirm_flag(uuid,uuid,uuid,uuid,text,text,text,text) to authenticated;

CREATE OR REPLACE FUNCTION public.create_orchard(p_code text, p_command uuid, p_name text, p_person_name text, p_time_zone text, p_language text, p_units text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_hash text := private.begin_code(p_code, p_command);
  v_code public.setup_codes;
begin
  select * into v_code from public.setup_codes where code_hash = v_hash for update;
  if not found then return private.wrong_code(); end if;
  v_c := ('create_orchard', p_command, p_command, p_command, p_command, true,
    jsonb_build_object('user', auth.uid(), 'code', v_hash), clock_timestamp(), null);
  v_c.answer := private.seen_before(v_c);
  if v_c.answer is not null then return v_c.answer; end if;

  -- Not stored either: what is used or over stays so.
  if v_code.used_at is not null then return jsonb_build_object('refused', private.code('code_used')); end if;
  if v_code.expires_at < v_c.at then return jsonb_build_object('refused', private.code('code_expired')); end if;
  perform private.need(private.is_line(p_name, 80), 'p_name: up to 80 characters.');
  perform private.need(private.is_line(p_person_name, 60), 'p_person_name: up to 60 characters.');
  perform private.need(private.is_time_zone(p_time_zone), 'p_time_zone: an IANA name such as Europe/Madrid.');
  perform private.need(p_language in ('en', 'es'), 'p_language: en or es.');
  perform private.need(p_units in ('metric', 'us'), 'p_units: metric or us.');

  insert into public.orchards (id, name, time_zone, language, units, created_at)
  values (p_command, btrim(p_name), p_time_zone, p_language, p_units, v_c.at);
  insert into public.orchard_heads (orchard_id) values (p_command);
  insert into public.people (id, orchard_id, name, role, added_at, admitted_at)
  values (p_command, p_command, btrim(p_person_name), 'manager', v_c.at, v_c.at);
  perform private.link_login(v_c);
  update public.setup_codes set used_at = v_c.at where code_hash = v_hash;
  return private.accept(v_c, 'orchard_created', '{}', null, false,
    jsonb_build_object('orchard', p_command, 'person', p_command));
end $function$;
comment on function create_orchard(text,uuid,text,text,text,text,text) is 'The command''s id becomes the id of the orchard and of its first manager.';
grant execute on function create_orchard(text,uuid,text,text,text,text,text) to authenticated;

CREATE OR REPLACE FUNCTION public.deal_trees(p_orchard uuid, p_command uuid, p_person uuid, p_trees integer[], p_to uuid[])
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_round public.rounds;
  v_refused jsonb;
begin
  v_c := private.begin_command('deal_trees', p_orchard, p_command, p_person, 'lead',
    jsonb_build_object('trees', p_trees, 'to', p_to));
  if v_c.answer is not null then return v_c.answer; end if;
  if coalesce(cardinality(p_trees), 0) not between 1 and 2000 or coalesce(cardinality(p_to), 0) not between 1 and 2
    or cardinality(p_trees) <> (select count(distinct x) from unnest(p_trees) x)
    or cardinality(p_to) <> (select count(distinct x) from unnest(p_to) x)
  then perform private.fail(400, 'malformed', 'Deal 1 to 2000 different trees to one or two different people.'); end if;
  if (select count(*) from public.people where orchard_id = p_orchard and id = any (p_to) and removed_at is null
      and role <> 'visitor') <> cardinality(p_to)
  then perform private.fail(404, 'no_such_person', 'One of these people is not in the orchard.'); end if;

  v_round := private.work_round(p_orchard);
  if v_round.id is null then return private.refuse(v_c, private.code('no_round')); end if;
  v_refused := private.cannot_be_dealt(p_orchard, v_round, p_trees);
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  perform private.end_deals(p_orchard, p_trees, v_c.at);
  insert into public.deals (orchard_id, round_id, tree_no, people, dealt_by, dealt_at)
  select p_orchard, v_round.id, t, p_to, v_c.by_person_id, v_c.at from unnest(p_trees) t;
  return private.accept(v_c, 'trees_dealt', jsonb_build_object('trees', p_trees, 'to', p_to));
end $function$;
grant execute on function deal_trees(uuid,uuid,uuid,integer[],uuid[]) to authenticated;

CREATE OR REPLACE FUNCTION public.direct_brush(p_orchard uuid, p_command uuid, p_person uuid, p_block integer, p_rows integer[], p_goes text DEFAULT NULL::text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_round public.rounds;
begin
  v_c := private.begin_command('direct_brush', p_orchard, p_command, p_person, 'lead',
    jsonb_build_object('block', p_block, 'rows', p_rows, 'goes', p_goes));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(cardinality(p_rows) between 1 and 500 and array_position(p_rows, null) is null
    and (p_goes is null or p_goes in ('burn', 'chip', 'bag', 'pile')), 'p_rows: 1 to 500 rows; p_goes: burn, chip, bag, pile or null.');
  perform private.row_or_fail(p_orchard, p_block, x) from unnest(p_rows) x;
  v_round := private.work_round(p_orchard);
  if v_round.id is null then return private.refuse(v_c, private.code('no_round')); end if;

  delete from public.brush_ways where round_id = v_round.id and block_no = p_block and row_no = any (p_rows);
  insert into public.brush_ways (orchard_id, round_id, block_no, row_no, goes, said_by, said_at)
  select p_orchard, v_round.id, p_block, x, p_goes, v_c.by_person_id, v_c.at
  from (select distinct unnest(p_rows) as x) rows where p_goes is not null;
  return private.accept(v_c, 'brush_directed', jsonb_build_object('block', p_block, 'rows', p_rows, 'goes', p_goes));
end $function$;
grant execute on function direct_brush(uuid,uuid,uuid,integer,integer[],text) to authenticated;

CREATE OR REPLACE FUNCTION public.emergency_card(p_orchard uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
begin
  perform private.begin_read(p_orchard);
  return (
    select jsonb_build_object('version', o.emergency_version, 'epoch', h.epoch, 'card', o.emergency)
    from public.orchards o join public.orchard_heads h on h.orchard_id = o.id
    where o.id = p_orchard
  );
end $function$;
comment on function emergency_card(uuid) is 'epoch: after a restore the same version may say something else.';
grant execute on function emergency_card(uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.end_break(p_orchard uuid, p_command uuid, p_person uuid, p_at timestamp with time zone DEFAULT NULL::timestamp with time zone)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_here public.attendances;
  v_break public.breaks;
begin
  v_c := private.begin_command('end_break', p_orchard, p_command, p_person, 'self', jsonb_build_object('at', p_at));
  if v_c.answer is not null then return v_c.answer; end if;
  if (private.open_shift(p_orchard)).id is null then return private.refuse(v_c, private.code('shift_not_open')); end if;
  v_here := private.attendance((private.open_shift(p_orchard)).id, p_person);
  if v_here.id is null then return private.refuse(v_c, private.code('not_arrived')); end if;
  select * into v_break from public.breaks where attendance_id = v_here.id and to_at is null;
  if not found then return private.refuse(v_c, private.code('not_on_break')); end if;

  update public.breaks set to_at = private.when_said(p_at, from_at, v_c.at) where id = v_break.id returning * into v_break;
  return private.accept(v_c, 'break_ended', jsonb_build_object('at', private.instant(v_break.to_at)));
end $function$;
grant execute on function end_break(uuid,uuid,uuid,timestamp with time zone) to authenticated;

CREATE OR REPLACE FUNCTION public.end_call(p_orchard uuid, p_command uuid, p_person uuid, p_call uuid, p_outcome text DEFAULT NULL::text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_call public.calls;
begin
  v_c := private.begin_command('end_call', p_orchard, p_command, p_person, 'self',
    jsonb_build_object('call', p_call, 'outcome', p_outcome));
  if v_c.answer is not null then return v_c.answer; end if;
  v_call := private.call_or_fail(p_orchard, p_call);
  if v_call.person_id <> p_person and not v_c.by_lead then return private.refuse(v_c, private.code('not_yours')); end if;

  perform private.end_calls(v_c, array[p_call]);
  -- What came of it may be told again, better.
  update public.calls set outcome = coalesce(left(nullif(btrim(p_outcome), ''), 300), outcome) where id = p_call;
  return private.tell_of_call(v_c, v_call, 'call_ended', jsonb_build_object('callsEnded', jsonb_build_array(p_call)));
end $function$;
grant execute on function end_call(uuid,uuid,uuid,uuid,text) to authenticated;

CREATE OR REPLACE FUNCTION public.end_claim(p_orchard uuid, p_command uuid, p_person uuid, p_claim uuid, p_how_reached text, p_share integer DEFAULT NULL::integer)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_claim public.claims;
  v_people uuid[];
  v_work jsonb;
begin
  v_c := private.begin_command('end_claim', p_orchard, p_command, p_person, 'lead',
    jsonb_build_object('claim', p_claim, 'how_reached', p_how_reached, 'share', p_share));
  if v_c.answer is not null then return v_c.answer; end if;
  if coalesce(char_length(p_how_reached), 0) not between 1 and 300 or p_share not between 1 and 99 then
    perform private.fail(400, 'malformed', 'Say how the person was reached, and how far the tree is.');
  end if;
  v_claim := private.claim_or_fail(p_orchard, p_claim);
  if v_claim.ended_at is not null then return private.refuse(v_c, private.code('claim_over')); end if;

  v_people := private.people_in(p_claim);
  perform private.end_claim(p_claim, v_c.at, 'ended_by_lead', p_how_reached);
  if p_share is not null and v_claim.tree_no is not null and v_claim.kind = 'prune' then
    v_work := private.set_work(p_orchard, v_claim.round_id, v_claim.tree_no, 'begun', p_share, null, v_c.at);
  end if;
  return private.accept(v_c, 'claim_ended', jsonb_build_object(
    'tree', v_claim.tree_no, 'claimsEnded', jsonb_build_array(p_claim), 'work', v_work,
    'dirty', private.soil_tools(p_orchard, v_claim.tree_no, v_people)));
end $function$;
grant execute on function end_claim(uuid,uuid,uuid,uuid,text,integer) to authenticated;

CREATE OR REPLACE FUNCTION public.end_exception(p_orchard uuid, p_command uuid, p_person uuid, p_what text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_shift public.shifts;
  v_before jsonb;
begin
  v_c := private.begin_command('end_exception', p_orchard, p_command, p_person, 'lead', jsonb_build_object('what', p_what));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_what = 'dark' or private.is_species(p_what), 'p_what: a species, or dark.');
  v_shift := private.open_shift(p_orchard);
  if v_shift.id is null then return private.refuse(v_c, private.code('shift_not_open')); end if;

  v_before := private.claims_put_off(p_orchard, v_c.at);
  update public.weather_exceptions set ended_at = v_c.at, ended_by = v_c.by_person_id
  where shift_id = v_shift.id and what = p_what and ended_at is null;
  return private.accept(v_c, 'exception_ended', jsonb_build_object('what', p_what) || private.tell_to_leave(v_c, v_before));
end $function$;
grant execute on function end_exception(uuid,uuid,uuid,text) to authenticated;

CREATE OR REPLACE FUNCTION public.end_invite(p_orchard uuid, p_command uuid, p_person uuid, p_invite uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_invite public.invites;
begin
  v_c := private.begin_command('end_invite', p_orchard, p_command, p_person, 'lead', jsonb_build_object('invite', p_invite));
  if v_c.answer is not null then return v_c.answer; end if;
  select * into v_invite from public.invites where orchard_id = p_orchard and id = p_invite;
  if not found then perform private.fail(404, 'no_such_invite', 'There is no such link.'); end if;
  -- Else a lead could take a manager's way back in.
  if v_invite.made_by is distinct from v_c.by_person_id and not private.may_give(v_c.by_person_id, v_invite.role) then
    return private.refuse(v_c, private.code('not_yours_to_give'));
  end if;
  update public.invites set ended_at = coalesce(ended_at, v_c.at) where id = p_invite;
  return private.accept(v_c, 'invite_ended', null, jsonb_build_object('invite', p_invite));
end $function$;
grant execute on function end_invite(uuid,uuid,uuid,uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.end_login(p_orchard uuid, p_command uuid, p_person uuid, p_login uuid DEFAULT NULL::uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_subject public.people;
  v_login uuid;
  v_own boolean;
  v_answer jsonb;
begin
  v_c := private.begin_command('end_login', p_orchard, p_command, p_person, 'self', jsonb_build_object('login', p_login));
  if v_c.answer is not null then return v_c.answer; end if;
  v_subject := private.person_or_fail(p_orchard, p_person);
  select id into v_login from public.logins
  where person_id = p_person and ended_at is null and case when p_login is null then user_id = auth.uid() else id = p_login end;
  if not found then perform private.fail(404, 'no_such_login', 'There is no such login.'); end if;
  v_own := exists (select 1 from public.logins where person_id = p_person and user_id = auth.uid() and ended_at is null);
  if not v_own and not private.may_give(v_c.by_person_id, v_subject.role) then
    return private.refuse(v_c, private.code('not_yours_to_give'));
  end if;
  if private.is_last_manager(v_subject, v_login) then return private.refuse(v_c, private.code('last_manager')); end if;

  update public.logins set ended_at = v_c.at where id = v_login;
  v_answer := private.accept(v_c, 'login_ended', jsonb_build_object('channel', private.next_channel(p_orchard)));
  perform private.move_channel(p_orchard);
  return v_answer;
end $function$;
comment on function end_login(uuid,uuid,uuid,uuid) is 'p_login null: this phone''s own.';
grant execute on function end_login(uuid,uuid,uuid,uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.end_skill(p_orchard uuid, p_command uuid, p_person uuid, p_subject uuid, p_skill text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
begin
  v_c := private.begin_command('end_skill', p_orchard, p_command, p_subject, 'lead',
    jsonb_build_object('by', p_person, 'skill', p_skill));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_skill in ('hand_saw', 'ladder', 'prunes_alone'), 'p_skill: hand_saw, ladder or prunes_alone.');

  update public.skills set ended_at = v_c.at where person_id = p_subject and skill = p_skill and ended_at is null;
  return private.accept(v_c, 'skill_ended', null, jsonb_build_object('person', p_subject, 'skill', p_skill), true);
end $function$;
comment on function end_skill(uuid,uuid,uuid,uuid,text) is 'Also of one''s own: giving up a skill harms nobody.';
grant execute on function end_skill(uuid,uuid,uuid,uuid,text) to authenticated;

CREATE OR REPLACE FUNCTION public.enter_attendance(p_orchard uuid, p_command uuid, p_person uuid, p_arrived_at timestamp with time zone DEFAULT NULL::timestamp with time zone, p_breaks jsonb DEFAULT '[]'::jsonb, p_left_at timestamp with time zone DEFAULT NULL::timestamp with time zone)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_paper private.on_paper := (p_arrived_at, private.read_breaks(coalesce(p_breaks, '[]')), p_left_at);
  v_shift public.shifts;
  v_known public.attendances;
  v_refused jsonb;
  v_leaves boolean;
begin
  v_c := private.begin_command('enter_attendance', p_orchard, p_command, p_person, 'lead',
    jsonb_build_object('arrived_at', p_arrived_at, 'breaks', coalesce(p_breaks, '[]'), 'left_at', p_left_at));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(v_paper.breaks is not null and private.times_are_whole(v_paper)
    and coalesce(private.is_moment(p_arrived_at), true) and coalesce(private.is_moment(p_left_at), true),
    'Arrived, breaks [[from, to]] and left, one after the other.');
  v_shift := private.shift_at(p_orchard, p_person, coalesce(p_arrived_at, lower(v_paper.breaks[1]), p_left_at));
  v_known := private.attendance_on_paper(v_shift, p_person, v_paper);
  v_refused := private.times_cannot_be(v_shift, v_known, v_paper, p_person, v_c.at);
  v_leaves := p_left_at is not null and p_arrived_at is null and v_known.left_at is null;
  -- Who is still in the count leaves it as anybody does.
  if v_leaves then v_refused := v_refused || private.cannot_leave(p_orchard, p_person); end if;
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  if p_arrived_at is not null then
    insert into public.attendances (id, orchard_id, shift_id, person_id, arrived_at, arrived_by, left_at, left_by)
    values (p_command, p_orchard, v_shift.id, p_person, p_arrived_at, v_c.by_person_id, p_left_at,
      case when p_left_at is not null then v_c.by_person_id end)
    returning * into v_known;
  end if;
  insert into public.breaks (id, attendance_id, from_at, to_at)
  select gen_random_uuid(), v_known.id, lower(b), upper(b) from unnest(v_paper.breaks) b;
  if p_left_at is not null and p_arrived_at is null then perform private.sign_out(v_c, v_known.id, p_left_at); end if;
  return private.accept(v_c, 'attendance_entered', jsonb_build_object('attendance', private.attendance_told(v_known.id))
    || case when v_leaves then private.leaving(p_orchard, p_person, v_known.shift_id, v_c.at) else '{}'::jsonb end);
end $function$;
comment on function enter_attendance(uuid,uuid,uuid,timestamp with time zone,jsonb,timestamp with time zone) is 'From paper, by a lead: when p_person came, rested and went; each part may be left out where it is known.';
grant execute on function enter_attendance(uuid,uuid,uuid,timestamp with time zone,jsonb,timestamp with time zone) to authenticated;

CREATE OR REPLACE FUNCTION public.enter_work(p_orchard uuid, p_command uuid, p_person uuid, p_tree integer, p_at timestamp with time zone, p_begun_at timestamp with time zone DEFAULT NULL::timestamp with time zone, p_share integer DEFAULT NULL::integer, p_note text DEFAULT NULL::text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_tree public.trees;
  v_shift public.shifts;
  v_in private.coming_in;
  v_refused jsonb;
  v_result text := case when p_share is null then 'done' else 'begun' end;
  v_missing text[];
begin
  v_c := private.begin_command('enter_work', p_orchard, p_command, p_person, 'lead', jsonb_build_object(
    'tree', p_tree, 'at', p_at, 'begun_at', p_begun_at, 'share', p_share, 'note', p_note));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(private.is_moment(p_at) and coalesce(p_begun_at <= p_at, true) and coalesce(p_share between 1 and 99, true)
    and coalesce(char_length(p_note) <= 300, true), 'p_at, after p_begun_at; a share is 1 to 99 percent, a note has up to 300 characters.');
  v_tree := private.tree_or_fail(p_orchard, p_tree);
  v_shift := private.shift_at(p_orchard, p_person, p_at);
  v_refused := private.cannot_be_entered(v_tree, v_shift, p_person, v_result, p_at);
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  v_in := private.comes_in_on_paper(v_c, v_tree, v_shift, p_at, p_begun_at);
  v_missing := private.missing_on_paper(v_shift, p_person, p_at);
  return private.take_in_work(v_c, p_tree, v_in, v_result, p_share, p_note, p_at, null,
    jsonb_build_object('missing', case when v_missing <> '{}' then v_missing end));
end $function$;
comment on function enter_work(uuid,uuid,uuid,integer,timestamp with time zone,timestamp with time zone,integer,text) is 'From paper, by a lead: p_person finished this tree at p_at, or left it half done with a share.';
grant execute on function enter_work(uuid,uuid,uuid,integer,timestamp with time zone,timestamp with time zone,integer,text) to authenticated;

CREATE OR REPLACE FUNCTION public.events_after(p_orchard uuid, p_person uuid, p_epoch uuid, p_n bigint)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_reader private.reader := private.begin_read(p_orchard, p_person);
  v_head public.orchard_heads;
begin
  select * into v_head from public.orchard_heads where orchard_id = p_orchard;
  -- Another epoch, a number of the future, or so far behind that the snapshot is shorter.
  if (p_epoch = v_head.epoch and p_n between v_head.head - 5000 and v_head.head) is not true then
    return jsonb_build_object('reset', true);
  end if;
  if p_n = v_head.head then
    return jsonb_build_object('events', '[]'::jsonb, 'head', v_head.head);
  end if;

  return jsonb_build_object('head', v_head.head, 'events', (
    select jsonb_agg(private.event_told(e, v_reader) order by e.n)
    from (
      select * from public.events
      where orchard_id = p_orchard and n > p_n
      order by n limit 1000) e
  ));
end $function$;
comment on function events_after(uuid,uuid,uuid,bigint) is 'At most 1,000 at once; ask again while the last number is below head.';
grant execute on function events_after(uuid,uuid,uuid,bigint) to authenticated;

CREATE OR REPLACE FUNCTION public.fail_tool(p_orchard uuid, p_command uuid, p_person uuid, p_tool integer, p_failed_items text[], p_note text DEFAULT NULL::text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
begin
  v_c := private.begin_command('fail_tool', p_orchard, p_command, p_person, 'self',
    jsonb_build_object('tool', p_tool, 'failed_items', p_failed_items, 'note', p_note));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(private.are_codes(coalesce(p_failed_items, '{}'), 20), 'p_failed_items: a list of codes.');
  perform private.need(p_note is null or char_length(p_note) <= 300, 'p_note: up to 300 characters.');
  if (private.tool_in(p_orchard, p_tool)).no is null then return private.refuse(v_c, private.no_such_tool(array[p_tool])); end if;

  perform private.check_tool(v_c, p_tool, coalesce(p_failed_items, '{}'), false, p_note);
  return private.accept(v_c, 'tool_failed', jsonb_build_object('tool', p_tool));
end $function$;
grant execute on function fail_tool(uuid,uuid,uuid,integer,text[],text) to authenticated;

CREATE OR REPLACE FUNCTION public.finish_brush(p_orchard uuid, p_command uuid, p_person uuid, p_claim uuid, p_trees integer[])
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_claim public.claims;
  v_ended jsonb;
begin
  v_c := private.begin_command('finish_brush', p_orchard, p_command, p_person, 'self',
    jsonb_build_object('claim', p_claim, 'trees', p_trees));
  if v_c.answer is not null then return v_c.answer; end if;
  v_claim := private.claim_or_fail(p_orchard, p_claim);
  perform private.need(v_claim.tree_no is null and cardinality(p_trees) <= 1000 and not exists (
      select 1 from unnest(p_trees) x
      left join public.trees t on t.orchard_id = p_orchard and t.no = x and t.block_no = v_claim.block_no and t.row_no = v_claim.row_no
      where t.no is null), 'p_trees: trees of the row that was taken; [] when nothing was hauled.');
  if not exists (select 1 from public.claim_people where claim_id = p_claim and person_id = p_person and part <> 'learner') then
    return private.refuse(v_c, private.code('not_in_claim'));
  end if;

  -- What was hauled is hauled, also when somebody ended the claim meanwhile.
  if v_claim.ended_at is null and coalesce(private.part_in(p_claim, p_person), 'learner') <> 'learner' then
    perform private.end_claim(p_claim, v_c.at, case when p_trees = '{}' then 'released' else 'finished' end);
    v_ended := jsonb_build_array(p_claim);
  end if;
  return private.accept(v_c, 'brush_finished', jsonb_build_object(
    'claimsEnded', v_ended, 'hauled', private.haul(v_c, p_claim, v_claim.round_id, p_trees)));
end $function$;
grant execute on function finish_brush(uuid,uuid,uuid,uuid,integer[]) to authenticated;

CREATE OR REPLACE FUNCTION public.finish_tree(p_orchard uuid, p_command uuid, p_person uuid, p_tree integer, p_claim uuid DEFAULT NULL::uuid, p_begun_at timestamp with time zone DEFAULT NULL::timestamp with time zone, p_at timestamp with time zone DEFAULT NULL::timestamp with time zone, p_elapsed_s integer DEFAULT NULL::integer)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
begin
  v_c := private.begin_command('finish_tree', p_orchard, p_command, p_person, 'self', jsonb_build_object(
    'tree', p_tree, 'claim', p_claim, 'begun_at', p_begun_at, 'at', p_at, 'elapsed_s', p_elapsed_s));
  if v_c.answer is not null then return v_c.answer; end if;
  return private.bring_in_work(v_c, p_claim, p_tree, p_begun_at, 'done', null, null, p_at, p_elapsed_s);
end $function$;
grant execute on function finish_tree(uuid,uuid,uuid,integer,uuid,timestamp with time zone,timestamp with time zone,integer) to authenticated;

CREATE OR REPLACE FUNCTION public.flag_details(p_orchard uuid, p_flags uuid[])
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
begin
  perform private.begin_read(p_orchard, null, 'lead');
  return (
    select coalesce(jsonb_object_agg(f.id, jsonb_build_object(
      'part', f.part, 'note', f.note,
      'notes', (
        select coalesce(jsonb_agg(jsonb_build_object(
          'note', n.note, 'at', private.instant(n.at), 'personId', n.person_id) order by n.at), '[]')
        from public.flag_notes n where n.flag_id = f.id))), '{}')
    from public.flags f
    where f.orchard_id = p_orchard and f.id = any (p_flags)
  );
end $function$;
comment on function flag_details(uuid,uuid[]) is 'Photos are read by the ids in the snapshot.';
grant execute on function flag_details(uuid,uuid[]) to authenticated;

CREATE OR REPLACE FUNCTION public.flag_tree(p_orchard uuid, p_command uuid, p_person uuid, p_tree integer, p_kind text, p_sign text, p_severity text, p_part text DEFAULT NULL::text, p_note text DEFAULT NULL::text, p_keep_out_m numeric DEFAULT NULL::numeric, p_share integer DEFAULT NULL::integer, p_reasons jsonb DEFAULT NULL::jsonb, p_limb jsonb DEFAULT NULL::jsonb)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_keep_out_m numeric;
  v_state text := case p_kind when 'disease' then 'suspected' else 'open' end;
  v_body jsonb;
begin
  v_c := private.begin_command('flag_tree', p_orchard, p_command, p_person, 'self', jsonb_build_object(
    'tree', p_tree, 'kind', p_kind, 'sign', p_sign, 'severity', p_severity, 'part', p_part, 'note', p_note,
    'keep_out_m', p_keep_out_m, 'share', p_share, 'reasons', p_reasons, 'limb', p_limb));
  if v_c.answer is not null then return v_c.answer; end if;
  if coalesce(p_kind, '') not in ('disease', 'arborist') or coalesce(p_severity, '') not in ('low', 'high', 'danger_now')
    or coalesce(p_sign, '') !~ '^[a-z_]{1,40}$' or char_length(p_part) > 40 or char_length(p_note) > 500
    or p_keep_out_m not between 0 and 200 or p_share not between 1 and 99
  then perform private.fail(400, 'malformed', 'Name kind, sign and severity; a note has up to 500 characters.'); end if;
  perform private.need(p_reasons is null or (p_kind = 'arborist' and private.are_refer_reasons(p_reasons)),
    'p_reasons: of a hazard, up to 20 of {code, seen, value, limit}.');
  perform private.need(p_limb is null or (p_kind = 'arborist' and private.is_limb(p_limb)),
    'p_limb: of a hazard, {cm, bearingDeg}.');
  perform private.tree_or_fail(p_orchard, p_tree);

  if p_kind = 'arborist' then v_keep_out_m := coalesce(p_keep_out_m, private.house_rule(p_orchard, 'keep_out_m')); end if;
  insert into public.flags (
    id, orchard_id, tree_no, kind, state, sign, severity, part, note, keep_out_m, reasons, limb, raised_by, raised_at)
  values (p_command, p_orchard, p_tree, p_kind, v_state, p_sign, p_severity, p_part, p_note, v_keep_out_m,
    p_reasons, p_limb, p_person, v_c.at);
  v_body := jsonb_build_object('flag', p_command, 'tree', p_tree, 'kind', p_kind, 'state', v_state, 'sign', p_sign,
    'severity', p_severity, 'keepOutM', v_keep_out_m, 'reasons', p_reasons, 'limb', p_limb, 'raisedBy', p_person, 'raisedAt', private.instant(v_c.at));

  if p_kind = 'arborist' then
    v_body := v_body || private.close_off(v_c, p_command, p_share)
      || jsonb_build_object('dealsEnded', private.end_deals(p_orchard, array[p_tree], v_c.at));
  end if;
  return private.accept(v_c, 'flag_raised', v_body);
end $function$;
grant execute on function flag_tree(uuid,uuid,uuid,integer,text,text,text,text,text,numeric,integer,jsonb,jsonb) to authenticated;

CREATE OR REPLACE FUNCTION public.follow_up_flag(p_orchard uuid, p_command uuid, p_person uuid, p_flag uuid, p_note text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
begin
  v_c := private.begin_command('follow_up_flag', p_orchard, p_command, p_person, 'lead', jsonb_build_object('flag', p_flag, 'note', p_note));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(coalesce(char_length(btrim(p_note)), 0) between 1 and 500, 'p_note: 1 to 500 characters.');
  if (private.flag_or_fail(p_orchard, p_flag)).ended_at is not null then
    return private.refuse(v_c, private.code('flag_over'));
  end if;

  update public.flags set acted_at = v_c.at where id = p_flag;
  return private.accept(v_c, 'flag_followed_up', null,
    jsonb_build_object('flag', p_flag, 'notes', private.note_on_flag(v_c, p_flag, p_note)));
end $function$;
comment on function follow_up_flag(uuid,uuid,uuid,uuid,text) is 'Who was rung, when to look again, what was seen then.';
grant execute on function follow_up_flag(uuid,uuid,uuid,uuid,text) to authenticated;

CREATE OR REPLACE FUNCTION public.forget_person(p_orchard uuid, p_command uuid, p_person uuid, p_subject uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_subject public.people;
  v_refused jsonb;
  v_taken jsonb := '{}';
  v_answer jsonb;
begin
  v_c := private.begin_command('forget_person', p_orchard, p_command, p_person, 'manager', jsonb_build_object('subject', p_subject));
  if v_c.answer is not null then return v_c.answer; end if;
  v_subject := private.anybody_or_fail(p_orchard, p_subject);
  v_refused := private.in_the_way_of_forgetting(v_subject, v_c.by_person_id);
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  if v_subject.removed_at is null then
    v_taken := private.take_from(v_c, p_subject) || jsonb_build_object('channel', private.next_channel(p_orchard));
  end if;
  perform private.forget(v_subject, v_c.at);
  v_answer := private.accept(v_c, 'person_forgotten', private.filled(jsonb_build_object('person', p_subject) || v_taken));
  if v_subject.removed_at is null then perform private.move_channel(p_orchard); end if;
  return v_answer;
end $function$;
comment on function forget_person(uuid,uuid,uuid,uuid) is 'For good. Who is still in the orchard is removed first. Phones drop the name when they hear it.';
grant execute on function forget_person(uuid,uuid,uuid,uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.found_person(p_orchard uuid, p_command uuid, p_person uuid, p_subject uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
begin
  v_c := private.begin_command('found_person', p_orchard, p_command, p_person, 'lead', jsonb_build_object('subject', p_subject));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.person_or_fail(p_orchard, p_subject);
  perform private.set_found(v_c, p_subject);
  return private.accept(v_c, 'person_found', null, jsonb_build_object('person', p_subject));
end $function$;
comment on function found_person(uuid,uuid,uuid,uuid) is 'Somebody who was not found when a shift closed. Who arrives at a later shift is found, too.';
grant execute on function found_person(uuid,uuid,uuid,uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.give_briefing(p_orchard uuid, p_command uuid, p_person uuid, p_people uuid[])
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_shift public.shifts;
  v_version integer;
  v_refused jsonb := '[]';
  v_away uuid[];
begin
  v_c := private.begin_command('give_briefing', p_orchard, p_command, p_person, 'lead', jsonb_build_object('people', p_people));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(cardinality(p_people) between 1 and 500 and array_position(p_people, null) is null, 'p_people: 1 to 500 people.');
  perform private.person_or_fail(p_orchard, x) from unnest(p_people) x;
  v_shift := private.open_shift(p_orchard);
  if v_shift.id is null then return private.refuse(v_c, private.code('shift_not_open')); end if;
  v_version := private.latest_briefing(v_shift.id);
  if v_version is null then v_refused := v_refused || private.code('briefing_missing'); end if;
  select array_agg(x) into v_away from unnest(p_people) x where not private.is_here(v_shift.id, x);
  if v_away is not null then v_refused := v_refused || private.code('not_arrived', jsonb_build_object('people', v_away)); end if;
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  insert into public.briefings_given (orchard_id, shift_id, version, person_id, given_by, given_at)
  select p_orchard, v_shift.id, v_version, x, v_c.by_person_id, v_c.at from unnest(p_people) x
  on conflict do nothing;
  return private.accept(v_c, 'briefing_given', jsonb_build_object('version', v_version, 'people', p_people));
end $function$;
grant execute on function give_briefing(uuid,uuid,uuid,uuid[]) to authenticated;

CREATE OR REPLACE FUNCTION public.give_consent(p_orchard uuid, p_command uuid, p_person uuid, p_text_version integer, p_by uuid DEFAULT NULL::uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_person public.people;
  v_round public.rounds;
begin
  v_c := private.begin_command('give_consent', p_orchard, p_command, p_person, 'self',
    jsonb_build_object('by', p_by, 'text_version', p_text_version));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_text_version between 1 and 10000, 'p_text_version: the version that was read.');
  v_person := private.person_or_fail(p_orchard, p_person);
  perform private.need(v_person.age_band = 'minor' or p_by is null or p_by = p_person, 'An adult consents for nobody but themselves.');

  -- The guardian's own phone or a lead who sees the guardian agree; a child's phone alone proves nothing.
  if v_person.age_band = 'minor' and (p_by is null or p_by is distinct from v_person.guardian_id
    or not private.has_role(p_by, array['manager', 'lead', 'volunteer', 'visitor'])
    or not (v_c.by_lead or exists (
      select 1 from public.logins where person_id = p_by and user_id = auth.uid() and ended_at is null)))
  then return private.refuse(v_c, private.code('guardian_must_consent')); end if;
  if p_text_version <> private.house_rule(p_orchard, 'consent_version') then
    return private.refuse(v_c, private.code('consent_changed', jsonb_build_object('version', private.house_rule(p_orchard, 'consent_version'))));
  end if;
  v_round := private.work_round(p_orchard);
  if v_round.id is null then return private.refuse(v_c, private.code('no_round')); end if;

  insert into public.consents (id, orchard_id, person_id, by_person_id, season, text_version, given_at)
  values (p_command, p_orchard, p_person, coalesce(p_by, p_person), v_round.season, p_text_version, v_c.at);
  return private.accept(v_c, 'consent_given', null, jsonb_build_object('person', p_person, 'season', v_round.season), true);
end $function$;
grant execute on function give_consent(uuid,uuid,uuid,integer,uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.grant_skill(p_orchard uuid, p_command uuid, p_person uuid, p_subject uuid, p_skill text, p_until date DEFAULT NULL::date)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
begin
  -- Of the subject, so that their own phone hears it.
  v_c := private.begin_command('grant_skill', p_orchard, p_command, p_subject, 'lead',
    jsonb_build_object('by', p_person, 'skill', p_skill, 'until', p_until));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_skill in ('hand_saw', 'ladder', 'prunes_alone'), 'p_skill: hand_saw, ladder or prunes_alone.');
  perform private.need(p_until is null or private.is_day(p_until), 'p_until: a day, or null.');
  if v_c.by_person_id = p_subject or p_person = p_subject then return private.refuse(v_c, private.code('not_to_oneself')); end if;

  update public.skills set ended_at = v_c.at where person_id = p_subject and skill = p_skill and ended_at is null;
  insert into public.skills (id, orchard_id, person_id, skill, granted_by, granted_at, until)
  values (p_command, p_orchard, p_subject, p_skill, v_c.by_person_id, v_c.at, p_until);
  return private.accept(v_c, 'skill_granted', null,
    jsonb_build_object('person', p_subject, 'skill', p_skill, 'until', p_until), true);
end $function$;
grant execute on function grant_skill(uuid,uuid,uuid,uuid,text,date) to authenticated;

CREATE OR REPLACE FUNCTION public.hand_in(p_orchard uuid, p_command uuid, p_person uuid, p_work jsonb)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
begin
  if auth.uid() is null then perform private.fail(401, 'signed_out', 'Sign in first.'); end if;
  -- The login that was put out with the person, not one that was ended before.
  if p_command is null or not exists (
    select 1 from public.logins l join public.people p on p.id = l.person_id
    where l.user_id = auth.uid() and l.orchard_id = p_orchard and p.id = p_person
      and l.ended_at = p.removed_at and p.removed_at > now() - interval '48 hours'
  ) then perform private.fail(403, 'not_allowed', 'You cannot do this here.'); end if;
  if octet_length(p_work::text) > 200000 then perform private.fail(413, 'too_large', 'At most 200,000 bytes.'); end if;
  perform private.need(jsonb_typeof(p_work) = 'array', 'p_work: a list.');

  perform 1 from public.orchard_heads where orchard_id = p_orchard for no key update;
  v_c := ('hand_in', p_orchard, p_command, p_person, p_person, false,
    jsonb_build_object('person', p_person, 'work', private.sha256_of(p_work::text)), clock_timestamp(), null);
  v_c.answer := private.seen_before(v_c);
  if v_c.answer is not null then return v_c.answer; end if;
  if exists (select 1 from public.hand_ins where person_id = p_person) then
    return private.refuse(v_c, private.code('handed_in_before'));
  end if;

  insert into public.hand_ins (id, orchard_id, person_id, work, handed_in_at) values (p_command, p_orchard, p_person, p_work, v_c.at);
  return private.accept(v_c, 'handed_in', null, jsonb_build_object('person', p_person));
end $function$;
grant execute on function hand_in(uuid,uuid,uuid,jsonb) to authenticated;

CREATE OR REPLACE FUNCTION public.hand_over(p_orchard uuid, p_command uuid, p_person uuid, p_claim uuid, p_to uuid, p_how_reached text DEFAULT NULL::text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_claim public.claims;
  v_missing jsonb;
begin
  v_c := private.begin_command('hand_over', p_orchard, p_command, p_person, 'self',
    jsonb_build_object('claim', p_claim, 'to', p_to, 'how_reached', p_how_reached));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_how_reached is null or private.is_line(p_how_reached, 300), 'p_how_reached: up to 300 characters.');
  -- Whoever still stands in the tree must know that it is not theirs any more.
  perform private.need(p_how_reached is not null or v_c.by_person_id = p_person, 'Say how the holder was reached.');
  if p_to is null or p_to = p_person then perform private.fail(400, 'malformed', 'Hand over to somebody else.'); end if;
  v_claim := private.claim_or_fail(p_orchard, p_claim);
  if v_claim.ended_at is not null then return private.refuse(v_c, private.code('claim_over')); end if;
  if private.part_in(p_claim, p_person) is distinct from 'holder' then return private.refuse(v_c, private.code('not_holder')); end if;

  v_missing := private.missing_to_take_over(p_orchard, v_claim, p_to);
  if not v_c.by_lead then v_missing := private.told_of_taker(v_missing, p_to); end if;
  if v_missing <> '[]' then return private.refuse(v_c, v_missing); end if;

  update public.claim_people set to_at = v_c.at, how_reached = case when person_id = p_person then p_how_reached end
  where claim_id = p_claim and to_at is null and person_id in (p_person, p_to);
  insert into public.claim_people (orchard_id, claim_id, person_id, part, from_at) values (p_orchard, p_claim, p_to, 'holder', v_c.at);
  return private.accept(v_c, 'tree_handed_over', jsonb_build_object('claim', p_claim, 'to', p_to, 'from', p_person,
    'dirty', private.soil_tools(p_orchard, v_claim.tree_no, array[p_person])));
end $function$;
grant execute on function hand_over(uuid,uuid,uuid,uuid,uuid,text) to authenticated;

CREATE OR REPLACE FUNCTION public.heartbeat(p_orchard uuid, p_person uuid, p_head bigint)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_reader private.reader := private.begin_read(p_orchard, p_person);
begin
  update public.logins set heard_at = clock_timestamp(), heard_head = p_head
  where user_id = auth.uid() and person_id = v_reader.person_id and ended_at is null;

  return (
    select jsonb_build_object(
      'head', h.head, 'epoch', h.epoch, 'channelEpoch', h.channel_epoch,
      'minClient', o.min_client, 'now', private.instant(clock_timestamp()))
    from public.orchard_heads h join public.orchards o on o.id = h.orchard_id
    where h.orchard_id = p_orchard
  );
end $function$;
comment on function heartbeat(uuid,uuid,bigint) is 'No event and no broadcast: two hundred phones say it every minute.';
grant execute on function heartbeat(uuid,uuid,bigint) to authenticated;

CREATE OR REPLACE FUNCTION public.join_tree(p_orchard uuid, p_command uuid, p_person uuid, p_claim uuid, p_part text DEFAULT 'helper'::text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_claim public.claims;
  v_tree public.trees;
  v_missing jsonb;
begin
  v_c := private.begin_command('join_tree', p_orchard, p_command, p_person, 'self',
    jsonb_build_object('claim', p_claim, 'part', p_part));
  if v_c.answer is not null then return v_c.answer; end if;
  if p_part is null or p_part not in ('helper', 'learner') then
    perform private.fail(400, 'malformed', 'One joins as helper or learner.');
  end if;
  v_claim := private.claim_or_fail(p_orchard, p_claim);
  if v_claim.ended_at is not null then return private.refuse(v_c, private.code('claim_over')); end if;

  v_missing := private.missing_of_person(p_orchard, p_person, 'other', p_part);
  select * into v_tree from public.trees where orchard_id = p_orchard and no = v_claim.tree_no;
  v_missing := v_missing || private.closed_around_claim(v_claim, v_tree, private.open_shift(p_orchard));
  if private.is_minor(p_person) and (v_claim.ladder or v_tree.asks_saw or private.asks_ladder(v_tree)) then
    v_missing := v_missing || private.code('minor_ladder_saw');
  end if;
  if v_missing <> '[]' then return private.refuse(v_c, v_missing); end if;

  insert into public.claim_people (orchard_id, claim_id, person_id, part, from_at)
  values (p_orchard, p_claim, p_person, p_part, v_c.at);
  return private.accept(v_c, 'tree_joined', jsonb_build_object('claim', p_claim, 'person', p_person, 'part', p_part));
end $function$;
grant execute on function join_tree(uuid,uuid,uuid,uuid,text) to authenticated;

CREATE OR REPLACE FUNCTION public.leave(p_orchard uuid, p_command uuid, p_person uuid, p_at timestamp with time zone DEFAULT NULL::timestamp with time zone)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_here public.attendances;
  v_refused jsonb;
begin
  v_c := private.begin_command('leave', p_orchard, p_command, p_person, 'self', jsonb_build_object('at', p_at));
  if v_c.answer is not null then return v_c.answer; end if;
  if (private.open_shift(p_orchard)).id is null then return private.refuse(v_c, private.code('shift_not_open')); end if;
  v_here := private.attendance((private.open_shift(p_orchard)).id, p_person);
  if v_here.id is null then return private.refuse(v_c, private.code('not_arrived')); end if;
  v_refused := private.cannot_leave(p_orchard, p_person);
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  perform private.sign_out(v_c, v_here.id, private.when_said(p_at, v_here.arrived_at, v_c.at));
  return private.accept(v_c, 'person_left', private.leaving(p_orchard, p_person, v_here.shift_id, v_c.at));
end $function$;
grant execute on function leave(uuid,uuid,uuid,timestamp with time zone) to authenticated;

CREATE OR REPLACE FUNCTION public.leave_out_trees(p_orchard uuid, p_command uuid, p_person uuid, p_trees integer[], p_reason text DEFAULT NULL::text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_round uuid;
  v_refused jsonb;
  v_done jsonb;
  v_work jsonb;
begin
  v_c := private.begin_command('leave_out_trees', p_orchard, p_command, p_person, 'lead',
    jsonb_build_object('trees', p_trees, 'reason', p_reason));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_reason is null or private.is_line(p_reason, 300), 'p_reason: a line of up to 300 letters, or null.');
  perform private.trees_or_fail(p_orchard, p_trees);
  v_round := (private.work_round(p_orchard)).id;
  if v_round is null then return private.refuse(v_c, private.code('no_round')); end if;

  if p_reason is null then
    return private.accept(v_c, 'trees_left_out', jsonb_build_object('work', private.bring_back(v_round, p_trees, v_c.at)));
  end if;
  v_refused := private.in_use(p_orchard, p_trees);
  select jsonb_agg(tree_no order by tree_no) into v_done from public.tree_work
  where round_id = v_round and tree_no = any (p_trees) and state = 'done';
  if v_done is not null then v_refused := v_refused || private.code('trees_done', jsonb_build_object('trees', v_done)); end if;
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  delete from public.brush_hauled where round_id = v_round and tree_no = any (p_trees);
  insert into public.tree_work (orchard_id, round_id, tree_no, state, note, left_out_by, changed_at)
  select p_orchard, v_round, x, 'left_out', btrim(p_reason), v_c.by_person_id, v_c.at from unnest(p_trees) x
  on conflict (round_id, tree_no) do update
    set state = 'left_out', share = null, note = excluded.note, left_out_by = excluded.left_out_by, changed_at = excluded.changed_at;
  select jsonb_agg(jsonb_build_array(x, 'left_out', null) order by x) into v_work from unnest(p_trees) x;
  return private.accept(v_c, 'trees_left_out', jsonb_build_object('work', v_work));
end $function$;
grant execute on function leave_out_trees(uuid,uuid,uuid,integer[],text) to authenticated;

CREATE OR REPLACE FUNCTION public.leave_tree(p_orchard uuid, p_command uuid, p_person uuid, p_claim uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_claim public.claims;
  v_part text;
begin
  v_c := private.begin_command('leave_tree', p_orchard, p_command, p_person, 'self', jsonb_build_object('claim', p_claim));
  if v_c.answer is not null then return v_c.answer; end if;
  v_claim := private.claim_or_fail(p_orchard, p_claim);
  v_part := private.part_in(p_claim, p_person);
  if v_part is null then return private.refuse(v_c, private.code('not_in_claim')); end if;
  -- A tree is never left without a holder by accident: it is finished, left half done or handed over.
  if v_part = 'holder' then return private.refuse(v_c, private.code('holder_hands_over')); end if;

  update public.claim_people set to_at = v_c.at where claim_id = p_claim and person_id = p_person and to_at is null;
  return private.accept(v_c, 'tree_left', jsonb_build_object(
    'claimsLeft', jsonb_build_array(jsonb_build_array(p_claim, p_person)),
    'dirty', private.soil_tools(p_orchard, v_claim.tree_no, array[p_person])));
end $function$;
grant execute on function leave_tree(uuid,uuid,uuid,uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.look_at_invite(p_code text)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_invite public.invites;
begin
  if auth.uid() is null then perform private.fail(401, 'signed_out', 'Sign in first.'); end if;
  perform private.need(char_length(p_code) between 1 and 200, 'p_code is needed.');
  select * into v_invite from public.invites where code_hash = private.sha256_of(p_code);
  if not found then return null; end if;
  return (
    select jsonb_build_object('orchardName', o.name, 'language', o.language, 'kind', v_invite.kind, 'role', v_invite.role,
      'shiftDate', (select on_date from public.shifts where id = v_invite.shift_id), 'over', private.invite_lacks(v_invite))
    from public.orchards o where o.id = v_invite.orchard_id
  );
end $function$;
grant execute on function look_at_invite(text) to authenticated;

CREATE OR REPLACE FUNCTION public.look_over(p_orchard uuid, p_command uuid, p_person uuid, p_tree integer, p_result text, p_reason text DEFAULT NULL::text, p_note text DEFAULT NULL::text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_round public.rounds;
  v_tree public.trees;
  v_people uuid[];
  v_refused jsonb := '[]';
  v_body jsonb;
begin
  v_c := private.begin_command('look_over', p_orchard, p_command, p_person, 'lead',
    jsonb_build_object('tree', p_tree, 'result', p_result, 'reason', p_reason, 'note', p_note));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_result in ('passed', 'reopened'), 'p_result: passed or reopened.');
  perform private.need((p_result = 'reopened') = (p_reason is not null) and (p_reason is null or p_reason in ('stubs_left',
    'centre_closed', 'crossing_left', 'dead_left', 'too_much_shortened', 'torn_bark', 'wood_hanging', 'not_tidy')),
    'p_reason: a known reason to reopen, and none to pass.');
  perform private.need(p_note is null or (p_result = 'reopened' and private.is_line(p_note, 300)), 'p_note: up to 300 characters, to reopen.');
  v_tree := private.tree_or_fail(p_orchard, p_tree);

  v_round := private.work_round(p_orchard);
  if v_round.id is null then return private.refuse(v_c, private.code('no_round')); end if;
  if not exists (select 1 from public.tree_work where round_id = v_round.id and tree_no = p_tree and state = 'done') then
    v_refused := v_refused || private.code('tree_not_done', jsonb_build_object('tree', p_tree));
  end if;
  v_people := private.worked_on(p_orchard, v_round.id, p_tree);
  if array[p_person, v_c.by_person_id] && v_people then
    v_refused := v_refused || private.code('worked_on_it', jsonb_build_object('tree', p_tree));
  end if;
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  insert into public.looked_over (id, orchard_id, round_id, tree_no, by_person_id, result, reason, note, people, at)
  values (p_command, p_orchard, v_round.id, p_tree, v_c.by_person_id, p_result, p_reason, btrim(p_note), v_people, v_c.at);
  if p_result = 'reopened' then
    v_body := jsonb_build_object('tree', p_tree, 'work', private.set_work(p_orchard, v_round.id, p_tree, 'begun', null, null, v_c.at));
    v_body := v_body || jsonb_build_object('to', private.dealt_back(v_c, v_round, v_tree));
  end if;
  return private.accept(v_c, 'tree_looked_over', v_body,
    jsonb_build_object('tree', p_tree, 'result', p_result, 'reason', p_reason), p_own_people => v_people);
end $function$;
grant execute on function look_over(uuid,uuid,uuid,integer,text,text,text) to authenticated;

CREATE OR REPLACE FUNCTION public.make_exception(p_orchard uuid, p_command uuid, p_person uuid, p_what text, p_because text, p_note text DEFAULT NULL::text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_shift public.shifts;
  v_lifts text[];
  v_before jsonb;
begin
  v_c := private.begin_command('make_exception', p_orchard, p_command, p_person, 'lead',
    jsonb_build_object('what', p_what, 'because', p_because, 'note', p_note));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_what = 'dark' or private.is_species(p_what), 'p_what: a species, or dark.');
  perform private.need(private.is_because(p_what, p_because),
    'p_because: bark_is_dry, dead_wood_only, wounds_covered, young_tree, must_come_off or lead_judges; of the dark: lamps, day_here or lead_judges.');
  perform private.need(p_note is null or char_length(p_note) <= 300, 'p_note: up to 300 characters.');
  v_shift := private.open_shift(p_orchard);
  if v_shift.id is null then return private.refuse(v_c, private.code('shift_not_open')); end if;

  v_lifts := private.lifted_by(v_shift, p_what, p_because, v_c.at);
  if v_lifts = '{}' then
    return private.refuse(v_c, private.code('not_off', jsonb_build_object('species', p_what)));
  end if;

  -- An older one is replaced, and what it lifted goes on being lifted if that is still so: lamps, where it was said to be day, lift less.
  v_before := private.claims_put_off(p_orchard, v_c.at);
  update public.weather_exceptions set ended_at = v_c.at, ended_by = v_c.by_person_id
  where shift_id = v_shift.id and what = p_what and ended_at is null;
  insert into public.weather_exceptions (id, orchard_id, shift_id, what, lifts, because, note, made_by, made_at)
  values (p_command, p_orchard, v_shift.id, p_what, v_lifts, p_because, nullif(btrim(p_note), ''), v_c.by_person_id, v_c.at);
  return private.accept(v_c, 'exception_made',
    jsonb_build_object('what', p_what, 'lifts', v_lifts, 'because', p_because) || private.tell_to_leave(v_c, v_before));
end $function$;
comment on function make_exception(uuid,uuid,uuid,text,text,text) is 'Lifts the reasons that are in force now; one that comes later is not lifted.';
grant execute on function make_exception(uuid,uuid,uuid,text,text,text) to authenticated;

CREATE OR REPLACE FUNCTION public.make_invite(p_orchard uuid, p_command uuid, p_person uuid, p_kind text, p_code_hash text, p_role text DEFAULT NULL::text, p_shift uuid DEFAULT NULL::uuid, p_subject uuid DEFAULT NULL::uuid, p_hours integer DEFAULT NULL::integer)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_is_for_person boolean := p_kind in ('device', 'recovery');
  v_subject public.people;
  v_shift public.shifts;
  v_role text;
begin
  v_c := private.begin_command('make_invite', p_orchard, p_command,
    case when v_is_for_person then coalesce(p_subject, p_person) else p_person end,
    case p_kind when 'join' then 'lead' when 'role' then 'manager' when 'recovery' then 'manager' else 'self' end,
    jsonb_build_object('kind', p_kind, 'code', p_code_hash, 'role', p_role, 'shift', p_shift, 'hours', p_hours));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_kind in ('join', 'role', 'device', 'recovery'), 'p_kind: join, role, device or recovery.');
  perform private.need(p_code_hash ~ '^[0-9a-f]{64}$', 'p_code_hash: sha256 of the code, in hex.');
  perform private.need(not exists (select 1 from public.invites where code_hash = p_code_hash), 'p_code_hash: make a new code.');
  perform private.need(p_hours is null or p_hours between 1 and private.longest_hours(p_kind), 'p_hours: too few or too many.');
  perform private.need(p_kind <> 'role' or p_role in ('lead', 'manager'), 'p_role: lead or manager.');

  if v_is_for_person then
    v_subject := private.person_or_fail(p_orchard, v_c.person_id);
    v_role := case when private.is_lead_role(v_subject.role) then v_subject.role else 'volunteer' end;
    -- Else a lead could make a phone that is the manager's.
    if v_c.by_person_id <> v_subject.id and not private.may_give(v_c.by_person_id, v_subject.role) then
      return private.refuse(v_c, private.code('not_yours_to_give'));
    end if;
    perform private.need(p_kind = 'device' or v_subject.role = 'manager', 'Recovery codes are for managers.');
    -- One at a time: the new one takes the place of the one that was lost or seen.
    update public.invites set ended_at = v_c.at where person_id = v_subject.id and kind = p_kind and ended_at is null;
  else
    v_role := case p_kind when 'join' then 'volunteer' else p_role end;
    v_shift := private.open_shift(p_orchard);
    if p_shift is not null then v_shift := private.shift_or_fail(p_orchard, p_shift); end if;
    if private.shift_over(v_shift) is not null then return private.refuse(v_c, private.shift_over(v_shift)); end if;
  end if;

  perform private.make_invite(p_command, p_orchard, p_kind, v_role, p_code_hash,
    v_c.at + coalesce(p_hours, private.longest_hours(p_kind)) * interval '1 hour',
    case when p_kind = 'join' then v_shift.id end, v_subject.id, v_c.by_person_id);
  return private.accept(v_c, 'invite_made', null, jsonb_build_object('invite', p_command, 'kind', p_kind, 'role', v_role),
    false, jsonb_build_object('invite', p_command));
end $function$;
comment on function make_invite(uuid,uuid,uuid,text,text,text,uuid,uuid,integer) is 'A join link is for p_shift, else the open one, and ends with it. device and recovery are for p_subject, else p_person.';
grant execute on function make_invite(uuid,uuid,uuid,text,text,text,uuid,uuid,integer) to authenticated;

CREATE OR REPLACE FUNCTION public.mark_big_cuts(p_orchard uuid, p_command uuid, p_person uuid, p_tree integer, p_note text DEFAULT NULL::text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_round public.rounds;
begin
  v_c := private.begin_command('mark_big_cuts', p_orchard, p_command, p_person, 'self',
    jsonb_build_object('tree', p_tree, 'note', p_note));
  if v_c.answer is not null then return v_c.answer; end if;
  if char_length(p_note) > 300 then perform private.fail(400, 'malformed', 'A note has up to 300 characters.'); end if;
  if not exists (select 1 from public.trees where orchard_id = p_orchard and no = p_tree) then
    perform private.fail(404, 'no_such_tree', 'There is no tree with this number.');
  end if;

  v_round := private.work_round(p_orchard);
  if v_round.id is null then return private.refuse(v_c, private.code('no_round')); end if;
  if not v_c.by_lead and not private.has_skill(p_person, 'prunes_alone', private.today(p_orchard)) then
    return private.refuse(v_c, private.code('skill_missing', jsonb_build_object('skill', 'prunes_alone')));
  end if;

  update public.big_cut_marks set ended_at = v_c.at where round_id = v_round.id and tree_no = p_tree and ended_at is null;
  insert into public.big_cut_marks (id, orchard_id, round_id, tree_no, marked_by, note, marked_at)
  values (p_command, p_orchard, v_round.id, p_tree, p_person, p_note, v_c.at);
  return private.accept(v_c, 'big_cuts_marked', jsonb_build_object('tree', p_tree));
end $function$;
grant execute on function mark_big_cuts(uuid,uuid,uuid,integer,text) to authenticated;

CREATE OR REPLACE FUNCTION public.mark_brush(p_orchard uuid, p_command uuid, p_person uuid, p_trees integer[], p_hauled boolean)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_round public.rounds;
  v_lying jsonb;
begin
  v_c := private.begin_command('mark_brush', p_orchard, p_command, p_person, 'lead',
    jsonb_build_object('trees', p_trees, 'hauled', p_hauled));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(cardinality(p_trees) between 1 and 1000 and p_hauled is not null
    and array_position(p_trees, null) is null, 'p_trees: 1 to 1000 trees; p_hauled: true or false.');
  v_round := private.work_round(p_orchard);
  if v_round.id is null then return private.refuse(v_c, private.code('no_round')); end if;

  if p_hauled then
    return private.accept(v_c, 'brush_marked', jsonb_build_object('hauled', private.haul(v_c, null, v_round.id, p_trees)));
  end if;
  with lies as (
    delete from public.brush_hauled where round_id = v_round.id and tree_no = any (p_trees) returning tree_no
  )
  select jsonb_agg(tree_no order by tree_no) into v_lying from lies;
  return private.accept(v_c, 'brush_marked', jsonb_build_object('lying', v_lying));
end $function$;
comment on function mark_brush(uuid,uuid,uuid,integer[],boolean) is 'For people without a phone, and where somebody tapped wrong.';
grant execute on function mark_brush(uuid,uuid,uuid,integer[],boolean) to authenticated;

CREATE OR REPLACE FUNCTION public.mend_tool(p_orchard uuid, p_command uuid, p_person uuid, p_tool integer)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
begin
  v_c := private.begin_command('mend_tool', p_orchard, p_command, p_person, 'lead', jsonb_build_object('tool', p_tool));
  if v_c.answer is not null then return v_c.answer; end if;
  if (private.tool_in(p_orchard, p_tool)).no is null then return private.refuse(v_c, private.no_such_tool(array[p_tool])); end if;

  perform private.check_tool(v_c, p_tool, '{}', true);
  return private.accept(v_c, 'tool_mended', jsonb_build_object('tool', p_tool));
end $function$;
grant execute on function mend_tool(uuid,uuid,uuid,integer) to authenticated;

CREATE OR REPLACE FUNCTION public.move_tree(p_orchard uuid, p_command uuid, p_person uuid, p_tree integer, p_lat_e7 integer DEFAULT NULL::integer, p_lon_e7 integer DEFAULT NULL::integer)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_refused jsonb;
begin
  v_c := private.begin_command('move_tree', p_orchard, p_command, p_person, 'manager',
    jsonb_build_object('tree', p_tree, 'lat', p_lat_e7, 'lon', p_lon_e7));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.tree_or_fail(p_orchard, p_tree);
  perform private.need_position(p_lat_e7, p_lon_e7);
  -- Somebody finds it by the map, and a keep-out would move over people whom nobody told.
  v_refused := private.in_use(p_orchard, array[p_tree], array['arborist']);
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  update public.trees set lat_e7 = p_lat_e7, lon_e7 = p_lon_e7 where orchard_id = p_orchard and no = p_tree;
  return private.accept(v_c, 'tree_moved', jsonb_build_object('tree', p_tree, 'sheet', private.write_tree_sheet(p_orchard)));
end $function$;
grant execute on function move_tree(uuid,uuid,uuid,integer,integer,integer) to authenticated;

CREATE OR REPLACE FUNCTION public.my_flags(p_orchard uuid, p_person uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
begin
  perform private.begin_read(p_orchard, p_person);
  return (
    select coalesce(jsonb_agg(jsonb_build_object(
      'flag', f.id, 'tree', f.tree_no, 'kind', f.kind, 'sign', f.sign, 'state', f.state,
      'raisedAt', private.instant(f.raised_at), 'confirmedBy', f.confirmed_by,
      'endedAt', private.instant(f.ended_at), 'endedBy', f.ended_by,
      -- What an arborist wrote down is for the manager.
      'why', case f.state when 'withdrawn' then f.ended_note end,
      'doneOn', f.done_on) order by f.raised_at desc), '[]')
    from (
      select * from public.flags
      where orchard_id = p_orchard and raised_by = p_person
      order by raised_at desc limit 20) f
  );
end $function$;
comment on function my_flags(uuid,uuid) is 'What became of the last things this person reported.';
grant execute on function my_flags(uuid,uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.my_hours(p_orchard uuid, p_person uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
begin
  perform private.begin_read(p_orchard, p_person);
  return (
    select coalesce(jsonb_agg(jsonb_build_object('shift', s.id, 'season', r.season, 'date', s.on_date,
      'hereS', h.here_s, 'breakS', h.break_s) order by s.opened_at desc, s.id), '[]')
    from public.shifts s
    join public.rounds r on r.id = s.round_id
    join lateral private.hours_in(s, clock_timestamp()) h on h.person_id = p_person
    where s.orchard_id = p_orchard
      and exists (select 1 from public.attendances a where a.shift_id = s.id and a.person_id = p_person));
end $function$;
comment on function my_hours(uuid,uuid) is 'Everybody reads their own, and nobody else''s.';
grant execute on function my_hours(uuid,uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.my_orchards()
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
begin
  if auth.uid() is null then perform private.fail(401, 'signed_out', 'Sign in first.'); end if;
  return (
    select coalesce(jsonb_agg(jsonb_build_object(
      'orchard', o.id, 'name', o.name, 'language', o.language,
      'person', p.id, 'personName', p.name, 'role', p.role, 'admitted', p.admitted_at is not null)
      order by l.linked_at, p.id), '[]')
    from public.logins l
    join public.people p on p.id = l.person_id
    join public.orchards o on o.id = l.orchard_id
    where l.user_id = auth.uid() and l.ended_at is null and p.removed_at is null
  );
end $function$;
grant execute on function my_orchards() to authenticated;

CREATE OR REPLACE FUNCTION public.names(p_orchard uuid, p_people uuid[] DEFAULT NULL::uuid[])
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
begin
  perform private.begin_read(p_orchard);
  return (
    select coalesce(jsonb_object_agg(id, name), '{}')
    from public.people
    where orchard_id = p_orchard and name is not null
      and case when p_people is null then removed_at is null else id = any (p_people) end
  );
end $function$;
comment on function names(uuid,uuid[]) is 'Asked for by id, people who left have names too; forgotten people have none.';
grant execute on function names(uuid,uuid[]) to authenticated;

CREATE OR REPLACE FUNCTION public.notes_of_round(p_orchard uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_round uuid;
begin
  perform private.begin_read(p_orchard, null, 'lead');
  v_round := (private.work_round(p_orchard)).id;
  return (
    select coalesce(jsonb_agg(jsonb_build_array(tree_no, note) order by tree_no), '[]')
    from (
      select distinct on (tree_no) tree_no, note
      from (
        select tree_no, note, at from public.visits
        where orchard_id = p_orchard and round_id = v_round and result = 'begun' and undone_at is null
        union all
        select tree_no, note, raised_at from public.flags where orchard_id = p_orchard and ended_at is null
        union all
        select tree_no, note, marked_at from public.big_cut_marks
        where orchard_id = p_orchard and round_id = v_round and ended_at is null) notes
      where note is not null and note <> ''
      order by tree_no, at desc) latest
  );
end $function$;
comment on function notes_of_round(uuid) is 'For leads: [[tree, note]], the newest of each tree, of the same kinds as tree_notes.';
grant execute on function notes_of_round(uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.number_trees(p_orchard uuid, p_command uuid, p_person uuid, p_block integer, p_numbers jsonb)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_trees integer[];
  v_moves_rows boolean;
  v_refused jsonb;
  v_taken jsonb;
begin
  v_c := private.begin_command('number_trees', p_orchard, p_command, p_person, 'manager', jsonb_build_object(
    'block', p_block, 'sha256', private.sha256_of(p_numbers::text)));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.block_or_fail(p_orchard, p_block);
  perform private.need(jsonb_typeof(p_numbers) = 'array', 'p_numbers: a list of [tree, row, place].');
  perform private.need((select bool_and(no is not null and row_no is not null and place is not null)
    from private.numbers_said(p_numbers)), 'p_numbers: [tree, row, place], rows and places 1 to 9999.');
  select array_agg(no) into v_trees from private.numbers_said(p_numbers);
  perform private.trees_or_fail(p_orchard, v_trees);
  perform private.need(not exists (select 1 from public.trees where orchard_id = p_orchard and no = any (v_trees)
    and (block_no <> p_block or life = 'removed')), 'p_numbers: trees of this block that were not removed.');

  v_refused := private.in_use(p_orchard, v_trees);
  select jsonb_agg(distinct t.no order by t.no) into v_taken
  from (select n.no, coalesce(s.row_no, n.row_no) as row_no, coalesce(s.place, n.place) as place, s.no is not null as is_said,
      count(*) over (partition by coalesce(s.row_no, n.row_no), coalesce(s.place, n.place)) as alike
    from public.trees n left join private.numbers_said(p_numbers) s on s.no = n.no
    where n.orchard_id = p_orchard and n.block_no = p_block and n.life <> 'removed') t
  where t.alike > 1 and t.is_said;
  if v_taken is not null then v_refused := v_refused || private.code('places_taken', jsonb_build_object('trees', v_taken)); end if;
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  v_moves_rows := exists (select 1 from public.trees t join private.numbers_said(p_numbers) s on s.no = t.no
    where t.orchard_id = p_orchard and t.row_no <> s.row_no);
  -- Out of the way first: no two trees may ever share a place, not even while they exchange them.
  update public.trees set row_no = row_no + 100000 where orchard_id = p_orchard and no = any (v_trees);
  update public.trees t set row_no = s.row_no, place = s.place from private.numbers_said(p_numbers) s
  where t.orchard_id = p_orchard and t.no = s.no;
  return private.accept(v_c, 'trees_numbered', jsonb_build_object('block', p_block, 'sheet', private.write_tree_sheet(p_orchard),
    'rows', case when v_moves_rows then private.forget_brush_ways(p_orchard, p_block) end));
end $function$;
grant execute on function number_trees(uuid,uuid,uuid,integer,jsonb) to authenticated;

CREATE OR REPLACE FUNCTION public.open_round(p_orchard uuid, p_command uuid, p_person uuid, p_kind text, p_season integer, p_species text[], p_from date, p_to date)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
begin
  v_c := private.begin_command('open_round', p_orchard, p_command, p_person, 'manager', jsonb_build_object(
    'kind', p_kind, 'season', p_season, 'species', p_species, 'from', p_from, 'to', p_to));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_kind in ('winter', 'summer', 'after_harvest', 'training'),
    'p_kind: winter, summer, after_harvest or training.');
  perform private.need(p_season between 2000 and 2200, 'p_season: a year.');
  perform private.need(cardinality(p_species) between 1 and 30
    and (select bool_and(private.is_species(x) is true) from unnest(p_species) x), 'p_species: 1 to 30 known species.');
  perform private.need(private.is_day(p_from) and private.is_day(p_to) and p_from <= p_to, 'p_from and p_to: days in order.');

  insert into public.rounds (id, orchard_id, kind, season, species, from_on, to_on, opened_at)
  values (p_command, p_orchard, p_kind, p_season, p_species, p_from, p_to, v_c.at);
  return private.accept(v_c, 'round_opened', jsonb_build_object('round', p_command, 'kind', p_kind, 'season', p_season,
    'species', p_species, 'from', p_from, 'to', p_to), null, false, jsonb_build_object('round', p_command));
end $function$;
grant execute on function open_round(uuid,uuid,uuid,text,integer,text[],date,date) to authenticated;

CREATE OR REPLACE FUNCTION public.open_shift(p_orchard uuid, p_command uuid, p_person uuid, p_shift uuid, p_off jsonb DEFAULT '{}'::jsonb)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_shift public.shifts;
  v_off jsonb := coalesce(p_off, '{}');
  v_round public.rounds;
  v_refused jsonb := '[]';
begin
  v_c := private.begin_command('open_shift', p_orchard, p_command, p_person, 'lead',
    jsonb_build_object('shift', p_shift, 'off', v_off));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(private.are_offs(v_off), 'p_off: {species or "ladder": reason}.');
  v_shift := private.shift_or_fail(p_orchard, p_shift);
  if private.shift_over(v_shift) is not null then return private.refuse(v_c, private.shift_over(v_shift)); end if;

  if (private.open_shift(p_orchard)).id is not null then v_refused := v_refused || private.code('shift_open'); end if;
  v_round := private.round_or_fail(p_orchard, v_shift.round_id);
  if v_round.closed_at is not null then v_refused := v_refused || private.code('round_closed'); end if;
  if private.latest_briefing(p_shift) is null then v_refused := v_refused || private.code('briefing_missing'); end if;
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  -- Out of season is off, whatever the lead says; they make an exception, and say why.
  v_off := v_off || private.season_offs(p_orchard, v_round.species, v_shift.on_date);
  update public.shifts set state = 'open', opened_at = v_c.at where id = p_shift;
  insert into public.shift_offs (orchard_id, shift_id, what, reason, set_by, set_at)
  select p_orchard, p_shift, key, value, v_c.by_person_id, v_c.at from jsonb_each_text(v_off);
  return private.accept(v_c, 'shift_opened', jsonb_build_object('shift', p_shift, 'off', v_off));
end $function$;
grant execute on function open_shift(uuid,uuid,uuid,uuid,jsonb) to authenticated;

CREATE OR REPLACE FUNCTION public.people_who_left(p_orchard uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
begin
  perform private.begin_read(p_orchard, null, 'manager');
  return (
    select coalesce(jsonb_agg(jsonb_build_object('person', id, 'name', name, 'role', role,
      'addedAt', private.instant(added_at), 'removedAt', private.instant(removed_at)) order by removed_at desc, id), '[]')
    from (
      select * from public.people
      where orchard_id = p_orchard and removed_at is not null and forgotten_at is null
      order by removed_at desc limit 1000) gone);
end $function$;
comment on function people_who_left(uuid) is 'Removed and not forgotten: their names are still kept.';
grant execute on function people_who_left(uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.place_aerial(p_orchard uuid, p_command uuid, p_person uuid, p_points jsonb, p_opacity integer, p_jpeg text DEFAULT NULL::text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_jpeg bytea;
  v_version integer;
begin
  -- The picture itself is not kept with the answer, only what it hashes to.
  v_c := private.begin_command('place_aerial', p_orchard, p_command, p_person, 'manager', jsonb_build_object(
    'points', p_points, 'opacity', p_opacity, 'jpeg_sha256', encode(sha256(convert_to(coalesce(p_jpeg, ''), 'UTF8')), 'hex')));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_opacity between 10 and 100, 'p_opacity: 10 to 100.');
  perform private.need(private.are_aerial_points(p_points), 'p_points: three of [x, y, latE7, lonE7] that are not on one line.');
  if p_jpeg is null then
    select jpeg into v_jpeg from public.aerial_pictures where orchard_id = p_orchard;
    if v_jpeg is null then return private.refuse(v_c, private.code('no_picture')); end if;
  else
    -- 600,000 bytes are 800,000 characters of base64; line ends may come in between.
    if length(p_jpeg) > 830000 then return private.refuse(v_c, private.code('photo_too_large')); end if;
    v_jpeg := private.jpeg_or_fail(p_jpeg);
    if octet_length(v_jpeg) > 600000 then return private.refuse(v_c, private.code('photo_too_large')); end if;
    if not private.is_plain_jpeg(v_jpeg) then return private.refuse(v_c, private.code('photo_not_plain')); end if;
  end if;

  insert into public.aerial_pictures (orchard_id, jpeg, points, opacity, placed_by, placed_at)
  values (p_orchard, v_jpeg, p_points, p_opacity, p_person, v_c.at)
  on conflict (orchard_id) do update set jpeg = excluded.jpeg, points = excluded.points, opacity = excluded.opacity,
    placed_by = excluded.placed_by, placed_at = excluded.placed_at;
  update public.orchards set aerial_version = aerial_version + 1 where id = p_orchard returning aerial_version into v_version;
  return private.accept(v_c, 'orchard_changed', jsonb_build_object('aerialVersion', v_version));
end $function$;
comment on function place_aerial(uuid,uuid,uuid,jsonb,integer,text) is 'p_jpeg null: the picture that is there, placed anew.';
grant execute on function place_aerial(uuid,uuid,uuid,jsonb,integer,text) to authenticated;

CREATE OR REPLACE FUNCTION private.accept(p_c private.command, p_kind text, p_body jsonb, p_lead_body jsonb DEFAULT NULL::jsonb, p_own boolean DEFAULT false, p_result jsonb DEFAULT '{}'::jsonb, p_about uuid DEFAULT NULL::uuid, p_own_people uuid[] DEFAULT '{}'::uuid[])
 RETURNS jsonb
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
declare
  v_head public.orchard_heads;
  v_body jsonb := jsonb_strip_nulls(p_body);
  v_told private.command := p_c;
begin
  v_told.person_id := coalesce(p_about, p_c.person_id);
  update public.orchard_heads set head = head + 1 where orchard_id = p_c.orchard_id returning * into v_head;
  insert into public.events (orchard_id, n, at, command_id, person_id, by_person_id, kind, body, lead_body, own, own_people)
  values (p_c.orchard_id, v_head.head, p_c.at, p_c.command_id, v_told.person_id, p_c.by_person_id, p_kind,
          v_body, jsonb_strip_nulls(p_lead_body), p_own, p_own_people);
  perform realtime.send(
    private.event_heard(v_head.head, v_told, p_kind, v_body, p_lead_body is not null, p_own_people),
    'event', private.topic(p_c.orchard_id, v_head.channel_epoch), true);
  return private.store_answer(p_c, jsonb_build_object('n', v_head.head) || jsonb_strip_nulls(p_result));
end $function$;
comment on function private.accept(private.command,text,jsonb,jsonb,boolean,jsonb,uuid,uuid[]) is 'Steps 6 and 7. The answer is {"n": number of the event, …result}. p_about: the person concerned, where it is not the one whose work it is.';

CREATE OR REPLACE FUNCTION private.acting_or_fail(p_orchard uuid, p_person uuid, p_right text)
 RETURNS people
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
declare
  v_acting public.people := private.acting_person(p_orchard, p_person, p_right);
begin
  if v_acting.id is null then perform private.fail(403, 'not_allowed', 'You cannot do this here.'); end if;
  -- Whoever kept a link is no member yet: they would end claims by a flag, or stop everybody.
  if v_acting.admitted_at is null then perform private.fail(403, 'not_admitted', 'A lead has not let you in yet.'); end if;
  return v_acting;
end $function$;

CREATE OR REPLACE FUNCTION private.acting_person(p_orchard uuid, p_person uuid, p_right text)
 RETURNS people
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
declare
  v_acting public.people;
begin
  select p.* into v_acting
  from public.logins l
  join public.people p on p.id = l.person_id
  where l.user_id = auth.uid() and l.orchard_id = p_orchard
    and l.ended_at is null and p.removed_at is null
    and case p_right
      when 'self' then p.id = p_person or private.is_lead_role(p.role)
      when 'lead' then private.is_lead_role(p.role)
      when 'manager' then p.role = 'manager'
    end
  -- The person named, if this login is theirs; else the one with the most rights.
  order by (p.id = p_person) desc, (p.role = 'manager') desc, l.linked_at
  limit 1;
  return v_acting;
end $function$;
comment on function private.acting_person(uuid,uuid,text) is 'Who taps: the person of this login that has the right (self, lead or manager), or a null row.';

CREATE OR REPLACE FUNCTION private.after_restore()
 RETURNS void
 LANGUAGE sql
 SET search_path TO ''
AS $function$
  update public.orchard_heads set epoch = gen_random_uuid(), channel_epoch = channel_epoch + 1
$function$;
comment on function private.after_restore() is 'For the owner: numbers after this one may have been heard before with other contents, so phones start again and send again what they sent lately.';

CREATE OR REPLACE FUNCTION private.all_species_offs(p_shift shifts, p_species text, p_at timestamp with time zone)
 RETURNS text[]
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select coalesce(array_agg(distinct reason), '{}')
    from (
      select o.reason from public.shift_offs o where o.shift_id = p_shift.id and o.what = p_species
      union all select unnest(private.weather_offs(p_shift.orchard_id, p_species, p_at))) x);
end $function$;

CREATE OR REPLACE FUNCTION private.anybody_or_fail(p_orchard uuid, p_person uuid)
 RETURNS people
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_person public.people;
begin
  select * into v_person from public.people where orchard_id = p_orchard and id = p_person;
  if not found then perform private.fail(404, 'no_such_person', 'This person was never in the orchard.'); end if;
  return v_person;
end $function$;
comment on function private.anybody_or_fail(uuid,uuid) is 'Also of those who left.';

CREATE OR REPLACE FUNCTION private.archive_lacks(p_archive uuid, p_parts integer)
 RETURNS text
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return case
    when (select count(*) from public.archive_parts where archive = p_archive and part < p_parts) <> p_parts then 'archive_incomplete'
    when exists (
      select 1 from public.archive_parts p left join private.archive_tables() t on t.name = p.table_name
      where p.archive = p_archive and (t.name is null or not p.columns <@ t.columns)) then 'archive_newer'
  end;
end $function$;

CREATE OR REPLACE FUNCTION private.archive_tables()
 RETURNS TABLE(no integer, name text, columns text[], key text)
 LANGUAGE sql
 STABLE
 SET search_path TO ''
AS $function$
  with recursive ours as (
    select oid, relname::text as name from pg_catalog.pg_class
    where relnamespace = 'public'::regnamespace and relkind = 'r'
      -- Who may get in, and answers and sheets, which are made anew.
      and relname not in ('logins', 'invites', 'setup_codes', 'wrong_codes', 'command_answers', 'tree_sheets', 'archive_parts')
  ), below as (
    select oid, name, 0 as depth from ours
    union
    select o.oid, o.name, b.depth + 1
    from below b
    join pg_catalog.pg_constraint f on f.confrelid = b.oid and f.contype = 'f' and f.conrelid <> b.oid
    join ours o on o.oid = f.conrelid
  )
  select (row_number() over (order by max(b.depth), b.name collate "C"))::integer, b.name,
    (select array_agg(attname::text order by attnum) from pg_catalog.pg_attribute
      where attrelid = b.oid and attnum > 0 and not attisdropped and attgenerated = ''),
    (select string_agg(format('t.%I', a.attname), ', ' order by k.place)
      from pg_catalog.pg_index i
      cross join unnest(i.indkey) with ordinality k (attnum, place)
      join pg_catalog.pg_attribute a on a.attrelid = i.indrelid and a.attnum = k.attnum
      where i.indrelid = b.oid and i.indisprimary)
  from below b group by b.oid, b.name
$function$;
comment on function private.archive_tables() is 'What an archive holds, each table after those it refers to. A new table is in it unless it is left out here; key gives its rows an order.';

CREATE OR REPLACE FUNCTION private.archive_where(p_table text, p_columns text[])
 RETURNS text
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
begin
  return case
    when p_table = 'orchards' then 't.id = $1'
    when p_columns @> '{orchard_id}' then 't.orchard_id = $1'
    when p_columns @> '{attendance_id}' then 't.attendance_id in (select a.id from public.attendances a where a.orchard_id = $1)'
  end;
end $function$;
comment on function private.archive_where(text,text[]) is 'Which rows are of the orchard $1. Null for a table of which nobody said it: then there is no archive.';

CREATE OR REPLACE FUNCTION private.are_aerial_points(p_points jsonb)
 RETURNS boolean
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
declare
  v_n bigint[];
begin
  if jsonb_typeof(p_points) <> 'array' or jsonb_array_length(p_points) <> 3 then return false; end if;
  if exists (
    select 1 from jsonb_array_elements(p_points) point
    where case when jsonb_typeof(point) = 'array' then jsonb_array_length(point) else 0 end <> 4
      or exists (
        select 1 from jsonb_array_elements(case when jsonb_typeof(point) = 'array' then point else '[]' end) number
        where jsonb_typeof(number) <> 'number' or number #>> '{}' !~ '^-?[0-9]{1,10}$')) then return false; end if;
  select array_agg((number #>> '{}')::bigint order by p.at, n.at) into v_n
  from jsonb_array_elements(p_points) with ordinality p(point, at), jsonb_array_elements(p.point) with ordinality n(number, at);
  for v_i in 0..2 loop
    if v_n[4 * v_i + 1] not between 0 and 10000 or v_n[4 * v_i + 2] not between 0 and 10000
      or v_n[4 * v_i + 3] not between -900000000 and 900000000 or v_n[4 * v_i + 4] not between -1800000000 and 1800000000 then
      return false;
    end if;
  end loop;
  -- On one line they say nothing about what lies beside it: a twentieth of the picture must lie between them.
  return abs((v_n[5] - v_n[1]) * (v_n[10] - v_n[2]) - (v_n[9] - v_n[1]) * (v_n[6] - v_n[2])) >= 5000000
    and (v_n[7] - v_n[3]) * (v_n[12] - v_n[4]) <> (v_n[11] - v_n[3]) * (v_n[8] - v_n[4]);
end $function$;

CREATE OR REPLACE FUNCTION private.are_codes(p_codes text[], p_most integer)
 RETURNS boolean
 LANGUAGE sql
 IMMUTABLE
 SET search_path TO ''
AS $function$
  select cardinality(p_codes) <= p_most
    and not exists (select 1 from unnest(p_codes) x where x is null or x !~ '^[a-z][a-z0-9_]{0,39}$')
$function$;
comment on function private.are_codes(text[],integer) is 'A list of words of a program (species, items of a check), not of people. Null for null.';

CREATE OR REPLACE FUNCTION private.are_house_rules(p_rules jsonb)
 RETURNS boolean
 LANGUAGE sql
 IMMUTABLE
 SET search_path TO ''
AS $function$
  select jsonb_typeof(p_rules) = 'object' and not exists (
    select 1 from jsonb_each(case when jsonb_typeof(p_rules) = 'object' then p_rules else '{}' end)
    where not private.default_house_rules() ? key
      -- A case, since "and" promises no order and a word is no number.
      or case when jsonb_typeof(value) = 'number' then 
        value::numeric not between (private.house_rule_range(key))[1] and (private.house_rule_range(key))[2] else true end)
$function$;

CREATE OR REPLACE FUNCTION private.are_neighbours(p_a trees, p_b trees)
 RETURNS boolean
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return p_a.no <> p_b.no and (
    (p_a.block_no = p_b.block_no and abs(p_a.row_no - p_b.row_no) <= 1 and abs(p_a.place - p_b.place) <= 1)
    or coalesce(private.metres_apart(p_a, p_b) <= private.house_rule(p_a.orchard_id, 'overhead_apart_m'), false));
end $function$;
comment on function private.are_neighbours(trees,trees) is 'A cut limb of one can reach a person at the other.';

CREATE OR REPLACE FUNCTION private.are_offs(p_off jsonb)
 RETURNS boolean
 LANGUAGE sql
 IMMUTABLE
 SET search_path TO ''
AS $function$
  select jsonb_typeof(p_off) = 'object' and (
    select count(*) <= 40 and bool_and(coalesce(private.are_codes(array[key], 1)
      and (value #>> '{}') in ('season', 'rain', 'wet_wood', 'wind', 'thunder', 'heat', 'lead'), false)) is not false
    from jsonb_each(case when jsonb_typeof(p_off) = 'object' then p_off else '{}' end))
$function$;
comment on function private.are_offs(jsonb) is '{"cherry": "season", "ladder": "wind"}';

CREATE OR REPLACE FUNCTION private.are_refer_reasons(p_reasons jsonb)
 RETURNS boolean
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
begin
  if jsonb_typeof(p_reasons) is distinct from 'array' then return false; end if;
  return jsonb_array_length(p_reasons) <= 20 and not exists (
    select 1 from jsonb_array_elements(p_reasons) reason where not private.is_refer_reason(reason));
end $function$;

CREATE OR REPLACE FUNCTION private.are_topics(p_topics jsonb)
 RETURNS boolean
 LANGUAGE sql
 IMMUTABLE
 SET search_path TO ''
AS $function$
  select jsonb_typeof(p_topics) = 'array' and (
    select count(*) between 1 and 40 and bool_and(coalesce(
      jsonb_typeof(topic) = 'object' and private.are_codes(array[topic ->> 'code'], 1)
      and coalesce(jsonb_typeof(topic -> 'en') in ('string', 'null') and char_length(topic ->> 'en') <= 1000, true)
      and coalesce(jsonb_typeof(topic -> 'es') in ('string', 'null') and char_length(topic ->> 'es') <= 1000, true)
      and topic - array['code', 'en', 'es'] = '{}', false))
    from jsonb_array_elements(case when jsonb_typeof(p_topics) = 'array' then p_topics else '[]' end) topic)
$function$;

CREATE OR REPLACE FUNCTION private.are_whys(p_why jsonb)
 RETURNS boolean
 LANGUAGE sql
 IMMUTABLE
 SET search_path TO ''
AS $function$
  select jsonb_typeof(p_why) = 'object' and not exists (
    select 1 from jsonb_each(case when jsonb_typeof(p_why) = 'object' then p_why else '{}' end) list
    where list.key not in ('people', 'claims', 'tools') or jsonb_typeof(list.value) <> 'object'
      or exists (
        select 1 from jsonb_each(case when jsonb_typeof(list.value) = 'object' then list.value else '{}' end) why
        where jsonb_typeof(why.value) <> 'string' or private.is_line(why.value #>> '{}', 300) is not true))
$function$;
comment on function private.are_whys(jsonb) is '{"people": {id: why}, "claims": {id: why}, "tools": {no: why}}';

CREATE OR REPLACE FUNCTION private.asks_ladder(p_tree trees)
 RETURNS boolean
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return coalesce(p_tree.height_cm > private.house_rule(p_tree.orchard_id, 'ladder_from_cm'), false);
end $function$;
comment on function private.asks_ladder(trees) is 'Height unknown: feet on the ground, so it does not ask.';

CREATE OR REPLACE FUNCTION private.attendance(p_shift uuid, p_person uuid)
 RETURNS attendances
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select a from public.attendances a where a.shift_id = p_shift and a.person_id = p_person and a.left_at is null);
end $function$;

CREATE OR REPLACE FUNCTION private.attendance_on_paper(p_shift shifts, p_person uuid, p_paper private.on_paper)
 RETURNS attendances
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select a from public.attendances a
    where a.shift_id = p_shift.id and a.person_id = p_person
      and a.arrived_at <= coalesce(p_paper.arrived_at, lower(p_paper.breaks[1]), p_paper.left_at)
    order by a.arrived_at desc limit 1);
end $function$;

CREATE OR REPLACE FUNCTION private.attendance_told(p_attendance uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select jsonb_build_object('state', case when b.id is not null and b.to_at is null then 'break' else 'here' end,
      'since', private.instant(coalesce(b.to_at, b.from_at, a.arrived_at)), 'restedAt', private.instant(private.rested_at(a)))
    from public.attendances a
    join public.shifts s on s.id = a.shift_id and s.state = 'open'
    left join lateral (
      select id, from_at, to_at from public.breaks where attendance_id = a.id order by from_at desc, to_at is null desc limit 1) b on true
    where a.id = p_attendance and a.left_at is null);
end $function$;
comment on function private.attendance_told(uuid) is 'As the snapshot has it; null for who is not here now.';

CREATE OR REPLACE FUNCTION private.back_at_tree(p_claim claims, p_shift uuid)
 RETURNS TABLE(person_id uuid, part text)
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return query
    select cp.person_id, cp.part from public.claim_people cp
    where cp.claim_id = p_claim.id and cp.to_at = p_claim.ended_at
      and (cp.part = 'holder' or private.not_free(cp.person_id, p_shift) = '[]');
end $function$;

CREATE OR REPLACE FUNCTION private.begin_code(p_code text, p_command uuid)
 RETURNS text
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
declare
  v_wrong public.wrong_codes;
begin
  if auth.uid() is null then perform private.fail(401, 'signed_out', 'Sign in first.'); end if;
  perform private.need(p_command is not null and char_length(p_code) between 1 and 200, 'p_code and p_command are needed.');
  -- Locked, so that guesses sent at once are counted one after the other.
  select * into v_wrong from public.wrong_codes where user_id = auth.uid() for update;
  if v_wrong.count >= 10 and v_wrong.since > now() - interval '1 hour' then
    perform private.fail(429, 'too_many', 'Too many wrong codes. Try again in an hour.');
  end if;
  return private.sha256_of(p_code);
end $function$;
comment on function private.begin_code(text,uuid) is 'First step of a command of somebody who is nobody here yet. Gives the hash of the code.';

CREATE OR REPLACE FUNCTION private.begin_command(p_name text, p_orchard uuid, p_command uuid, p_person uuid, p_right text, p_args jsonb)
 RETURNS private.command
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_acting public.people;
  v_seen public.command_answers;
begin
  if auth.uid() is null then perform private.fail(401, 'signed_out', 'Sign in first.'); end if;
  if p_orchard is null or p_command is null or p_person is null then
    perform private.fail(400, 'malformed', 'p_orchard, p_command and p_person are needed.');
  end if;

  -- Before the lock only this, so that a stranger cannot hold it; rights after it, since they may go while one waits.
  if not exists (select 1 from public.logins where user_id = auth.uid() and orchard_id = p_orchard and ended_at is null)
  then perform private.fail(403, 'not_allowed', 'You cannot do this here.'); end if;
  perform 1 from public.orchard_heads where orchard_id = p_orchard for no key update;
  v_acting := private.acting_or_fail(p_orchard, p_person, p_right);

  v_c := (p_name, p_orchard, p_command, p_person, v_acting.id, private.is_lead_role(v_acting.role),
          jsonb_strip_nulls(p_args), clock_timestamp(), null);

  select * into v_seen from public.command_answers where orchard_id = p_orchard and command_id = p_command;
  if found then
    if v_seen.name <> p_name or v_seen.person_id <> p_person or v_seen.args_sha256 <> private.sha256_of(v_c.args::text) then
      perform private.fail(409, 'command_id_used', 'This command id was used for something else.');
    end if;
    v_c.answer := v_seen.answer;
    return v_c;
  end if;

  if not exists (select 1 from public.people where orchard_id = p_orchard and id = p_person and removed_at is null) then
    perform private.fail(404, 'no_such_person', 'This person is not in the orchard.');
  end if;
  return v_c;
end $function$;

CREATE OR REPLACE FUNCTION private.begin_read(p_orchard uuid, p_person uuid DEFAULT NULL::uuid, p_right text DEFAULT 'member'::text)
 RETURNS private.reader
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_user uuid := auth.uid();
  v_reader private.reader;
  v_admitted boolean;
begin
  if v_user is null then perform private.fail(401, 'signed_out', 'Sign in first.'); end if;

  select p.orchard_id, p.id, p.role, private.is_lead_role(p.role), array_agg(p.id) over (), p.admitted_at is not null
  into v_reader.orchard_id, v_reader.person_id, v_reader.role, v_reader.is_lead, v_reader.own, v_admitted
  from public.logins l
  join public.people p on p.id = l.person_id
  where l.user_id = v_user and l.orchard_id = p_orchard and l.ended_at is null and p.removed_at is null
  -- The person named; without one, whoever of this login may read most.
  order by (p.id = p_person) desc nulls last, (p.admitted_at is not null) desc, (p.role = 'manager') desc,
    private.is_lead_role(p.role) desc, l.linked_at
  limit 1;

  if v_reader.person_id is null
    or (p_person is not null and v_reader.person_id <> p_person)
    or (p_right = 'lead' and not v_reader.is_lead)
    or (p_right = 'manager' and v_reader.role <> 'manager')
  then perform private.fail(403, 'not_allowed', 'You cannot read this.'); end if;
  -- Told apart from not_allowed, so that a phone waits instead of putting itself out.
  if not v_admitted then perform private.fail(403, 'not_admitted', 'A lead has not let you in yet.'); end if;
  return v_reader;
end $function$;
comment on function private.begin_read(uuid,uuid,text) is 'The reader, or 401 or 403. p_person: that person''s own login; null: any member. p_right: member, lead or manager.';

CREATE OR REPLACE FUNCTION private.blank_what_is_over()
 RETURNS void
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
begin
  -- Whoever comes to a tree that is still flagged or marked needs what is written about it.
  update public.flags set note = null
  where ended_at is not null and note is not null and raised_by in (select id from public.people where forgotten_at is not null);
  update public.flags set ended_note = null
  where state = 'withdrawn' and ended_note is not null and ended_by in (select id from public.people where forgotten_at is not null);
  delete from public.flag_notes n using public.flags f
  where f.id = n.flag_id and f.ended_at is not null
    and n.person_id in (select id from public.people where forgotten_at is not null);
  update public.big_cut_marks m set note = null
  from public.rounds r
  where r.id = m.round_id and coalesce(m.ended_at, r.closed_at) is not null and m.note is not null
    and m.marked_by in (select id from public.people where forgotten_at is not null);
  update public.tree_work w set note = null
  from public.rounds r
  where r.id = w.round_id and r.closed_at is not null and w.note is not null
    and w.left_out_by in (select id from public.people where forgotten_at is not null);
  -- Their phone may still hand in what it had not sent.
  update public.hand_ins set work = '[]'
  where accepted_at is not null and work <> '[]' and person_id in (select id from public.people where forgotten_at is not null);
end $function$;
comment on function private.blank_what_is_over() is 'Also every ten minutes: notes of forgotten people on flags, marks and trees they left out go when those are over.';

CREATE OR REPLACE FUNCTION private.blank_words_of(p_subject people)
 RETURNS void
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
begin
  update public.attendances set left_why = null where person_id = p_subject.id and left_why is not null;
  update public.claims c set ended_note = null
  where ended_note is not null and exists (select 1 from public.claim_people cp where cp.claim_id = c.id and cp.person_id = p_subject.id);
  update public.claim_people set how_reached = null where person_id = p_subject.id and how_reached is not null;
  update public.tree_work w set note = null
  from public.visits v
  where v.person_id = p_subject.id and v.round_id = w.round_id and v.tree_no = w.tree_no and v.note = w.note;
  update public.visits set note = null where person_id = p_subject.id and note is not null;
  update public.looked_over set note = null where by_person_id = p_subject.id and note is not null;
  update public.tool_checks set note = null where checked_by = p_subject.id and note is not null;
  update public.stops set reason = null where called_by = p_subject.id and reason is not null;
  update public.calls set note = null, outcome = null where p_subject.id in (person_id, subject_id);
  update public.calls set outcome = null where ended_by = p_subject.id;
  update public.weather_exceptions set note = null where made_by = p_subject.id and note is not null;
  update public.hand_ins set work = '[]' where person_id = p_subject.id;
  -- An incident is kept by law longer than a name: only what tells who it was goes.
  update public.incidents i set note = null
  from public.calls c where c.id = i.call_id and p_subject.id in (c.person_id, c.subject_id);
  update public.incidents set note = replace(note, p_subject.name, '…')
  where orchard_id = p_subject.orchard_id and strpos(note, p_subject.name) > 0;
end $function$;
comment on function private.blank_words_of(people) is 'Before the name itself goes: it is looked for in incidents. Notes on flags and marks that stand are left to private.blank_what_is_over.';

CREATE OR REPLACE FUNCTION private.block_or_fail(p_orchard uuid, p_block integer)
 RETURNS blocks
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_block public.blocks;
begin
  select * into v_block from public.blocks where orchard_id = p_orchard and no = p_block;
  if not found then perform private.fail(404, 'no_such_block', 'There is no block with this number.'); end if;
  return v_block;
end $function$;

CREATE OR REPLACE FUNCTION private.block_rows(p_blocks jsonb)
 RETURNS TABLE(index integer, said jsonb, code text, name text, row_spacing_m numeric, tree_spacing_m numeric, bearing_deg numeric, first_lat_e7 integer, first_lon_e7 integer, tagged_end text)
 LANGUAGE sql
 IMMUTABLE
 SET search_path TO ''
AS $function$
  select (n - 1)::integer, r, private.line_in(r -> 'code', 4), private.line_in(r -> 'name', 60),
    private.number_in(r -> 'rowSpacingM', 0.5, 30), private.number_in(r -> 'treeSpacingM', 0.5, 30),
    private.number_in(r -> 'bearingDeg', 0, 359.99),
    private.whole_in(r -> 'firstLatE7', -900000000, 900000000), private.whole_in(r -> 'firstLonE7', -1800000000, 1800000000),
    coalesce(r ->> 'taggedEnd', 'low')
  from jsonb_array_elements(p_blocks) with ordinality as x (r, n)
$function$;

CREATE OR REPLACE FUNCTION private.bring_back(p_round uuid, p_trees integer[], p_at timestamp with time zone)
 RETURNS jsonb
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
declare
  v_back integer[];
begin
  select array_agg(tree_no) into v_back from public.tree_work
  where round_id = p_round and tree_no = any (p_trees) and state = 'left_out';
  -- Begun before it was left out: somebody has been in it, and whoever comes next should know.
  update public.tree_work w set state = 'begun', share = v.share, note = v.note, left_out_by = null, changed_at = p_at
  from (
    select distinct on (tree_no) tree_no, share, note from public.visits
    where round_id = p_round and tree_no = any (v_back) and undone_at is null and result = 'begun'
    order by tree_no, at desc) v
  where w.round_id = p_round and w.tree_no = v.tree_no;
  delete from public.tree_work where round_id = p_round and tree_no = any (v_back) and state = 'left_out';
  return (
    select jsonb_agg(jsonb_build_array(t, coalesce(w.state, 'unpruned'), w.share) order by t)
    from unnest(v_back) t left join public.tree_work w on w.round_id = p_round and w.tree_no = t);
end $function$;

CREATE OR REPLACE FUNCTION private.bring_in_handed(p_c private.command, p_hand_in hand_ins, p_shift shifts, p_item jsonb)
 RETURNS jsonb
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
declare
  v_tree public.trees;
  v_share integer := case when p_item #>> '{args,share}' ~ '^[1-9][0-9]?$' then (p_item #>> '{args,share}')::integer end;
  v_before public.tree_work;
  v_result text := case p_item ->> 'name' when 'finish_tree' then 'done' when 'release_tree' then 'begun' end;
begin
  if p_item #>> '{args,tree}' !~ '^[1-9][0-9]{0,8}$' or v_result is null or (v_result = 'begun' and v_share is null) then return null; end if;
  select * into v_tree from public.trees where orchard_id = p_c.orchard_id and no = (p_item #>> '{args,tree}')::integer;
  if not found then return null; end if;
  if not private.is_free_in(v_tree, p_shift.round_id) then v_result := 'also_worked'; end if;

  select * into v_before from public.tree_work where round_id = p_shift.round_id and tree_no = v_tree.no;
  insert into public.visits (id, orchard_id, round_id, shift_id, tree_no, person_id, result, share, at, before_state, before_share, came_in_late)
  values (gen_random_uuid(), p_c.orchard_id, p_shift.round_id, p_shift.id, v_tree.no, p_hand_in.person_id, v_result, v_share,
    p_hand_in.handed_in_at, coalesce(v_before.state, 'unpruned'), v_before.share, true);
  if v_result = 'also_worked' then return null; end if;
  return private.set_work(p_c.orchard_id, p_shift.round_id, v_tree.no, v_result,
    case when v_result = 'begun' then v_share end, null, p_c.at) -> 0;
end $function$;
comment on function private.bring_in_handed(private.command,hand_ins,shifts,jsonb) is 'One tree of what was handed in. It comes from a phone that is out, so everything in it is looked at. Gives its part of work, or null.';

CREATE OR REPLACE FUNCTION private.bring_in_work(p_c private.command, p_claim uuid, p_tree integer, p_begun_at timestamp with time zone, p_result text, p_share integer, p_note text, p_said_at timestamp with time zone, p_elapsed_s integer)
 RETURNS jsonb
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
declare
  v_tree public.trees := private.tree_or_fail(p_c.orchard_id, p_tree);
  v_in private.coming_in;
begin
  v_in := case when p_claim is not null then private.comes_in_by_claim(p_c, v_tree, p_claim)
    else private.comes_in_by_deal(p_c, v_tree, p_begun_at) end;
  if v_in.how is null then return private.refuse(p_c, private.code('shift_not_open')); end if;
  return private.take_in_work(p_c, p_tree, v_in, p_result, p_share, p_note, p_said_at, p_elapsed_s);
end $function$;

CREATE OR REPLACE FUNCTION private.brush_state(p_orchard uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_round uuid := (private.work_round(p_orchard)).id;
begin
  return jsonb_build_object(
    'hauled', (
      select coalesce(jsonb_agg(edge), '[]')
      from (select range_agg(int4range(tree_no, tree_no, '[]')) as ranges from public.brush_hauled where round_id = v_round) hauled,
      unnest(hauled.ranges) as run,
      lateral (values (lower(run)), (upper(run) - 1)) as edges (edge)),
    'brushGoes', (
      select coalesce(jsonb_object_agg(block_no || ':' || row_no, goes), '{}') from public.brush_ways where round_id = v_round));
end $function$;

CREATE OR REPLACE FUNCTION private.call_or_fail(p_orchard uuid, p_call uuid)
 RETURNS calls
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_call public.calls;
begin
  select * into v_call from public.calls where orchard_id = p_orchard and id = p_call;
  if not found then perform private.fail(404, 'no_such_call', 'There is no such call.'); end if;
  return v_call;
end $function$;

CREATE OR REPLACE FUNCTION private.call_told(p_call calls)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return jsonb_build_object('call', p_call.id, 'kind', p_call.kind, 'tree', p_call.tree_no, 'subject', p_call.subject_id,
    'calledBy', p_call.person_id, 'calledAt', private.instant(p_call.called_at),
    'answeredBy', p_call.answered_by, 'answeredAt', private.instant(p_call.answered_at));
end $function$;

CREATE OR REPLACE FUNCTION private.calls_state(p_reader private.reader)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return jsonb_build_object('calls', (
    select coalesce(jsonb_object_agg(c.id, private.call_told(c) - 'call'), '{}')
    from public.calls c
    where c.orchard_id = p_reader.orchard_id and c.ended_at is null
      and (p_reader.is_lead or c.kind = 'lost_person' or c.person_id = any (p_reader.own))));
end $function$;

CREATE OR REPLACE FUNCTION private.cannot_be_changed(p_orchard uuid, p_trees integer[], p_set jsonb)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_refused jsonb := '[]';
  v_species text;
  v_trees jsonb;
begin
  -- Nothing else closes a tree to work, or takes it away.
  if coalesce(p_set ->> 'life', 'standing') <> 'standing' then
    v_refused := private.in_use(p_orchard, p_trees,
      case when p_set ->> 'life' = 'dead' then '{}'::text[] else array['disease', 'arborist'] end);
  end if;
  if p_set ? 'cultivar' then
    select species into v_species from public.cultivars where orchard_id = p_orchard and no = (p_set ->> 'cultivar')::integer;
    select jsonb_agg(no order by no) into v_trees from public.trees
    where orchard_id = p_orchard and no = any (p_trees) and coalesce(p_set ->> 'species', species) <> v_species;
    if v_trees is not null then
      v_refused := v_refused || private.code('other_species', jsonb_build_object('species', v_species, 'trees', v_trees));
    end if;
  end if;
  -- Back on its place: somebody else may have been planted there.
  if coalesce(p_set ->> 'life', 'removed') <> 'removed' then
    select jsonb_agg(distinct t.no order by t.no) into v_trees from public.trees t
    join public.trees o on o.orchard_id = t.orchard_id and o.block_no = t.block_no and o.row_no = t.row_no and o.place = t.place
      and o.no <> t.no and (o.life <> 'removed' or o.no = any (p_trees))
    where t.orchard_id = p_orchard and t.no = any (p_trees) and t.life = 'removed';
    if v_trees is not null then v_refused := v_refused || private.code('places_taken', jsonb_build_object('trees', v_trees)); end if;
  end if;
  return v_refused;
end $function$;

CREATE OR REPLACE FUNCTION private.cannot_be_dealt(p_orchard uuid, p_round rounds, p_trees integer[])
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_tree public.trees;
  v_code text;
  v_refusals jsonb := '[]';
begin
  if (select count(*) from public.trees where orchard_id = p_orchard and no = any (p_trees)) <> cardinality(p_trees) then
    perform private.fail(404, 'no_such_tree', 'There is no tree with one of these numbers.');
  end if;
  for v_tree in select * from public.trees where orchard_id = p_orchard and no = any (p_trees) loop
    for v_code in
      select x ->> 'code' from jsonb_array_elements(private.closed_for_work(v_tree, p_round)) x
      union all select 'tree_in_progress' where private.held_by(p_orchard, v_tree.no) is not null
    loop
      v_refusals := v_refusals || jsonb_build_object('code', v_code, 'tree', v_tree.no);
    end loop;
  end loop;
  return private.trees_with(v_refusals);
end $function$;

CREATE OR REPLACE FUNCTION private.cannot_be_entered(p_tree trees, p_shift shifts, p_person uuid, p_result text, p_at timestamp with time zone)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_round public.rounds;
  v_refused jsonb := '[]';
begin
  if p_shift.id is null then return private.code('not_in_shift'); end if;
  select * into v_round from public.rounds where id = p_shift.round_id;
  if p_tree.life <> 'standing' then v_refused := v_refused || private.code('tree_not_standing'); end if;
  if not p_tree.species = any (v_round.species) then v_refused := v_refused || private.code('tree_not_in_round'); end if;
  -- The phone may have sent it meanwhile, or the sheet is entered a second time.
  if exists (
    select 1 from public.visits v
    where v.shift_id = p_shift.id and v.tree_no = p_tree.no and v.person_id = p_person and v.undone_at is null
      and ((v.result = 'done' and p_result = 'done') or (v.from_paper and v.at = p_at)))
  then v_refused := v_refused || private.code('already_entered', jsonb_build_object('tree', p_tree.no)); end if;
  return v_refused;
end $function$;

CREATE OR REPLACE FUNCTION private.cannot_go_back(p_c private.command, p_claim claims, p_shift shifts)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_tree public.trees := private.tree_or_fail(p_c.orchard_id, p_claim.tree_no);
  v_holder uuid;
  v_refused jsonb := private.missing_after_stop(p_c.orchard_id, p_shift, p_c.person_id)
    || private.weather_stops(p_c.orchard_id, p_c.at)
    || private.closed_around(v_tree, p_shift) || private.not_free(p_c.person_id, p_shift.id);
begin
  select person_id into v_holder from private.back_at_tree(p_claim, p_shift.id) where part = 'holder';
  if v_holder <> p_c.person_id and private.not_free(v_holder, p_shift.id) <> '[]' then
    v_refused := v_refused || private.code('helper_not_ready', jsonb_build_object('person', v_holder));
  end if;
  if p_claim.kind = 'prune' and (p_claim.ladder or v_tree.asks_saw)
    and (p_claim.buddy_id is null or private.missing_of_buddy(p_shift, v_holder, p_claim.buddy_id) <> '[]')
    and not exists (select 1 from private.back_at_tree(p_claim, p_shift.id) where part = 'helper')
  then v_refused := v_refused || private.code('two_people_needed'); end if;
  return v_refused;
end $function$;

CREATE OR REPLACE FUNCTION private.cannot_leave(p_orchard uuid, p_person uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_tools jsonb;
begin
  select jsonb_agg(tool_no order by tool_no) into v_tools
  from public.tool_holdings where orchard_id = p_orchard and person_id = p_person and returned_at is null;
  return private.holds_another(p_person)
    || case when v_tools is null then '[]'::jsonb else private.code('tools_out', jsonb_build_object('tools', v_tools)) end;
end $function$;

CREATE OR REPLACE FUNCTION private.cannot_take_back(p_c private.command, p_flag flags)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  if p_flag.raised_by <> p_c.person_id then return private.code('not_yours'); end if;
  if p_flag.state not in ('suspected', 'open') or p_flag.acted_at is not null
    or p_flag.raised_at < p_c.at - make_interval(mins => private.house_rule(p_c.orchard_id, 'withdraw_minutes')::integer)
  then return private.code('too_late_to_withdraw'); end if;
  return '[]';
end $function$;

CREATE OR REPLACE FUNCTION private.cannot_undo(p_c private.command, p_visit visits)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_shift public.shifts := private.open_shift(p_c.orchard_id);
  v_minutes integer := private.house_rule(p_c.orchard_id, 'undo_minutes');
  v_claim public.claims;
begin
  if p_visit.id is null or p_visit.claim_id is null or p_visit.person_id <> p_c.person_id or p_visit.result = 'also_worked'
    or p_visit.shift_id is distinct from v_shift.id
  then return private.code('nothing_to_undo'); end if;
  if private.held_by(p_c.orchard_id, p_visit.tree_no) is not null then
    return private.code('tree_held', jsonb_build_object('tree', p_visit.tree_no, 'person', private.held_by(p_c.orchard_id, p_visit.tree_no)));
  end if;
  select * into v_claim from public.claims where id = p_visit.claim_id;
  -- Since we heard of it: what the device's clock said decides nothing.
  if v_claim.ended_at < p_c.at - make_interval(mins => v_minutes)
    or exists (select 1 from public.flags f where f.orchard_id = p_c.orchard_id and f.tree_no = p_visit.tree_no
      and f.kind = 'arborist' and f.ended_at is null)
    or private.dealt_to(p_c.orchard_id, p_visit.tree_no) is not null
    or exists (select 1 from public.looked_over l where l.round_id = p_visit.round_id and l.tree_no = p_visit.tree_no and l.at > p_visit.at)
  then return private.code('too_late_to_undo'); end if;
  return private.cannot_go_back(p_c, v_claim, v_shift);
end $function$;

CREATE OR REPLACE FUNCTION private.change_trees(p_orchard uuid, p_changes jsonb)
 RETURNS integer
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
declare
  v_count integer;
begin
  update public.trees t set species = r.species, cultivar_no = c.no, size_class = r.size_class, planted_year = r.planted_year,
    height_cm = r.height_cm, trunk_cm = r.trunk_mm / 10.0, asks_saw = r.asks_saw, life = r.life, lat_e7 = r.lat_e7, lon_e7 = r.lon_e7
  from private.tree_rows(p_changes) r
  left join public.cultivars c on c.orchard_id = p_orchard and c.species = r.species and c.name = r.cultivar
  where t.orchard_id = p_orchard and t.no = private.whole_in(r.said -> 'tree', 1, 2147483647);
  get diagnostics v_count = row_count;
  return v_count;
end $function$;

CREATE OR REPLACE FUNCTION private.check_tool(p_c private.command, p_tool integer, p_failed_items text[], p_fit boolean, p_note text DEFAULT NULL::text)
 RETURNS void
 LANGUAGE sql
 SET search_path TO ''
AS $function$
  insert into public.tool_checks (orchard_id, tool_no, failed_items, note, checked_by, checked_at)
  values (p_c.orchard_id, p_tool, p_failed_items, p_note, p_c.by_person_id, p_c.at);
  update public.tools set state = case when p_fit then 'fit' else 'failed' end where orchard_id = p_c.orchard_id and no = p_tool
$function$;

CREATE OR REPLACE FUNCTION private.claim_facts(p_claim uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select jsonb_build_object(
      'claim', c.id, 'tree', c.tree_no,
      'row', private.row_of(c),
      'purpose', c.purpose, 'kind', c.kind, 'ladder', c.ladder, 'buddyId', c.buddy_id,
      'openedAt', private.instant(c.opened_at),
      'people', (select jsonb_object_agg(cp.person_id, cp.part) from public.claim_people cp
                 where cp.claim_id = c.id and cp.to_at is null))
    from public.claims c where c.id = p_claim);
end $function$;
comment on function private.claim_facts(uuid) is 'The claim as events and snapshots spell it, with its id.';

CREATE OR REPLACE FUNCTION private.claim_or_fail(p_orchard uuid, p_claim uuid)
 RETURNS claims
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_claim public.claims;
begin
  select * into v_claim from public.claims where orchard_id = p_orchard and id = p_claim;
  if not found then perform private.fail(404, 'no_such_claim', 'There is no such claim.'); end if;
  return v_claim;
end $function$;

CREATE OR REPLACE FUNCTION private.claims_put_off(p_orchard uuid, p_at timestamp with time zone)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_shift public.shifts := private.open_shift(p_orchard);
  v_stop text := private.weather_stops(p_orchard, p_at) -> 0 ->> 'code';
  v_ladders text := private.ladders_off_because(v_shift, p_at);
begin
  return (
    select coalesce(jsonb_object_agg(c.id, why), '{}')
    from public.claims c
    left join public.trees t on t.orchard_id = c.orchard_id and t.no = c.tree_no
    cross join lateral (select case
      when v_stop is not null then v_stop
      when c.kind <> 'prune' then null
      when c.ladder and v_ladders is not null then 'ladders_off'
      when private.species_offs(v_shift, t.species, p_at) <> '{}' then 'species_off' end as why) x
    where c.orchard_id = p_orchard and c.ended_at is null and why is not null);
end $function$;

CREATE OR REPLACE FUNCTION private.claims_within(p_flag flags)
 RETURNS uuid[]
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_hazard public.trees := private.tree_or_fail(p_flag.orchard_id, p_flag.tree_no);
begin
  return (
    select coalesce(array_agg(distinct near.id), '{}')
    from (
      select c.id, t from public.claims c
      join public.trees t on t.orchard_id = c.orchard_id and t.no = c.tree_no
      where c.orchard_id = p_flag.orchard_id and c.ended_at is null
      union all
      -- Brush: a row is inside as soon as one of its trees is.
      select c.id, t from public.claims c
      join public.trees t on t.orchard_id = c.orchard_id and t.block_no = c.block_no and t.row_no = c.row_no
      where c.orchard_id = p_flag.orchard_id and c.ended_at is null and c.tree_no is null) near
    where (near.t).no = v_hazard.no or private.metres_apart(near.t, v_hazard) <= p_flag.keep_out_m);
end $function$;

CREATE OR REPLACE FUNCTION private.clear_gap(p_gap trees)
 RETURNS void
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
begin
  if p_gap.no is null then return; end if;
  delete from public.trees where orchard_id = p_gap.orchard_id and no = p_gap.no;
exception when foreign_key_violation then
  update public.trees set life = 'removed' where orchard_id = p_gap.orchard_id and no = p_gap.no;
end $function$;
comment on function private.clear_gap(trees) is 'A new tree has a number of its own. A gap that once was a tree keeps its record as a removed one.';

CREATE OR REPLACE FUNCTION private.close_off(p_c private.command, p_flag uuid, p_share integer DEFAULT NULL::integer)
 RETURNS jsonb
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
declare
  v_flag public.flags := private.flag_or_fail(p_c.orchard_id, p_flag);
  v_claims uuid[] := private.claims_within(v_flag);
  v_inside jsonb := private.tell_to_come_out(p_c, p_flag, v_claims);
  v_own public.claims;
  v_own_ended jsonb := '{}';
  v_ended jsonb;
begin
  select c.* into v_own from public.claims c
  join public.claim_people cp on cp.claim_id = c.id and cp.person_id = p_c.person_id and cp.to_at is null
  where c.id = any (v_claims) and c.tree_no = v_flag.tree_no;
  if found then v_own_ended := private.filled(private.end_own_claim(p_c, v_own, p_share)); end if;

  -- Nobody said how far the others are: their trees count as begun, and somebody has to look.
  v_ended := private.put_down_all(p_c, array_remove(v_claims, v_own.id), 'flagged');
  return private.filled(v_inside || jsonb_build_object(
    'claimsEnded', coalesce(to_jsonb(v_own.id), '[]') || (v_ended -> 'claimsEnded'),
    'work', coalesce(v_own_ended -> 'work', '[]') || (v_ended -> 'work'),
    'dirty', coalesce(v_own_ended -> 'dirty', '[]') || (v_ended -> 'dirty')));
end $function$;
comment on function private.close_off(private.command,uuid,integer) is 'Ends the claims inside the keep-out of a flag and tells the people at them: {inside: {person: {tree, out}}} and the changes.';

CREATE OR REPLACE FUNCTION private.closed_around(p_tree trees, p_shift shifts)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_keep_out public.flags := private.keep_out_over(p_tree);
begin
  return private.stopped_in(p_tree.block_no, p_shift)
    || case when v_keep_out.id is null then '[]'::jsonb
       else private.code('inside_keep_out', jsonb_build_object('tree', v_keep_out.tree_no)) end;
end $function$;
comment on function private.closed_around(trees,shifts) is 'Why nobody more comes to a tree that is or was in hand: its block is stopped, or a hazard is near.';

CREATE OR REPLACE FUNCTION private.closed_around_claim(p_claim claims, p_tree trees, p_shift shifts)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  if p_claim.tree_no is null then return private.stopped_in(p_claim.block_no, p_shift); end if;
  return private.closed_around(p_tree, p_shift)
    || case when p_claim.kind = 'prune' then private.put_off(p_tree, p_shift, p_claim.ladder, now()) else '[]' end;
end $function$;
comment on function private.closed_around_claim(claims,trees,shifts) is 'The same for a row: its block is stopped. A hazard closes the trees near it, and the wood of the others can still be hauled.';

CREATE OR REPLACE FUNCTION private.closed_for_work(p_tree trees, p_round rounds)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_state text;
  v_keep_out public.flags := private.keep_out_over(p_tree);
  v_missing jsonb := '[]';
begin
  if p_tree.life <> 'standing' then v_missing := v_missing || private.code('tree_not_standing'); end if;
  if not p_tree.species = any (p_round.species) then v_missing := v_missing || private.code('tree_not_in_round'); end if;
  select state into v_state from public.tree_work where round_id = p_round.id and tree_no = p_tree.no;
  if v_state = 'done' then v_missing := v_missing || private.code('tree_done'); end if;
  if v_state = 'left_out' then v_missing := v_missing || private.code('tree_left_out'); end if;
  if exists (select 1 from public.flags f where f.orchard_id = p_tree.orchard_id and f.tree_no = p_tree.no
      and f.kind = 'arborist' and f.ended_at is null)
  then v_missing := v_missing || private.code('arborist_flag'); end if;
  if v_keep_out.id is not null then
    v_missing := v_missing || private.code('inside_keep_out', jsonb_build_object('tree', v_keep_out.tree_no));
  end if;
  return v_missing;
end $function$;

CREATE OR REPLACE FUNCTION private.code(p_code text, p_detail jsonb DEFAULT NULL::jsonb)
 RETURNS jsonb
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
begin
  return jsonb_build_array(jsonb_strip_nulls(jsonb_build_object('code', p_code, 'detail', p_detail)));
end $function$;
comment on function private.code(text,jsonb) is 'One refusal as a list of one, so that lists are joined with ||.';

CREATE OR REPLACE FUNCTION private.come_down_version(p_shift uuid)
 RETURNS integer
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select coalesce(max(version), 0) from public.briefings where shift_id = p_shift and change = 'come_down');
end $function$;
comment on function private.come_down_version(uuid) is 'The last change for which everybody came down; 0 without one.';

CREATE OR REPLACE FUNCTION private.comes_in_at_once(p_invite invites)
 RETURNS boolean
 LANGUAGE sql
 STABLE
 SET search_path TO ''
AS $function$
  -- A lead's link that went to the wrong chat makes nobody a lead: a manager lets in whoever came by it.
  select p_invite.kind = 'role' and p_invite.made_by is null or p_invite.kind <> 'role' and (
    exists (
      select 1 from public.shifts s
      where s.orchard_id = p_invite.orchard_id and s.state = 'open' and s.id = coalesce(p_invite.shift_id, s.id))
    -- Who was put out waits for a lead, whatever link they kept.
    and not exists (
      select 1 from public.logins l join public.people p on p.id = l.person_id
      where l.user_id = auth.uid() and l.orchard_id = p_invite.orchard_id and p.removed_at is not null))
$function$;

CREATE OR REPLACE FUNCTION private.comes_in_by_claim(p_c private.command, p_tree trees, p_claim uuid)
 RETURNS private.coming_in
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_claim public.claims := private.claim_or_fail(p_c.orchard_id, p_claim);
  v_in public.claim_people;
  v_how text := 'also_worked';
begin
  if v_claim.tree_no is distinct from p_tree.no then
    perform private.fail(400, 'malformed', 'This claim is of another tree.');
  end if;
  select * into v_in from public.claim_people
  where claim_id = p_claim and person_id = p_c.person_id and part <> 'learner'
  order by to_at desc nulls first limit 1;

  if v_in.id is not null and v_claim.ended_at is null and v_in.to_at is null then
    v_how := 'holder';
  elsif v_in.id is not null and v_claim.ended_how = 'shift_closed' and private.is_free_in(p_tree, v_claim.round_id) then
    v_how := 'late';
  end if;
  return (v_how, p_claim, v_claim.shift_id, v_claim.round_id, v_claim.opened_at,
    case when v_in.id is null then array[p_c.person_id] else (
      select array_agg(person_id) from public.claim_people
      where claim_id = p_claim and to_at is not distinct from v_in.to_at) end, null::text[]);
end $function$;

CREATE OR REPLACE FUNCTION private.comes_in_by_deal(p_c private.command, p_tree trees, p_begun_at timestamp with time zone)
 RETURNS private.coming_in
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_begun timestamptz := private.when_said(p_begun_at, p_c.at - interval '14 days', p_c.at);
  v_shift public.shifts;
  v_how text := 'also_worked';
begin
  select s.* into v_shift from public.shifts s
  left join public.attendances a on a.shift_id = s.id and a.person_id = p_c.person_id
  where s.orchard_id = p_c.orchard_id and s.state in ('open', 'closed')
  order by (a.arrived_at <= v_begun and coalesce(a.left_at, v_begun) >= v_begun) desc nulls last,
    (a.id is not null) desc, s.opened_at desc
  limit 1;
  if v_shift.id is null then return null; end if;

  if private.is_free_in(p_tree, v_shift.round_id)
    and exists (select 1 from public.attendances a where a.shift_id = v_shift.id and a.person_id = p_c.person_id)
    and exists (select 1 from public.deals d
      where d.orchard_id = p_c.orchard_id and d.tree_no = p_tree.no and p_c.person_id = any (d.people)
        and d.dealt_at <= p_c.at and coalesce(d.ended_at, p_c.at) >= v_begun)
  then v_how := case when v_shift.state = 'open' then 'dealt' else 'late' end; end if;
  return (v_how, null::uuid, v_shift.id, v_shift.round_id, greatest(v_begun, v_shift.opened_at), array[p_c.person_id],
    private.lacked_without_claim(p_c, p_tree, v_shift));
end $function$;

CREATE OR REPLACE FUNCTION private.comes_in_on_paper(p_c private.command, p_tree trees, p_shift shifts, p_at timestamp with time zone, p_begun_at timestamp with time zone)
 RETURNS private.coming_in
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_claim public.claims := private.open_claim_of(p_c.person_id);
  v_how text := 'also_worked';
begin
  if v_claim.tree_no is distinct from p_tree.no then v_claim := null; end if;
  if v_claim.id is not null then
    v_how := 'holder';
  elsif private.is_free_in(p_tree, p_shift.round_id) and not exists (
    -- Who came later saw more of it.
    select 1 from public.visits v
    where v.round_id = p_shift.round_id and v.tree_no = p_tree.no and v.person_id <> p_c.person_id
      and v.at > p_at and v.undone_at is null and v.result <> 'also_worked')
  then
    v_how := case when p_shift.state = 'open' then 'paper' else 'late' end;
  end if;
  return (v_how, v_claim.id, p_shift.id, p_shift.round_id, coalesce(p_begun_at, case when v_claim.opened_at < p_at then v_claim.opened_at end),
    coalesce(private.people_in(v_claim.id), array[p_c.person_id]), null::text[]);
end $function$;

CREATE OR REPLACE FUNCTION private.crew_state(p_reader private.reader)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_shift uuid := (private.open_shift(p_reader.orchard_id)).id;
begin
  return jsonb_build_object(
    'attendance', (
      select coalesce(jsonb_object_agg(a.person_id, jsonb_build_object(
        'state', case when b.id is not null and b.to_at is null then 'break' else 'here' end,
        'since', private.instant(coalesce(b.to_at, b.from_at, a.arrived_at)), 'restedAt', private.instant(private.rested_at(a)))), '{}')
      from public.attendances a
      left join lateral (
        select id, from_at, to_at from public.breaks where attendance_id = a.id order by from_at desc, to_at is null desc limit 1) b on true
      where a.shift_id = v_shift and a.left_at is null),
    'briefed', (
      select coalesce(jsonb_object_agg(person_id, jsonb_build_object(
        -- As private.told_version.
        'givenVersion', case when given = 0 then 0 else greatest(given, own) end, 'signedVersion', signed)), '{}')
      from (
        select person_id, max(given) as given, max(signed) as signed, max(own) as own
        from (
          select g.person_id, g.version as given, 0 as signed, 0 as own from public.briefings_given g where g.shift_id = v_shift
          union all
          select s.person_id, 0, s.version, case when s.signed_by = s.person_id then s.version else 0 end
          from public.briefing_signatures s where s.shift_id = v_shift) each_one
        group by person_id) of_each
      where exists (select 1 from public.people p where p.id = person_id and p.removed_at is null)),
    'stops', (
      select coalesce(jsonb_object_agg(s.id, jsonb_build_object(
        'block', s.block_no, 'calledBy', s.called_by, 'calledAt', private.instant(s.called_at), 'resumed', s.resumed_at is not null,
        -- 'resumed' sorts before 'stopped' and overrides it.
        'answers', (
          select coalesce(jsonb_object_agg(person_id, phase), '{}')
          from (select person_id, min(phase) as phase from public.stop_answers where stop_id = s.id group by person_id) last),
        'seenBy', (
          select coalesce(jsonb_object_agg(person_id, by_person_id) filter (where how = 'seen_by_lead'), '{}')
          from (
            select distinct on (person_id) person_id, by_person_id, how
            from public.stop_answers where stop_id = s.id order by person_id, phase) last))), '{}')
      from public.stops s where s.shift_id = v_shift)
  ) || private.equipment_state(p_reader, v_shift);
end $function$;

CREATE OR REPLACE FUNCTION private.cultivar_rows(p_cultivars jsonb)
 RETURNS TABLE(index integer, species text, name text, habit text, buds text)
 LANGUAGE sql
 IMMUTABLE
 SET search_path TO ''
AS $function$
  select (n - 1)::integer, r ->> 'species', private.line_in(r -> 'name', 60), coalesce(r ->> 'habit', 'unknown'),
    coalesce(r ->> 'buds', 'unknown')
  from jsonb_array_elements(p_cultivars) with ordinality as x (r, n)
$function$;

CREATE OR REPLACE FUNCTION private.deals_left_by(p_person uuid, p_still_for uuid[])
 RETURNS integer[]
 LANGUAGE sql
 STABLE
 SET search_path TO ''
AS $function$
  select array_agg(tree_no) from public.deals
  where ended_at is null and p_person = any (people) and not (array_remove(people, p_person) && p_still_for)
$function$;
comment on function private.deals_left_by(uuid,uuid[]) is 'Trees dealt to this person, and to nobody who still may come to them.';

CREATE OR REPLACE FUNCTION private.dealt_back(p_c private.command, p_round rounds, p_tree trees)
 RETURNS uuid[]
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
declare
  v_shift public.shifts := private.open_shift(p_c.orchard_id);
  v_claim uuid;
  v_pruner uuid;
begin
  select v.claim_id, v.person_id into v_claim, v_pruner from public.visits v
  where v.orchard_id = p_c.orchard_id and v.round_id = p_round.id and v.tree_no = p_tree.no and v.result = 'done'
    and v.undone_at is null and private.is_pruning(v.claim_id)
  order by v.at desc limit 1;
  -- Whoever tapped may have been the helper.
  v_pruner := coalesce((
    select cp.person_id from public.claim_people cp
    where cp.claim_id = v_claim and cp.part = 'holder' order by cp.to_at desc nulls first limit 1), v_pruner);

  if v_pruner is null or not private.is_here(v_shift.id, v_pruner) or private.held_by(p_c.orchard_id, p_tree.no) is not null
    or private.closed_for_work(p_tree, p_round) <> '[]'
  then return null; end if;
  perform private.end_deals(p_c.orchard_id, array[p_tree.no], p_c.at);
  insert into public.deals (orchard_id, round_id, tree_no, people, dealt_by, dealt_at)
  values (p_c.orchard_id, p_round.id, p_tree.no, array[v_pruner], p_c.by_person_id, p_c.at);
  return array[v_pruner];
end $function$;
comment on function private.dealt_back(private.command,rounds,trees) is 'To whoever finished it, while they are here and the tree is open; else it is free, and null.';

CREATE OR REPLACE FUNCTION private.dealt_to(p_orchard uuid, p_tree integer)
 RETURNS uuid[]
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select d.people from public.deals d where d.orchard_id = p_orchard and d.tree_no = p_tree and d.ended_at is null);
end $function$;

CREATE OR REPLACE FUNCTION private.default_house_rules()
 RETURNS jsonb
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
begin
  return jsonb_build_object(
    'ladder_from_cm', 250,      -- higher trees ask for a ladder; common practice, no source
    'keep_out_m', 10,           -- around a hazard when nobody says otherwise; common practice, no source
    'limb_cm', 10,              -- thicker limbs are the arborist's; common practice, no source: 3 to 4 inches
    'pruner_cm', 1.905,         -- common practice, no source: 1/2 to 3/4 inch
    'lopper_cm', 3.81,          -- common practice, no source: 1 1/2 to 2 inches
    'pole_cm', 2.54,            -- live wood for a pole pruner; common practice, no source: up to an inch
    'three_cut_out_cm', 30.48,  -- sources differ: 6 to 24 inches
    'three_cut_further_cm', 5.08, -- sources differ: 1 to 2 inches
    'feet_cm', 183,             -- on a ladder; common practice, no source
    'lean_deg', 15,             -- a trunk that leans further is the arborist's; common practice, no source
    'clean_tools', 1,           -- a choice, by its place in lib/domain/disease/sanitation.ts; the sources differ
    'consent_version', 1,
    'overhead_apart_m', 6,      -- between ladder or saw work and the next person; common practice, no source
    'quiet_minutes', 15,        -- out of touch this long and the lead is told; common practice, no source
    'withdraw_minutes', 2,
    'undo_minutes', 10)
    || private.default_weather_rules();
end $function$;

CREATE OR REPLACE FUNCTION private.default_weather_rules()
 RETURNS jsonb
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
begin
  return jsonb_build_object(
    'weather_minutes', 60,      -- older weather is no weather
    'thunder_minutes', 30,      -- NWS: after the last thunder
    'ladder_gust_kmh', 30,      -- Beaufort 5; common practice, no source for the limit
    'work_gust_kmh', 40,        -- Beaufort 6; common practice, no source for the limit
    'heat_stop_c', 39,          -- as it feels; NWS: danger
    'light_minutes', 30,        -- ladders end so long before sunset; common practice, no source
    'dry_hours', 4,             -- since apricots and cherries were wet; common practice, no source
    'rain_hours', 24,           -- UC Master Gardeners, Napa
    'rain_free_days', 42,       -- UC IPM; Ramos, Moller and English 1975
    'first_rain_month', 10,     -- California's months, by UC IPM
    'apricot_from_month', 7, 'apricot_to_month', 8,
    'cherry_from_month', 7, 'cherry_to_month', 8);
end $function$;

CREATE OR REPLACE FUNCTION private.delete_block(p_orchard uuid, p_block integer)
 RETURNS boolean
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
begin
  delete from public.trees where orchard_id = p_orchard and block_no = p_block;
  delete from public.blocks where orchard_id = p_orchard and no = p_block;
  return true;
exception when foreign_key_violation then
  return false;
end $function$;
comment on function private.delete_block(uuid,integer) is 'False, and nothing is done, when anything was ever recorded there: every record holds its tree or block by a foreign key.';

CREATE OR REPLACE FUNCTION private.end_calls(p_c private.command, p_calls uuid[])
 RETURNS jsonb
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
declare
  v_ended jsonb;
begin
  with ended as (
    update public.calls set ended_by = p_c.by_person_id, ended_at = p_c.at
    where orchard_id = p_c.orchard_id and id = any (p_calls) and ended_at is null
    returning id)
  select jsonb_agg(id order by id) into v_ended from ended;
  return coalesce(v_ended, '[]');
end $function$;
comment on function private.end_calls(private.command,uuid[]) is 'The change callsEnded.';

CREATE OR REPLACE FUNCTION private.end_claim(p_claim uuid, p_at timestamp with time zone, p_how text, p_note text DEFAULT NULL::text)
 RETURNS void
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
begin
  update public.claims set ended_at = p_at, ended_how = p_how, ended_note = p_note where id = p_claim and ended_at is null;
  update public.claim_people set to_at = p_at where claim_id = p_claim and to_at is null;
end $function$;

CREATE OR REPLACE FUNCTION private.end_deals(p_orchard uuid, p_trees integer[], p_at timestamp with time zone)
 RETURNS jsonb
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
declare
  v_list jsonb;
begin
  with ended as (
    update public.deals set ended_at = p_at
    where orchard_id = p_orchard and tree_no = any (p_trees) and ended_at is null
    returning tree_no
  )
  select jsonb_agg(tree_no order by tree_no) into v_list from ended;
  return v_list;
end $function$;
comment on function private.end_deals(uuid,integer[],timestamp with time zone) is 'The trees whose deal ended, as a list for dealsEnded; null when there was none.';

CREATE OR REPLACE FUNCTION private.end_own_claim(p_c private.command, p_claim claims, p_share integer)
 RETURNS jsonb
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
declare
  v_people uuid[] := private.people_in(p_claim.id);
  v_ended jsonb := jsonb_build_object('dirty', private.soil_tools(p_c.orchard_id, p_claim.tree_no, v_people));
begin
  if p_share is not null and p_claim.kind = 'prune' then
    perform private.keep_visit(p_c, p_claim.tree_no,
      ('holder', p_claim.id, p_claim.shift_id, p_claim.round_id, p_claim.opened_at, v_people, null::text[]), 'begun', p_share, null, null, null);
    v_ended := v_ended || jsonb_build_object('work',
      private.set_work(p_c.orchard_id, p_claim.round_id, p_claim.tree_no, 'begun', p_share, null, p_c.at));
  end if;
  perform private.end_claim(p_claim.id, p_c.at, 'flagged');
  return v_ended;
end $function$;

CREATE OR REPLACE FUNCTION private.equipment_passed(p_shift uuid, p_person uuid)
 RETURNS boolean
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select coalesce((
      select cardinality(e.failed_items) = 0 from public.equipment_checks e
      where e.shift_id = p_shift and e.person_id = p_person
      order by e.checked_at desc limit 1), false));
end $function$;

CREATE OR REPLACE FUNCTION private.equipment_state(p_reader private.reader, p_shift uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    with latest as (
      select distinct on (e.person_id) e.person_id, e.failed_items,
        p_reader.is_lead or e.person_id = any (p_reader.own) as told,
        bool_or(e.failed_items = '{}') over (partition by e.person_id) as once_passed
      from public.equipment_checks e
      join public.people p on p.id = e.person_id and p.removed_at is null
      where e.shift_id = p_shift
      order by e.person_id, e.checked_at desc
    )
    select jsonb_build_object(
      -- Other volunteers hear of passed checks only.
      'equipped', coalesce(jsonb_object_agg(person_id, failed_items = '{}' or not told) filter (where told or once_passed), '{}'),
      'failedEquipment', coalesce(jsonb_object_agg(person_id, failed_items) filter (where told and failed_items <> '{}'), '{}'))
    from latest
  );
end $function$;

CREATE OR REPLACE FUNCTION private.event_heard(p_n bigint, p_c private.command, p_kind text, p_body jsonb, p_more boolean, p_own_people uuid[])
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  -- Of what nobody hears, nobody hears either whom it concerns.
  return case when p_body is null then jsonb_build_object('n', p_n, 'more', p_more)
  else jsonb_build_object('n', p_n, 'at', private.instant(p_c.at), 'command_id', p_c.command_id,
    'person_id', p_c.person_id, 'by_person_id', p_c.by_person_id, 'kind', p_kind, 'body', p_body, 'more', p_more)
    || case when p_own_people = '{}' then '{}' else jsonb_build_object('concerns', p_own_people) end end;
end $function$;
comment on function private.event_heard(bigint,private.command,text,jsonb,boolean,uuid[]) is 'What is broadcast: never lead_body. more: leads, the person concerned and those of concerns should ask events_after.';

CREATE OR REPLACE FUNCTION private.event_told(p_event events, p_reader private.reader)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_told_more boolean := p_event.lead_body is not null
    and (p_reader.is_lead or (p_event.own and p_event.person_id = any (p_reader.own)) or p_event.own_people && p_reader.own);
begin
  if p_event.body is null and not v_told_more then
    return jsonb_build_object('n', p_event.n);
  end if;
  return jsonb_build_object(
    'n', p_event.n, 'at', private.instant(p_event.at), 'commandId', p_event.command_id,
    'personId', p_event.person_id, 'byPersonId', p_event.by_person_id, 'kind', p_event.kind,
    'body', p_event.body)
    || case when v_told_more then jsonb_build_object('leadBody', p_event.lead_body) else '{}' end;
end $function$;
comment on function private.event_told(events,private.reader) is 'An event as this reader may know it: every number, not every content.';

CREATE OR REPLACE FUNCTION private.excepts_dark(p_orchard uuid, p_reason text)
 RETURNS boolean
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return exists (
    select 1 from public.weather_exceptions
    where shift_id = (private.open_shift(p_orchard)).id and what = 'dark' and ended_at is null and p_reason = any (lifts));
end $function$;

CREATE OR REPLACE FUNCTION private.fail(p_status integer, p_code text, p_message text)
 RETURNS void
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
begin
  raise exception using errcode = 'PT' || p_status, message = p_message, detail = p_code;
end $function$;
comment on function private.fail(integer,text,text) is 'For malformed input, no permission and faults. What a rule refuses is an answer (private.refuse).';

CREATE OR REPLACE FUNCTION private.feels_c(p_r weather_readings)
 RETURNS numeric
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
begin
  if p_r.temperature_c is null or p_r.humidity is null then return p_r.temperature_c; end if;
  return round(((private.heat_index_f(p_r.temperature_c::double precision * 1.8 + 32, p_r.humidity::double precision) - 32) / 1.8)::numeric, 2);
end $function$;

CREATE OR REPLACE FUNCTION private.filled(p_body jsonb)
 RETURNS jsonb
 LANGUAGE sql
 IMMUTABLE
 SET search_path TO ''
AS $function$
  select coalesce(jsonb_object_agg(key, value), '{}') from jsonb_each(p_body) where value not in ('null', '[]')
$function$;
comment on function private.filled(jsonb) is 'Without what is null or an empty list.';

CREATE OR REPLACE FUNCTION private.flag_or_fail(p_orchard uuid, p_flag uuid)
 RETURNS flags
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_flag public.flags;
begin
  select * into v_flag from public.flags where orchard_id = p_orchard and id = p_flag;
  if not found then perform private.fail(404, 'no_such_flag', 'There is no such flag.'); end if;
  return v_flag;
end $function$;

CREATE OR REPLACE FUNCTION private.flags_state(p_reader private.reader)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return jsonb_build_object('flags', (
    select coalesce(jsonb_object_agg(f.id, jsonb_strip_nulls(jsonb_build_object(
      'tree', f.tree_no, 'kind', f.kind, 'state', f.state, 'sign', f.sign, 'severity', f.severity, 'keepOutM', f.keep_out_m,
      'reasons', f.reasons, 'limb', f.limb,
      'raisedBy', f.raised_by, 'raisedAt', private.instant(f.raised_at),
      'inside', (
        select jsonb_object_agg(k.person_id, jsonb_build_object('tree', k.tree_no, 'out', k.out_at is not null))
        from public.keep_out_people k where k.flag_id = f.id),
      -- Leads, and who took it.
      'photos', (
        select jsonb_agg(p.id order by p.added_at, p.id) from public.photos p
        where p.flag_id = f.id and (p_reader.is_lead or p.taken_by = any (p_reader.own))),
      'notes', case when p_reader.is_lead then (select nullif(count(*), 0) from public.flag_notes n where n.flag_id = f.id) end))), '{}')
    from public.flags f where f.orchard_id = p_reader.orchard_id and f.ended_at is null));
end $function$;

CREATE OR REPLACE FUNCTION private.flags_told(p_reader private.reader, p_tree integer)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select coalesce(jsonb_agg(jsonb_strip_nulls(jsonb_build_object('what', 'flag', 'id', f.id, 'at', private.instant(f.raised_at),
      'person', f.raised_by, 'kind', f.kind, 'sign', f.sign, 'severity', f.severity, 'state', f.state,
      'confirmedBy', f.confirmed_by, 'endedAt', private.instant(f.ended_at), 'endedBy', f.ended_by, 'doneOn', f.done_on)
      || case when p_reader.is_lead then jsonb_build_object('note', f.note, 'endedNote', f.ended_note, 'doneBy', f.done_by)
        else '{}' end)), '[]')
    from public.flags f where f.orchard_id = p_reader.orchard_id and f.tree_no = p_tree);
end $function$;

CREATE OR REPLACE FUNCTION private.forget(p_subject people, p_at timestamp with time zone)
 RETURNS void
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
begin
  perform private.blank_words_of(p_subject);
  update public.people set name = null, phone = null, guardian_id = null, forgotten_at = p_at,
    removed_at = coalesce(removed_at, p_at), admitted_at = coalesce(admitted_at, p_at) where id = p_subject.id;
  update public.logins set ended_at = p_at where person_id = p_subject.id and ended_at is null;
  update public.invites set ended_at = p_at where p_subject.id in (person_id, made_by) and ended_at is null;
  update public.skills set ended_at = p_at where person_id = p_subject.id and ended_at is null;
  perform private.blank_what_is_over();
end $function$;

CREATE OR REPLACE FUNCTION private.forget_again(p_people uuid[])
 RETURNS integer
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
declare
  v_subject public.people;
  v_c private.command;
  v_count integer := 0;
begin
  for v_subject in select * from public.people where id = any (p_people) and forgotten_at is null loop
    -- What a backup still has in their hands is put down; phones start from a new snapshot, so no event says it.
    v_c := ('forget_person', v_subject.orchard_id, gen_random_uuid(), v_subject.id, v_subject.id, false, '{}', clock_timestamp(), null);
    if v_subject.removed_at is null then perform private.take_from(v_c, v_subject.id); end if;
    perform private.forget(v_subject, v_c.at);
    v_count := v_count + 1;
  end loop;
  return v_count;
end $function$;
comment on function private.forget_again(uuid[]) is 'For the owner, after a restore: an older backup still has the names of people who were forgotten since.';

CREATE OR REPLACE FUNCTION private.forget_brush_ways(p_orchard uuid, p_block integer)
 RETURNS jsonb
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
declare
  v_rows jsonb;
begin
  with forgotten as (
    delete from public.brush_ways
    where round_id = (private.work_round(p_orchard)).id and block_no = p_block returning row_no
  )
  select jsonb_agg(row_no order by row_no) into v_rows from forgotten;
  return v_rows;
end $function$;
comment on function private.forget_brush_ways(uuid,integer) is 'Where the wood of a row goes is said by the row''s number; under new numbers it would be said of another.';

CREATE OR REPLACE FUNCTION private.forgotten_people()
 RETURNS uuid[]
 LANGUAGE sql
 STABLE
 SET search_path TO ''
AS $function$
  select coalesce(array_agg(id), '{}') from public.people where forgotten_at is not null
$function$;
comment on function private.forgotten_people() is 'For the owner, before a restore: what private.forget_again takes after it.';

CREATE OR REPLACE FUNCTION private.fresh_weather(p_orchard uuid, p_at timestamp with time zone)
 RETURNS weather_readings
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_latest public.weather_readings;
begin
  select * into v_latest from public.weather_readings
  where orchard_id = p_orchard order by measured_at desc, written_at desc limit 1;
  if p_at - v_latest.measured_at > private.house_rule(p_orchard, 'weather_minutes') * interval '1 minute' then return null; end if;
  return v_latest;
end $function$;
comment on function private.fresh_weather(uuid,timestamp with time zone) is 'Old weather is no weather: a null row.';

CREATE OR REPLACE FUNCTION private.handed_things(p_work jsonb)
 RETURNS jsonb
 LANGUAGE sql
 IMMUTABLE
 SET search_path TO ''
AS $function$
  select coalesce(jsonb_agg(jsonb_build_object('name', left(item ->> 'name', 40),
    'tree', case when item #>> '{args,tree}' ~ '^[1-9][0-9]{0,8}$' then (item #>> '{args,tree}')::integer end) order by place), '[]')
  from jsonb_array_elements(p_work) with ordinality as handed (item, place)
  where jsonb_typeof(item) = 'object' and item ->> 'name' is not null
$function$;

CREATE OR REPLACE FUNCTION private.has_disease_flag(p_orchard uuid, p_tree integer)
 RETURNS boolean
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select exists (select 1 from public.flags f
      where f.orchard_id = p_orchard and f.tree_no = p_tree and f.kind = 'disease' and f.ended_at is null));
end $function$;

CREATE OR REPLACE FUNCTION private.has_only_keys(p_object jsonb, p_keys text[])
 RETURNS boolean
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
begin
  if jsonb_typeof(p_object) is distinct from 'object' then return false; end if;
  return p_object - p_keys = '{}';
end $function$;

CREATE OR REPLACE FUNCTION private.has_role(p_person uuid, p_roles text[])
 RETURNS boolean
 LANGUAGE sql
 STABLE
 SET search_path TO ''
AS $function$
  select exists (select 1 from public.people where id = p_person and role = any (p_roles) and removed_at is null)
$function$;

CREATE OR REPLACE FUNCTION private.has_skill(p_person uuid, p_skill text, p_on date)
 RETURNS boolean
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select exists (
      select 1 from public.skills s
      where s.person_id = p_person and s.skill = p_skill and s.ended_at is null and (s.until is null or s.until >= p_on)));
end $function$;

CREATE OR REPLACE FUNCTION private.has_tool(p_people uuid[], p_kind text)
 RETURNS boolean
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select exists (
      select 1 from public.tool_holdings h join public.tools t on t.orchard_id = h.orchard_id and t.no = h.tool_no
      where h.person_id = any (p_people) and h.returned_at is null and t.kind = p_kind and t.state = 'fit'));
end $function$;

CREATE OR REPLACE FUNCTION private.haul(p_c private.command, p_claim uuid, p_round uuid, p_trees integer[])
 RETURNS jsonb
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
declare
  v_trees integer[];
begin
  select array_agg(tree_no order by tree_no) into v_trees from public.tree_work
  where round_id = p_round and tree_no = any (p_trees) and state in ('begun', 'done');
  insert into public.brush_hauled (orchard_id, round_id, tree_no, claim_id, by_person_id, at)
  select p_c.orchard_id, p_round, x, p_claim, p_c.person_id, p_c.at from unnest(v_trees) x
  on conflict do nothing;
  if p_round is distinct from (private.work_round(p_c.orchard_id)).id then return null; end if;
  return to_jsonb(v_trees);
end $function$;
comment on function private.haul(private.command,uuid,uuid,integer[]) is 'Only where somebody pruned: elsewhere nothing lies. The list for hauled; null when it is not the round that phones carry.';

CREATE OR REPLACE FUNCTION private.hazard_at(p_tree trees)
 RETURNS integer
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return coalesce(
    (select f.tree_no from public.flags f
     where f.orchard_id = p_tree.orchard_id and f.tree_no = p_tree.no and f.kind = 'arborist' and f.ended_at is null limit 1),
    (private.keep_out_over(p_tree)).tree_no);
end $function$;
comment on function private.hazard_at(trees) is 'The flagged tree that this one is, or is too close to; null where one may go.';

CREATE OR REPLACE FUNCTION private.heat_index_f(p_t double precision, p_rh double precision)
 RETURNS double precision
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
declare
  v_simple double precision := 0.5 * (p_t + 61 + (p_t - 68) * 1.2 + p_rh * 0.094);
  v_adjusted double precision := 0;
begin
  if p_t < 40 then return p_t; end if;
  if v_simple <= 79 then return v_simple; end if;
  if p_rh <= 13 and p_t between 80 and 112 then
    v_adjusted := -(13 - p_rh) / 4 * sqrt((17 - abs(p_t - 95)) / 17);
  elsif p_rh > 85 and p_t between 80 and 87 then
    v_adjusted := (p_rh - 85) / 10 * ((87 - p_t) / 5);
  end if;
  return -42.379 + 2.04901523 * p_t + 10.14333127 * p_rh - 0.22475541 * p_t * p_rh - 0.00683783 * p_t * p_t
    - 0.05481717 * p_rh * p_rh + 0.00122874 * p_t * p_t * p_rh + 0.00085282 * p_t * p_rh * p_rh
    - 0.00000199 * p_t * p_t * p_rh * p_rh + v_adjusted;
end $function$;
comment on function private.heat_index_f(double precision,double precision) is 'NWS; which reading of it, and why: lib/domain/safety/heat-index.ts.';

CREATE OR REPLACE FUNCTION private.held_by(p_orchard uuid, p_tree integer)
 RETURNS uuid
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select cp.person_id from public.claims c
    join public.claim_people cp on cp.claim_id = c.id and cp.part = 'holder' and cp.to_at is null
    where c.orchard_id = p_orchard and c.tree_no = p_tree and c.ended_at is null);
end $function$;

CREATE OR REPLACE FUNCTION private.holds_another(p_person uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_claim public.claims := private.open_claim_of(p_person);
begin
  if v_claim.id is null then return '[]'; end if;
  return private.code('holds_another', jsonb_build_object('claim', v_claim.id, 'tree', v_claim.tree_no,
    'row', private.row_of(v_claim)));
end $function$;

CREATE OR REPLACE FUNCTION private.hours_in(p_shift shifts, p_now timestamp with time zone)
 RETURNS TABLE(person_id uuid, stays jsonb, here_s integer, break_s integer)
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return query
    with stays as (
      select a.id, a.person_id, a.arrived_at, coalesce(a.left_at, p_shift.closed_at, p_now) as until, a.left_at
      from public.attendances a where a.shift_id = p_shift.id
    ), rests as (
      -- A break that nobody ended lasts until its stay does.
      select s.id, sum(extract(epoch from least(coalesce(b.to_at, s.until), s.until) - least(b.from_at, s.until))) as seconds
      from stays s join public.breaks b on b.attendance_id = s.id group by s.id
    )
    select s.person_id,
      jsonb_agg(jsonb_build_array(private.instant(s.arrived_at), private.instant(s.left_at)) order by s.arrived_at),
      round(sum(extract(epoch from s.until - s.arrived_at)))::integer,
      round(coalesce(sum(r.seconds), 0))::integer
    from stays s left join rests r on r.id = s.id
    group by s.person_id;
end $function$;
comment on function private.hours_in(shifts,timestamp with time zone) is 'stays: [[arrived, left or null]]. here_s counts breaks too; break_s is how much of it they were.';

CREATE OR REPLACE FUNCTION private.house_rule(p_orchard uuid, p_key text)
 RETURNS numeric
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select coalesce(
      (select (o.house_rules ->> p_key)::numeric from public.orchards o where o.id = p_orchard),
      (private.default_house_rules() ->> p_key)::numeric));
end $function$;

CREATE OR REPLACE FUNCTION private.house_rule_range(p_key text)
 RETURNS numeric[]
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
begin
  return case p_key
    when 'ladder_from_cm' then array[100, 400]
    when 'limb_cm' then array[2, 10]
    when 'pruner_cm' then array[1.27, 1.905]
    when 'lopper_cm' then array[2.54, 5.08]
    when 'pole_cm' then array[1.27, 2.54]
    when 'three_cut_out_cm' then array[15.24, 60.96]
    when 'three_cut_further_cm' then array[2.54, 5.08]
    when 'feet_cm' then array[0, 183]
    when 'lean_deg' then array[5, 15]
    when 'clean_tools' then array[1, 3]
    when 'keep_out_m' then array[3, 200]
    when 'overhead_apart_m' then array[3, 50]
    when 'consent_version' then array[1, 10000]
    when 'quiet_minutes' then array[2, 120]
    when 'withdraw_minutes' then array[0, 60]
    when 'undo_minutes' then array[0, 60]
    when 'weather_minutes' then array[15, 180]
    when 'thunder_minutes' then array[30, 120]
    when 'ladder_gust_kmh' then array[10, 39]
    when 'work_gust_kmh' then array[15, 50]
    when 'heat_stop_c' then array[27, 51]
    when 'light_minutes' then array[0, 120]
    when 'dry_hours' then array[0, 72]
    when 'rain_hours' then array[0, 72]
    when 'rain_free_days' then array[14, 90]
    else case when p_key like '%\_month' then array[1, 12] else array[0, 10000] end end;
end $function$;
comment on function private.house_rule_range(text) is 'Least and most, as lib/domain/safety/house-rules.ts. A limb may be thinner than usual for the arborist, never thicker; feet lower, never higher; a lean less, never more.';

CREATE OR REPLACE FUNCTION private.in_the_way_of_forgetting(p_subject people, p_by uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_claim public.claims := private.open_claim_of(p_subject.id);
  v_who jsonb := jsonb_build_object('person', p_subject.id);
  v_tools jsonb := (
    select jsonb_agg(tool_no order by tool_no) from public.tool_holdings where person_id = p_subject.id and returned_at is null);
  v_minors jsonb := (
    select jsonb_agg(id order by id) from public.people
    where orchard_id = p_subject.orchard_id and guardian_id = p_subject.id and removed_at is null);
  v_refused jsonb := '[]';
begin
  if p_subject.forgotten_at is not null then return private.code('forgotten_before'); end if;
  if p_subject.id = p_by then v_refused := v_refused || private.code('not_yourself'); end if;
  if p_subject.removed_at is null and private.is_last_manager(p_subject) then v_refused := v_refused || private.code('last_manager'); end if;
  if exists (select 1 from public.attendances where person_id = p_subject.id and left_at is null) then
    v_refused := v_refused || private.code('still_here', v_who); end if;
  if exists (select 1 from public.attendances where person_id = p_subject.id and not_found and found_at is null) then
    v_refused := v_refused || private.code('not_found_yet', v_who); end if;
  if v_claim.id is not null then
    v_refused := v_refused || private.code('still_at_tree', v_who || jsonb_build_object('tree', v_claim.tree_no, 'row', private.row_of(v_claim)));
  end if;
  if v_tools is not null then v_refused := v_refused || private.code('still_has_tools', v_who || jsonb_build_object('tools', v_tools)); end if;
  if exists (select 1 from public.calls where p_subject.id in (person_id, subject_id) and ended_at is null) then
    v_refused := v_refused || private.code('call_open', v_who); end if;
  if exists (select 1 from public.hand_ins where person_id = p_subject.id and accepted_at is null) then
    v_refused := v_refused || private.code('work_handed_in', v_who); end if;
  if v_minors is not null then v_refused := v_refused || private.code('answers_for', v_who || jsonb_build_object('people', v_minors)); end if;
  return v_refused;
end $function$;
comment on function private.in_the_way_of_forgetting(people,uuid) is 'Whom somebody still needs by name: first that comes to an end. [] when nothing is in the way.';

CREATE OR REPLACE FUNCTION private.in_use(p_orchard uuid, p_trees integer[], p_flags text[] DEFAULT '{}'::text[])
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return private.trees_with(coalesce((
    select jsonb_agg(jsonb_build_object('code', u.code, 'tree', u.tree_no)) from (
      select 'trees_in_progress' as code, c.tree_no from public.claims c
      where c.orchard_id = p_orchard and c.tree_no = any (p_trees) and c.ended_at is null
      union
      -- A row of brush is held with all of its trees.
      select 'rows_held', t.no from public.claims c
      join public.trees t on t.orchard_id = c.orchard_id and t.block_no = c.block_no and t.row_no = c.row_no
      where c.orchard_id = p_orchard and c.tree_no is null and c.ended_at is null and t.no = any (p_trees)
      union
      select 'trees_dealt', d.tree_no from public.deals d
      where d.orchard_id = p_orchard and d.tree_no = any (p_trees) and d.ended_at is null
      union
      select 'trees_flagged', f.tree_no from public.flags f
      where f.orchard_id = p_orchard and f.tree_no = any (p_trees) and f.ended_at is null and f.kind = any (p_flags)
    ) u), '[]'));
end $function$;
comment on function private.in_use(uuid,integer[],text[]) is 'Of these trees those that somebody holds or is on the way to, and those with an open flag of these kinds; one refusal a code.';

CREATE OR REPLACE FUNCTION private.insert_inventory(p_orchard uuid, p_blocks jsonb, p_cultivars jsonb, p_trees jsonb)
 RETURNS integer
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
declare
  v_last integer;
  v_count integer;
begin
  select coalesce(max(no), 0) into v_last from public.blocks where orchard_id = p_orchard;
  insert into public.blocks (orchard_id, no, code, name, row_spacing_m, tree_spacing_m, bearing_deg, first_lat_e7, first_lon_e7, tagged_end)
  select p_orchard, v_last + row_number() over (order by index), code, name, row_spacing_m, tree_spacing_m, bearing_deg, first_lat_e7, first_lon_e7, tagged_end
  from private.block_rows(p_blocks) r
  where not exists (select 1 from public.blocks b where b.orchard_id = p_orchard and b.code = r.code);

  select coalesce(max(no), 0) into v_last from public.cultivars where orchard_id = p_orchard;
  insert into public.cultivars (orchard_id, no, species, name, habit, buds)
  select p_orchard, v_last + row_number() over (order by index), species, name, habit, buds
  from private.cultivar_rows(p_cultivars) r
  where not exists (select 1 from public.cultivars c where c.orchard_id = p_orchard and c.species = r.species and c.name = r.name);

  select last_tree_no into v_last from public.orchard_heads where orchard_id = p_orchard;
  insert into public.trees (orchard_id, no, block_no, row_no, place, species, cultivar_no, size_class, planted_year, height_cm,
    trunk_cm, asks_saw, life, lat_e7, lon_e7)
  select p_orchard, v_last + r.index + 1, b.no, r.row_no, r.place, r.species, c.no, r.size_class, r.planted_year, r.height_cm,
    r.trunk_mm / 10.0, r.asks_saw, r.life, r.lat_e7, r.lon_e7
  from private.tree_rows(p_trees) r
  join public.blocks b on b.orchard_id = p_orchard and b.code = r.block
  left join public.cultivars c on c.orchard_id = p_orchard and c.species = r.species and c.name = r.cultivar;
  get diagnostics v_count = row_count;
  update public.orchard_heads set last_tree_no = v_last + v_count where orchard_id = p_orchard;
  return v_count;
end $function$;
comment on function private.insert_inventory(uuid,jsonb,jsonb,jsonb) is 'Blocks and cultivars that are there already stay as they are.';

CREATE OR REPLACE FUNCTION private.instant(p_at timestamp with time zone)
 RETURNS text
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
begin
  return to_char(p_at at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"');
end $function$;
comment on function private.instant(timestamp with time zone) is 'One spelling of an instant everywhere: UTC, milliseconds, as JavaScript prints it.';

CREATE OR REPLACE FUNCTION private.invite_lacks(p_invite invites)
 RETURNS text
 LANGUAGE sql
 STABLE
 SET search_path TO ''
AS $function$
  select case
    when p_invite.ended_at is not null or p_invite.expires_at < clock_timestamp()
      or exists (select 1 from public.shifts where id = p_invite.shift_id and state in ('closed', 'cancelled')) then 'code_expired'
    when p_invite.uses_left = 0 then 'code_used'
  end
$function$;
comment on function private.invite_lacks(invites) is 'Null while it lets people in.';

CREATE OR REPLACE FUNCTION private.is_about_person(p_event events, p_person uuid)
 RETURNS boolean
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  -- Whose work it was, who tapped, or named in it: an id stands nowhere else than as itself.
  return p_person in (p_event.person_id, p_event.by_person_id)
    or strpos(p_event.body::text, p_person::text) > 0 or strpos(p_event.lead_body::text, p_person::text) > 0;
end $function$;

CREATE OR REPLACE FUNCTION private.is_about_tree(p_event events, p_tree integer, p_things text[])
 RETURNS boolean
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
declare
  v_bodies jsonb[] := array[coalesce(p_event.body, '{}'), coalesce(p_event.lead_body, '{}')];
  v_body jsonb;
begin
  foreach v_body in array v_bodies loop
    if v_body -> 'tree' = to_jsonb(p_tree) or v_body -> 'trees' @> to_jsonb(p_tree)
      or coalesce(v_body ->> 'claim', v_body ->> 'flag', v_body ->> 'call') = any (p_things)
      or v_body -> 'dealsEnded' @> to_jsonb(p_tree) or v_body -> 'hauled' @> to_jsonb(p_tree)
      or exists (
        select 1 from jsonb_array_elements(coalesce(v_body -> 'work', '[]')) one where one -> 0 = to_jsonb(p_tree))
    then return true; end if;
  end loop;
  return false;
end $function$;

CREATE OR REPLACE FUNCTION private.is_because(p_what text, p_because text)
 RETURNS boolean
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
begin
  return p_because = 'lead_judges' or case when p_what = 'dark' then p_because in ('lamps', 'day_here')
    else p_because in ('bark_is_dry', 'dead_wood_only', 'wounds_covered', 'young_tree', 'must_come_off') end;
end $function$;

CREATE OR REPLACE FUNCTION private.is_brush(p_claim uuid)
 RETURNS boolean
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return exists (select 1 from public.claims where id = p_claim and kind = 'brush');
end $function$;

CREATE OR REPLACE FUNCTION private.is_change_of_trees(p_orchard uuid, p_set jsonb)
 RETURNS boolean
 LANGUAGE sql
 STABLE
 SET search_path TO ''
AS $function$
  select jsonb_typeof(p_set) = 'object' and p_set <> '{}' and bool_and(case key
    when 'species' then jsonb_typeof(value) = 'string' and private.is_species(value #>> '{}')
    when 'cultivar' then value = 'null' or exists (select 1 from public.cultivars
      where orchard_id = p_orchard and no = private.whole_in(value, 1, 1000000))
    when 'size' then value = 'null' or value #>> '{}' in ('young', 'small', 'medium', 'large')
    when 'planted' then value = 'null' or private.whole_in(value, 1700, 2200) is not null
    when 'heightCm' then value = 'null' or private.whole_in(value, 10, 5000) is not null
    when 'trunkMm' then value = 'null' or private.whole_in(value, 1, 9999) is not null
    when 'asksSaw' then jsonb_typeof(value) = 'boolean'
    when 'life' then value #>> '{}' in ('standing', 'dead', 'removed', 'gap')
    else false end)
  from jsonb_each(p_set)
$function$;

CREATE OR REPLACE FUNCTION private.is_day(p_day date)
 RETURNS boolean
 LANGUAGE sql
 IMMUTABLE
 SET search_path TO ''
AS $function$ select p_day between '2000-01-01' and '2200-12-31' $function$;

CREATE OR REPLACE FUNCTION private.is_emergency_card(p_card jsonb)
 RETURNS boolean
 LANGUAGE sql
 IMMUTABLE
 SET search_path TO ''
AS $function$
  select jsonb_typeof(p_card) = 'object' and not exists (
    select 1 from jsonb_each(case when jsonb_typeof(p_card) = 'object' then p_card else '{}' end)
    where key not in ('number', 'call', 'where', 'access', 'hospital', 'first_aid', 'first_aider', 'meeting_point')
      or jsonb_typeof(value) <> 'string' or char_length(value #>> '{}') > 500)
$function$;

CREATE OR REPLACE FUNCTION private.is_forecast_hour(p_hour jsonb)
 RETURNS boolean
 LANGUAGE sql
 IMMUTABLE
 SET search_path TO ''
AS $function$
  select jsonb_typeof(p_hour) = 'array' and jsonb_array_length(case when jsonb_typeof(p_hour) = 'array' then p_hour else '[]' end) = 6
    and (p_hour ->> 0) ~ '^2[01]\d\d-[01]\d-[0-3]\dT[0-2]\d:[0-5]\d:00\.000Z$'
    and not exists (
      select 1 from jsonb_array_elements(case when jsonb_typeof(p_hour) = 'array' then p_hour - 0 else '[]' end) x
      where jsonb_typeof(x) not in ('number', 'null')
        or case when jsonb_typeof(x) = 'number' then (x #>> '{}')::numeric not between -40 and 300 else false end)
$function$;

CREATE OR REPLACE FUNCTION private.is_free_in(p_tree trees, p_round uuid)
 RETURNS boolean
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select private.held_by(p_tree.orchard_id, p_tree.no) is null
      and not exists (select 1 from public.tree_work w
        where w.round_id = p_round and w.tree_no = p_tree.no and w.state in ('done', 'left_out'))
      and not exists (select 1 from public.flags f where f.orchard_id = p_tree.orchard_id and f.tree_no = p_tree.no
        and f.kind = 'arborist' and f.ended_at is null));
end $function$;

CREATE OR REPLACE FUNCTION private.is_here(p_shift uuid, p_person uuid)
 RETURNS boolean
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select exists (select 1 from public.attendances a where a.shift_id = p_shift and a.person_id = p_person and a.left_at is null));
end $function$;

CREATE OR REPLACE FUNCTION private.is_last_manager(p_person people, p_without_login uuid DEFAULT NULL::uuid)
 RETURNS boolean
 LANGUAGE sql
 STABLE
 SET search_path TO ''
AS $function$
  select p_person.role = 'manager' and not exists (
    select 1 from public.people p join public.logins l on l.person_id = p.id and l.ended_at is null
    where p.orchard_id = p_person.orchard_id and p.role = 'manager' and p.removed_at is null
      and case when p_without_login is null then p.id <> p_person.id else l.id <> p_without_login end)
$function$;
comment on function private.is_last_manager(people,uuid) is 'Nobody else could manage: a manager without a login cannot. p_without_login asks what were if only that login ended.';

CREATE OR REPLACE FUNCTION private.is_lead_role(p_role text)
 RETURNS boolean
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
begin
  return p_role in ('lead', 'manager');
end $function$;

CREATE OR REPLACE FUNCTION private.is_limb(p_limb jsonb)
 RETURNS boolean
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
begin
  return private.has_only_keys(p_limb, array['cm', 'bearingDeg'])
    and private.is_number_within(p_limb -> 'cm', 0, 300)
    and private.is_number_within(p_limb -> 'bearingDeg', 0, 360);
end $function$;
comment on function private.is_limb(jsonb) is 'cm: its diameter where it would be cut. bearingDeg: to which side of the trunk it grows.';

CREATE OR REPLACE FUNCTION private.is_line(p_text text, p_longest integer)
 RETURNS boolean
 LANGUAGE sql
 IMMUTABLE
 SET search_path TO ''
AS $function$
  select btrim(p_text) <> '' and char_length(p_text) <= p_longest and p_text !~ '[\u0001-\u001f\u007f]'
$function$;
comment on function private.is_line(text,integer) is 'Something to read, on one line. Null for null.';

CREATE OR REPLACE FUNCTION private.is_minor(p_person uuid)
 RETURNS boolean
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select exists (select 1 from public.people where id = p_person and age_band = 'minor'));
end $function$;

CREATE OR REPLACE FUNCTION private.is_moment(p_at timestamp with time zone)
 RETURNS boolean
 LANGUAGE sql
 IMMUTABLE
 SET search_path TO ''
AS $function$
  select p_at between '2000-01-01 00:00:00+00' and '2200-12-31 00:00:00+00'
$function$;

CREATE OR REPLACE FUNCTION private.is_number_within(p_value jsonb, p_least numeric, p_most numeric)
 RETURNS boolean
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
begin
  if p_value is null or p_value = 'null' then return true; end if;
  if jsonb_typeof(p_value) <> 'number' then return false; end if;
  return (p_value #>> '{}')::numeric between p_least and p_most;
end $function$;
comment on function private.is_number_within(jsonb,numeric,numeric) is 'Nothing said is well said.';

CREATE OR REPLACE FUNCTION private.is_plain_jpeg(p_jpeg bytea)
 RETURNS boolean
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select substring(p_jpeg from 1 for 3) = '\xffd8ff'::bytea
      and position('\x457869660000'::bytea in p_jpeg) = 0
      and position('http://ns.adobe.com/xap'::bytea in p_jpeg) = 0
      and position('Photoshop 3.0'::bytea in p_jpeg) = 0);
end $function$;

CREATE OR REPLACE FUNCTION private.is_prone(p_species text)
 RETURNS boolean
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
begin
  return p_species in ('apricot', 'cherry', 'sour_cherry');
end $function$;
comment on function private.is_prone(text) is 'As proneSpecies of lib/domain/safety/species-season.ts.';

CREATE OR REPLACE FUNCTION private.is_pruning(p_claim uuid)
 RETURNS boolean
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select coalesce((select kind = 'prune' from public.claims where id = p_claim), true));
end $function$;
comment on function private.is_pruning(uuid) is 'Brush and other work leave a tree as pruned as it was. What was begun without a claim is pruning.';

CREATE OR REPLACE FUNCTION private.is_refer_reason(p_reason jsonb)
 RETURNS boolean
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
begin
  if not private.has_only_keys(p_reason, array['code', 'seen', 'value', 'limit']) then return false; end if;
  return coalesce(jsonb_typeof(p_reason -> 'code') = 'string' and p_reason ->> 'code' ~ '^[a-z_]{1,40}$', false)
    and coalesce(jsonb_typeof(p_reason -> 'seen') = 'boolean', false)
    and private.is_number_within(p_reason -> 'value', 0, 100000)
    and private.is_number_within(p_reason -> 'limit', 0, 100000);
end $function$;
comment on function private.is_refer_reason(jsonb) is 'code: lib/domain/safety/refer-rules.ts. seen: false says that nobody knows. value and limit: SI, in the unit of the rule.';

CREATE OR REPLACE FUNCTION private.is_said(p_value jsonb)
 RETURNS boolean
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
begin
  return coalesce(p_value <> 'null', false);
end $function$;
comment on function private.is_said(jsonb) is 'What may be left out is wrong only when something is said that cannot be read.';

CREATE OR REPLACE FUNCTION private.is_species(p_code text)
 RETURNS boolean
 LANGUAGE sql
 IMMUTABLE
 SET search_path TO ''
AS $function$
  select p_code in ('apple', 'pear', 'plum', 'european_plum', 'japanese_plum', 'apricot', 'peach', 'nectarine', 'cherry',
    'sour_cherry', 'quince', 'walnut', 'fig', 'persimmon', 'almond', 'pomegranate', 'other')
$function$;
comment on function private.is_species(text) is 'The same list as lib/domain/orchard/types.ts.';

CREATE OR REPLACE FUNCTION private.is_sun_up(p_orchard uuid, p_at timestamp with time zone)
 RETURNS boolean
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_place point := private.orchard_place(p_orchard);
begin
  -- From rise to set, with refraction. Above the polar circles there are days without either.
  return private.sun_height(v_place[0], v_place[1], p_at) >= -0.833;
end $function$;
comment on function private.is_sun_up(uuid,timestamp with time zone) is 'Null where nobody knows where the orchard is.';

CREATE OR REPLACE FUNCTION private.is_time_zone(p_name text)
 RETURNS boolean
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  -- Postgres also takes abbreviations, home-made rules and its own folders, which browsers do not know: every phone would fail.
  if (p_name ~ '^(UTC|GMT|[A-Za-z_]+(/[A-Za-z0-9_+-]+)+)$' and p_name !~* '^(posix|right)/' and char_length(p_name) <= 60) is not true
  then return false; end if;
  perform now() at time zone p_name;
  return true;
exception when invalid_parameter_value then
  return false;
end $function$;

CREATE OR REPLACE FUNCTION private.is_too_dark(p_orchard uuid, p_at timestamp with time zone)
 RETURNS boolean
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return private.is_sun_up(p_orchard, p_at) is false and not private.excepts_dark(p_orchard, 'dark');
end $function$;
comment on function private.is_too_dark(uuid,timestamp with time zone) is 'Unknown where the orchard is: not known to be dark.';

CREATE OR REPLACE FUNCTION private.join_again(p_c private.command, p_invite invites, p_known people)
 RETURNS jsonb
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
declare
  v_result jsonb := jsonb_build_object('orchard', p_c.orchard_id, 'person', p_known.id);
begin
  if p_known.admitted_at is null and private.comes_in_at_once(p_invite) then
    update public.people set admitted_at = p_c.at where id = p_known.id;
    return private.accept(p_c, 'person_admitted', jsonb_build_object('person', p_known.id), null, false, v_result);
  end if;
  return private.accept(p_c, 'login_linked', null, jsonb_build_object('person', p_known.id), true, v_result);
end $function$;
comment on function private.join_again(private.command,invites,people) is 'The same link again, say on the morning after: nobody new, and nothing is used up.';

CREATE OR REPLACE FUNCTION private.join_anew(p_c private.command, p_invite invites, p_name text, p_age_band text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
declare
  v_at_once boolean := private.comes_in_at_once(p_invite);
begin
  if (
    select count(*) from public.logins l join public.people p on p.id = l.person_id
    where l.user_id = auth.uid() and l.orchard_id = p_c.orchard_id and l.linked_at > now() - interval '1 day'
  ) >= 10 then perform private.fail(429, 'too_many', 'Ten people a day on one phone are enough.'); end if;

  insert into public.people (id, orchard_id, name, role, age_band, added_at, admitted_at)
  values (p_c.person_id, p_c.orchard_id, p_name, p_invite.role, p_age_band, p_c.at, case when v_at_once then p_c.at end);
  return private.use_invite(p_c, p_invite, 'person_joined',
    jsonb_build_object('person', p_c.person_id, 'role', p_invite.role, 'admitted', v_at_once),
    case when p_age_band = 'minor' then jsonb_build_object('person', p_c.person_id, 'minor', true) end);
end $function$;

CREATE OR REPLACE FUNCTION private.jpeg_or_fail(p_base64 text)
 RETURNS bytea
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
begin
  return decode(p_base64, 'base64');
exception when others then
  perform private.fail(400, 'malformed', 'The photo is not base64.');
  return null;
end $function$;

CREATE OR REPLACE FUNCTION private.keep_out_over(p_tree trees)
 RETURNS flags
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select f from public.flags f
    join public.trees t on t.orchard_id = f.orchard_id and t.no = f.tree_no
    where f.orchard_id = p_tree.orchard_id and f.kind = 'arborist' and f.ended_at is null
      and f.tree_no <> p_tree.no and private.metres_apart(p_tree, t) <= f.keep_out_m
    order by f.raised_at limit 1);
end $function$;

CREATE OR REPLACE FUNCTION private.keep_visit(p_c private.command, p_tree integer, p_in private.coming_in, p_result text, p_share integer, p_note text, p_said_at timestamp with time zone, p_elapsed_s integer)
 RETURNS integer
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
declare
  v_at timestamptz := private.when_said(p_said_at, p_in.begun_at, p_c.at);
  v_longest_s integer := extract(epoch from p_c.at - p_in.begun_at)::integer;
  -- On paper often nobody wrote when it was begun.
  v_seconds integer := case when v_longest_s is not null then
    least(greatest(coalesce(p_elapsed_s, extract(epoch from v_at - p_in.begun_at)::integer), 0), v_longest_s) end;
  v_before public.tree_work;
begin
  select * into v_before from public.tree_work where round_id = p_in.round_id and tree_no = p_tree;
  insert into public.visits (id, orchard_id, round_id, shift_id, tree_no, claim_id, person_id, result, share, note, at, seconds,
    before_state, before_share, came_in_late, from_paper, without_claim, lacked)
  values (p_c.command_id, p_c.orchard_id, p_in.round_id, p_in.shift_id, p_tree, p_in.claim_id, p_c.person_id, p_result,
    p_share, p_note, v_at, v_seconds, coalesce(v_before.state, 'unpruned'), v_before.share, p_in.how = 'late', p_c.name = 'enter_work',
    p_in.lacked is not null, coalesce(p_in.lacked, '{}'));
  return v_seconds;
end $function$;
comment on function private.keep_visit(private.command,integer,private.coming_in,text,integer,text,timestamp with time zone,integer) is 'Records the visit and what the tree was before it. Seconds are for display only.';

CREATE OR REPLACE FUNCTION private.lacked_without_claim(p_c private.command, p_tree trees, p_shift shifts)
 RETURNS text[]
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_wish private.wish := (p_c.person_id, p_tree.no, 'work', 'prune', false, '{}', '{}', null);
begin
  -- What was missing then nobody knows any more once the shift is closed.
  if p_shift.state <> 'open' then return '{}'; end if;
  return (
    select coalesce(array_agg(x ->> 'code' order by x ->> 'code'), '{}')
    from jsonb_array_elements(private.missing_of_person(p_c.orchard_id, p_c.person_id, 'prune', 'holder')
      || private.missing_for_pruning(p_tree, p_shift, v_wish)) x
    -- That it is dark when it comes in says nothing of when it was done.
    where x ->> 'code' not in ('holds_another', 'dark'));
end $function$;
comment on function private.lacked_without_claim(private.command,trees,shifts) is 'What a claim would have been refused for, as it is now that the work comes in. The work is kept; a lead is told.';

CREATE OR REPLACE FUNCTION private.ladders_lack_light(p_orchard uuid, p_at timestamp with time zone)
 RETURNS boolean
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_soon timestamptz := p_at + private.house_rule(p_orchard, 'light_minutes') * interval '1 minute';
begin
  return (private.is_sun_up(p_orchard, p_at) is false or private.is_sun_up(p_orchard, v_soon) is false)
    and not private.excepts_dark(p_orchard, 'light');
end $function$;
comment on function private.ladders_lack_light(uuid,timestamp with time zone) is 'Down with the light, not after it. Lamps lift darkness for the ground alone.';

CREATE OR REPLACE FUNCTION private.ladders_off_because(p_shift shifts, p_at timestamp with time zone)
 RETURNS text
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_fresh public.weather_readings := private.fresh_weather(p_shift.orchard_id, p_at);
begin
  return coalesce(
    (select o.reason from public.shift_offs o where o.shift_id = p_shift.id and o.what = 'ladder'),
    case when greatest(v_fresh.wind_kmh, v_fresh.gust_kmh) >= private.house_rule(p_shift.orchard_id, 'ladder_gust_kmh')
      then 'wind'
      when private.ladders_lack_light(p_shift.orchard_id, p_at) then 'light' end);
end $function$;

CREATE OR REPLACE FUNCTION private.latest_briefing(p_shift uuid)
 RETURNS integer
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select max(version) from public.briefings where shift_id = p_shift);
end $function$;

CREATE OR REPLACE FUNCTION private.leaving(p_orchard uuid, p_person uuid, p_shift uuid, p_at timestamp with time zone)
 RETURNS jsonb
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
begin
  return jsonb_build_object(
    'left', array[p_person],
    'dealsEnded', private.end_deals(p_orchard, private.deals_left_by(p_person, (
      select array_agg(person_id) from public.attendances where shift_id = p_shift and left_at is null)), p_at));
end $function$;
comment on function private.leaving(uuid,uuid,uuid,timestamp with time zone) is 'Once signed out: the part of the changes, and the end of the deals that were only for them.';

CREATE OR REPLACE FUNCTION private.left_by_closing(p_attendance attendances)
 RETURNS boolean
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return p_attendance.left_at is not null and exists (
    select 1 from public.shifts s where s.id = p_attendance.shift_id and s.closed_at = p_attendance.left_at);
end $function$;

CREATE OR REPLACE FUNCTION private.left_open(p_shift shifts)
 RETURNS jsonb
 LANGUAGE sql
 STABLE
 SET search_path TO ''
AS $function$
  select jsonb_build_object(
    'people', (select coalesce(jsonb_agg(person_id order by arrived_at), '[]')
      from public.attendances where shift_id = p_shift.id and left_at is null),
    'claims', (select coalesce(jsonb_agg(id order by opened_at), '[]')
      from public.claims where orchard_id = p_shift.orchard_id and ended_at is null),
    'tools', (select coalesce(jsonb_agg(tool_no order by tool_no), '[]')
      from public.tool_holdings where orchard_id = p_shift.orchard_id and returned_at is null))
$function$;

CREATE OR REPLACE FUNCTION private.left_without_why(p_left jsonb, p_why jsonb)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_people jsonb := private.without_why(p_left -> 'people', p_why -> 'people');
  v_claims jsonb := private.without_why(p_left -> 'claims', p_why -> 'claims');
  v_tools jsonb := private.without_why(p_left -> 'tools', p_why -> 'tools');
  v_refused jsonb := '[]';
begin
  if v_people <> '[]' then
    v_refused := v_refused || private.code('still_signed_in', jsonb_build_object('people', v_people));
  end if;
  if v_claims <> '[]' then
    v_refused := v_refused || private.code('trees_held', jsonb_build_object('claims', v_claims, 'trees', (
      select coalesce(jsonb_agg(tree_no order by tree_no), '[]') from public.claims
      where tree_no is not null and v_claims ? id::text)));
  end if;
  if v_tools <> '[]' then v_refused := v_refused || private.code('tools_out', jsonb_build_object('tools', v_tools)); end if;
  return v_refused;
end $function$;

CREATE OR REPLACE FUNCTION private.lifted_by(p_shift shifts, p_what text, p_because text, p_at timestamp with time zone)
 RETURNS text[]
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  if p_what <> 'dark' then return private.all_species_offs(p_shift, p_what, p_at); end if;
  return case when p_because = 'day_here' then '{dark, light}' else '{dark}' end::text[];
end $function$;
comment on function private.lifted_by(shifts,text,text,timestamp with time zone) is 'The reasons in force, of a species. Darkness is foreseen: before it falls, too. No ladders by lamps, only where it is day.';

CREATE OR REPLACE FUNCTION private.line_in(p_value jsonb, p_longest integer)
 RETURNS text
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
begin
  return case when jsonb_typeof(p_value) = 'string' and private.is_line(p_value #>> '{}', p_longest) then btrim(p_value #>> '{}') end;
end $function$;

CREATE OR REPLACE FUNCTION private.link_login(p_c private.command)
 RETURNS void
 LANGUAGE sql
 SET search_path TO ''
AS $function$
  insert into public.logins (orchard_id, person_id, user_id, linked_at)
  values (p_c.orchard_id, p_c.person_id, auth.uid(), p_c.at)
  on conflict (user_id, person_id) where ended_at is null do nothing
$function$;

CREATE OR REPLACE FUNCTION private.load_archive(p_archive uuid, p_orchard uuid)
 RETURNS void
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
declare
  v_table record;
  v_columns text[];
  v_given text;
begin
  for v_table in select * from private.archive_tables() order by no loop
    select array_agg(distinct c) into v_columns
    from public.archive_parts p cross join unnest(p.columns) c where p.archive = p_archive and p.table_name = v_table.name;
    continue when v_columns is null;
    -- Whatever the rows say, they are this orchard's.
    v_given := (select string_agg(case when c = 'orchard_id' or (v_table.name = 'orchards' and c = 'id') then '$2' else format('r.%I', c) end, ', ')
      from unnest(v_columns) c);
    execute format('insert into public.%1$I (%2$s) overriding system value
        select %3$s from public.archive_parts p cross join lateral json_populate_recordset(null::public.%1$I, p.body::json) r
        where p.archive = $1 and p.table_name = %4$L',
      v_table.name, (select string_agg(format('%I', c), ', ') from unnest(v_columns) c), v_given, v_table.name)
    using p_archive, p_orchard;
  end loop;
end $function$;

CREATE OR REPLACE FUNCTION private.longest_hours(p_kind text)
 RETURNS integer
 LANGUAGE sql
 IMMUTABLE
 SET search_path TO ''
AS $function$
  select case p_kind when 'join' then 336 when 'role' then 336 when 'device' then 24 when 'recovery' then 50000 end
$function$;
comment on function private.longest_hours(text) is 'A recovery code lies in a drawer for five years; a code for a second phone is used at once.';

CREATE OR REPLACE FUNCTION private.looked_over_state(p_reader private.reader)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_round uuid := (private.work_round(p_reader.orchard_id)).id;
begin
  return (
    with told as (
      select distinct on (l.tree_no) l.*
      from public.looked_over l
      where l.round_id = v_round and (p_reader.is_lead or l.people && p_reader.own)
      order by l.tree_no, l.at desc
    )
    select jsonb_build_object('lookedOver', jsonb_build_object(
      'passed', (
        select coalesce(jsonb_agg(edge), '[]')
        from (select range_agg(int4range(tree_no, tree_no, '[]')) as ranges from told where result = 'passed') passed,
        unnest(passed.ranges) as run,
        lateral (values (lower(run)), (upper(run) - 1)) as edges (edge)),
      'reopened', (
        select coalesce(jsonb_agg(jsonb_build_array(tree_no, reason, by_person_id, private.instant(at)) order by tree_no), '[]')
        from told where result = 'reopened')))
  );
end $function$;
comment on function private.looked_over_state(private.reader) is 'The last that was said of each tree; to a volunteer only of trees they had worked on.';

CREATE OR REPLACE FUNCTION private.looked_over_told(p_reader private.reader, p_tree integer)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select coalesce(jsonb_agg(jsonb_strip_nulls(jsonb_build_object('what', l.result, 'id', l.id, 'at', private.instant(l.at),
      'round', l.round_id, 'person', l.by_person_id, 'reason', l.reason, 'note', l.note))), '[]')
    from public.looked_over l
    where l.orchard_id = p_reader.orchard_id and l.tree_no = p_tree and (p_reader.is_lead or l.people && p_reader.own));
end $function$;

CREATE OR REPLACE FUNCTION private.make_invite(p_id uuid, p_orchard uuid, p_kind text, p_role text, p_code_hash text, p_expires_at timestamp with time zone, p_shift uuid DEFAULT NULL::uuid, p_person uuid DEFAULT NULL::uuid, p_made_by uuid DEFAULT NULL::uuid)
 RETURNS void
 LANGUAGE sql
 SET search_path TO ''
AS $function$
  insert into public.invites (id, orchard_id, code_hash, kind, role, person_id, shift_id, uses_left, made_by, made_at, expires_at)
  values (p_id, p_orchard, p_code_hash, p_kind, p_role, p_person, p_shift, case when p_kind = 'join' then 500 else 1 end,
    p_made_by, clock_timestamp(), p_expires_at)
$function$;
comment on function private.make_invite(uuid,uuid,text,text,text,timestamp with time zone,uuid,uuid,uuid) is 'By itself for the owner: the demo and the links of the first start.';

CREATE OR REPLACE FUNCTION private.make_setup_code(p_code_hash text, p_hours integer DEFAULT 24)
 RETURNS void
 LANGUAGE sql
 SET search_path TO ''
AS $function$
  insert into public.setup_codes (code_hash, made_at, expires_at) values (p_code_hash, now(), now() + p_hours * interval '1 hour')
$function$;
comment on function private.make_setup_code(text,integer) is 'For the owner: printed by the first start on an empty data directory.';

CREATE OR REPLACE FUNCTION private.marks_told(p_reader private.reader, p_tree integer)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select coalesce(jsonb_agg(jsonb_strip_nulls(jsonb_build_object('what', 'mark', 'id', m.id, 'at', private.instant(m.marked_at),
      'round', m.round_id, 'person', m.marked_by, 'endedAt', private.instant(m.ended_at),
      'note', case when p_reader.is_lead or m.ended_at is null then m.note end))), '[]')
    from public.big_cut_marks m where m.orchard_id = p_reader.orchard_id and m.tree_no = p_tree);
end $function$;

CREATE OR REPLACE FUNCTION private.may_give(p_by uuid, p_role text)
 RETURNS boolean
 LANGUAGE sql
 STABLE
 SET search_path TO ''
AS $function$
  select p_role in ('volunteer', 'visitor') or private.has_role(p_by, array['manager'])
$function$;
comment on function private.may_give(uuid,text) is 'A lead adds, changes and removes volunteers and visitors; a manager anybody.';

CREATE OR REPLACE FUNCTION private.may_listen(p_topic text)
 RETURNS boolean
 LANGUAGE sql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
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
$function$;
comment on function private.may_listen(text) is 'The membership look-up behind the policy on realtime.messages.';
grant execute on function private.may_listen(text) to authenticated;

CREATE OR REPLACE FUNCTION private.metres_apart(p_a trees, p_b trees)
 RETURNS numeric
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select case
      when p_a.lat_e7 is not null and p_b.lat_e7 is not null then (
        -- A degree of latitude is 111,320 m to within 0.6 %; good to centimetres at a keep-out's size.
        sqrt(power((p_a.lat_e7 - p_b.lat_e7) / 1e7 * 111320, 2)
           + power((p_a.lon_e7 - p_b.lon_e7) / 1e7 * 111320 * cos(radians(p_a.lat_e7 / 1e7)), 2)))::numeric
      when p_a.block_no = p_b.block_no then (
        select sqrt(power((p_a.row_no - p_b.row_no) * b.row_spacing_m, 2) + power((p_a.place - p_b.place) * b.tree_spacing_m, 2))
        from public.blocks b where b.orchard_id = p_a.orchard_id and b.no = p_a.block_no)
    end);
end $function$;
comment on function private.metres_apart(trees,trees) is 'From positions, else from row and place and the block''s spacings; null between blocks that are not surveyed.';

CREATE OR REPLACE FUNCTION private.missing_after_stop(p_orchard uuid, p_shift shifts, p_person uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_stop public.stops;
begin
  select * into v_stop from public.stops s
  where s.shift_id = p_shift.id and s.resumed_at is null and s.block_no is null
  order by s.called_at limit 1;
  if found then return private.code('stopped', jsonb_build_object('stop', v_stop.id)); end if;

  select * into v_stop from public.stops s
  where s.shift_id = p_shift.id and s.resumed_at is not null
  order by s.called_at desc limit 1;
  -- Who arrived after work went on never heard that stop.
  if found and exists (
      select 1 from public.attendances a
      where a.shift_id = p_shift.id and a.person_id = p_person and a.left_at is null and a.arrived_at < v_stop.resumed_at)
    and not exists (
      select 1 from public.stop_answers x where x.stop_id = v_stop.id and x.person_id = p_person and x.phase = 'resumed')
  then return private.code('stop_not_answered', jsonb_build_object('stop', v_stop.id)); end if;
  return '[]';
end $function$;

CREATE OR REPLACE FUNCTION private.missing_briefing(p_shift shifts, p_person uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_version integer := private.latest_briefing(p_shift.id);
  v_told integer := private.told_version(p_shift.id, p_person);
  v_missing jsonb := '[]';
begin
  -- Given once a shift by a person, and again after "come down now"; each version is signed for, on the phone or read out.
  if v_told = 0 or v_told < private.come_down_version(p_shift.id)
  then v_missing := v_missing || private.code('briefing_not_given'); end if;
  if not exists (
    select 1 from public.briefing_signatures s
    where s.shift_id = p_shift.id and s.person_id = p_person and s.version = v_version
  ) then v_missing := v_missing || private.code('briefing_not_signed', jsonb_build_object('version', v_version)); end if;
  return v_missing;
end $function$;

CREATE OR REPLACE FUNCTION private.missing_consent(p_orchard uuid, p_person people, p_shift shifts)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_missing jsonb := '[]';
begin
  if not exists (
    select 1 from public.consents c join public.rounds r on r.id = p_shift.round_id
    where c.person_id = p_person.id and c.season = r.season
      and c.text_version = private.house_rule(p_orchard, 'consent_version')
      -- Of whoever came in as an adult and is none, the guardian has said nothing yet.
      and (p_person.age_band = 'adult' or c.by_person_id <> p_person.id)
  ) then v_missing := v_missing || private.code('consent_missing'); end if;

  if p_person.age_band = 'minor'
    and (p_person.guardian_id is null or not private.is_here(p_shift.id, p_person.guardian_id))
  then v_missing := v_missing || private.code('adult_missing', jsonb_build_object('person', p_person.guardian_id)); end if;
  return v_missing;
end $function$;

CREATE OR REPLACE FUNCTION private.missing_for_claim(p_orchard uuid, p_wish private.wish)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_shift public.shifts := private.open_shift(p_orchard);
  v_tree public.trees;
  v_missing jsonb;
begin
  select * into v_tree from public.trees where orchard_id = p_orchard and no = p_wish.tree_no;
  if not found then perform private.fail(404, 'no_such_tree', 'There is no tree with this number.'); end if;

  v_missing := private.missing_of_person(p_orchard, p_wish.person_id, p_wish.kind, 'holder')
    || private.missing_of_others(p_orchard, v_shift, p_wish);
  if v_shift.id is null then return v_missing; end if;

  v_missing := v_missing || private.missing_of_tree(v_tree, v_shift, p_wish.person_id, p_wish.kind, p_wish.ladder);
  if p_wish.kind = 'prune' then
    v_missing := v_missing || private.missing_for_pruning(v_tree, v_shift, p_wish);
  end if;
  return v_missing;
end $function$;

CREATE OR REPLACE FUNCTION private.missing_for_height(p_tree trees, p_shift shifts, p_wish private.wish)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_crew uuid[] := array[p_wish.person_id] || p_wish.helpers;
  v_alone boolean := cardinality(p_wish.helpers) = 0 and p_wish.buddy_id is null;
  v_missing jsonb := '[]';
begin
  if p_wish.ladder then
    if p_tree.height_cm is null then v_missing := v_missing || private.code('height_unknown'); end if;
    if not private.has_skill(p_wish.person_id, 'ladder', private.today(p_shift.orchard_id)) then
      v_missing := v_missing || private.code('skill_missing', jsonb_build_object('skill', 'ladder'));
    end if;
    if not private.has_tool(v_crew, 'ladder') then v_missing := v_missing || private.code('no_ladder_in_hand'); end if;
  end if;
  if p_tree.asks_saw then
    if not private.has_skill(p_wish.person_id, 'hand_saw', private.today(p_shift.orchard_id)) then
      v_missing := v_missing || private.code('skill_missing', jsonb_build_object('skill', 'hand_saw'));
    end if;
    if not private.has_tool(v_crew, 'saw') then v_missing := v_missing || private.code('no_saw_in_hand'); end if;
  end if;
  if (p_wish.ladder or p_tree.asks_saw) and v_alone then
    v_missing := v_missing || private.code('two_people_needed');
  end if;
  return v_missing;
end $function$;

CREATE OR REPLACE FUNCTION private.missing_for_pruning(p_tree trees, p_shift shifts, p_wish private.wish)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_missing jsonb := private.missing_for_height(p_tree, p_shift, p_wish);
begin
  -- The named holder without the skill; whoever comes along as helper learns.
  if not private.has_skill(p_wish.person_id, 'prunes_alone', private.today(p_shift.orchard_id))
    and not exists (select 1 from public.people p where p.id = p_wish.person_id and private.is_lead_role(p.role))
    and not exists (select 1 from public.big_cut_marks m
      where m.round_id = p_shift.round_id and m.tree_no = p_tree.no and m.ended_at is null)
  then v_missing := v_missing || private.code('not_marked'); end if;

  if (p_wish.ladder or p_tree.asks_saw or private.asks_ladder(p_tree)) and exists (
      select 1 from public.people p
      where p.id = any (array[p_wish.person_id] || p_wish.helpers || p_wish.learners) and p.age_band = 'minor')
  then v_missing := v_missing || private.code('minor_ladder_saw'); end if;
  return v_missing;
end $function$;

CREATE OR REPLACE FUNCTION private.missing_of_buddy(p_shift shifts, p_person uuid, p_buddy uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  if p_buddy is null or p_shift.id is null then return '[]'; end if;
  if p_buddy = p_person or not private.is_here(p_shift.id, p_buddy) or private.on_break(p_shift.id, p_buddy) then
    return private.code('buddy_not_here', jsonb_build_object('person', p_buddy));
  end if;
  -- One code for both, so that nobody hears from it who is under age.
  if not exists (select 1 from public.people where id = p_buddy and age_band = 'adult' and role <> 'visitor') then
    return private.code('buddy_not_fit', jsonb_build_object('person', p_buddy));
  end if;
  return '[]';
end $function$;
comment on function private.missing_of_buddy(shifts,uuid,uuid) is 'A buddy is an adult of the crew who is here and not on a break.';

CREATE OR REPLACE FUNCTION private.missing_of_others(p_orchard uuid, p_shift shifts, p_wish private.wish)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_other record;
  v_codes jsonb;
  v_missing jsonb := '[]';
begin
  for v_other in
    select x as id, 'helper' as part from unnest(p_wish.helpers) x
    union all select x, 'learner' from unnest(p_wish.learners) x
  loop
    v_codes := private.missing_of_person(p_orchard, v_other.id, 'other', v_other.part);
    if v_codes <> '[]' then
      v_missing := v_missing || private.code('helper_not_ready', jsonb_build_object(
        'person', v_other.id, 'codes', (select jsonb_agg(c -> 'code') from jsonb_array_elements(v_codes) c)));
    end if;
  end loop;
  return v_missing || private.missing_of_buddy(p_shift, p_wish.person_id, p_wish.buddy_id);
end $function$;

CREATE OR REPLACE FUNCTION private.missing_of_person(p_orchard uuid, p_person uuid, p_kind text, p_part text)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_shift public.shifts := private.open_shift(p_orchard);
  v_person public.people;
  v_holds public.claims := private.open_claim_of(p_person);
  v_missing jsonb := '[]';
begin
  select * into v_person from public.people where orchard_id = p_orchard and id = p_person and removed_at is null;
  if not found then perform private.fail(404, 'no_such_person', 'This person is not in the orchard.'); end if;

  if v_person.role = 'visitor' then v_missing := v_missing || private.code('visitors_do_not_prune'); end if;
  if v_person.admitted_at is null then v_missing := v_missing || private.code('not_admitted'); end if;
  if v_shift.id is null then return v_missing || private.code('shift_not_open'); end if;

  v_missing := v_missing || private.missing_after_stop(p_orchard, v_shift, p_person)
    || private.weather_stops(p_orchard, now());
  if not private.is_here(v_shift.id, p_person) then
    v_missing := v_missing || private.code('not_arrived');
  elsif private.on_break(v_shift.id, p_person) then
    v_missing := v_missing || private.code('on_break');
  end if;
  v_missing := v_missing
    || private.missing_consent(p_orchard, v_person, v_shift)
    || private.missing_briefing(v_shift, p_person);
  if not private.equipment_passed(v_shift.id, p_person) then
    v_missing := v_missing || private.code('equipment_not_checked');
  end if;
  if p_part <> 'learner' then v_missing := v_missing || private.missing_tools(p_person, p_kind); end if;
  if v_holds.id is not null then
    v_missing := v_missing || private.holds_another(p_person);
  end if;
  return v_missing;
end $function$;

CREATE OR REPLACE FUNCTION private.missing_of_row(p_orchard uuid, p_shift shifts, p_block integer, p_row integer)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_claim public.claims;
  v_wood integer;
  v_open integer;
  v_hazard integer;
  v_missing jsonb := private.stopped_in(p_block, p_shift);
begin
  select * into v_claim from public.claims
  where orchard_id = p_orchard and block_no = p_block and row_no = p_row and tree_no is null and ended_at is null;
  if found then
    v_missing := v_missing || private.code('row_held', jsonb_build_object('row', private.row_of(v_claim), 'person', (
      select person_id from public.claim_people where claim_id = v_claim.id and part = 'holder' and to_at is null)));
  end if;
  select count(*), count(*) filter (where hazard is null), min(hazard) into v_wood, v_open, v_hazard
  from (select private.hazard_at(w) as hazard from private.wood_in_row(p_orchard, p_shift.round_id, p_block, p_row) w) wood;
  if v_wood = 0 then return v_missing || private.code('nothing_to_haul'); end if;
  -- Wood near a hazard stays where it is. Where only such wood lies, nobody has business in the row.
  if v_open = 0 then v_missing := v_missing || private.code('inside_keep_out', jsonb_build_object('tree', v_hazard)); end if;
  return v_missing;
end $function$;

CREATE OR REPLACE FUNCTION private.missing_of_tree(p_tree trees, p_shift shifts, p_person uuid, p_kind text, p_ladder boolean)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_round public.rounds;
  v_dealt uuid[] := private.dealt_to(p_tree.orchard_id, p_tree.no);
  v_mine boolean := coalesce(p_person = any (v_dealt), false);
  v_holder uuid := private.held_by(p_tree.orchard_id, p_tree.no);
  v_near integer;
  v_missing jsonb;
begin
  select * into v_round from public.rounds where id = p_shift.round_id;
  v_missing := private.closed_for_work(p_tree, v_round);
  -- Brush is carried away from trees that are done.
  if p_kind = 'brush' then
    select coalesce(jsonb_agg(x), '[]') into v_missing from jsonb_array_elements(v_missing) x where x ->> 'code' <> 'tree_done';
  end if;
  if v_holder is not null then
    v_missing := v_missing || private.code('tree_held', jsonb_build_object('tree', p_tree.no, 'person', v_holder));
  end if;
  if v_dealt is not null and not v_mine then
    v_missing := v_missing || private.code('dealt_to_another', jsonb_build_object('people', v_dealt));
  end if;
  if p_kind = 'prune' then v_missing := v_missing || private.put_off(p_tree, p_shift, p_ladder, now()); end if;
  v_missing := v_missing || private.stopped_in(p_tree.block_no, p_shift);
  if private.has_disease_flag(p_tree.orchard_id, p_tree.no) and not v_mine then
    v_missing := v_missing || private.code('disease_not_dealt');
  end if;
  v_near := private.overhead_next_to(p_tree, p_kind = 'prune' and (p_ladder or p_tree.asks_saw));
  if v_near is not null and not v_mine then
    v_missing := v_missing || private.code('works_next_to_it', jsonb_build_object('tree', v_near));
  end if;
  return v_missing;
end $function$;

CREATE OR REPLACE FUNCTION private.missing_on_paper(p_shift shifts, p_person uuid, p_at timestamp with time zone)
 RETURNS text[]
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_person public.people;
begin
  select * into v_person from public.people where orchard_id = p_shift.orchard_id and id = p_person;
  return array(
    select missing ->> 'code' from jsonb_array_elements(
      private.missing_consent(p_shift.orchard_id, v_person, p_shift) || private.missing_briefing(p_shift, p_person)) missing
    -- Whether the adult stood there then is not known now.
    where missing ->> 'code' <> 'adult_missing'
    union all
    select 'equipment_not_checked' where not private.equipment_passed(p_shift.id, p_person)
    union all
    select 'not_arrived' where not exists (
      select 1 from public.attendances a
      where a.shift_id = p_shift.id and a.person_id = p_person and p_at between a.arrived_at and coalesce(a.left_at, p_at)));
end $function$;
comment on function private.missing_on_paper(shifts,uuid,timestamp with time zone) is 'What this person lacked when they worked, as codes; it refuses nothing any more.';

CREATE OR REPLACE FUNCTION private.missing_to_take_over(p_orchard uuid, p_claim claims, p_to uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_tree public.trees;
  v_wish private.wish;
  v_missing jsonb;
begin
  select * into v_tree from public.trees where orchard_id = p_orchard and no = p_claim.tree_no;
  v_wish := (p_to, p_claim.tree_no, p_claim.purpose, p_claim.kind, p_claim.ladder,
    (select coalesce(array_agg(person_id), '{}') from public.claim_people
     where claim_id = p_claim.id and to_at is null and part = 'helper' and person_id <> p_to), '{}'::uuid[], p_claim.buddy_id);
  -- Who went home, or takes the tree over, is no company any more.
  if private.missing_of_buddy(private.open_shift(p_orchard), p_to, p_claim.buddy_id) <> '[]' then v_wish.buddy_id := null; end if;
  v_missing := private.missing_of_person(p_orchard, p_to, p_claim.kind, 'holder')
    || private.closed_around_claim(p_claim, v_tree, private.open_shift(p_orchard));
  if v_tree.no is not null and p_claim.kind = 'prune' then
    v_missing := v_missing || private.missing_for_pruning(v_tree, private.open_shift(p_orchard), v_wish);
  end if;
  -- Who helps at this tree already does not hold another one.
  if private.part_in(p_claim.id, p_to) is not null then
    select coalesce(jsonb_agg(x), '[]') into v_missing from jsonb_array_elements(v_missing) x where x ->> 'code' <> 'holds_another';
  end if;
  return v_missing;
end $function$;

CREATE OR REPLACE FUNCTION private.missing_tools(p_person uuid, p_kind text)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    with in_hand as (
      select t.* from public.tools t
      join public.tool_holdings h on h.orchard_id = t.orchard_id and h.tool_no = t.no
      where h.person_id = p_person and h.returned_at is null
    )
    select case when p_kind = 'prune' and not exists (
        select 1 from in_hand where kind in ('pruner', 'lopper', 'saw', 'pole_pruner'))
      then private.code('no_tool_in_hand') else '[]'::jsonb end
    || coalesce((select jsonb_agg(private.code('tool_failed', jsonb_build_object('tool', no)) -> 0 order by no)
        from in_hand where state = 'failed'), '[]')
    || coalesce((select jsonb_agg(private.code('tool_not_clean', jsonb_build_object('tool', no)) -> 0 order by no)
        from in_hand where not clean), '[]'));
end $function$;

CREATE OR REPLACE FUNCTION private.move_channel(p_orchard uuid)
 RETURNS void
 LANGUAGE sql
 SET search_path TO ''
AS $function$
  update public.orchard_heads set channel_epoch = channel_epoch + 1 where orchard_id = p_orchard
$function$;
comment on function private.move_channel(uuid) is 'After the event that says so has gone out on the old topic: a joined channel keeps its right until its token ends.';

CREATE OR REPLACE FUNCTION private.names_of(p_orchard uuid, p_people uuid[])
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select coalesce(jsonb_object_agg(id, name), '{}') from public.people
    where orchard_id = p_orchard and id = any (p_people) and name is not null);
end $function$;
comment on function private.names_of(uuid,uuid[]) is 'Also of people who left; who was forgotten has none.';

CREATE OR REPLACE FUNCTION private.need(p_ok boolean, p_message text)
 RETURNS void
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
begin
  if p_ok is not true then perform private.fail(400, 'malformed', p_message); end if;
end $function$;
comment on function private.need(boolean,text) is 'Null counts as not ok, so that a missing argument is malformed too.';

CREATE OR REPLACE FUNCTION private.need_hours(p_date date, p_starts_at timestamp with time zone, p_ends_at timestamp with time zone, p_signal text)
 RETURNS void
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  perform private.need(private.is_day(p_date), 'p_date: a day.');
  perform private.need(private.is_moment(p_starts_at) and private.is_moment(p_ends_at)
    and p_ends_at > p_starts_at and p_ends_at - p_starts_at <= interval '24 hours', 'p_starts_at, p_ends_at: within 24 hours, in order.');
  perform private.need(p_signal in ('horn', 'whistle', 'voice'), 'p_signal: horn, whistle or voice.');
end $function$;

CREATE OR REPLACE FUNCTION private.need_person(p_orchard uuid, p_name text, p_role text, p_age_band text, p_guardian uuid, p_phone text)
 RETURNS void
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
begin
  perform private.need(private.is_line(p_name, 60), 'p_name: up to 60 characters.');
  perform private.need(p_role in ('manager', 'lead', 'volunteer', 'visitor'), 'p_role: manager, lead, volunteer or visitor.');
  perform private.need(p_age_band in ('adult', 'minor'), 'p_age_band: adult or minor.');
  perform private.need(p_age_band = 'adult' or not private.is_lead_role(p_role), 'A minor is no lead.');
  perform private.need(p_phone is null or p_phone = '' or private.is_line(p_phone, 40), 'p_phone: up to 40 characters.');
  if p_guardian is null then return; end if;
  perform private.need(p_age_band = 'minor', 'Only a minor has a guardian.');
  perform private.need((private.person_or_fail(p_orchard, p_guardian)).age_band = 'adult', 'A guardian is an adult.');
end $function$;

CREATE OR REPLACE FUNCTION private.need_position(p_lat_e7 integer, p_lon_e7 integer)
 RETURNS void
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
begin
  perform private.need((p_lat_e7 is null) = (p_lon_e7 is null) and coalesce(p_lat_e7 between -900000000 and 900000000, true)
    and coalesce(p_lon_e7 between -1800000000 and 1800000000, true), 'p_lat_e7 and p_lon_e7: a position, or both null.');
end $function$;

CREATE OR REPLACE FUNCTION private.next_channel(p_orchard uuid)
 RETURNS integer
 LANGUAGE sql
 STABLE
 SET search_path TO ''
AS $function$ select channel_epoch + 1 from public.orchard_heads where orchard_id = p_orchard $function$;

CREATE OR REPLACE FUNCTION private.next_tree(p_orchard uuid, p_person uuid, p_from integer)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_shift public.shifts := private.open_shift(p_orchard);
  v_from public.trees;
  v_wish private.wish;
  v_next record;
begin
  if v_shift.id is null or private.missing_of_person(p_orchard, p_person, 'prune', 'holder') <> '[]' then
    return null;
  end if;
  select * into v_from from public.trees where orchard_id = p_orchard and no = p_from;

  for v_next in
    select t.no, d.people is not null as dealt, (t.block_no = v_from.block_no and t.row_no = v_from.row_no) as same_row
    from public.trees t
    join public.rounds r on r.id = v_shift.round_id and t.species = any (r.species)
    join public.blocks b on b.orchard_id = t.orchard_id and b.no = t.block_no
    left join public.deals d on d.orchard_id = t.orchard_id and d.tree_no = t.no and d.ended_at is null
    left join public.tree_work w on w.round_id = r.id and w.tree_no = t.no
    left join public.claims c on c.orchard_id = t.orchard_id and c.tree_no = t.no and c.ended_at is null
    where t.orchard_id = p_orchard and t.no <> p_from and t.life = 'standing' and c.id is null
      and (w.state is null or w.state = 'begun') and (d.people is null or p_person = any (d.people))
    order by (d.people is not null) desc, (t.block_no = v_from.block_no) desc, (t.row_no = v_from.row_no) desc,
      abs(t.row_no - v_from.row_no) * b.row_spacing_m + abs(t.place - v_from.place) * b.tree_spacing_m, t.no
    limit 60
  loop
    v_wish := (p_person, v_next.no, 'work', 'prune', false, '{}', '{}', null);
    if private.missing_for_claim(p_orchard, v_wish) = '[]' then
      return jsonb_build_object('tree', v_next.no, 'why',
        case when v_next.dealt then 'dealt' when v_next.same_row then 'same_row' else 'nearest' end);
    end if;
  end loop;
  return null;
end $function$;
comment on function private.next_tree(uuid,uuid,integer) is '{"tree", "why": dealt, same_row or nearest}; null when none of the sixty nearest can be claimed.';

CREATE OR REPLACE FUNCTION private.no_such_tool(p_tools integer[])
 RETURNS jsonb
 LANGUAGE sql
 IMMUTABLE
 SET search_path TO ''
AS $function$ select private.code('no_such_tool', jsonb_build_object('tools', p_tools)) $function$;

CREATE OR REPLACE FUNCTION private.not_free(p_person uuid, p_shift uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return private.holds_another(p_person)
    || case when not private.is_here(p_shift, p_person) then private.code('not_arrived')
       when private.on_break(p_shift, p_person) then private.code('on_break') else '[]'::jsonb end;
end $function$;

CREATE OR REPLACE FUNCTION private.not_planned(p_shift shifts)
 RETURNS jsonb
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
begin
  return case when p_shift.state = 'open' then private.code('shift_open') else private.shift_over(p_shift) end;
end $function$;

CREATE OR REPLACE FUNCTION private.note_on_flag(p_c private.command, p_flag uuid, p_note text)
 RETURNS integer
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
begin
  insert into public.flag_notes (id, orchard_id, flag_id, person_id, at, note)
  select p_c.command_id, p_c.orchard_id, p_flag, p_c.by_person_id, p_c.at, btrim(p_note)
  where btrim(p_note) <> '';
  return (select count(*) from public.flag_notes where flag_id = p_flag);
end $function$;
comment on function private.note_on_flag(private.command,uuid,text) is 'Gives how many there are now.';

CREATE OR REPLACE FUNCTION private.number_in(p_value jsonb, p_least numeric, p_most numeric)
 RETURNS numeric
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
begin
  return case when jsonb_typeof(p_value) = 'number' then
    case when round(p_value::numeric, 2) between p_least and p_most then round(p_value::numeric, 2) end end;
end $function$;

CREATE OR REPLACE FUNCTION private.numbers_said(p_numbers jsonb)
 RETURNS TABLE(no integer, row_no integer, place integer)
 LANGUAGE sql
 IMMUTABLE
 SET search_path TO ''
AS $function$
  select private.whole_in(n -> 0, 1, 2000000000), private.whole_in(n -> 1, 1, 9999), private.whole_in(n -> 2, 1, 9999)
  from jsonb_array_elements(p_numbers) n
$function$;

CREATE OR REPLACE FUNCTION private.on_break(p_shift uuid, p_person uuid)
 RETURNS boolean
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select exists (
      select 1 from public.attendances a join public.breaks b on b.attendance_id = a.id
      where a.shift_id = p_shift and a.person_id = p_person and a.left_at is null and b.to_at is null));
end $function$;

CREATE OR REPLACE FUNCTION private.open_claim(p_c private.command, p_shift shifts, p_wish private.wish, p_opened_at timestamp with time zone, p_ended_at timestamp with time zone DEFAULT NULL::timestamp with time zone, p_ended_how text DEFAULT NULL::text)
 RETURNS void
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
begin
  insert into public.claims (id, orchard_id, round_id, shift_id, tree_no, purpose, kind, ladder, buddy_id, opened_at, ended_at, ended_how)
  values (p_c.command_id, p_c.orchard_id, p_shift.round_id, p_shift.id, p_wish.tree_no, p_wish.purpose, p_wish.kind,
          p_wish.ladder, p_wish.buddy_id, p_opened_at, p_ended_at, p_ended_how);
  insert into public.claim_people (orchard_id, claim_id, person_id, part, from_at, to_at)
  select p_c.orchard_id, p_c.command_id, x.id, x.part, p_opened_at, p_ended_at
  from (select p_wish.person_id as id, 'holder' as part
        union all select h, 'helper' from unnest(p_wish.helpers) h
        union all select l, 'learner' from unnest(p_wish.learners) l) x;
end $function$;
comment on function private.open_claim(private.command,shifts,private.wish,timestamp with time zone,timestamp with time zone,text) is 'p_ended_at: it was over before the referee heard of it.';

CREATE OR REPLACE FUNCTION private.open_claim_of(p_person uuid)
 RETURNS claims
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select c from public.claims c join public.claim_people cp on cp.claim_id = c.id
    where cp.person_id = p_person and cp.to_at is null and c.ended_at is null);
end $function$;

CREATE OR REPLACE FUNCTION private.open_shift(p_orchard uuid)
 RETURNS shifts
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select s from public.shifts s where s.orchard_id = p_orchard and s.state = 'open');
end $function$;

CREATE OR REPLACE FUNCTION private.orchard_place(p_orchard uuid)
 RETURNS point
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_place point;
begin
  select point(first_lat_e7 / 1e7, first_lon_e7 / 1e7) into v_place
  from public.blocks where orchard_id = p_orchard and first_lat_e7 is not null order by no limit 1;
  if v_place is null then
    select point(lat_e7 / 1e7, lon_e7 / 1e7) into v_place
    from public.trees where orchard_id = p_orchard and lat_e7 is not null order by no limit 1;
  end if;
  return v_place;
end $function$;
comment on function private.orchard_place(uuid) is '(latitude, longitude), as positionOf of lib/events/ground.ts. Null: nobody knows, so nobody knows whether it is dark.';

CREATE OR REPLACE FUNCTION private.orchard_state(p_reader private.reader)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select jsonb_build_object(
      'orchardId', o.id, 'epoch', h.epoch, 'head', h.head, 'channelEpoch', h.channel_epoch,
      'sheetVersion', h.sheet_version, 'minClient', o.min_client,
      'me', jsonb_build_object('personId', p_reader.person_id, 'role', p_reader.role),
      'orchard', jsonb_build_object(
        'name', o.name, 'timeZone', o.time_zone, 'language', o.language, 'units', o.units,
        'houseRules', private.default_house_rules() || o.house_rules, 'emergencyVersion', o.emergency_version,
        'aerialVersion', o.aerial_version))
    from public.orchards o
    join public.orchard_heads h on h.orchard_id = o.id
    where o.id = p_reader.orchard_id
  );
end $function$;

CREATE OR REPLACE FUNCTION private.overhead_next_to(p_tree trees, p_brings_overhead boolean)
 RETURNS integer
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select t.no from public.claims c
    join public.trees t on t.orchard_id = c.orchard_id and t.no = c.tree_no
    where c.orchard_id = p_tree.orchard_id and c.ended_at is null
      and (p_brings_overhead or c.ladder or t.asks_saw) and private.are_neighbours(p_tree, t)
    order by t.no limit 1);
end $function$;
comment on function private.overhead_next_to(trees,boolean) is 'A held neighbour, where ladder or saw work goes on at either tree.';

CREATE OR REPLACE FUNCTION private.own_person(p_invite invites, p_name text)
 RETURNS people
 LANGUAGE sql
 STABLE
 SET search_path TO ''
AS $function$
  select p from public.people p join public.logins l on l.person_id = p.id and l.ended_at is null
  where l.user_id = auth.uid() and p.orchard_id = p_invite.orchard_id and p.removed_at is null
    and case when p_invite.person_id is null then p.name = p_name and p.role = p_invite.role else p.id = p_invite.person_id end
  order by l.linked_at limit 1
$function$;
comment on function private.own_person(invites,text) is 'Whom this login came in as before, by the same name.';

CREATE OR REPLACE FUNCTION private.part_in(p_claim uuid, p_person uuid)
 RETURNS text
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select part from public.claim_people where claim_id = p_claim and person_id = p_person and to_at is null);
end $function$;

CREATE OR REPLACE FUNCTION private.paused_s(p_visit visits)
 RETURNS integer
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_at_it tstzmultirange := tstzmultirange(tstzrange(p_visit.at - make_interval(secs => greatest(p_visit.seconds, 0)), p_visit.at));
  v_paused tstzmultirange;
begin
  select range_agg(tstzrange(x.from_at, greatest(coalesce(x.to_at, p_visit.at), x.from_at))) into v_paused
  from (
    select b.from_at, b.to_at from public.breaks b join public.attendances a on a.id = b.attendance_id
    where a.shift_id = p_visit.shift_id and a.person_id = p_visit.person_id
    union all
    select s.called_at, s.resumed_at from public.stops s
    where s.shift_id = p_visit.shift_id and (s.block_no is null or s.block_no = (
      select t.block_no from public.trees t where t.orchard_id = p_visit.orchard_id and t.no = p_visit.tree_no))
  ) x;
  return (
    select coalesce(round(sum(extract(epoch from upper(r) - lower(r)))), 0)::integer
    from unnest(v_at_it * coalesce(v_paused, '{}')) r);
end $function$;
comment on function private.paused_s(visits) is 'Of the time at the tree what was a break or a stop; a stop counts until that block goes on.';

CREATE OR REPLACE FUNCTION private.people_at(p_claim claims)
 RETURNS numeric
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_whole numeric := extract(epoch from p_claim.ended_at - p_claim.opened_at);
begin
  if v_whole is null or v_whole <= 0 then return 1; end if;
  return (
    select greatest(1, round(coalesce(sum(extract(epoch from
      least(coalesce(cp.to_at, p_claim.ended_at), p_claim.ended_at) - greatest(cp.from_at, p_claim.opened_at))), 0) / v_whole, 2))
    from public.claim_people cp where cp.claim_id = p_claim.id and cp.part <> 'learner');
end $function$;
comment on function private.people_at(claims) is 'How many worked on it, on average over its time: who helped for half of it counts half. Learners look on.';

CREATE OR REPLACE FUNCTION private.people_in(p_claim uuid)
 RETURNS uuid[]
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select array_agg(person_id) from public.claim_people where claim_id = p_claim and to_at is null);
end $function$;

CREATE OR REPLACE FUNCTION private.people_state(p_reader private.reader)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    with here as (
      select p.*, p_reader.is_lead or p.id = any (p_reader.own) as told
      from public.people p
      where p.orchard_id = p_reader.orchard_id and p.removed_at is null
    )
    select jsonb_build_object(
      'people', (
        select coalesce(jsonb_object_agg(id, jsonb_build_object('role', role, 'admitted', admitted_at is not null)), '{}')
        from here),
      'minors', (
        select coalesce(jsonb_object_agg(id, jsonb_build_object('guardianId', guardian_id)), '{}')
        from here where told and age_band = 'minor'),
      'notFound', (
        select coalesce(jsonb_object_agg(a.person_id, a.shift_id), '{}')
        from public.attendances a join here on here.id = a.person_id
        where p_reader.is_lead and a.orchard_id = p_reader.orchard_id and a.not_found and a.found_at is null),
      'skills', (
        select coalesce(jsonb_object_agg(person_id, skills), '{}')
        from (
          select s.person_id, jsonb_object_agg(s.skill, s.until) as skills
          from public.skills s join here on here.id = s.person_id
          where here.told and s.ended_at is null
          group by s.person_id) of_each),
      'consents', (
        select coalesce(jsonb_object_agg(person_id, season), '{}')
        from (
          select c.person_id, max(c.season) as season
          from public.consents c join here on here.id = c.person_id
          where here.told and c.text_version = private.house_rule(p_reader.orchard_id, 'consent_version')
            and (here.age_band = 'adult' or c.by_person_id <> c.person_id)
          group by c.person_id) of_each))
  );
end $function$;

CREATE OR REPLACE FUNCTION private.person_or_fail(p_orchard uuid, p_person uuid)
 RETURNS people
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_person public.people;
begin
  select * into v_person from public.people where orchard_id = p_orchard and id = p_person and removed_at is null;
  if not found then perform private.fail(404, 'no_such_person', 'This person is not in the orchard.'); end if;
  return v_person;
end $function$;

CREATE OR REPLACE FUNCTION private.photos_told(p_reader private.reader, p_tree integer)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select coalesce(jsonb_agg(jsonb_strip_nulls(jsonb_build_object('what', 'photo', 'id', p.id, 'at', private.instant(p.added_at),
      'person', p.taken_by, 'purpose', p.purpose))), '[]')
    from public.photos p
    left join public.flags f on f.id = p.flag_id
    left join public.big_cut_marks m on m.id = p.mark_id
    left join public.claims c on c.id = p.claim_id
    where p.orchard_id = p_reader.orchard_id and coalesce(p.tree_no, f.tree_no, m.tree_no, c.tree_no) = p_tree
      -- As private.read_photo.
      and (p_reader.is_lead or p.taken_by = any (p_reader.own) or m.ended_at is null and m.id is not null));
end $function$;

CREATE OR REPLACE FUNCTION private.planned_in(p_round uuid)
 RETURNS uuid[]
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return array(select id from public.shifts where round_id = p_round and state = 'scheduled' order by starts_at, id);
end $function$;

CREATE OR REPLACE FUNCTION private.put_down(p_c private.command, p_claim uuid, p_how text, p_note text DEFAULT NULL::text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
declare
  v_claim public.claims;
  v_work public.tree_work;
  v_holder uuid;
  v_dirty jsonb;
begin
  select * into v_claim from public.claims where id = p_claim;
  v_dirty := jsonb_build_object('dirty', private.soil_tools(p_c.orchard_id, v_claim.tree_no, private.people_in(p_claim)));
  select person_id into v_holder from public.claim_people where claim_id = p_claim and to_at is null and part = 'holder';
  perform private.end_claim(p_claim, p_c.at, p_how, p_note);
  -- Brush does not prune a tree, and a tree that was begun or done before stays what it was.
  if v_claim.tree_no is null or v_claim.kind <> 'prune' then return v_dirty; end if;
  select * into v_work from public.tree_work where round_id = v_claim.round_id and tree_no = v_claim.tree_no;

  -- Without the note: what a lead wrote about somebody is not a note on the tree, which everybody may read.
  if v_holder is not null then
    insert into public.visits (id, orchard_id, round_id, shift_id, tree_no, claim_id, person_id, result, share, at, before_state, before_share)
    values (gen_random_uuid(), v_claim.orchard_id, v_claim.round_id, v_claim.shift_id, v_claim.tree_no, p_claim, v_holder,
      'begun', v_work.share, p_c.at, v_work.state, v_work.share);
  end if;
  if v_work.state is not null then return v_dirty; end if;
  insert into public.tree_work (orchard_id, round_id, tree_no, state, changed_at)
  values (v_claim.orchard_id, v_claim.round_id, v_claim.tree_no, 'begun', p_c.at);
  return v_dirty || jsonb_build_object('work', jsonb_build_array(v_claim.tree_no, 'begun', null));
end $function$;
comment on function private.put_down(private.command,uuid,text,text) is 'Ends a claim that nobody finished. The tree counts as begun: somebody has to look. Gives {work, dirty}, its part of the changes.';

CREATE OR REPLACE FUNCTION private.put_down_all(p_c private.command, p_claims uuid[], p_how text, p_notes jsonb DEFAULT '{}'::jsonb)
 RETURNS jsonb
 LANGUAGE sql
 SET search_path TO ''
AS $function$
  select jsonb_build_object(
    'claimsEnded', coalesce(jsonb_agg(claim), '[]'),
    'work', coalesce(jsonb_agg(changed -> 'work') filter (where changed ? 'work'), '[]'),
    'dirty', coalesce(jsonb_path_query_array(jsonb_agg(changed -> 'dirty'), '$[*][*] ? (@ != null)'), '[]'))
  from (
    select claim, private.put_down(p_c, claim, p_how, p_notes ->> claim::text) as changed
    from unnest(p_claims) claim
    offset 0) put_down
$function$;

CREATE OR REPLACE FUNCTION private.put_off(p_tree trees, p_shift shifts, p_ladder boolean, p_at timestamp with time zone)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_offs text[] := private.species_offs(p_shift, p_tree.species, p_at);
  v_ladders text := case when p_ladder then private.ladders_off_because(p_shift, p_at) end;
begin
  return case when v_offs = '{}' then '[]'::jsonb
      else private.code('species_off', jsonb_build_object('species', p_tree.species, 'reason', v_offs[1])) end
    || case when v_ladders is null then '[]'::jsonb else private.code('ladders_off', jsonb_build_object('reason', v_ladders)) end;
end $function$;
comment on function private.put_off(trees,shifts,boolean,timestamp with time zone) is 'Why nobody prunes this tree now, as refusals.';

CREATE OR REPLACE FUNCTION private.read_breaks(p_breaks jsonb)
 RETURNS tstzrange[]
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  if jsonb_typeof(p_breaks) is distinct from 'array' or jsonb_array_length(p_breaks) > 12 then return null; end if;
  return array(
    select tstzrange((x ->> 0)::timestamptz, (x ->> 1)::timestamptz) from jsonb_array_elements(p_breaks) x);
exception when data_exception or invalid_datetime_format or datetime_field_overflow then
  return null;
end $function$;
comment on function private.read_breaks(jsonb) is '[[from, to]] in order; null where it is none.';

CREATE OR REPLACE FUNCTION private.record_of_people(p_shift shifts, p_now timestamp with time zone)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    with helped as (
      select cp.person_id, count(*) as trees
      from public.claims c join public.claim_people cp on cp.claim_id = c.id and cp.part = 'helper' and cp.to_at = c.ended_at
      where c.shift_id = p_shift.id and c.ended_how = 'finished' and c.kind = 'prune' and c.tree_no is not null
      group by cp.person_id
    ), visited as (
      select v.person_id, count(*) filter (where v.result = 'also_worked') as also, count(*) filter (where v.from_paper) as paper
      from public.visits v where v.shift_id = p_shift.id and v.undone_at is null group by v.person_id
    ), pruned as (
      select t.person_id, count(*) filter (where t.result = 'done') as done, count(*) filter (where t.result = 'begun') as begun
      from private.trees_in(p_shift) t group by t.person_id
    ), everybody as (
      select a.person_id from public.attendances a where a.shift_id = p_shift.id
      union select person_id from visited
      union select person_id from helped
    )
    select coalesce(jsonb_agg(jsonb_build_object(
      'person', e.person_id, 'stays', coalesce(h.stays, '[]'), 'hereS', coalesce(h.here_s, 0), 'breakS', coalesce(h.break_s, 0),
      'done', coalesce(p.done, 0), 'begun', coalesce(p.begun, 0), 'helped', coalesce(x.trees, 0),
      'alsoWorked', coalesce(v.also, 0), 'fromPaper', coalesce(v.paper, 0)) order by e.person_id), '[]')
    from everybody e
    left join private.hours_in(p_shift, p_now) h using (person_id)
    left join pruned p using (person_id)
    left join helped x using (person_id)
    left join visited v using (person_id));
end $function$;

CREATE OR REPLACE FUNCTION private.record_of_stops(p_shift uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select coalesce(jsonb_agg(jsonb_build_object(
      'stop', s.id, 'block', s.block_no, 'calledBy', s.called_by, 'calledAt', private.instant(s.called_at),
      'resumedAt', private.instant(s.resumed_at),
      'answers', (
        select coalesce(jsonb_agg(jsonb_build_object('person', a.person_id, 'answer', a.phase, 'at', private.instant(a.at),
          'byLead', a.how = 'seen_by_lead') order by a.at, a.person_id, a.phase), '[]')
        from public.stop_answers a where a.stop_id = s.id)) order by s.called_at), '[]')
    from public.stops s where s.shift_id = p_shift);
end $function$;

CREATE OR REPLACE FUNCTION private.refuse(p_c private.command, p_refused jsonb, p_extra jsonb DEFAULT '{}'::jsonb)
 RETURNS jsonb
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
begin
  return private.store_answer(p_c, jsonb_build_object('refused', p_refused) || jsonb_strip_nulls(p_extra));
end $function$;
comment on function private.refuse(private.command,jsonb,jsonb) is 'A refusal by rule is an answer: {"refused": [{"code", "detail"}]}, stored like a success.';

CREATE OR REPLACE FUNCTION private.rested_at(p_attendance attendances)
 RETURNS timestamp with time zone
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return coalesce((
    select max(to_at) from public.breaks
    where attendance_id = p_attendance.id and to_at - from_at >= interval '10 minutes'), p_attendance.arrived_at);
end $function$;
comment on function private.rested_at(attendances) is 'Since when somebody has worked. Cal. Code Regs. Title 8 §3395 (e)(6): ten minutes net; a shorter break is no rest.';

CREATE OR REPLACE FUNCTION private.return_tools(p_c private.command, p_tools integer[], p_why jsonb DEFAULT '{}'::jsonb)
 RETURNS jsonb
 LANGUAGE sql
 SET search_path TO ''
AS $function$
  with returned as (
    update public.tool_holdings set returned_at = p_c.at, returned_by = p_c.by_person_id, returned_why = p_why ->> tool_no::text
    where orchard_id = p_c.orchard_id and tool_no = any (p_tools) and returned_at is null
    returning tool_no
  )
  select coalesce(jsonb_agg(tool_no order by tool_no), '[]') from returned
$function$;

CREATE OR REPLACE FUNCTION private.round_or_fail(p_orchard uuid, p_round uuid)
 RETURNS rounds
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_round public.rounds;
begin
  select * into v_round from public.rounds where orchard_id = p_orchard and id = p_round;
  if not found then perform private.fail(404, 'no_such_round', 'There is no such round.'); end if;
  return v_round;
end $function$;

CREATE OR REPLACE FUNCTION private.rounds_of_tree(p_orchard uuid, p_tree integer)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select coalesce(jsonb_agg(jsonb_build_object('round', r.id, 'kind', r.kind, 'season', r.season,
      'openedAt', private.instant(r.opened_at), 'closedAt', private.instant(r.closed_at),
      'state', coalesce(w.state, 'unpruned'), 'share', w.share) order by r.opened_at desc, r.id), '[]')
    from public.rounds r
    join public.trees t on t.orchard_id = r.orchard_id and t.no = p_tree
    left join public.tree_work w on w.round_id = r.id and w.tree_no = p_tree
    where r.orchard_id = p_orchard and (t.species = any (r.species) or w.tree_no is not null
      or exists (select 1 from public.visits v where v.orchard_id = p_orchard and v.round_id = r.id and v.tree_no = p_tree)));
end $function$;

CREATE OR REPLACE FUNCTION private.rounds_state(p_orchard uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return jsonb_build_object(
    'rounds', (
      select coalesce(jsonb_object_agg(r.id, jsonb_build_object(
        'kind', r.kind, 'season', r.season, 'species', r.species, 'from', r.from_on, 'to', r.to_on)), '{}')
      from public.rounds r
      where r.orchard_id = p_orchard and r.closed_at is null),
    'shifts', (
      select coalesce(jsonb_object_agg(s.id, jsonb_build_object(
        'roundId', s.round_id, 'date', s.on_date, 'startsAt', private.instant(s.starts_at), 'endsAt', private.instant(s.ends_at),
        'state', s.state, 'signal', s.signal,
        'briefingVersion', coalesce(b.version, 0), 'briefingChange', b.change, 'comeDownVersion', private.come_down_version(s.id),
        'off', (select coalesce(jsonb_object_agg(x.what, x.reason), '{}') from public.shift_offs x where x.shift_id = s.id))), '{}')
      from public.shifts s
      left join lateral (
        select version, change from public.briefings where shift_id = s.id order by version desc limit 1) b on true
      where s.orchard_id = p_orchard and s.state in ('scheduled', 'open')));
end $function$;

CREATE OR REPLACE FUNCTION private.row_of(p_claim claims)
 RETURNS jsonb
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
begin
  return case when p_claim.tree_no is null then jsonb_build_object('block', p_claim.block_no, 'row', p_claim.row_no) end;
end $function$;
comment on function private.row_of(claims) is '{block, row} of a claim that is of a row; null of a tree''s.';

CREATE OR REPLACE FUNCTION private.row_or_fail(p_orchard uuid, p_block integer, p_row integer)
 RETURNS void
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  if not exists (select 1 from public.trees where orchard_id = p_orchard and block_no = p_block and row_no = p_row) then
    perform private.fail(404, 'no_such_row', 'There is no row with this number in this block.');
  end if;
end $function$;

CREATE OR REPLACE FUNCTION private.season_offs(p_orchard uuid, p_species text[], p_date date)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select coalesce(jsonb_object_agg(s, 'season'), '{}')
    from unnest(p_species) s
    cross join lateral (select case s when 'apricot' then 'apricot' when 'cherry' then 'cherry' when 'sour_cherry' then 'cherry' end as months) m
    cross join lateral (select
      private.house_rule(p_orchard, months || '_from_month')::integer as from_month,
      private.house_rule(p_orchard, months || '_to_month')::integer as to_month) r
    -- Both ends count, and 11 to 2 goes over the end of the year.
    where months is not null
      and (extract(month from p_date)::integer - from_month + 12) % 12 > (to_month - from_month + 12) % 12);
end $function$;
comment on function private.season_offs(uuid,text[],date) is 'Species whose months it is not, as lib/domain/safety/species-season.ts: {"cherry": "season"}.';

CREATE OR REPLACE FUNCTION private.season_or_last(p_orchard uuid, p_season integer)
 RETURNS integer
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return coalesce(p_season, (select max(season) from public.rounds where orchard_id = p_orchard));
end $function$;

CREATE OR REPLACE FUNCTION private.seen_before(p_c private.command)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_seen public.command_answers;
begin
  select * into v_seen from public.command_answers where orchard_id = p_c.orchard_id and command_id = p_c.command_id;
  if found and (v_seen.name <> p_c.name or v_seen.args_sha256 <> private.sha256_of(p_c.args::text)) then
    perform private.fail(409, 'command_id_used', 'This command id was used for something else.');
  end if;
  return v_seen.answer;
end $function$;
comment on function private.seen_before(private.command) is 'Step 3 where there is no membership yet: args then name the user, so that nobody gets another''s answer.';

CREATE OR REPLACE FUNCTION private.set_found(p_c private.command, p_person uuid)
 RETURNS void
 LANGUAGE sql
 SET search_path TO ''
AS $function$
  update public.attendances set found_at = p_c.at, found_by = p_c.by_person_id
  where orchard_id = p_c.orchard_id and person_id = p_person and not_found and found_at is null
$function$;

CREATE OR REPLACE FUNCTION private.set_work(p_orchard uuid, p_round uuid, p_tree integer, p_state text, p_share integer, p_note text, p_at timestamp with time zone)
 RETURNS jsonb
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
begin
  delete from public.brush_hauled where round_id = p_round and tree_no = p_tree;
  if p_state = 'unpruned' then
    delete from public.tree_work where round_id = p_round and tree_no = p_tree;
  else
    insert into public.tree_work (orchard_id, round_id, tree_no, state, share, note, changed_at)
    values (p_orchard, p_round, p_tree, p_state, p_share, p_note, p_at)
    on conflict (round_id, tree_no) do update
      set state = excluded.state, share = excluded.share, note = excluded.note, changed_at = excluded.changed_at;
  end if;
  -- Phones only carry the round that is worked in now.
  if p_round is distinct from (private.work_round(p_orchard)).id then return null; end if;
  return jsonb_build_array(jsonb_build_array(p_tree, p_state, p_share));
end $function$;
comment on function private.set_work(uuid,uuid,integer,text,integer,text,timestamp with time zone) is 'Sets a tree''s work in a round; the list for work, null when it is not the round that phones carry.';

CREATE OR REPLACE FUNCTION private.setup_code_lacks(p_hash text)
 RETURNS text
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
declare
  v_code public.setup_codes;
begin
  select * into v_code from public.setup_codes where code_hash = p_hash for update;
  return case when v_code.code_hash is null then 'code_wrong' when v_code.used_at is not null then 'code_used'
    when v_code.expires_at < now() then 'code_expired' end;
end $function$;

CREATE OR REPLACE FUNCTION private.sha256_of(p_text text)
 RETURNS text
 LANGUAGE sql
 IMMUTABLE
 SET search_path TO ''
AS $function$ select encode(sha256(convert_to(p_text, 'UTF8')), 'hex') $function$;
comment on function private.sha256_of(text) is 'Codes are kept only like this; long arguments are compared by it.';

CREATE OR REPLACE FUNCTION private.sheet_of_trees(p_orchard uuid, p_species text[], p_lat0 integer, p_lon0 integer)
 RETURNS json
 LANGUAGE sql
 STABLE
 SET search_path TO ''
AS $function$
  select json_build_object(
    'no', array_agg(no order by no),
    'block', array_agg(block_no order by no),
    'row', array_agg(row_no order by no),
    'place', array_agg(place order by no),
    'species', array_agg(array_position(p_species, species) - 1 order by no),
    'cultivar', array_agg(coalesce(cultivar_no, 0) order by no),
    'size', array_agg(coalesce(array_position(array['young', 'small', 'medium', 'large'], size_class), 0) order by no),
    'planted', array_agg(coalesce(planted_year, 0) order by no),
    'height', array_agg(coalesce(height_cm, 0) order by no),
    'trunk', array_agg(coalesce((trunk_cm * 10)::integer, 0) order by no),
    'saw', array_agg(asks_saw::integer order by no),
    'life', array_agg(array_position(array['standing', 'dead', 'removed', 'gap'], life) - 1 order by no),
    'lat', array_agg(lat_e7 - p_lat0 order by no),
    'lon', array_agg(lon_e7 - p_lon0 order by no))
  from public.trees where orchard_id = p_orchard
$function$;
comment on function private.sheet_of_trees(uuid,text[],integer,integer) is 'Columns in the order of tree numbers. What is not known is 0, and null for positions.';

CREATE OR REPLACE FUNCTION private.shift_at(p_orchard uuid, p_person uuid, p_at timestamp with time zone)
 RETURNS shifts
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select s from public.shifts s
    left join public.attendances a on a.shift_id = s.id and a.person_id = p_person
    where s.orchard_id = p_orchard and s.state <> 'scheduled'
      and p_at between least(s.opened_at, s.starts_at)
        and least(clock_timestamp(), case when s.state <> 'open' then greatest(s.closed_at, s.ends_at) end)
    order by (p_at between s.opened_at and coalesce(s.closed_at, p_at)) desc, (a.id is not null) desc, s.opened_at desc
    limit 1);
end $function$;
comment on function private.shift_at(uuid,uuid,timestamp with time zone) is 'The shift that a time on paper belongs to, also a closed one. A shift that was opened late, or closed early because the power failed, still has its planned hours, as far as they are over.';

CREATE OR REPLACE FUNCTION private.shift_or_fail(p_orchard uuid, p_shift uuid)
 RETURNS shifts
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_shift public.shifts;
begin
  select * into v_shift from public.shifts where orchard_id = p_orchard and id = p_shift;
  if not found then perform private.fail(404, 'no_such_shift', 'There is no such shift.'); end if;
  return v_shift;
end $function$;

CREATE OR REPLACE FUNCTION private.shift_over(p_shift shifts)
 RETURNS jsonb
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
begin
  return case p_shift.state
    when 'closed' then private.code('shift_closed') when 'cancelled' then private.code('shift_cancelled') end;
end $function$;
comment on function private.shift_over(shifts) is 'Why nothing can be planned in this shift any more, as a refusal; else null.';

CREATE OR REPLACE FUNCTION private.sign_out(p_c private.command, p_attendance uuid, p_at timestamp with time zone, p_why text DEFAULT NULL::text)
 RETURNS void
 LANGUAGE sql
 SET search_path TO ''
AS $function$
  update public.breaks set to_at = greatest(from_at, p_at) where attendance_id = p_attendance and to_at is null;
  update public.attendances set left_at = p_at, left_by = p_c.by_person_id, left_why = p_why where id = p_attendance
$function$;

CREATE OR REPLACE FUNCTION private.soil_tools(p_orchard uuid, p_tree integer, p_people uuid[])
 RETURNS jsonb
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
declare
  v_list jsonb;
begin
  with soiled as (
    update public.tools t set clean = false
    from public.tool_holdings h
    where h.orchard_id = t.orchard_id and h.tool_no = t.no and h.returned_at is null
      and t.orchard_id = p_orchard and h.person_id = any (p_people) and t.clean
      and private.has_disease_flag(p_orchard, p_tree)
    returning t.no
  )
  select jsonb_agg(no order by no) into v_list from soiled;
  return v_list;
end $function$;
comment on function private.soil_tools(uuid,integer,uuid[]) is 'After work on a tree flagged for disease its tools are not clean until someone says so. The list for dirty, or null.';

CREATE OR REPLACE FUNCTION private.species_offs(p_shift shifts, p_species text, p_at timestamp with time zone)
 RETURNS text[]
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select coalesce(array_agg(x.reason order by x.reason), '{}')
    from unnest(private.all_species_offs(p_shift, p_species, p_at)) x(reason)
    where not exists (
      select 1 from public.weather_exceptions e
      where e.shift_id = p_shift.id and e.what = p_species and e.ended_at is null and x.reason = any (e.lifts)));
end $function$;
comment on function private.species_offs(shifts,text,timestamp with time zone) is 'Why trees of this species are off now, less what a lead excepts.';

CREATE OR REPLACE FUNCTION private.stop_or_fail(p_orchard uuid, p_stop uuid)
 RETURNS stops
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_stop public.stops;
begin
  select * into v_stop from public.stops where orchard_id = p_orchard and id = p_stop;
  if not found then perform private.fail(404, 'no_such_stop', 'There is no such stop.'); end if;
  return v_stop;
end $function$;

CREATE OR REPLACE FUNCTION private.stopped_in(p_block integer, p_shift shifts)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return coalesce((
    select private.code('stopped', jsonb_build_object('stop', s.id)) from public.stops s
    where s.shift_id = p_shift.id and s.resumed_at is null and s.block_no = p_block limit 1), '[]');
end $function$;

CREATE OR REPLACE FUNCTION private.store_answer(p_c private.command, p_answer jsonb)
 RETURNS jsonb
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
begin
  insert into public.command_answers (orchard_id, command_id, name, person_id, by_person_id, args_sha256, answer, at)
  values (p_c.orchard_id, p_c.command_id, p_c.name, p_c.person_id, p_c.by_person_id, private.sha256_of(p_c.args::text), p_answer, p_c.at);
  return p_answer;
end $function$;

CREATE OR REPLACE FUNCTION private.sun_height(p_lat double precision, p_lon double precision, p_at timestamp with time zone)
 RETURNS double precision
 LANGUAGE plpgsql
 IMMUTABLE STRICT
 SET search_path TO ''
AS $function$
declare
  v_minutes double precision := extract(epoch from p_at)::double precision / 60;
  v_t double precision := (v_minutes / 1440 + 2440587.5 - 2451545) / 36525;
  v_mean double precision := 280.46646 + v_t * (36000.76983 + v_t * 0.0003032);
  v_anomaly double precision := 357.52911 + v_t * (35999.05029 - 0.0001537 * v_t);
  v_centre double precision := sind(v_anomaly) * (1.914602 - v_t * (0.004817 + 0.000014 * v_t))
    + sind(2 * v_anomaly) * (0.019993 - 0.000101 * v_t) + sind(3 * v_anomaly) * 0.000289;
  v_node double precision := 125.04 - 1934.136 * v_t;
  v_longitude double precision := v_mean + v_centre - 0.00569 - 0.00478 * sind(v_node);
  v_seconds double precision := 21.448 - v_t * (46.815 + v_t * (0.00059 - v_t * 0.001813));
  v_obliquity double precision := 23 + (26 + v_seconds / 60) / 60 + 0.00256 * cosd(v_node);
  v_dec double precision := asind(sind(v_obliquity) * sind(v_longitude));
  v_e double precision := 0.016708634 - v_t * (0.000042037 + 0.0000001267 * v_t);
  v_y double precision := tand(v_obliquity / 2) ^ 2;
  v_equation double precision := 4 * degrees(
    v_y * sind(2 * v_mean) - 2 * v_e * sind(v_anomaly) + 4 * v_e * v_y * sind(v_anomaly) * cosd(2 * v_mean)
    - 0.5 * v_y * v_y * sind(4 * v_mean) - 1.25 * v_e * v_e * sind(2 * v_anomaly));
  v_hour_angle double precision := (v_minutes - 1440 * floor(v_minutes / 1440) + v_equation + 4 * p_lon) / 4 - 180;
begin
  return asind(least(1, greatest(-1,
    sind(p_lat) * sind(v_dec) + cosd(p_lat) * cosd(v_dec) * cosd(v_hour_angle))));
end $function$;
comment on function private.sun_height(double precision,double precision,timestamp with time zone) is 'Degrees of the middle of the sun above the horizon, without refraction.';

CREATE OR REPLACE FUNCTION private.take_from(p_c private.command, p_subject uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
declare
  v_claim public.claims := private.open_claim_of(p_subject);
  v_taken jsonb := '{}';
begin
  if private.part_in(v_claim.id, p_subject) = 'holder' then
    v_taken := private.put_down_all(p_c, array[v_claim.id], 'removed');
  elsif v_claim.id is not null then
    update public.claim_people set to_at = p_c.at where claim_id = v_claim.id and person_id = p_subject and to_at is null;
    v_taken := jsonb_build_object('claimsLeft', jsonb_build_array(jsonb_build_array(v_claim.id, p_subject)),
      'dirty', private.soil_tools(p_c.orchard_id, v_claim.tree_no, array[p_subject]));
  end if;

  v_taken := v_taken || jsonb_build_object(
    'dealsEnded', private.end_deals(p_c.orchard_id, private.deals_left_by(p_subject, (
      select array_agg(id) from public.people where orchard_id = p_c.orchard_id and removed_at is null)), p_c.at),
    'returned', private.return_tools(p_c, (
      select array_agg(tool_no) from public.tool_holdings
      where orchard_id = p_c.orchard_id and person_id = p_subject and returned_at is null)),
    'left', (select coalesce(jsonb_agg(person_id), '[]') from public.attendances where person_id = p_subject and left_at is null),
    'callsEnded', private.end_calls(p_c, (
      select array_agg(id) from public.calls where orchard_id = p_c.orchard_id and person_id = p_subject and ended_at is null)));
  perform private.sign_out(p_c, id, p_c.at) from public.attendances where person_id = p_subject and left_at is null;
  return v_taken;
end $function$;

CREATE OR REPLACE FUNCTION private.take_in_work(p_c private.command, p_tree integer, p_in private.coming_in, p_result text, p_share integer, p_note text, p_said_at timestamp with time zone, p_elapsed_s integer, p_told jsonb DEFAULT '{}'::jsonb)
 RETURNS jsonb
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
declare
  v_in private.coming_in := p_in;
  v_shift public.shifts;
  v_body jsonb := jsonb_build_object('tree', p_tree);
  v_seconds integer;
  v_ended_how text := case when p_result = 'done' then 'finished' else 'released' end;
begin
  if v_in.how = 'dealt' then
    select * into v_shift from public.shifts where id = v_in.shift_id;
    -- Over at once: by now this person may hold another tree.
    perform private.open_claim(p_c, v_shift, (p_c.person_id, p_tree, 'work', 'prune', false, '{}', '{}', null), v_in.begun_at,
      p_c.at, v_ended_how);
    v_in.claim_id := p_c.command_id;
  end if;
  if v_in.how in ('dealt', 'paper', 'late') then
    v_body := v_body || jsonb_build_object('dealsEnded', private.end_deals(p_c.orchard_id, array[p_tree], p_c.at));
  end if;
  v_body := v_body || jsonb_build_object('dirty', private.soil_tools(p_c.orchard_id, p_tree, v_in.people));

  if v_in.how = 'also_worked' then
    v_seconds := private.keep_visit(p_c, p_tree, v_in, 'also_worked', p_share, p_note, p_said_at, p_elapsed_s);
    return private.accept(p_c, 'also_worked', v_body, jsonb_build_object('seconds', v_seconds), true,
      p_told || jsonb_build_object('kept', 'also_worked'));
  end if;

  if p_result is not null then
    v_seconds := private.keep_visit(p_c, p_tree, v_in, p_result, p_share, p_note, p_said_at, p_elapsed_s);
    if private.is_pruning(v_in.claim_id) then
      v_body := v_body || jsonb_build_object('work', private.set_work(
        p_c.orchard_id, v_in.round_id, p_tree, p_result, p_share, p_note, p_c.at));
    elsif p_result = 'done' and private.is_brush(v_in.claim_id) then
      v_body := v_body || jsonb_build_object('hauled', private.haul(p_c, v_in.claim_id, v_in.round_id, array[p_tree]));
    end if;
  end if;
  if v_in.how = 'holder' then
    perform private.end_claim(v_in.claim_id, p_c.at, v_ended_how);
    v_body := v_body || jsonb_build_object('claimsEnded', jsonb_build_array(v_in.claim_id));
  end if;
  if v_in.how = 'late' then v_body := v_body || jsonb_build_object('shift', v_in.shift_id); end if;
  return private.accept(p_c,
    case when p_result = 'done' then 'tree_finished' else 'tree_released' end || case when v_in.how = 'late' then '_late' else '' end,
    v_body, jsonb_build_object('seconds', v_seconds), true,
    p_told || case when v_in.how = 'late' then jsonb_build_object('kept', 'late') else '{}'::jsonb end);
end $function$;
comment on function private.take_in_work(private.command,integer,private.coming_in,text,integer,text,timestamp with time zone,integer,jsonb) is 'Once it is known how it comes in. p_told: what the answer says besides.';

CREATE OR REPLACE FUNCTION private.tell_of_call(p_c private.command, p_call calls, p_kind text, p_facts jsonb)
 RETURNS jsonb
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
begin
  if p_call.kind = 'lost_person' then
    return private.accept(p_c, p_kind, p_facts, p_about => p_call.person_id);
  end if;
  return private.accept(p_c, p_kind, null, p_facts, p_own => true, p_about => p_call.person_id);
end $function$;
comment on function private.tell_of_call(private.command,calls,text,jsonb) is 'Of the caller, whoever tapped, so that their own devices hear it.';

CREATE OR REPLACE FUNCTION private.tell_to_come_out(p_c private.command, p_flag uuid, p_claims uuid[])
 RETURNS jsonb
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
declare
  v_inside jsonb;
begin
  with told as (
    insert into public.keep_out_people (orchard_id, flag_id, person_id, tree_no, told_at)
    select p_c.orchard_id, p_flag, cp.person_id, c.tree_no, p_c.at
    from public.claims c join public.claim_people cp on cp.claim_id = c.id and cp.to_at is null
    where c.id = any (p_claims) and cp.person_id <> p_c.person_id
    -- Told before, came back when it was narrower.
    on conflict on constraint keep_out_people_key do update
      set tree_no = excluded.tree_no, told_at = excluded.told_at, out_at = null, out_by = null
    returning person_id, tree_no
  )
  select jsonb_object_agg(person_id, jsonb_build_object('tree', tree_no, 'out', false)) into v_inside from told;
  return jsonb_build_object('inside', v_inside);
end $function$;

CREATE OR REPLACE FUNCTION private.tell_to_leave(p_c private.command, p_before jsonb)
 RETURNS jsonb
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
declare
  v_after jsonb := private.claims_put_off(p_c.orchard_id, p_c.at);
  v_told jsonb;
begin
  with told as (
    insert into public.told_to_leave (orchard_id, shift_id, person_id, claim_id, tree_no, why, told_at)
    select p_c.orchard_id, c.shift_id, cp.person_id, c.id, c.tree_no, v_after ->> c.id::text, p_c.at
    from public.claims c join public.claim_people cp on cp.claim_id = c.id and cp.to_at is null
    where c.orchard_id = p_c.orchard_id and c.ended_at is null and v_after ? c.id::text
      and (v_after ->> c.id::text) is distinct from (p_before ->> c.id::text)
    on conflict on constraint told_to_leave_key do update
      set claim_id = excluded.claim_id, tree_no = excluded.tree_no, why = excluded.why, told_at = excluded.told_at,
        left_at = null, left_by = null
    returning *
  )
  select jsonb_object_agg(person_id, jsonb_build_object('claim', claim_id, 'tree', tree_no, 'why', why)) into v_told from told;
  return jsonb_build_object('toLeave', v_told);
end $function$;
comment on function private.tell_to_leave(private.command,jsonb) is 'Tells everybody at a tree that was not off before (private.claims_put_off) and is now: {toLeave: {person: {claim, tree, why}}}.';

CREATE OR REPLACE FUNCTION private.things_of_tree(p_orchard uuid, p_tree integer)
 RETURNS text[]
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return array(
    select id::text from public.claims where orchard_id = p_orchard and tree_no = p_tree
    union all select id::text from public.flags where orchard_id = p_orchard and tree_no = p_tree
    union all select id::text from public.calls where orchard_id = p_orchard and tree_no = p_tree);
end $function$;

CREATE OR REPLACE FUNCTION private.thunder_at(p_orchard uuid)
 RETURNS timestamp with time zone
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (select max(measured_at) from public.weather_readings where orchard_id = p_orchard and thunder);
end $function$;

CREATE OR REPLACE FUNCTION private.tidy()
 RETURNS void
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
begin
  -- Longer than any phone keeps unsent work (14 days).
  delete from public.command_answers where at < now() - interval '90 days';
  delete from public.wrong_codes where since < now() - interval '1 day';
  delete from public.archive_parts where put_at < now() - interval '1 day';
  delete from public.setup_codes where expires_at < now() - interval '30 days';
  perform private.blank_what_is_over();
  -- Somebody signed in, got no further, and went.
  delete from auth.users u
  where u.is_anonymous and u.created_at < now() - interval '24 hours'
    and not exists (select 1 from public.logins l where l.user_id = u.id);
end $function$;

CREATE OR REPLACE FUNCTION private.times_are_whole(p_paper private.on_paper)
 RETURNS boolean
 LANGUAGE sql
 IMMUTABLE
 SET search_path TO ''
AS $function$
  select coalesce(p_paper.arrived_at, p_paper.left_at, lower(p_paper.breaks[1])) is not null
    and (p_paper.arrived_at < p_paper.left_at) is not false
    and not exists (
      select 1 from unnest(p_paper.breaks) b
      where isempty(b) or private.is_moment(lower(b)) is not true or private.is_moment(upper(b)) is not true
        or lower(b) < p_paper.arrived_at or upper(b) > p_paper.left_at)
    and not exists (
      select 1 from unnest(p_paper.breaks) with ordinality a (b, i)
      join unnest(p_paper.breaks) with ordinality c (b, i) on a.i < c.i and upper(a.b) > lower(c.b))
$function$;
comment on function private.times_are_whole(private.on_paper) is 'Some time is there, and they come one after the other: arrived, breaks, left.';

CREATE OR REPLACE FUNCTION private.times_cannot_be(p_shift shifts, p_known attendances, p_paper private.on_paper, p_person uuid, p_now timestamp with time zone)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_last timestamptz := coalesce(p_paper.left_at, upper(p_paper.breaks[cardinality(p_paper.breaks)]), p_paper.arrived_at);
  v_refused jsonb := '[]';
begin
  if p_shift.id is null or v_last > p_now or (private.shift_at(p_shift.orchard_id, p_person, v_last)).id is distinct from p_shift.id
  then return private.code('not_in_shift'); end if;

  if p_paper.arrived_at is not null then
    if exists (
      select 1 from public.attendances a where a.shift_id = p_shift.id and a.person_id = p_person
        and tstzrange(a.arrived_at, a.left_at, '[]') && tstzrange(p_paper.arrived_at, p_paper.left_at))
    then v_refused := v_refused || private.code('already_here'); end if;
    if p_paper.left_at is null and p_shift.state = 'closed' then v_refused := v_refused || private.code('leaving_missing'); end if;
    return v_refused;
  end if;
  if p_known.id is null then return private.code('not_arrived'); end if;
  if exists (
    select 1 from public.breaks b, unnest(p_paper.breaks) said
    where b.attendance_id = p_known.id and tstzrange(b.from_at, b.to_at) && said)
  then v_refused := v_refused || private.code('already_entered'); end if;
  if p_known.left_at is not null and (v_last > p_known.left_at or (p_paper.left_at is not null and not private.left_by_closing(p_known)))
  then v_refused := v_refused || private.code('left_before'); end if;
  return v_refused;
end $function$;

CREATE OR REPLACE FUNCTION private.today(p_orchard uuid)
 RETURNS date
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select (now() at time zone o.time_zone)::date from public.orchards o where o.id = p_orchard);
end $function$;
comment on function private.today(uuid) is 'The orchard''s time zone decides what "today" is.';

CREATE OR REPLACE FUNCTION private.told_of_others(p_c private.command, p_missing jsonb, p_others uuid[])
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  if p_c.by_lead then return p_missing; end if;
  return (
    select coalesce(jsonb_agg(case when (x -> 'detail' ->> 'person')::uuid = any (p_others) and x ->> 'code' = 'helper_not_ready'
        then x #- '{detail,codes}' else x end), '[]')
      || coalesce((
        select jsonb_agg(private.code('helper_not_ready', jsonb_build_object('person', p.id)) -> 0)
        from public.people p where p.id = any (p_others) and p.age_band = 'minor' and p_missing @> private.code('minor_ladder_saw')), '[]')
    from jsonb_array_elements(p_missing) x
    where x ->> 'code' <> 'minor_ladder_saw' or private.is_minor(p_c.person_id));
end $function$;
comment on function private.told_of_others(private.command,jsonb,uuid[]) is 'What a volunteer may know of somebody they bring along: not ready, but nothing of consent, age, skills or failed checks.';

CREATE OR REPLACE FUNCTION private.told_of_taker(p_missing jsonb, p_to uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_private text[] := array['consent_missing', 'adult_missing', 'equipment_not_checked', 'skill_missing', 'not_marked', 'minor_ladder_saw'];
begin
  return (
    select coalesce(jsonb_agg(x) filter (where not x ->> 'code' = any (v_private)), '[]')
      || case when bool_or(x ->> 'code' = any (v_private))
         then private.code('helper_not_ready', jsonb_build_object('person', p_to)) else '[]'::jsonb end
    from jsonb_array_elements(p_missing) x);
end $function$;

CREATE OR REPLACE FUNCTION private.told_version(p_shift uuid, p_person uuid)
 RETURNS integer
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_given integer;
begin
  select max(version) into v_given from public.briefings_given where shift_id = p_shift and person_id = p_person;
  if v_given is null then return 0; end if;
  -- Who was briefed once has what they sign by their own hand; what a lead signs for them they may never have heard.
  return (
    select greatest(v_given, max(version)) from public.briefing_signatures
    where shift_id = p_shift and person_id = p_person and signed_by = person_id);
end $function$;
comment on function private.told_version(uuid,uuid) is 'Up to which version a person told this person; 0 when nobody did.';

CREATE OR REPLACE FUNCTION private.tool_in(p_orchard uuid, p_tool integer)
 RETURNS tools
 LANGUAGE sql
 STABLE
 SET search_path TO ''
AS $function$
  select t from public.tools t where t.orchard_id = p_orchard and t.no = p_tool
$function$;

CREATE OR REPLACE FUNCTION private.topic(p_orchard uuid, p_channel_epoch integer)
 RETURNS text
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
begin
  return 'orchard:' || p_orchard || ':' || p_channel_epoch;
end $function$;

CREATE OR REPLACE FUNCTION private.tree_or_fail(p_orchard uuid, p_tree integer)
 RETURNS trees
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_tree public.trees;
begin
  select * into v_tree from public.trees where orchard_id = p_orchard and no = p_tree;
  if not found then perform private.fail(404, 'no_such_tree', 'There is no tree with this number.'); end if;
  return v_tree;
end $function$;

CREATE OR REPLACE FUNCTION private.tree_rows(p_trees jsonb)
 RETURNS TABLE(index integer, said jsonb, block text, row_no integer, place integer, species text, cultivar text, size_class text, planted_year integer, height_cm integer, trunk_mm integer, asks_saw boolean, life text, lat_e7 integer, lon_e7 integer)
 LANGUAGE sql
 IMMUTABLE
 SET search_path TO ''
AS $function$
  select (n - 1)::integer, r, r ->> 'block', private.whole_in(r -> 'row', 1, 9999), private.whole_in(r -> 'place', 1, 9999),
    r ->> 'species', private.line_in(r -> 'cultivar', 60), r ->> 'size',
    private.whole_in(r -> 'planted', 1700, 2200), private.whole_in(r -> 'heightCm', 10, 5000), private.whole_in(r -> 'trunkMm', 1, 9999),
    coalesce(r -> 'asksSaw' = 'true', false), coalesce(r ->> 'life', 'standing'),
    private.whole_in(r -> 'latE7', -900000000, 900000000), private.whole_in(r -> 'lonE7', -1800000000, 1800000000)
  from jsonb_array_elements(p_trees) with ordinality as x (r, n)
$function$;

CREATE OR REPLACE FUNCTION private.trees_in(p_shift shifts)
 RETURNS TABLE(tree_no integer, block_no integer, person_id uuid, result text)
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return query
    select distinct on (v.tree_no) v.tree_no, t.block_no, v.person_id, v.result
    from public.visits v
    join public.trees t on t.orchard_id = v.orchard_id and t.no = v.tree_no
    where v.shift_id = p_shift.id and v.undone_at is null and v.result in ('done', 'begun') and private.is_pruning(v.claim_id)
    order by v.tree_no, (v.result = 'done') desc, v.at desc, v.id;
end $function$;
comment on function private.trees_in(shifts) is 'Each tree that was pruned in this shift once, by whoever finished it last, or else left it half done last: so that people and blocks add up to the same.';

CREATE OR REPLACE FUNCTION private.trees_in_hand_state(p_orchard uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return jsonb_build_object(
    'tools', (
      select coalesce(jsonb_object_agg(t.no, jsonb_build_object(
        'label', t.label, 'kind', t.kind, 'fit', t.state = 'fit', 'clean', t.clean, 'heldBy', h.person_id, 'ownedBy', t.owned_by)), '{}')
      from public.tools t
      left join public.tool_holdings h on h.orchard_id = t.orchard_id and h.tool_no = t.no and h.returned_at is null
      where t.orchard_id = p_orchard),
    'claims', (
      select coalesce(jsonb_object_agg(c.id, jsonb_build_object(
        'tree', c.tree_no,
        'row', private.row_of(c),
        'purpose', c.purpose, 'kind', c.kind, 'ladder', c.ladder, 'buddyId', c.buddy_id, 'openedAt', private.instant(c.opened_at),
        'people', (
          select coalesce(jsonb_object_agg(cp.person_id, cp.part), '{}')
          from public.claim_people cp where cp.claim_id = c.id and cp.to_at is null))), '{}')
      from public.claims c where c.orchard_id = p_orchard and c.ended_at is null));
end $function$;

CREATE OR REPLACE FUNCTION private.trees_or_fail(p_orchard uuid, p_trees integer[])
 RETURNS void
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  perform private.need(cardinality(p_trees) between 1 and 20000
    and cardinality(p_trees) = (select count(distinct x) from unnest(p_trees) x), 'p_trees: 1 to 20,000 different numbers.');
  if (select count(*) from public.trees where orchard_id = p_orchard and no = any (p_trees)) <> cardinality(p_trees) then
    perform private.fail(404, 'no_such_tree', 'There is no tree with one of these numbers.');
  end if;
end $function$;

CREATE OR REPLACE FUNCTION private.trees_with(p_refusals jsonb)
 RETURNS jsonb
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select coalesce(jsonb_agg(jsonb_build_object('code', code, 'detail', jsonb_build_object('trees', trees)) order by code), '[]')
    from (
      select x ->> 'code' as code, jsonb_agg(x -> 'tree' order by (x ->> 'tree')::integer) as trees
      from jsonb_array_elements(p_refusals) x group by 1
    ) by_code);
end $function$;
comment on function private.trees_with(jsonb) is '[{code, tree}] to one refusal a code with all its trees.';

CREATE OR REPLACE FUNCTION private.use_invite(p_c private.command, p_invite invites, p_kind text, p_body jsonb, p_lead_body jsonb)
 RETURNS jsonb
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
begin
  perform private.link_login(p_c);
  update public.invites set uses_left = uses_left - 1, used = used + 1 where id = p_invite.id;
  return private.accept(p_c, p_kind, p_body, p_lead_body, true,
    jsonb_build_object('orchard', p_c.orchard_id, 'person', p_c.person_id));
end $function$;

CREATE OR REPLACE FUNCTION private.visits_told(p_reader private.reader, p_tree integer)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select coalesce(jsonb_agg(jsonb_strip_nulls(jsonb_build_object('what', v.result, 'id', v.id, 'at', private.instant(v.at),
      'round', v.round_id, 'person', v.person_id, 'share', v.share,
      'with', (
        select jsonb_agg(distinct cp.person_id) from public.claim_people cp
        where cp.claim_id = v.claim_id and cp.person_id <> v.person_id),
      'seconds', case when p_reader.is_lead or v.person_id = any (p_reader.own) then v.seconds end,
      'late', case when p_reader.is_lead then nullif(v.came_in_late, false) end,
      'paper', case when p_reader.is_lead then nullif(v.from_paper, false) end,
      'note', case when p_reader.is_lead or v.person_id = any (p_reader.own) then v.note end))), '[]')
    from public.visits v
    where v.orchard_id = p_reader.orchard_id and v.tree_no = p_tree and v.undone_at is null
      and (v.claim_id is null or private.is_pruning(v.claim_id)));
end $function$;

CREATE OR REPLACE FUNCTION private.weather_offs(p_orchard uuid, p_species text, p_at timestamp with time zone)
 RETURNS text[]
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_fresh public.weather_readings := private.fresh_weather(p_orchard, p_at);
  v_dry_at timestamptz := private.wet_at(p_orchard) + private.house_rule(p_orchard, 'dry_hours') * interval '1 hour';
  v_offs text[] := '{}';
begin
  if (private.is_prone(p_species) and p_at < v_dry_at)
    or v_fresh.canopy = 'wet' or (v_fresh.canopy is null and v_fresh.humidity >= 90)
  then v_offs := v_offs || 'wet_wood'::text; end if;
  if v_fresh.measured_at + v_fresh.rain_in_h * interval '1 hour'
    <= p_at + private.house_rule(p_orchard, 'rain_hours') * interval '1 hour'
  then v_offs := v_offs || 'rain'::text; end if;
  return v_offs;
end $function$;

CREATE OR REPLACE FUNCTION private.weather_state(p_orchard uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_shift uuid := (private.open_shift(p_orchard)).id;
begin
  return jsonb_build_object(
    'weather', jsonb_build_object(
      'latest', (
        select private.weather_told(r) from public.weather_readings r
        where r.orchard_id = p_orchard order by r.measured_at desc, r.written_at desc limit 1),
      'thunderAt', private.instant(private.thunder_at(p_orchard)),
      'wetAt', private.instant(private.wet_at(p_orchard))),
    'forecast', (select f.id from public.forecasts f where f.orchard_id = p_orchard),
    'exceptions', (
      select coalesce(jsonb_object_agg(e.what, jsonb_build_object(
        'lifts', e.lifts, 'because', e.because, 'madeBy', e.made_by, 'madeAt', private.instant(e.made_at))), '{}')
      from public.weather_exceptions e where e.shift_id = v_shift and e.ended_at is null),
    'toLeave', (
      select coalesce(jsonb_object_agg(t.person_id, jsonb_build_object(
        'claim', t.claim_id, 'tree', t.tree_no, 'why', t.why, 'toldAt', private.instant(t.told_at))), '{}')
      from public.told_to_leave t where t.shift_id = v_shift and t.left_at is null));
end $function$;

CREATE OR REPLACE FUNCTION private.weather_stops(p_orchard uuid, p_at timestamp with time zone)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_fresh public.weather_readings := private.fresh_weather(p_orchard, p_at);
  v_over timestamptz := private.thunder_at(p_orchard) + private.house_rule(p_orchard, 'thunder_minutes') * interval '1 minute';
  v_missing jsonb := '[]';
begin
  if p_at < v_over then
    v_missing := private.code('thunder', jsonb_build_object('until', private.instant(v_over)));
  end if;
  if greatest(v_fresh.wind_kmh, v_fresh.gust_kmh) >= private.house_rule(p_orchard, 'work_gust_kmh') then
    v_missing := v_missing || private.code('too_windy');
  end if;
  if private.feels_c(v_fresh) >= private.house_rule(p_orchard, 'heat_stop_c') then
    v_missing := v_missing || private.code('too_hot');
  end if;
  if private.is_too_dark(p_orchard, p_at) then v_missing := v_missing || private.code('dark'); end if;
  return v_missing;
end $function$;
comment on function private.weather_stops(uuid,timestamp with time zone) is 'What puts off all work, for everybody. To weather there is no exception.';

CREATE OR REPLACE FUNCTION private.weather_told(p_r weather_readings)
 RETURNS jsonb
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
begin
  return jsonb_build_object(
    'measuredAt', private.instant(p_r.measured_at), 'temperatureC', p_r.temperature_c, 'humidity', p_r.humidity,
    'windKmh', p_r.wind_kmh, 'gustKmh', p_r.gust_kmh, 'canopy', p_r.canopy, 'thunder', p_r.thunder, 'rainInH', p_r.rain_in_h);
end $function$;

CREATE OR REPLACE FUNCTION private.wet_at(p_orchard uuid)
 RETURNS timestamp with time zone
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select max(measured_at) from public.weather_readings
    where orchard_id = p_orchard and (canopy = 'wet' or (canopy is null and humidity >= 90)));
end $function$;
comment on function private.wet_at(uuid) is 'What somebody saw counts before what the air says.';

CREATE OR REPLACE FUNCTION private.when_said(p_said timestamp with time zone, p_earliest timestamp with time zone, p_latest timestamp with time zone)
 RETURNS timestamp with time zone
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
begin
  return least(greatest(coalesce(p_said, p_latest), p_earliest), p_latest);
end $function$;
comment on function private.when_said(timestamp with time zone,timestamp with time zone,timestamp with time zone) is 'A device''s time, clamped to what can be true. For minutes and display only.';

CREATE OR REPLACE FUNCTION private.whole_in(p_value jsonb, p_least integer, p_most integer)
 RETURNS integer
 LANGUAGE plpgsql
 IMMUTABLE
 SET search_path TO ''
AS $function$
begin
  return case when jsonb_typeof(p_value) = 'number' then
    case when p_value::numeric between p_least and p_most and p_value::numeric = trunc(p_value::numeric)
      then p_value::numeric::integer end end;
end $function$;

CREATE OR REPLACE FUNCTION private.without_why(p_ids jsonb, p_whys jsonb)
 RETURNS jsonb
 LANGUAGE sql
 IMMUTABLE
 SET search_path TO ''
AS $function$
  select coalesce(jsonb_agg(id), '[]') from jsonb_array_elements(p_ids) id where p_whys -> (id #>> '{}') is null
$function$;

CREATE OR REPLACE FUNCTION private.wood_in_row(p_orchard uuid, p_round uuid, p_block integer, p_row integer)
 RETURNS SETOF trees
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return query
    select t.* from public.trees t
    join public.tree_work w on w.round_id = p_round and w.tree_no = t.no and w.state in ('begun', 'done')
    where t.orchard_id = p_orchard and t.block_no = p_block and t.row_no = p_row
      and not exists (select 1 from public.brush_hauled h where h.round_id = p_round and h.tree_no = t.no);
end $function$;

CREATE OR REPLACE FUNCTION private.work_round(p_orchard uuid)
 RETURNS rounds
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select r from public.rounds r
    left join public.shifts s on s.round_id = r.id and s.state = 'open'
    where r.orchard_id = p_orchard and r.closed_at is null
    order by (s.id is not null) desc, r.opened_at desc, r.id
    limit 1);
end $function$;
comment on function private.work_round(uuid) is 'The round that work goes to: the open shift''s, else the open one that was opened last.';

CREATE OR REPLACE FUNCTION private.work_state(p_orchard uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
declare
  v_round uuid := (private.work_round(p_orchard)).id;
begin
  return jsonb_build_object(
    'workRoundId', v_round,
    'work', jsonb_build_object(
      -- Runs of tree numbers, [first, last, first, last, …]: rows are pruned in order, so ten thousand trees are a few runs.
      'done', (
        select coalesce(jsonb_agg(edge), '[]')
        from (
          select range_agg(int4range(tree_no, tree_no, '[]')) as ranges
          from public.tree_work where round_id = v_round and state = 'done') done,
        unnest(done.ranges) as run,
        lateral (values (lower(run)), (upper(run) - 1)) as edges (edge)),
      'begun', (
        select coalesce(jsonb_agg(jsonb_build_array(tree_no, share) order by tree_no), '[]')
        from public.tree_work where round_id = v_round and state = 'begun'),
      'leftOut', (
        select coalesce(jsonb_agg(tree_no order by tree_no), '[]')
        from public.tree_work where round_id = v_round and state = 'left_out')),
    'deals', (
      select coalesce(jsonb_object_agg(tree_no, people), '{}')
      from public.deals where orchard_id = p_orchard and round_id = v_round and ended_at is null),
    'dealtBy', (
      select coalesce(jsonb_object_agg(tree_no, dealt_by), '{}')
      from public.deals where orchard_id = p_orchard and round_id = v_round and ended_at is null),
    'marked', (
      select coalesce(jsonb_object_agg(m.tree_no, jsonb_build_object('mark', m.id, 'by', m.marked_by, 'photo', (
        select p.id from public.photos p where p.orchard_id = p_orchard and p.mark_id = m.id order by p.added_at desc limit 1))), '{}')
      from public.big_cut_marks m where m.round_id = v_round and m.ended_at is null));
end $function$;

CREATE OR REPLACE FUNCTION private.worked_on(p_orchard uuid, p_round uuid, p_tree integer)
 RETURNS uuid[]
 LANGUAGE plpgsql
 STABLE
 SET search_path TO ''
AS $function$
begin
  return (
    select coalesce(array_agg(distinct person_id order by person_id), '{}')
    from (
      select v.person_id from public.visits v
      where v.orchard_id = p_orchard and v.round_id = p_round and v.tree_no = p_tree and v.undone_at is null
        and private.is_pruning(v.claim_id)
      union all
      select cp.person_id from public.claims c
      join public.claim_people cp on cp.claim_id = c.id
      where c.orchard_id = p_orchard and c.round_id = p_round and c.tree_no = p_tree and c.kind = 'prune'
        -- A tree given back as it was is nobody's work.
        and (c.ended_how is distinct from 'released'
          or exists (select 1 from public.visits v where v.claim_id = c.id and v.undone_at is null))) at_it);
end $function$;
comment on function private.worked_on(uuid,uuid,integer) is 'Everybody who pruned at this tree in this round: holders, helpers and learners, also those who went on.';

CREATE OR REPLACE FUNCTION private.write_tree_sheet(p_orchard uuid)
 RETURNS integer
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
declare
  v_version integer;
  v_species text[];
  v_lat0 integer;
  v_lon0 integer;
begin
  update public.orchard_heads set sheet_version = sheet_version + 1 where orchard_id = p_orchard returning sheet_version into v_version;
  select array_agg(distinct species), coalesce(min(lat_e7), 0), coalesce(min(lon_e7), 0) into v_species, v_lat0, v_lon0
  from public.trees where orchard_id = p_orchard;

  delete from public.tree_sheets where orchard_id = p_orchard;
  insert into public.tree_sheets (orchard_id, version, body)
  select p_orchard, v_version, json_build_object(
    'v', v_version,
    'blocks', (select coalesce(json_agg(json_build_object('no', no, 'code', code, 'name', name,
        'rowSpacingM', trim_scale(row_spacing_m), 'treeSpacingM', trim_scale(tree_spacing_m), 'bearingDeg', trim_scale(bearing_deg),
        'firstLatE7', first_lat_e7, 'firstLonE7', first_lon_e7, 'taggedEnd', tagged_end) order by no), '[]')
      from public.blocks where orchard_id = p_orchard),
    'cultivars', (select coalesce(json_agg(json_build_object('no', no, 'species', species, 'name', name, 'habit', habit, 'buds', buds) order by no), '[]')
      from public.cultivars where orchard_id = p_orchard),
    'species', coalesce(to_json(v_species), '[]'),
    'lat0', v_lat0,
    'lon0', v_lon0,
    'trees', private.sheet_of_trees(p_orchard, v_species, v_lat0, v_lon0))::text;
  return v_version;
end $function$;
comment on function private.write_tree_sheet(uuid) is 'Makes the next version; only the newest is kept. Gives its number.';

CREATE OR REPLACE FUNCTION private.wrong_blocks(p_blocks jsonb)
 RETURNS TABLE(index integer, field text, code text)
 LANGUAGE sql
 IMMUTABLE
 SET search_path TO ''
AS $function$
  select b.index, w.field, w.code
  from (select *, count(*) over (partition by block_rows.code) as alike from private.block_rows(p_blocks)) b
  cross join lateral (values
    ('code', case when b.code is null then 'out_of_range' when b.alike > 1 then 'twice' end),
    ('name', case when b.name is null then 'out_of_range' end),
    ('rowSpacingM', case when b.row_spacing_m is null then 'out_of_range' end),
    ('treeSpacingM', case when b.tree_spacing_m is null then 'out_of_range' end),
    ('bearingDeg', case when b.bearing_deg is null and private.is_said(b.said -> 'bearingDeg') then 'out_of_range' end),
    ('firstLatE7', case when b.first_lat_e7 is null and private.is_said(b.said -> 'firstLatE7') then 'out_of_range' end),
    ('firstLonE7', case when b.first_lon_e7 is null and private.is_said(b.said -> 'firstLonE7') then 'out_of_range' end),
    ('firstLatE7', case when (b.first_lat_e7 is null) <> (b.first_lon_e7 is null) then 'position_half' end),
    ('taggedEnd', case when b.tagged_end not in ('low', 'high') then 'not_one_of' end)
  ) w (field, code) where w.code is not null
$function$;

CREATE OR REPLACE FUNCTION private.wrong_changes(p_orchard uuid, p_cultivars jsonb, p_changes jsonb)
 RETURNS TABLE(index integer, field text, code text)
 LANGUAGE sql
 STABLE
 SET search_path TO ''
AS $function$
  select t.index, w.field, w.code
  from (
    select r.*, x.no, x.life as life_now, c.name is not null as knows_cultivar,
      count(*) over (partition by r.said ->> 'tree') > 1 as is_twice,
      r.life <> 'removed' and x.life = 'removed' and exists (
        select 1 from public.trees o where o.orchard_id = p_orchard and o.block_no = x.block_no and o.row_no = x.row_no
          and o.place = x.place and o.life <> 'removed') as is_taken
    from private.tree_rows(p_changes) r
    left join public.trees x on x.orchard_id = p_orchard and x.no = private.whole_in(r.said -> 'tree', 1, 2147483647)
    left join (
      select species, name from public.cultivars where orchard_id = p_orchard
      union select species, name from private.cultivar_rows(p_cultivars)) c on c.species = r.species and c.name = r.cultivar
  ) t
  cross join lateral (values
    ('tree', case when t.no is null then 'not_one_of' when t.is_twice then 'twice' when t.is_taken then 'place_taken' end),
    ('species', case when private.is_species(t.species) is not true then 'not_one_of' end),
    ('cultivar', case when private.is_said(t.said -> 'cultivar') and not t.knows_cultivar then 'not_one_of' end),
    ('size', case when t.size_class not in ('young', 'small', 'medium', 'large') then 'not_one_of' end),
    ('planted', case when t.planted_year is null and private.is_said(t.said -> 'planted') then 'out_of_range' end),
    ('heightCm', case when t.height_cm is null and private.is_said(t.said -> 'heightCm') then 'out_of_range' end),
    ('trunkMm', case when t.trunk_mm is null and private.is_said(t.said -> 'trunkMm') then 'out_of_range' end),
    ('asksSaw', case when jsonb_typeof(t.said -> 'asksSaw') not in ('boolean', 'null') then 'not_one_of' end),
    ('life', case when t.life not in ('standing', 'dead', 'removed', 'gap') then 'not_one_of'
      when t.life <> 'standing' and t.life <> t.life_now and private.in_use(p_orchard, array[t.no],
        case when t.life = 'dead' then '{}'::text[] else array['disease', 'arborist'] end) <> '[]' then 'in_use' end),
    ('latE7', case when t.lat_e7 is null and private.is_said(t.said -> 'latE7') then 'out_of_range' end),
    ('lonE7', case when t.lon_e7 is null and private.is_said(t.said -> 'lonE7') then 'out_of_range' end),
    ('latE7', case when (t.lat_e7 is null) <> (t.lon_e7 is null) then 'position_half' end)
  ) w (field, code) where w.code is not null
$function$;

CREATE OR REPLACE FUNCTION private.wrong_code()
 RETURNS jsonb
 LANGUAGE plpgsql
 SET search_path TO ''
AS $function$
begin
  insert into public.wrong_codes as w (user_id, count, since) values (auth.uid(), 1, now())
  on conflict (user_id) do update set
    count = case when w.since > now() - interval '1 hour' then w.count + 1 else 1 end,
    since = case when w.since > now() - interval '1 hour' then w.since else now() end;
  return jsonb_build_object('refused', private.code('code_wrong'));
end $function$;
comment on function private.wrong_code() is 'Not stored: no orchard to store it in, and the same code stays wrong.';

CREATE OR REPLACE FUNCTION private.wrong_cultivars(p_cultivars jsonb)
 RETURNS TABLE(index integer, field text, code text)
 LANGUAGE sql
 IMMUTABLE
 SET search_path TO ''
AS $function$
  select c.index, w.field, w.code
  from (select *, count(*) over (partition by cultivar_rows.species, cultivar_rows.name) as alike from private.cultivar_rows(p_cultivars)) c
  cross join lateral (values
    ('species', case when private.is_species(c.species) is not true then 'not_one_of' end),
    ('name', case when c.name is null then 'out_of_range' when c.alike > 1 then 'twice' end),
    ('habit', case when c.habit not in ('spur', 'shoot', 'both', 'unknown') then 'not_one_of' end),
    ('buds', case when c.buds not in ('base', 'middle', 'tip', 'unknown') then 'not_one_of' end)
  ) w (field, code) where w.code is not null
$function$;

CREATE OR REPLACE FUNCTION private.wrong_rows(p_orchard uuid, p_blocks jsonb, p_cultivars jsonb, p_trees jsonb, p_changes jsonb)
 RETURNS jsonb
 LANGUAGE sql
 STABLE
 SET search_path TO ''
AS $function$
  select jsonb_agg(jsonb_build_object('list', list, 'index', index, 'field', field, 'code', code) order by list, index, field, code)
  from (
    select 'blocks' as list, * from private.wrong_blocks(p_blocks)
    union all select 'cultivars', * from private.wrong_cultivars(p_cultivars)
    union all select 'trees', * from private.wrong_trees(p_orchard, p_blocks, p_cultivars, p_trees)
    union all select 'changes', * from private.wrong_changes(p_orchard, p_cultivars, p_changes)
    order by 1, 2 limit 1000) wrong
$function$;
comment on function private.wrong_rows(uuid,jsonb,jsonb,jsonb,jsonb) is 'The first 1,000; null when all is well. index counts from 0 in its list.';

CREATE OR REPLACE FUNCTION private.wrong_trees(p_orchard uuid, p_blocks jsonb, p_cultivars jsonb, p_trees jsonb)
 RETURNS TABLE(index integer, field text, code text)
 LANGUAGE sql
 STABLE
 SET search_path TO ''
AS $function$
  select t.index, w.field, w.code
  from (
    select r.*, b.code is not null as knows_block, c.name is not null as knows_cultivar,
      o.no is not null or (r.life <> 'removed'
        and count(*) filter (where r.life <> 'removed') over (partition by r.block, r.row_no, r.place) > 1) as taken
    from private.tree_rows(p_trees) r
    left join (
      select code from public.blocks where orchard_id = p_orchard
      union select code from private.block_rows(p_blocks)) b on b.code = r.block
    left join (
      select species, name from public.cultivars where orchard_id = p_orchard
      union select species, name from private.cultivar_rows(p_cultivars)) c on c.species = r.species and c.name = r.cultivar
    left join (
      select x.no, x.row_no, x.place, y.code from public.trees x
      join public.blocks y on y.orchard_id = x.orchard_id and y.no = x.block_no
      where x.orchard_id = p_orchard and x.life <> 'removed'
    ) o on o.code = r.block and o.row_no = r.row_no and o.place = r.place and r.life <> 'removed'
  ) t
  cross join lateral (values
    ('block', case when not t.knows_block then 'not_one_of' end),
    ('row', case when t.row_no is null then 'out_of_range' end),
    ('place', case when t.place is null then 'out_of_range' when t.taken then 'place_taken' end),
    ('species', case when private.is_species(t.species) is not true then 'not_one_of' end),
    ('cultivar', case when private.is_said(t.said -> 'cultivar') and not t.knows_cultivar then 'not_one_of' end),
    ('size', case when t.size_class not in ('young', 'small', 'medium', 'large') then 'not_one_of' end),
    ('planted', case when t.planted_year is null and private.is_said(t.said -> 'planted') then 'out_of_range' end),
    ('heightCm', case when t.height_cm is null and private.is_said(t.said -> 'heightCm') then 'out_of_range' end),
    ('trunkMm', case when t.trunk_mm is null and private.is_said(t.said -> 'trunkMm') then 'out_of_range' end),
    ('asksSaw', case when jsonb_typeof(t.said -> 'asksSaw') not in ('boolean', 'null') then 'not_one_of' end),
    ('life', case when t.life not in ('standing', 'dead', 'removed', 'gap') then 'not_one_of' end),
    ('latE7', case when t.lat_e7 is null and private.is_said(t.said -> 'latE7') then 'out_of_range' end),
    ('lonE7', case when t.lon_e7 is null and private.is_said(t.said -> 'lonE7') then 'out_of_range' end),
    ('latE7', case when (t.lat_e7 is null) <> (t.lon_e7 is null) then 'position_half' end)
  ) w (field, code) where w.code is not null
$function$;

CREATE OR REPLACE FUNCTION public.private_people(p_orchard uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
begin
  perform private.begin_read(p_orchard, null, 'lead');
  return (
    select coalesce(jsonb_object_agg(p.id, jsonb_build_object(
      'phone', p.phone, 'heardAt', private.instant(heard.heard_at), 'heardHead', heard.heard_head,
      'joinedBy', added.by_person_id, 'lastTree', last.tree_no)), '{}')
    from public.people p
    left join lateral (
      -- Whoever opened a link was heard then.
      select coalesce(l.heard_at, l.linked_at) as heard_at, l.heard_head from public.logins l
      where l.orchard_id = p_orchard and l.person_id = p.id and l.ended_at is null
      order by 1 desc limit 1) heard on true
    left join lateral (
      select c.tree_no from public.claim_people cp join public.claims c on c.id = cp.claim_id
      where cp.person_id = p.id and c.tree_no is not null
        and c.shift_id = (select s.id from public.shifts s where s.orchard_id = p_orchard and s.state = 'open')
      order by cp.from_at desc limit 1) last on true
    -- A person's id is the id of the command that made them.
    left join public.events added
      on added.orchard_id = p_orchard and added.command_id = p.id and added.by_person_id <> p.id
    where p.orchard_id = p_orchard and p.removed_at is null
  );
end $function$;
comment on function private_people(uuid) is 'joinedBy: the lead who added this person; null when they came by a link of their own. lastTree: the last one held or helped at in this shift.';
grant execute on function private_people(uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.put_archive_part(p_code text, p_archive uuid, p_part integer, p_table text, p_columns text[], p_rows text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_hash text := private.begin_code(p_code, p_archive);
  v_lacks text := private.setup_code_lacks(v_hash);
begin
  if v_lacks = 'code_wrong' then return private.wrong_code(); end if;
  if v_lacks is not null then return jsonb_build_object('refused', private.code(v_lacks)); end if;
  perform private.need(p_part between 0 and 19999, 'p_part: from 0 to 19,999.');
  perform private.need(char_length(p_table) between 1 and 63 and cardinality(p_columns) between 1 and 100 and p_rows is not null,
    'p_table, p_columns and p_rows are needed.');
  if octet_length(p_rows) > 16000000 then perform private.fail(413, 'too_large', 'At most 16 MB a part.'); end if;
  if exists (select 1 from public.archive_parts where archive = p_archive and code_hash <> v_hash) then
    perform private.fail(403, 'not_allowed', 'This archive is on its way by another code.');
  end if;
  insert into public.archive_parts (archive, part, code_hash, table_name, columns, body, put_at)
  values (p_archive, p_part, v_hash, p_table, p_columns, p_rows, clock_timestamp())
  on conflict (archive, part) do update set table_name = excluded.table_name, columns = excluded.columns, body = excluded.body,
    put_at = excluded.put_at;
  return jsonb_build_object('part', p_part);
end $function$;
comment on function put_archive_part(text,uuid,integer,text,text[],text) is 'Sent again, a part replaces itself.';
grant execute on function put_archive_part(text,uuid,integer,text,text[],text) to authenticated;

CREATE OR REPLACE FUNCTION public.read_aerial(p_orchard uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
begin
  perform private.begin_read(p_orchard, null, 'lead');
  return (
    select jsonb_build_object('jpeg', translate(encode(jpeg, 'base64'), E'\n', ''), 'points', points, 'opacity', opacity)
    from public.aerial_pictures where orchard_id = p_orchard
  );
end $function$;
comment on function read_aerial(uuid) is 'Null where there is none.';
grant execute on function read_aerial(uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.read_briefing(p_orchard uuid, p_shift uuid, p_version integer DEFAULT NULL::integer)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
begin
  perform private.begin_read(p_orchard);
  if not exists (select 1 from public.shifts where orchard_id = p_orchard and id = p_shift) then
    perform private.fail(404, 'no_such_shift', 'There is no such shift.');
  end if;
  return (
    select jsonb_build_object('version', version, 'change', change, 'topics', topics)
    from public.briefings where shift_id = p_shift and version = coalesce(p_version, version)
    order by version desc limit 1
  );
end $function$;
comment on function read_briefing(uuid,uuid,integer) is 'The newest version, or the one asked for: what somebody signed can be read again.';
grant execute on function read_briefing(uuid,uuid,integer) to authenticated;

CREATE OR REPLACE FUNCTION public.read_calls(p_orchard uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_shift uuid;
begin
  perform private.begin_read(p_orchard, null, 'lead');
  select id into v_shift from public.shifts
  where orchard_id = p_orchard and state <> 'scheduled'
  order by state = 'open' desc, closed_at desc limit 1;

  return (
    select coalesce(jsonb_agg(private.call_told(c) || jsonb_build_object(
      'note', c.note, 'endedBy', c.ended_by, 'endedAt', private.instant(c.ended_at), 'outcome', c.outcome,
      'hasIncident', exists (select 1 from public.incidents i where i.orchard_id = p_orchard and i.call_id = c.id))
      order by c.called_at desc), '[]')
    from (
      select * from public.calls
      where orchard_id = p_orchard and (shift_id = v_shift or ended_at is null)
      order by called_at desc limit 200) c
  );
end $function$;
comment on function read_calls(uuid) is 'Of the open shift, else of the last one; and whatever nobody has ended.';
grant execute on function read_calls(uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.read_exceptions(p_orchard uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
begin
  perform private.begin_read(p_orchard, null, 'lead');
  return (
    select coalesce(jsonb_agg(jsonb_build_object(
      'id', e.id, 'shiftDate', e.on_date, 'what', e.what, 'lifts', e.lifts, 'because', e.because, 'note', e.note,
      'madeBy', e.made_by, 'madeAt', private.instant(e.made_at), 'endedAt', private.instant(e.ended_at))
      order by e.made_at desc), '[]')
    from (
      select x.*, s.on_date from public.weather_exceptions x join public.shifts s on s.id = x.shift_id
      where x.orchard_id = p_orchard order by x.made_at desc limit 100) e
  );
end $function$;
comment on function read_exceptions(uuid) is 'The newest 100, with what was written: typed text is read here and never in events.';
grant execute on function read_exceptions(uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.read_forecast(p_orchard uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
begin
  perform private.begin_read(p_orchard, null);
  return (
    select jsonb_build_object('id', id, 'hours', hours, 'broughtBy', brought_by, 'broughtAt', private.instant(brought_at))
    from public.forecasts where orchard_id = p_orchard);
end $function$;
comment on function read_forecast(uuid) is 'Null: none was brought in.';
grant execute on function read_forecast(uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.read_incidents(p_orchard uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
begin
  perform private.begin_read(p_orchard, null, 'lead');
  return (
    select coalesce(jsonb_agg(jsonb_build_object(
      'incident', i.id, 'kind', i.kind, 'tree', i.tree_no, 'note', i.note, 'call', i.call_id,
      'happenedAt', private.instant(i.happened_at), 'writtenBy', i.written_by, 'writtenAt', private.instant(i.written_at))
      order by i.happened_at desc), '[]')
    from (select * from public.incidents where orchard_id = p_orchard order by happened_at desc limit 200) i
  );
end $function$;
comment on function read_incidents(uuid) is 'The newest 200.';
grant execute on function read_incidents(uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.read_invites(p_orchard uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
begin
  perform private.begin_read(p_orchard, null, 'manager');
  return (
    select jsonb_build_object(
      'invites', coalesce(jsonb_agg(jsonb_build_object('invite', i.id, 'kind', i.kind, 'role', i.role, 'person', i.person_id,
        'shiftDate', s.on_date, 'madeBy', i.made_by, 'madeAt', private.instant(i.made_at),
        'expiresAt', private.instant(i.expires_at), 'endedAt', private.instant(i.ended_at),
        'used', i.used, 'over', private.invite_lacks(i)) order by i.made_at desc, i.id), '[]'),
      'names', private.names_of(p_orchard, array_agg(i.person_id) || array_agg(i.made_by)))
    from (
      select * from public.invites where orchard_id = p_orchard order by made_at desc limit 300) newest
    join public.invites i on i.id = newest.id
    left join public.shifts s on s.id = i.shift_id);
end $function$;
comment on function read_invites(uuid) is 'The newest 300. Never the code: only its hash is kept. over: why it lets nobody in any more.';
grant execute on function read_invites(uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.read_photo(p_orchard uuid, p_photo uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_reader private.reader := private.begin_read(p_orchard);
  v_photo public.photos;
begin
  select * into v_photo from public.photos where orchard_id = p_orchard and id = p_photo;
  if not v_reader.is_lead and (v_photo.taken_by = any (v_reader.own)) is not true
    and not exists (select 1 from public.big_cut_marks where id = v_photo.mark_id and ended_at is null) then
    perform private.fail(403, 'not_allowed', 'You cannot read this.');
  end if;
  if v_photo.id is null then perform private.fail(404, 'no_such_photo', 'There is no such photo.'); end if;
  return jsonb_build_object('jpeg', translate(encode(v_photo.jpeg, 'base64'), e'\n', ''));
end $function$;
grant execute on function read_photo(uuid,uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.read_rounds(p_orchard uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
begin
  perform private.begin_read(p_orchard, null, 'lead');
  return (
    select coalesce(jsonb_agg(jsonb_build_object('round', r.id, 'kind', r.kind, 'season', r.season, 'species', r.species,
      'from', r.from_on, 'to', r.to_on, 'openedAt', private.instant(r.opened_at), 'closedAt', private.instant(r.closed_at),
      'trees', (
        select count(*) from public.trees t
        where t.orchard_id = p_orchard and t.life = 'standing' and t.species = any (r.species)),
      'done', coalesce(w.done, 0), 'begun', coalesce(w.begun, 0), 'leftOut', coalesce(w.left_out, 0),
      'planned', coalesce(s.planned, 0), 'held', coalesce(s.held, 0)) order by r.opened_at desc, r.id), '[]')
    from public.rounds r
    left join lateral (
      select count(*) filter (where state = 'done') as done, count(*) filter (where state = 'begun') as begun,
        count(*) filter (where state = 'left_out') as left_out
      from public.tree_work where round_id = r.id) w on true
    left join lateral (
      select count(*) filter (where state = 'scheduled') as planned, count(*) filter (where state in ('open', 'closed')) as held
      from public.shifts where round_id = r.id) s on true
    where r.orchard_id = p_orchard);
end $function$;
comment on function read_rounds(uuid) is 'trees: how many of its species stand now, which for a round of the past is not how many stood then.';
grant execute on function read_rounds(uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.read_shifts(p_orchard uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
begin
  perform private.begin_read(p_orchard, null, 'lead');
  return (
    select coalesce(jsonb_agg(jsonb_build_object('shift', s.id, 'round', s.round_id, 'kind', r.kind, 'season', r.season,
      'date', s.on_date, 'state', s.state, 'openedAt', private.instant(s.opened_at), 'closedAt', private.instant(s.closed_at),
      'people', (select count(distinct a.person_id) from public.attendances a where a.shift_id = s.id),
      'done', (
        select count(distinct v.tree_no) from public.visits v
        where v.shift_id = s.id and v.result = 'done' and v.undone_at is null)) order by s.starts_at desc, s.id), '[]')
    from (
      select * from public.shifts
      where orchard_id = p_orchard and state <> 'scheduled' order by starts_at desc limit 300) s
    join public.rounds r on r.id = s.round_id);
end $function$;
comment on function read_shifts(uuid) is 'The newest 300 that were opened or called off; those that are planned stand in the snapshot. shift_record has the rest.';
grant execute on function read_shifts(uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.redeem(p_code text, p_command uuid, p_name text DEFAULT NULL::text, p_age_band text DEFAULT NULL::text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_hash text := private.begin_code(p_code, p_command);
  v_invite public.invites;
  v_known public.people;
  v_age_band text := coalesce(p_age_band, 'adult');
  v_lacks text;
begin
  select * into v_invite from public.invites where code_hash = v_hash;
  if not found then return private.wrong_code(); end if;
  perform 1 from public.orchard_heads where orchard_id = v_invite.orchard_id for no key update;
  select * into v_invite from public.invites where code_hash = v_hash;
  v_c := ('redeem', v_invite.orchard_id, p_command, p_command, p_command, false,
    jsonb_strip_nulls(jsonb_build_object('user', auth.uid(), 'code', v_hash, 'name', p_name, 'age_band', p_age_band)), clock_timestamp(), null);
  v_c.answer := private.seen_before(v_c);
  if v_c.answer is not null then return v_c.answer; end if;

  if v_invite.person_id is null then
    perform private.need(private.is_line(p_name, 60), 'p_name: up to 60 characters.');
    perform private.need(v_age_band in ('adult', 'minor'), 'p_age_band: adult or minor.');
    perform private.need(v_age_band = 'adult' or v_invite.role = 'volunteer', 'A minor is no lead.');
  end if;
  v_known := private.own_person(v_invite, btrim(p_name));
  v_lacks := private.invite_lacks(v_invite);
  -- A link that this login itself used up still shows the way back in.
  if v_lacks is not null and not (v_lacks = 'code_used' and v_known.id is not null) then
    return private.refuse(v_c, private.code(v_lacks));
  end if;

  if v_known.id is null and v_invite.person_id is null then return private.join_anew(v_c, v_invite, btrim(p_name), v_age_band); end if;
  v_c.person_id := coalesce(v_known.id, v_invite.person_id);
  v_c.by_person_id := v_c.person_id;
  if v_known.id is not null then return private.join_again(v_c, v_invite, v_known); end if;
  return private.use_invite(v_c, v_invite, 'login_linked', null, jsonb_build_object('person', v_c.person_id));
end $function$;
comment on function redeem(text,uuid,text,text) is 'A new person gets the command''s id. Refusals are stored under that id too, though nobody has it.';
grant execute on function redeem(text,uuid,text,text) to authenticated;

CREATE OR REPLACE FUNCTION public.release_tree(p_orchard uuid, p_command uuid, p_person uuid, p_tree integer, p_claim uuid DEFAULT NULL::uuid, p_share integer DEFAULT NULL::integer, p_note text DEFAULT NULL::text, p_begun_at timestamp with time zone DEFAULT NULL::timestamp with time zone, p_at timestamp with time zone DEFAULT NULL::timestamp with time zone, p_elapsed_s integer DEFAULT NULL::integer)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
begin
  v_c := private.begin_command('release_tree', p_orchard, p_command, p_person, 'self', jsonb_build_object(
    'tree', p_tree, 'claim', p_claim, 'share', p_share, 'note', p_note, 'begun_at', p_begun_at, 'at', p_at, 'elapsed_s', p_elapsed_s));
  if v_c.answer is not null then return v_c.answer; end if;
  if p_share not between 1 and 99 or char_length(p_note) > 300 then
    perform private.fail(400, 'malformed', 'A share is 1 to 99 percent, a note has up to 300 characters.');
  end if;
  return private.bring_in_work(v_c, p_claim, p_tree, p_begun_at,
    case when p_share is not null then 'begun' end, p_share, p_note, p_at, p_elapsed_s);
end $function$;
comment on function release_tree(uuid,uuid,uuid,integer,uuid,integer,text,timestamp with time zone,timestamp with time zone,integer) is 'p_share null: not begun, the tree is as it was before the claim.';
grant execute on function release_tree(uuid,uuid,uuid,integer,uuid,integer,text,timestamp with time zone,timestamp with time zone,integer) to authenticated;

CREATE OR REPLACE FUNCTION public.remove_aerial(p_orchard uuid, p_command uuid, p_person uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_version integer;
begin
  v_c := private.begin_command('remove_aerial', p_orchard, p_command, p_person, 'manager', '{}');
  if v_c.answer is not null then return v_c.answer; end if;
  if not exists (select 1 from public.aerial_pictures where orchard_id = p_orchard) then
    return private.refuse(v_c, private.code('no_picture'));
  end if;

  delete from public.aerial_pictures where orchard_id = p_orchard;
  update public.orchards set aerial_version = aerial_version + 1 where id = p_orchard returning aerial_version into v_version;
  return private.accept(v_c, 'orchard_changed', jsonb_build_object('aerialVersion', v_version));
end $function$;
grant execute on function remove_aerial(uuid,uuid,uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.remove_block(p_orchard uuid, p_command uuid, p_person uuid, p_block integer)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
begin
  v_c := private.begin_command('remove_block', p_orchard, p_command, p_person, 'manager', jsonb_build_object('block', p_block));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.block_or_fail(p_orchard, p_block);
  if not private.delete_block(p_orchard, p_block) then
    return private.refuse(v_c, private.code('block_has_history', jsonb_build_object('block', p_block)));
  end if;
  return private.accept(v_c, 'block_removed', jsonb_build_object('block', p_block, 'sheet', private.write_tree_sheet(p_orchard)));
end $function$;
grant execute on function remove_block(uuid,uuid,uuid,integer) to authenticated;

CREATE OR REPLACE FUNCTION public.remove_cultivar(p_orchard uuid, p_command uuid, p_person uuid, p_cultivar integer)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_trees jsonb;
begin
  v_c := private.begin_command('remove_cultivar', p_orchard, p_command, p_person, 'manager', jsonb_build_object('cultivar', p_cultivar));
  if v_c.answer is not null then return v_c.answer; end if;
  if not exists (select 1 from public.cultivars where orchard_id = p_orchard and no = p_cultivar) then
    perform private.fail(404, 'no_such_cultivar', 'There is no cultivar with this number.');
  end if;
  select jsonb_agg(no order by no) into v_trees from public.trees where orchard_id = p_orchard and cultivar_no = p_cultivar;
  if v_trees is not null then
    return private.refuse(v_c, private.code('cultivar_in_use', jsonb_build_object('trees', v_trees)));
  end if;
  delete from public.cultivars where orchard_id = p_orchard and no = p_cultivar;
  return private.accept(v_c, 'cultivar_removed',
    jsonb_build_object('cultivar', p_cultivar, 'sheet', private.write_tree_sheet(p_orchard)));
end $function$;
grant execute on function remove_cultivar(uuid,uuid,uuid,integer) to authenticated;

CREATE OR REPLACE FUNCTION public.remove_person(p_orchard uuid, p_command uuid, p_person uuid, p_subject uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_subject public.people;
  v_answer jsonb;
begin
  v_c := private.begin_command('remove_person', p_orchard, p_command, p_person, 'lead', jsonb_build_object('subject', p_subject));
  if v_c.answer is not null then return v_c.answer; end if;
  v_subject := private.person_or_fail(p_orchard, p_subject);
  if not private.may_give(v_c.by_person_id, v_subject.role) then return private.refuse(v_c, private.code('not_yours_to_give')); end if;
  if private.is_last_manager(v_subject) then return private.refuse(v_c, private.code('last_manager')); end if;

  update public.people set removed_at = v_c.at where id = p_subject;
  update public.logins set ended_at = v_c.at where orchard_id = p_orchard and person_id = p_subject and ended_at is null;
  -- Nobody comes back by a link they kept, for themselves or for others.
  update public.invites set ended_at = v_c.at
  where orchard_id = p_orchard and p_subject in (person_id, made_by) and ended_at is null;
  v_answer := private.accept(v_c, 'person_removed', private.filled(
    jsonb_build_object('person', p_subject, 'channel', private.next_channel(p_orchard)) || private.take_from(v_c, p_subject)));
  perform private.move_channel(p_orchard);
  return v_answer;
end $function$;
grant execute on function remove_person(uuid,uuid,uuid,uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.reopen_round(p_orchard uuid, p_command uuid, p_person uuid, p_round uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
begin
  v_c := private.begin_command('reopen_round', p_orchard, p_command, p_person, 'manager', jsonb_build_object('round', p_round));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.round_or_fail(p_orchard, p_round);

  update public.rounds set closed_at = null where id = p_round;
  return private.accept(v_c, 'round_reopened', jsonb_build_object('round', p_round));
end $function$;
comment on function reopen_round(uuid,uuid,uuid,uuid) is 'For one that was closed by mistake: its trees are as they were; deals and called off shifts do not come back.';
grant execute on function reopen_round(uuid,uuid,uuid,uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.resume_work(p_orchard uuid, p_command uuid, p_person uuid, p_stop uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
begin
  v_c := private.begin_command('resume_work', p_orchard, p_command, p_person, 'lead', jsonb_build_object('stop', p_stop));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.stop_or_fail(p_orchard, p_stop);

  update public.stops set resumed_at = v_c.at, resumed_by = v_c.by_person_id where id = p_stop and resumed_at is null;
  return private.accept(v_c, 'work_resumed', jsonb_build_object('stop', p_stop));
end $function$;
grant execute on function resume_work(uuid,uuid,uuid,uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.return_tool(p_orchard uuid, p_command uuid, p_person uuid, p_tool integer)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_dirty jsonb;
begin
  v_c := private.begin_command('return_tool', p_orchard, p_command, p_person, 'self', jsonb_build_object('tool', p_tool));
  if v_c.answer is not null then return v_c.answer; end if;
  if not exists (
    select 1 from public.tool_holdings
    where orchard_id = p_orchard and tool_no = p_tool and person_id = p_person and returned_at is null
  ) then return private.refuse(v_c, private.code('not_in_hand', jsonb_build_object('tool', p_tool))); end if;

  -- From the middle of work on a diseased tree no tool goes to the next person as if it were clean.
  v_dirty := private.soil_tools(p_orchard, (private.open_claim_of(p_person)).tree_no, array[p_person]);
  perform private.return_tools(v_c, array[p_tool]);
  return private.accept(v_c, 'tool_returned', jsonb_build_object('tool', p_tool, 'dirty', v_dirty));
end $function$;
grant execute on function return_tool(uuid,uuid,uuid,integer) to authenticated;

CREATE OR REPLACE FUNCTION public.schedule_shift(p_orchard uuid, p_command uuid, p_person uuid, p_round uuid, p_date date, p_starts_at timestamp with time zone, p_ends_at timestamp with time zone, p_signal text DEFAULT 'horn'::text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
begin
  v_c := private.begin_command('schedule_shift', p_orchard, p_command, p_person, 'lead', jsonb_build_object(
    'round', p_round, 'date', p_date, 'starts_at', p_starts_at, 'ends_at', p_ends_at, 'signal', p_signal));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need_hours(p_date, p_starts_at, p_ends_at, p_signal);
  if (private.round_or_fail(p_orchard, p_round)).closed_at is not null then
    return private.refuse(v_c, private.code('round_closed'));
  end if;

  insert into public.shifts (id, orchard_id, round_id, on_date, starts_at, ends_at, signal)
  values (p_command, p_orchard, p_round, p_date, p_starts_at, p_ends_at, p_signal);
  return private.accept(v_c, 'shift_scheduled', jsonb_build_object('shift', p_command, 'roundId', p_round, 'date', p_date,
    'startsAt', private.instant(p_starts_at), 'endsAt', private.instant(p_ends_at), 'state', 'scheduled', 'signal', p_signal,
    'briefingVersion', 0, 'off', '{}'::jsonb), null, false, jsonb_build_object('shift', p_command));
end $function$;
grant execute on function schedule_shift(uuid,uuid,uuid,uuid,date,timestamp with time zone,timestamp with time zone,text) to authenticated;

CREATE OR REPLACE FUNCTION public.set_off_today(p_orchard uuid, p_command uuid, p_person uuid, p_what text, p_reason text DEFAULT NULL::text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_shift public.shifts;
  v_before jsonb;
begin
  v_c := private.begin_command('set_off_today', p_orchard, p_command, p_person, 'lead',
    jsonb_build_object('what', p_what, 'reason', p_reason));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(private.are_codes(array[p_what], 1), 'p_what: a species or "ladder".');
  perform private.need(p_reason is null or private.are_offs(jsonb_build_object(p_what, p_reason)), 'p_reason: a known reason, or null.');
  v_shift := private.open_shift(p_orchard);
  if v_shift.id is null then return private.refuse(v_c, private.code('shift_not_open')); end if;
  if p_reason is distinct from 'season' and exists (
    select 1 from public.shift_offs where shift_id = v_shift.id and what = p_what and reason = 'season')
  then return private.refuse(v_c, private.code('exception_needed', jsonb_build_object('species', p_what))); end if;

  v_before := private.claims_put_off(p_orchard, v_c.at);
  delete from public.shift_offs where shift_id = v_shift.id and what = p_what;
  insert into public.shift_offs (orchard_id, shift_id, what, reason, set_by, set_at)
  select p_orchard, v_shift.id, p_what, p_reason, v_c.by_person_id, v_c.at where p_reason is not null;
  return private.accept(v_c, 'off_changed', jsonb_build_object('shift', v_shift.id, 'what', p_what, 'reason', p_reason)
    || private.tell_to_leave(v_c, v_before));
end $function$;
grant execute on function set_off_today(uuid,uuid,uuid,text,text) to authenticated;

CREATE OR REPLACE FUNCTION public.shift_record(p_orchard uuid, p_shift uuid DEFAULT NULL::uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_shift public.shifts;
begin
  perform private.begin_read(p_orchard, null, 'lead');
  select * into v_shift from public.shifts s
  where s.orchard_id = p_orchard and case when p_shift is null then s.state <> 'scheduled' else s.id = p_shift end
  order by s.opened_at desc nulls last limit 1;
  if v_shift.id is null then
    if p_shift is null then return null; end if;
    perform private.fail(404, 'no_such_shift', 'There is no such shift.');
  end if;

  return jsonb_build_object(
    'shift', v_shift.id, 'date', v_shift.on_date, 'state', v_shift.state,
    'openedAt', private.instant(v_shift.opened_at), 'closedAt', private.instant(v_shift.closed_at),
    'people', private.record_of_people(v_shift, clock_timestamp()),
    'blocks', (
      select coalesce(jsonb_agg(jsonb_build_object('block', block_no, 'done', done, 'begun', begun) order by block_no), '[]')
      from (
        select block_no, count(*) filter (where result = 'done') as done, count(*) filter (where result = 'begun') as begun
        from private.trees_in(v_shift) group by block_no) by_block),
    'stops', private.record_of_stops(v_shift.id));
end $function$;
comment on function shift_record(uuid,uuid) is 'For leads. p_shift null: the one that was opened last, also when it is closed.';
grant execute on function shift_record(uuid,uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.sign_briefing(p_orchard uuid, p_command uuid, p_person uuid, p_version integer, p_language text, p_how text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_shift public.shifts;
  v_version integer;
begin
  v_c := private.begin_command('sign_briefing', p_orchard, p_command, p_person, 'self',
    jsonb_build_object('version', p_version, 'language', p_language, 'how', p_how));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_version is not null, 'p_version: the version that was read.');
  perform private.need(p_language in ('en', 'es'), 'p_language: en or es.');
  perform private.need(p_how in ('heard', 'read_to_me', 'read'), 'p_how: heard, read_to_me or read.');
  v_shift := private.open_shift(p_orchard);
  if v_shift.id is null then return private.refuse(v_c, private.code('shift_not_open')); end if;
  v_version := private.latest_briefing(v_shift.id);
  if p_version <> v_version then
    return private.refuse(v_c, private.code('briefing_changed', jsonb_build_object('version', v_version)));
  end if;

  insert into public.briefing_signatures as known (orchard_id, shift_id, version, person_id, language, how, signed_by, signed_at)
  values (p_orchard, v_shift.id, v_version, p_person, p_language, p_how, v_c.by_person_id, v_c.at)
  -- A lead signed for them before: one's own hand says more.
  on conflict (shift_id, version, person_id) do update
    set language = excluded.language, how = excluded.how, signed_by = excluded.signed_by, signed_at = excluded.signed_at
    where excluded.signed_by = excluded.person_id and known.signed_by <> known.person_id;
  return private.accept(v_c, 'briefing_signed', jsonb_build_object(
    'version', v_version, 'own', case when v_c.by_person_id = p_person then true end));
end $function$;
comment on function sign_briefing(uuid,uuid,uuid,integer,text,text) is 'The event''s own: signed by this person''s own hand, not by a lead for them.';
grant execute on function sign_briefing(uuid,uuid,uuid,integer,text,text) to authenticated;

CREATE OR REPLACE FUNCTION public.snapshot(p_orchard uuid, p_person uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_reader private.reader := private.begin_read(p_orchard, p_person);
begin
  return private.orchard_state(v_reader)
    || private.people_state(v_reader)
    || private.rounds_state(p_orchard)
    || private.crew_state(v_reader)
    || private.work_state(p_orchard)
    || private.trees_in_hand_state(p_orchard)
    || private.looked_over_state(v_reader)
    || private.brush_state(p_orchard)
    || private.calls_state(v_reader)
    || private.flags_state(v_reader)
    || private.weather_state(p_orchard);
end $function$;
grant execute on function snapshot(uuid,uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.start_break(p_orchard uuid, p_command uuid, p_person uuid, p_at timestamp with time zone DEFAULT NULL::timestamp with time zone)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_here public.attendances;
  v_from timestamptz;
  v_refused jsonb := '[]';
begin
  v_c := private.begin_command('start_break', p_orchard, p_command, p_person, 'self', jsonb_build_object('at', p_at));
  if v_c.answer is not null then return v_c.answer; end if;
  if (private.open_shift(p_orchard)).id is null then return private.refuse(v_c, private.code('shift_not_open')); end if;
  v_here := private.attendance((private.open_shift(p_orchard)).id, p_person);
  if v_here.id is null then return private.refuse(v_c, private.code('not_arrived')); end if;
  if private.on_break(v_here.shift_id, p_person) then v_refused := v_refused || private.code('on_break'); end if;
  v_refused := v_refused || private.holds_another(p_person);
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  select private.when_said(p_at, greatest(v_here.arrived_at, max(to_at)), v_c.at) into v_from
  from public.breaks where attendance_id = v_here.id;
  insert into public.breaks (id, attendance_id, from_at) values (p_command, v_here.id, v_from);
  return private.accept(v_c, 'break_started', jsonb_build_object('at', private.instant(v_from)));
end $function$;
grant execute on function start_break(uuid,uuid,uuid,timestamp with time zone) to authenticated;

CREATE OR REPLACE FUNCTION public.stop_work(p_orchard uuid, p_command uuid, p_person uuid, p_block integer DEFAULT NULL::integer, p_reason text DEFAULT NULL::text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_shift public.shifts;
begin
  v_c := private.begin_command('stop_work', p_orchard, p_command, p_person, 'self',
    jsonb_build_object('block', p_block, 'reason', p_reason));
  if v_c.answer is not null then return v_c.answer; end if;
  if p_block is not null and not exists (select 1 from public.blocks where orchard_id = p_orchard and no = p_block) then
    perform private.fail(404, 'no_such_block', 'There is no block with this number.');
  end if;
  v_shift := private.open_shift(p_orchard);
  if v_shift.id is null then return private.refuse(v_c, private.code('shift_not_open')); end if;

  -- Too many words are cut: a stop is not lost for them.
  insert into public.stops (id, orchard_id, shift_id, block_no, called_by, reason, called_at)
  values (p_command, p_orchard, v_shift.id, p_block, p_person, left(p_reason, 200), v_c.at);
  return private.accept(v_c, 'stop_called', jsonb_build_object('stop', p_command, 'block', p_block, 'calledBy', p_person,
    'calledAt', private.instant(v_c.at), 'resumed', false, 'answers', '{}'::jsonb));
end $function$;
grant execute on function stop_work(uuid,uuid,uuid,integer,text) to authenticated;

CREATE OR REPLACE FUNCTION public.take_back(p_orchard uuid, p_command uuid, p_person uuid, p_trees integer[])
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
begin
  v_c := private.begin_command('take_back', p_orchard, p_command, p_person, 'lead', jsonb_build_object('trees', p_trees));
  if v_c.answer is not null then return v_c.answer; end if;
  if coalesce(cardinality(p_trees), 0) not between 1 and 2000 then
    perform private.fail(400, 'malformed', 'Take back 1 to 2000 trees.');
  end if;

  return private.accept(v_c, 'trees_taken_back',
    jsonb_build_object('dealsEnded', private.end_deals(p_orchard, p_trees, v_c.at)));
end $function$;
grant execute on function take_back(uuid,uuid,uuid,integer[]) to authenticated;

CREATE OR REPLACE FUNCTION public.take_brush(p_orchard uuid, p_command uuid, p_person uuid, p_block integer, p_row integer, p_helpers uuid[] DEFAULT '{}'::uuid[])
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_shift public.shifts;
  v_helpers uuid[] := coalesce(p_helpers, '{}');
  v_missing jsonb;
begin
  v_c := private.begin_command('take_brush', p_orchard, p_command, p_person, 'self',
    jsonb_build_object('block', p_block, 'row', p_row, 'helpers', v_helpers));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(cardinality(v_helpers) <= 8 and not p_person = any (v_helpers)
    and cardinality(v_helpers) = (select count(distinct x) from unnest(v_helpers) x), 'p_helpers: up to eight different others.');
  perform private.row_or_fail(p_orchard, p_block, p_row);

  v_shift := private.open_shift(p_orchard);
  v_missing := private.missing_of_person(p_orchard, p_person, 'brush', 'holder')
    || private.missing_of_others(p_orchard, v_shift, (p_person, null, 'work', 'brush', false, v_helpers, '{}', null)::private.wish);
  if v_shift.id is not null then v_missing := v_missing || private.missing_of_row(p_orchard, v_shift, p_block, p_row); end if;
  if v_missing <> '[]' then return private.refuse(v_c, private.told_of_others(v_c, v_missing, v_helpers)); end if;

  insert into public.claims (id, orchard_id, round_id, shift_id, block_no, row_no, purpose, kind, opened_at)
  values (p_command, p_orchard, v_shift.round_id, v_shift.id, p_block, p_row, 'work', 'brush', v_c.at);
  insert into public.claim_people (orchard_id, claim_id, person_id, part, from_at)
  select p_orchard, p_command, p_person, 'holder', v_c.at
  union all select p_orchard, p_command, h, 'helper', v_c.at from unnest(v_helpers) h;
  return private.accept(v_c, 'brush_taken', private.claim_facts(p_command));
end $function$;
comment on function take_brush(uuid,uuid,uuid,integer,integer,uuid[]) is 'Others come by join_tree, go by leave_tree, and take it over by hand_over.';
grant execute on function take_brush(uuid,uuid,uuid,integer,integer,uuid[]) to authenticated;

CREATE OR REPLACE FUNCTION public.take_out(p_orchard uuid, p_table text DEFAULT NULL::text, p_from integer DEFAULT 0)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_table record;
  v_most integer;
  v_rows text[];
  v_next text;
begin
  perform private.begin_read(p_orchard, null, 'manager');
  perform private.need(p_from between 0 and 100000000, 'p_from: a row, counted from 0.');
  select * into v_table from private.archive_tables() t where t.name = coalesce(p_table, 'orchards');
  if v_table.name is null then perform private.fail(400, 'malformed', 'p_table: a table of the archive.'); end if;

  -- A photo is 400 kB as text; everything else is short.
  v_most := case v_table.name when 'photos' then 4 when 'hand_ins' then 4 else 500 end;
  execute format('select array_agg(x.line) from (select row_to_json(r)::text as line from (
      select %s from public.%I t where %s order by %s offset %s limit %s) r) x',
    (select string_agg(format('t.%I', c), ', ') from unnest(v_table.columns) c), v_table.name,
    private.archive_where(v_table.name, v_table.columns), v_table.key, p_from, v_most)
  into v_rows using p_orchard;
  if coalesce(cardinality(v_rows), 0) < v_most then
    select t.name into v_next from private.archive_tables() t where t.no = v_table.no + 1;
    p_from := -v_most;
  else v_next := v_table.name; end if;
  return jsonb_build_object('head', (select head from public.orchard_heads where orchard_id = p_orchard),
    'table', v_table.name, 'columns', v_table.columns, 'rows', coalesce(to_jsonb(v_rows), '[]'),
    'next', case when v_next is not null then jsonb_build_object('table', v_next, 'from', p_from + v_most) end);
end $function$;
comment on function take_out(uuid,text,integer) is 'A part of the archive. Rows are JSON as text, which no client rounds. The parts are of one moment when all have the same head.';
grant execute on function take_out(uuid,text,integer) to authenticated;

CREATE OR REPLACE FUNCTION public.take_tool(p_orchard uuid, p_command uuid, p_person uuid, p_tool integer, p_failed_items text[])
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_shift public.shifts;
  v_tool public.tools;
  v_held_by uuid;
  v_refused jsonb := '[]';
begin
  v_c := private.begin_command('take_tool', p_orchard, p_command, p_person, 'self',
    jsonb_build_object('tool', p_tool, 'failed_items', p_failed_items));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_tool is not null and private.are_codes(p_failed_items, 20), 'p_failed_items: a list of codes, [] when all is well.');
  v_shift := private.open_shift(p_orchard);
  if v_shift.id is null then v_refused := v_refused || private.code('shift_not_open');
  elsif not private.is_here(v_shift.id, p_person) then v_refused := v_refused || private.code('not_arrived');
  end if;
  v_tool := private.tool_in(p_orchard, p_tool);
  if v_tool.no is null then return private.refuse(v_c, v_refused || private.no_such_tool(array[p_tool])); end if;
  select person_id into v_held_by from public.tool_holdings where orchard_id = p_orchard and tool_no = p_tool and returned_at is null;
  if v_held_by is not null then
    v_refused := v_refused || private.code('tool_held', jsonb_build_object('tool', p_tool, 'person', v_held_by));
  end if;
  if v_tool.state = 'failed' then v_refused := v_refused || private.code('tool_failed', jsonb_build_object('tool', p_tool)); end if;
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  perform private.check_tool(v_c, p_tool, p_failed_items, p_failed_items = '{}');
  if p_failed_items <> '{}' then return private.accept(v_c, 'tool_failed', jsonb_build_object('tool', p_tool)); end if;
  insert into public.tool_holdings (orchard_id, tool_no, person_id, shift_id, taken_at)
  values (p_orchard, p_tool, p_person, v_shift.id, v_c.at);
  return private.accept(v_c, 'tool_taken', jsonb_build_object('tool', p_tool));
end $function$;
grant execute on function take_tool(uuid,uuid,uuid,integer,text[]) to authenticated;

CREATE OR REPLACE FUNCTION public.tool_faults(p_orchard uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
begin
  perform private.begin_read(p_orchard, null, 'lead');
  return (
    select coalesce(jsonb_object_agg(t.no, jsonb_build_object('failed', last.failed_items, 'note', last.note,
      'by', last.checked_by, 'at', private.instant(last.checked_at))), '{}')
    from public.tools t
    join lateral (
      select * from public.tool_checks c where c.orchard_id = p_orchard and c.tool_no = t.no
      order by c.checked_at desc limit 1) last on true
    where t.orchard_id = p_orchard and t.state = 'failed');
end $function$;
comment on function tool_faults(uuid) is 'Why each tool that is out of use is so: what was ticked and written at its last check.';
grant execute on function tool_faults(uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.tree_history(p_orchard uuid, p_tree integer)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_reader private.reader := private.begin_read(p_orchard);
  v_things jsonb;
begin
  perform private.tree_or_fail(p_orchard, p_tree);
  v_things := private.visits_told(v_reader, p_tree) || private.looked_over_told(v_reader, p_tree)
    || private.marks_told(v_reader, p_tree) || private.flags_told(v_reader, p_tree) || private.photos_told(v_reader, p_tree);
  return jsonb_build_object(
    'tree', p_tree,
    'rounds', private.rounds_of_tree(p_orchard, p_tree),
    'things', (
      select coalesce(jsonb_agg(x order by x ->> 'at' desc, x ->> 'id'), '[]') from jsonb_array_elements(v_things) x),
    'names', private.names_of(p_orchard, (
      select array_agg(distinct id::uuid)
      from jsonb_array_elements(v_things) x,
      lateral (
        select unnest(array[x ->> 'person', x ->> 'confirmedBy', x ->> 'endedBy'])
        union all select jsonb_array_elements_text(coalesce(x -> 'with', '[]'))) who (id)
      where id is not null)));
end $function$;
comment on function tree_history(uuid,integer) is 'What a volunteer hears of a tree at the time, and no more: no minutes, no notes, no results of others'' looking over.';
grant execute on function tree_history(uuid,integer) to authenticated;

CREATE OR REPLACE FUNCTION public.tree_notes(p_orchard uuid, p_tree integer)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_round uuid;
begin
  perform private.begin_read(p_orchard);
  if not exists (select 1 from public.trees where orchard_id = p_orchard and no = p_tree) then
    perform private.fail(404, 'no_such_tree', 'There is no tree with this number.');
  end if;
  v_round := (private.work_round(p_orchard)).id;

  return (
    select coalesce(jsonb_agg(jsonb_build_object(
      'kind', kind, 'note', note, 'at', private.instant(at), 'personId', person_id) order by at desc), '[]')
    from (
      select 'begun' as kind, note, at, person_id from public.visits
      where orchard_id = p_orchard and tree_no = p_tree and round_id = v_round and result = 'begun' and undone_at is null
      union all
      -- Without saying so: what a lead found is for who worked there, what is left to do is for whoever comes.
      select 'begun', note, at, by_person_id from public.looked_over
      where orchard_id = p_orchard and tree_no = p_tree and round_id = v_round and result = 'reopened'
      union all
      select 'flag', note, raised_at, raised_by from public.flags
      where orchard_id = p_orchard and tree_no = p_tree and ended_at is null
      union all
      select 'mark', note, marked_at, marked_by from public.big_cut_marks
      where orchard_id = p_orchard and tree_no = p_tree and round_id = v_round and ended_at is null
      union all
      select 'left_out', note, changed_at, left_out_by from public.tree_work
      where tree_no = p_tree and round_id = v_round and state = 'left_out' and left_out_by is not null) notes
    where note is not null
  );
end $function$;
grant execute on function tree_notes(uuid,integer) to authenticated;

CREATE OR REPLACE FUNCTION public.tree_sheet(p_orchard uuid, p_version integer)
 RETURNS text
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
begin
  perform private.begin_read(p_orchard);
  return (select body from public.tree_sheets where orchard_id = p_orchard order by version desc limit 1);
end $function$;
comment on function tree_sheet(uuid,integer) is 'The newest sheet, whatever p_version says: that one only gives each version an address of its own.';
grant execute on function tree_sheet(uuid,integer) to authenticated;

CREATE OR REPLACE FUNCTION public.trees_to_look_over(p_orchard uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_round uuid;
begin
  perform private.begin_read(p_orchard, null, 'lead');
  v_round := (private.work_round(p_orchard)).id;
  return jsonb_build_object(
    'trees', (
      select coalesce(jsonb_agg(jsonb_build_object('tree', tree_no, 'at', private.instant(changed_at),
        'people', private.worked_on(p_orchard, v_round, tree_no)) order by changed_at desc, tree_no), '[]')
      from (
        select w.tree_no, w.changed_at from public.tree_work w
        where w.round_id = v_round and w.state = 'done' and not exists (
          select 1 from public.looked_over l where l.round_id = v_round and l.tree_no = w.tree_no and l.result = 'passed'
            and l.at >= w.changed_at)
        order by w.changed_at desc limit 500) waiting),
    'people', (
      select coalesce(jsonb_object_agg(person_id, jsonb_build_object('since', private.instant(since), 'lookedOver', looked_over)), '{}')
      from (
        select v.person_id, min(v.at) as since,
          (select count(*) from public.looked_over l where l.round_id = v_round and v.person_id = any (l.people)) as looked_over
        from public.visits v where v.orchard_id = p_orchard and v.undone_at is null
        group by v.person_id) known));
end $function$;
comment on function trees_to_look_over(uuid) is 'Done and not passed, the newest 500; and of everybody who pruned here: since when, and how many of their trees of this round were looked over.';
grant execute on function trees_to_look_over(uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.undo_tree(p_orchard uuid, p_command uuid, p_person uuid, p_tree integer)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_visit public.visits;
  v_claim public.claims;
  v_refused jsonb;
begin
  v_c := private.begin_command('undo_tree', p_orchard, p_command, p_person, 'self', jsonb_build_object('tree', p_tree));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.tree_or_fail(p_orchard, p_tree);
  select * into v_visit from public.visits
  where orchard_id = p_orchard and tree_no = p_tree and undone_at is null order by at desc, id limit 1;
  v_refused := private.cannot_undo(v_c, v_visit);
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  select * into v_claim from public.claims where id = v_visit.claim_id;
  insert into public.claim_people (orchard_id, claim_id, person_id, part, from_at)
  select p_orchard, v_claim.id, b.person_id, b.part, v_c.at from private.back_at_tree(v_claim, v_visit.shift_id) b;
  update public.visits set undone_at = v_c.at where id = v_visit.id;
  update public.claims set ended_at = null, ended_how = null, ended_note = null where id = v_claim.id;
  return private.accept(v_c, 'tree_undone', private.claim_facts(v_claim.id)
    || jsonb_build_object('work', private.set_work(p_orchard, v_visit.round_id, p_tree, v_visit.before_state,
         v_visit.before_share, null, v_c.at)));
end $function$;
grant execute on function undo_tree(uuid,uuid,uuid,integer) to authenticated;

CREATE OR REPLACE FUNCTION public.unmark_big_cuts(p_orchard uuid, p_command uuid, p_person uuid, p_tree integer)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
begin
  v_c := private.begin_command('unmark_big_cuts', p_orchard, p_command, p_person, 'lead', jsonb_build_object('tree', p_tree));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.tree_or_fail(p_orchard, p_tree);

  update public.big_cut_marks set ended_at = v_c.at
  where round_id = (private.work_round(p_orchard)).id and tree_no = p_tree and ended_at is null;
  return private.accept(v_c, 'big_cuts_unmarked', jsonb_build_object('tree', p_tree));
end $function$;
grant execute on function unmark_big_cuts(uuid,uuid,uuid,integer) to authenticated;

CREATE OR REPLACE FUNCTION public.volunteer_hours(p_orchard uuid, p_season integer DEFAULT NULL::integer)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_season integer;
  v_shifts jsonb;
begin
  perform private.begin_read(p_orchard, null, 'lead');
  v_season := private.season_or_last(p_orchard, p_season);
  select coalesce(jsonb_agg(jsonb_build_object('shift', s.id, 'round', r.id, 'kind', r.kind, 'date', s.on_date, 'state', s.state,
    'people', private.record_of_people(s, clock_timestamp())) order by s.opened_at, s.id), '[]') into v_shifts
  from public.shifts s join public.rounds r on r.id = s.round_id
  where s.orchard_id = p_orchard and r.season = v_season and s.state in ('open', 'closed');
  return jsonb_build_object(
    'season', v_season,
    'seasons', (
      select coalesce(jsonb_agg(distinct season order by season desc), '[]') from public.rounds where orchard_id = p_orchard),
    'shifts', v_shifts,
    'names', private.names_of(p_orchard, (
      select array_agg(distinct (one ->> 'person')::uuid)
      from jsonb_array_elements(v_shifts) s, jsonb_array_elements(s -> 'people') one)));
end $function$;
comment on function volunteer_hours(uuid,integer) is 'For leads. p_season null: the newest. people as in shift_record; names also of people who left. Who was forgotten counts without a name.';
grant execute on function volunteer_hours(uuid,integer) to authenticated;

CREATE OR REPLACE FUNCTION public.withdraw_flag(p_orchard uuid, p_command uuid, p_person uuid, p_flag uuid, p_note text DEFAULT NULL::text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_flag public.flags;
  v_refused jsonb;
begin
  v_c := private.begin_command('withdraw_flag', p_orchard, p_command, p_person, 'self', jsonb_build_object('flag', p_flag, 'note', p_note));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_note is null or char_length(p_note) <= 500, 'p_note: up to 500 characters.');
  v_flag := private.flag_or_fail(p_orchard, p_flag);

  v_refused := private.cannot_take_back(v_c, v_flag);
  if v_c.by_lead then
    v_refused := case
      when v_flag.ended_at is not null then private.code('flag_over')
      when v_flag.kind = 'disease' then '[]'::jsonb
      when v_refused <> '[]' then private.code('only_manager_clears')
      else v_refused end;
  end if;
  if v_refused <> '[]' then return private.refuse(v_c, v_refused); end if;

  update public.flags set state = 'withdrawn', ended_by = v_c.by_person_id, ended_at = v_c.at, ended_note = nullif(btrim(p_note), '')
  where id = p_flag;
  return private.accept(v_c, 'flag_withdrawn', jsonb_build_object('flag', p_flag));
end $function$;
comment on function withdraw_flag(uuid,uuid,uuid,uuid,text) is 'By who reported it, for a short while; a disease also by a lead, at any time. A hazard is cleared by a manager (clear_flag).';
grant execute on function withdraw_flag(uuid,uuid,uuid,uuid,text) to authenticated;

CREATE OR REPLACE FUNCTION public.work_times(p_orchard uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_now timestamptz := clock_timestamp();
  v_kind text;
begin
  perform private.begin_read(p_orchard, null, 'lead');
  v_kind := (private.work_round(p_orchard)).kind;
  return jsonb_build_object(
    'at', private.instant(v_now),
    'visits', (
      select coalesce(jsonb_agg(jsonb_build_array(tree_no, shift_id, round_id, result, seconds, people, teaching)), '[]')
      from (
        select v.tree_no, v.shift_id, v.round_id, v.result,
          case when v.seconds is not null then greatest(v.seconds - private.paused_s(v), 0) end as seconds,
          case when c.id is null then 1 else private.people_at(c) end as people,
          coalesce(c.purpose = 'teaching', false) as teaching
        from public.visits v
        join public.rounds r on r.id = v.round_id and r.kind = coalesce(v_kind, r.kind)
        left join public.claims c on c.id = v.claim_id
        where v.orchard_id = p_orchard and v.undone_at is null and coalesce(c.kind = 'prune', true)
        order by v.at desc, v.id limit 800) newest),
    'shifts', (
      select coalesce(jsonb_agg(jsonb_build_object('shift', s.id, 'hereS', h.here_s, 'breakS', h.break_s) order by s.opened_at desc), '[]')
      from (
        select * from public.shifts where orchard_id = p_orchard and state in ('open', 'closed') order by opened_at desc limit 20) s
      cross join lateral (
        select coalesce(sum(here_s), 0) as here_s, coalesce(sum(break_s), 0) as break_s
        from private.hours_in((select x from public.shifts x where x.id = s.id), v_now) hours
        where exists (
          select 1 from public.claims c join public.claim_people cp on cp.claim_id = c.id and cp.part <> 'learner'
          where c.shift_id = s.id and c.kind = 'prune' and cp.person_id = hours.person_id)) h));
end $function$;
comment on function work_times(uuid) is 'For leads, of rounds of the kind that is worked in now: summer''s cuts take other minutes. visits: [tree, shift, round, result, seconds or null, people, teaching] of the newest 800, breaks and stops taken out. shifts: hours of those who pruned in it. Nobody is named.';
grant execute on function work_times(uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.write_briefing(p_orchard uuid, p_command uuid, p_person uuid, p_shift uuid, p_topics jsonb, p_change text DEFAULT 'first'::text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_shift public.shifts;
  v_version integer;
  v_change text;
begin
  v_c := private.begin_command('write_briefing', p_orchard, p_command, p_person, 'lead',
    jsonb_build_object('shift', p_shift, 'topics', p_topics, 'change', p_change));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(private.are_topics(p_topics), 'p_topics: 1 to 40 of {code, en, es}, each text up to 1000 characters.');
  v_shift := private.shift_or_fail(p_orchard, p_shift);
  if private.shift_over(v_shift) is not null then return private.refuse(v_c, private.shift_over(v_shift)); end if;
  v_version := coalesce(private.latest_briefing(p_shift), 0) + 1;
  v_change := case when v_version = 1 then 'first' else p_change end;
  perform private.need(v_version = 1 or v_change in ('before_next_tree', 'come_down'),
    'p_change: a briefing that changes says before_next_tree or come_down.');

  insert into public.briefings (orchard_id, shift_id, version, topics, change, written_by, written_at)
  values (p_orchard, p_shift, v_version, p_topics, v_change, v_c.by_person_id, v_c.at);
  return private.accept(v_c, 'briefing_written', jsonb_build_object('shift', p_shift, 'version', v_version, 'change', v_change));
end $function$;
grant execute on function write_briefing(uuid,uuid,uuid,uuid,jsonb,text) to authenticated;

CREATE OR REPLACE FUNCTION public.write_cultivar(p_orchard uuid, p_command uuid, p_person uuid, p_cultivar integer DEFAULT NULL::integer, p_species text DEFAULT NULL::text, p_name text DEFAULT NULL::text, p_habit text DEFAULT 'unknown'::text, p_buds text DEFAULT 'unknown'::text)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_no integer := p_cultivar;
  v_other integer;
begin
  v_c := private.begin_command('write_cultivar', p_orchard, p_command, p_person, 'manager', jsonb_build_object(
    'cultivar', p_cultivar, 'species', p_species, 'name', p_name, 'habit', p_habit, 'buds', p_buds));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(private.is_species(p_species) and private.is_line(p_name, 60), 'p_species and p_name, up to 60 letters.');
  perform private.need(p_habit in ('spur', 'shoot', 'both', 'unknown'), 'p_habit: not known.');
  perform private.need(p_buds in ('base', 'middle', 'tip', 'unknown'), 'p_buds: not known.');
  -- The species of a cultivar is what its trees are: that cannot be written over.
  if p_cultivar is not null and not exists (
    select 1 from public.cultivars where orchard_id = p_orchard and no = p_cultivar and species = p_species)
  then perform private.fail(404, 'no_such_cultivar', 'There is no such cultivar of this species.'); end if;

  select no into v_other from public.cultivars
  where orchard_id = p_orchard and species = p_species and name = btrim(p_name) and no is distinct from p_cultivar;
  if found then return private.refuse(v_c, private.code('cultivar_known', jsonb_build_object('cultivar', v_other))); end if;
  if p_cultivar is null then
    select coalesce(max(no), 0) + 1 into v_no from public.cultivars where orchard_id = p_orchard;
    insert into public.cultivars (orchard_id, no, species, name, habit, buds)
    values (p_orchard, v_no, p_species, btrim(p_name), p_habit, p_buds);
  else
    update public.cultivars set name = btrim(p_name), habit = p_habit, buds = p_buds
    where orchard_id = p_orchard and no = p_cultivar;
  end if;
  return private.accept(v_c, 'cultivar_written',
    jsonb_build_object('cultivar', v_no, 'sheet', private.write_tree_sheet(p_orchard)));
end $function$;
grant execute on function write_cultivar(uuid,uuid,uuid,integer,text,text,text,text) to authenticated;

CREATE OR REPLACE FUNCTION public.write_incident(p_orchard uuid, p_command uuid, p_person uuid, p_kind text, p_tree integer DEFAULT NULL::integer, p_note text DEFAULT NULL::text, p_at timestamp with time zone DEFAULT NULL::timestamp with time zone, p_call uuid DEFAULT NULL::uuid)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_shift uuid;
begin
  v_c := private.begin_command('write_incident', p_orchard, p_command, p_person, 'lead', jsonb_build_object(
    'kind', p_kind, 'tree', p_tree, 'note', p_note, 'at', p_at, 'call', p_call));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(
    p_kind in ('injury', 'near_miss', 'tool', 'ladder', 'power_line', 'lost_person', 'damage', 'other'),
    'p_kind: injury, near_miss, tool, ladder, power_line, lost_person, damage or other.');
  perform private.need(p_note is null or char_length(p_note) <= 1000, 'p_note: up to 1,000 characters.');
  perform private.need(p_at is null or private.is_moment(p_at), 'p_at: a moment, or null.');
  if p_tree is not null then perform private.tree_or_fail(p_orchard, p_tree); end if;
  if p_call is not null then v_shift := (private.call_or_fail(p_orchard, p_call)).shift_id; end if;

  insert into public.incidents (id, orchard_id, shift_id, call_id, tree_no, kind, note, happened_at, written_by, written_at)
  values (p_command, p_orchard, coalesce(v_shift, (private.open_shift(p_orchard)).id), p_call, p_tree, p_kind,
    nullif(btrim(p_note), ''), least(coalesce(p_at, v_c.at), v_c.at), p_person, v_c.at);
  return private.accept(v_c, 'incident_written', null, jsonb_build_object('incident', p_command));
end $function$;
grant execute on function write_incident(uuid,uuid,uuid,text,integer,text,timestamp with time zone,uuid) to authenticated;

CREATE OR REPLACE FUNCTION public.write_weather(p_orchard uuid, p_command uuid, p_person uuid, p_temperature_c numeric DEFAULT NULL::numeric, p_humidity numeric DEFAULT NULL::numeric, p_wind_kmh numeric DEFAULT NULL::numeric, p_gust_kmh numeric DEFAULT NULL::numeric, p_canopy text DEFAULT NULL::text, p_thunder boolean DEFAULT false, p_rain_in_h integer DEFAULT NULL::integer, p_at timestamp with time zone DEFAULT NULL::timestamp with time zone)
 RETURNS jsonb
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
declare
  v_c private.command;
  v_before jsonb;
  v_reading public.weather_readings;
begin
  v_c := private.begin_command('write_weather', p_orchard, p_command, p_person, 'lead', jsonb_build_object(
    'temperature_c', p_temperature_c, 'humidity', p_humidity, 'wind_kmh', p_wind_kmh, 'gust_kmh', p_gust_kmh,
    'canopy', p_canopy, 'thunder', p_thunder, 'rain_in_h', p_rain_in_h, 'at', p_at));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_temperature_c is null or p_temperature_c between -40 and 60, 'p_temperature_c: -40 to 60.');
  perform private.need(p_humidity is null or p_humidity between 1 and 100, 'p_humidity: 1 to 100.');
  perform private.need(p_wind_kmh is null or p_wind_kmh between 0 and 250, 'p_wind_kmh: 0 to 250.');
  perform private.need(p_gust_kmh is null or p_gust_kmh between 0 and 250, 'p_gust_kmh: 0 to 250.');
  perform private.need(p_canopy is null or p_canopy in ('wet', 'dry'), 'p_canopy: wet or dry.');
  perform private.need(p_thunder is not null, 'p_thunder: true or false.');
  perform private.need(p_rain_in_h is null or p_rain_in_h between 0 and 96, 'p_rain_in_h: 0 to 96.');
  perform private.need(p_at is null or private.is_moment(p_at), 'p_at: a moment, or null.');

  v_before := private.claims_put_off(p_orchard, v_c.at);
  insert into public.weather_readings (id, orchard_id, measured_at, temperature_c, humidity, wind_kmh, gust_kmh, canopy,
    thunder, rain_in_h, written_by, written_at)
  values (p_command, p_orchard, private.when_said(p_at, v_c.at - interval '12 hours', v_c.at), p_temperature_c, p_humidity,
    p_wind_kmh, p_gust_kmh, p_canopy, p_thunder, p_rain_in_h, v_c.by_person_id, v_c.at)
  returning * into v_reading;
  return private.accept(v_c, 'weather_written', private.weather_told(v_reading) || private.tell_to_leave(v_c, v_before));
end $function$;
comment on function write_weather(uuid,uuid,uuid,numeric,numeric,numeric,numeric,text,boolean,integer,timestamp with time zone) is 'Null: not said. What is not said is unknown, and puts nothing off.';
grant execute on function write_weather(uuid,uuid,uuid,numeric,numeric,numeric,numeric,text,boolean,integer,timestamp with time zone) to authenticated;

-- default privileges everywhere functions: {rowcall_owner=X/rowcall_owner}
-- default privileges in public S: {anon=rwU/rowcall_owner,authenticated=rwU/rowcall_owner,service_role=rwU/rowcall_owner}
-- default privileges in public functions: {service_role=X/rowcall_owner}
-- default privileges in public tables: {service_role=arwdDxtm/rowcall_owner}
