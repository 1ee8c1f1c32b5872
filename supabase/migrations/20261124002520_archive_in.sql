-- An archive comes in by a set-up code: part by part into a waiting room, then all of it or nothing.

create table public.archive_parts (
  archive uuid not null,
  part integer not null constraint archive_parts_part_range check (part between 0 and 19999),
  code_hash text not null,
  table_name text not null,
  columns text[] not null,
  body text not null,
  put_at timestamptz not null,
  constraint archive_parts_key primary key (archive, part)
);
comment on table public.archive_parts is 'Of archives that are on their way in; gone when one is in, and after a day.';
alter table public.archive_parts enable row level security;

create function private.setup_code_lacks(p_hash text) returns text
language plpgsql volatile set search_path = '' as $$
declare
  v_code public.setup_codes;
begin
  select * into v_code from public.setup_codes where code_hash = p_hash for update;
  return case when v_code.code_hash is null then 'code_wrong' when v_code.used_at is not null then 'code_used'
    when v_code.expires_at < now() then 'code_expired' end;
end $$;

create function public.put_archive_part(
  p_code text, p_archive uuid, p_part integer, p_table text, p_columns text[], p_rows text
) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
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
end $$;
comment on function public.put_archive_part is 'Sent again, a part replaces itself.';
grant execute on function public.put_archive_part to authenticated;

create function private.load_archive(p_archive uuid, p_orchard uuid) returns void
language plpgsql volatile set search_path = '' as $$
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
end $$;

create function private.archive_lacks(p_archive uuid, p_parts integer) returns text
language plpgsql stable set search_path = '' as $$
begin
  return case
    when (select count(*) from public.archive_parts where archive = p_archive and part < p_parts) <> p_parts then 'archive_incomplete'
    when exists (
      select 1 from public.archive_parts p left join private.archive_tables() t on t.name = p.table_name
      where p.archive = p_archive and (t.name is null or not p.columns <@ t.columns)) then 'archive_newer'
  end;
end $$;

create function public.bring_in_orchard(p_code text, p_command uuid, p_orchard uuid, p_parts integer, p_person uuid) returns jsonb
language plpgsql volatile security definer set search_path = '' as $$
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
end $$;
comment on function public.bring_in_orchard is
  'No event: what is seen afterwards is what was seen before. The epoch is another, so that phones that knew the orchard start anew.';
grant execute on function public.bring_in_orchard to authenticated;
