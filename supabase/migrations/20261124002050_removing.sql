-- Putting people and phones out: what they held is put down, and they hear it before the channel moves on.

create function private.move_channel(p_orchard uuid) returns void
language sql volatile set search_path = '' as $$
  update public.orchard_heads set channel_epoch = channel_epoch + 1 where orchard_id = p_orchard
$$;
comment on function private.move_channel is
  'After the event that says so has gone out on the old topic: a joined channel keeps its right until its token ends.';

create function private.next_channel(p_orchard uuid) returns integer
language sql stable set search_path = '' as $$ select channel_epoch + 1 from public.orchard_heads where orchard_id = p_orchard $$;

create function private.take_from(p_c private.command, p_subject uuid) returns jsonb
language plpgsql volatile set search_path = '' as $$
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
end $$;

create function public.remove_person(p_orchard uuid, p_command uuid, p_person uuid, p_subject uuid) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
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
end $$;
grant execute on function public.remove_person to authenticated;

create function public.end_login(p_orchard uuid, p_command uuid, p_person uuid, p_login uuid default null) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
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
end $$;
comment on function public.end_login is 'p_login null: this phone''s own.';
grant execute on function public.end_login to authenticated;
