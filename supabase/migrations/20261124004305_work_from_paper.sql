-- What was written on paper while there was no signal or no power, entered by a lead afterwards, with its time.
-- Nobody is asked whether they were ready: the work is done. What was missing is said to the lead.

alter table public.visits add column from_paper boolean not null default false;
comment on column public.visits.from_paper is 'Entered by a lead from what was written; the event says who did.';

create function private.shift_at(p_orchard uuid, p_person uuid, p_at timestamptz) returns public.shifts
language plpgsql stable set search_path = '' as $$
begin
  return (
    select s from public.shifts s
    left join public.attendances a on a.shift_id = s.id and a.person_id = p_person
    where s.orchard_id = p_orchard and s.state <> 'scheduled'
      and p_at between least(s.opened_at, s.starts_at)
        and least(clock_timestamp(), case when s.state <> 'open' then greatest(s.closed_at, s.ends_at) end)
    order by (p_at between s.opened_at and coalesce(s.closed_at, p_at)) desc, (a.id is not null) desc, s.opened_at desc
    limit 1);
end $$;
comment on function private.shift_at is
  'The shift that a time on paper belongs to, also a closed one. A shift that was opened late, or closed early because the power failed, still has its planned hours, as far as they are over.';

create function private.missing_on_paper(p_shift public.shifts, p_person uuid, p_at timestamptz) returns text[]
language plpgsql stable set search_path = '' as $$
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
end $$;
comment on function private.missing_on_paper is 'What this person lacked when they worked, as codes; it refuses nothing any more.';

create function private.cannot_be_entered(
  p_tree public.trees, p_shift public.shifts, p_person uuid, p_result text, p_at timestamptz
) returns jsonb
language plpgsql stable set search_path = '' as $$
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
end $$;

create function private.comes_in_on_paper(
  p_c private.command, p_tree public.trees, p_shift public.shifts, p_at timestamptz, p_begun_at timestamptz
) returns private.coming_in
language plpgsql stable set search_path = '' as $$
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
end $$;

create function public.enter_work(
  p_orchard uuid, p_command uuid, p_person uuid, p_tree integer, p_at timestamptz,
  p_begun_at timestamptz default null, p_share integer default null, p_note text default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
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
end $$;
comment on function public.enter_work is 'From paper, by a lead: p_person finished this tree at p_at, or left it half done with a share.';
grant execute on function public.enter_work to authenticated;
