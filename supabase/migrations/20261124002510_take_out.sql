-- A whole orchard as rows: read table by table by a manager, and put back where there is none of this id.

create function private.archive_tables() returns table (no integer, name text, columns text[], key text)
language sql stable set search_path = '' as $$
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
$$;
comment on function private.archive_tables is
  'What an archive holds, each table after those it refers to. A new table is in it unless it is left out here; key gives its rows an order.';

create function private.archive_where(p_table text, p_columns text[]) returns text
language plpgsql immutable set search_path = '' as $$
begin
  return case
    when p_table = 'orchards' then 't.id = $1'
    when p_columns @> '{orchard_id}' then 't.orchard_id = $1'
    when p_columns @> '{attendance_id}' then 't.attendance_id in (select a.id from public.attendances a where a.orchard_id = $1)'
  end;
end $$;
comment on function private.archive_where is 'Which rows are of the orchard $1. Null for a table of which nobody said it: then there is no archive.';

create function public.take_out(p_orchard uuid, p_table text default null, p_from integer default 0) returns jsonb
language plpgsql stable security definer set search_path = '' as $$
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
end $$;
comment on function public.take_out is
  'A part of the archive. Rows are JSON as text, which no client rounds. The parts are of one moment when all have the same head.';
grant execute on function public.take_out to authenticated;
