-- What was typed by somebody who is forgotten, or about them, goes with the name. Facts about trees, hours and ids stay.

create function private.blank_words_of(p_subject public.people) returns void
language plpgsql volatile set search_path = '' as $$
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
end $$;
comment on function private.blank_words_of is 'Before the name itself goes: it is looked for in incidents. Notes on flags and marks that stand are left to private.blank_what_is_over.';

create function private.blank_what_is_over() returns void
language plpgsql volatile set search_path = '' as $$
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
end $$;
comment on function private.blank_what_is_over is 'Also every ten minutes: notes of forgotten people on flags, marks and trees they left out go when those are over.';
