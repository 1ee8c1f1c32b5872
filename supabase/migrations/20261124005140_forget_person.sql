-- Somebody's name and contact are forgotten, for good. What they did stays, as somebody's.

create function private.anybody_or_fail(p_orchard uuid, p_person uuid) returns public.people
language plpgsql stable set search_path = '' as $$
declare
  v_person public.people;
begin
  select * into v_person from public.people where orchard_id = p_orchard and id = p_person;
  if not found then perform private.fail(404, 'no_such_person', 'This person was never in the orchard.'); end if;
  return v_person;
end $$;
comment on function private.anybody_or_fail is 'Also of those who left.';

create function private.in_the_way_of_forgetting(p_subject public.people, p_by uuid) returns jsonb
language plpgsql stable set search_path = '' as $$
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
end $$;
comment on function private.in_the_way_of_forgetting is 'Whom somebody still needs by name: first that comes to an end. [] when nothing is in the way.';

create function private.forget(p_subject public.people, p_at timestamptz) returns void
language plpgsql volatile set search_path = '' as $$
begin
  perform private.blank_words_of(p_subject);
  update public.people set name = null, phone = null, guardian_id = null, forgotten_at = p_at,
    removed_at = coalesce(removed_at, p_at), admitted_at = coalesce(admitted_at, p_at) where id = p_subject.id;
  update public.logins set ended_at = p_at where person_id = p_subject.id and ended_at is null;
  update public.invites set ended_at = p_at where p_subject.id in (person_id, made_by) and ended_at is null;
  update public.skills set ended_at = p_at where person_id = p_subject.id and ended_at is null;
  perform private.blank_what_is_over();
end $$;

create function public.forget_person(p_orchard uuid, p_command uuid, p_person uuid, p_subject uuid) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
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
end $$;
comment on function public.forget_person is 'For good. Who is still in the orchard is removed first. Phones drop the name when they hear it.';
grant execute on function public.forget_person to authenticated;

create function public.before_forgetting(p_orchard uuid, p_subject uuid) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
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
end $$;
comment on function public.before_forgetting is 'Who it is, so that nobody forgets the wrong one of two with the same name; what is in the way, and where the name would still stand.';
grant execute on function public.before_forgetting to authenticated;

create function private.forget_again(p_people uuid[]) returns integer
language plpgsql volatile set search_path = '' as $$
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
end $$;
comment on function private.forget_again is
  'For the owner, after a restore: an older backup still has the names of people who were forgotten since.';

create function private.forgotten_people() returns uuid[]
language sql stable set search_path = '' as $$
  select coalesce(array_agg(id), '{}') from public.people where forgotten_at is not null
$$;
comment on function private.forgotten_people is 'For the owner, before a restore: what private.forget_again takes after it.';
