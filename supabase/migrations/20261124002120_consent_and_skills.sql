-- Consent once a season, and the skills that a lead grants.

create function public.give_consent(
  p_orchard uuid, p_command uuid, p_person uuid, p_text_version integer, p_by uuid default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
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
end $$;
grant execute on function public.give_consent to authenticated;

create function public.grant_skill(
  p_orchard uuid, p_command uuid, p_person uuid, p_subject uuid, p_skill text, p_until date default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
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
end $$;
grant execute on function public.grant_skill to authenticated;

create function public.end_skill(
  p_orchard uuid, p_command uuid, p_person uuid, p_subject uuid, p_skill text
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
declare
  v_c private.command;
begin
  v_c := private.begin_command('end_skill', p_orchard, p_command, p_subject, 'lead',
    jsonb_build_object('by', p_person, 'skill', p_skill));
  if v_c.answer is not null then return v_c.answer; end if;
  perform private.need(p_skill in ('hand_saw', 'ladder', 'prunes_alone'), 'p_skill: hand_saw, ladder or prunes_alone.');

  update public.skills set ended_at = v_c.at where person_id = p_subject and skill = p_skill and ended_at is null;
  return private.accept(v_c, 'skill_ended', null, jsonb_build_object('person', p_subject, 'skill', p_skill), true);
end $$;
comment on function public.end_skill is 'Also of one''s own: giving up a skill harms nobody.';
grant execute on function public.end_skill to authenticated;
