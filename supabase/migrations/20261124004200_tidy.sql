-- What goes after its time. The local host calls this every ten minutes; on Supabase a scheduled job does.

create function private.tidy() returns void
language plpgsql volatile set search_path = '' as $$
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
end $$;
