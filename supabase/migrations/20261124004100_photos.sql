-- Photos: small, plain JPEG, one at a time; only their ids are in events.

create function private.jpeg_or_fail(p_base64 text) returns bytea
language plpgsql immutable set search_path = '' as $$
begin
  return decode(p_base64, 'base64');
exception when others then
  perform private.fail(400, 'malformed', 'The photo is not base64.');
  return null;
end $$;

create function private.is_plain_jpeg(p_jpeg bytea) returns boolean
language plpgsql immutable set search_path = '' as $$
begin
  return (
    select substring(p_jpeg from 1 for 3) = '\xffd8ff'::bytea
      and position('\x457869660000'::bytea in p_jpeg) = 0
      and position('http://ns.adobe.com/xap'::bytea in p_jpeg) = 0
      and position('Photoshop 3.0'::bytea in p_jpeg) = 0);
end $$;

create function public.add_photo(
  p_orchard uuid, p_command uuid, p_person uuid, p_jpeg text, p_purpose text,
  p_tree integer default null, p_flag uuid default null, p_claim uuid default null, p_mark uuid default null
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
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
end $$;
grant execute on function public.add_photo to authenticated;
