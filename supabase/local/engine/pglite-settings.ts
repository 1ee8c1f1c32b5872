/** How PGlite is opened on disk: durable, and in little memory. */

/** What its files say when the disk is full, as WASI numbers it; the child that makes the first database ends with it. */
export const noSpace = 51

/** Parameters replace PGlite's own, which hold -F (no fsync). */
export const startParameters = [
  '--single',
  '-O',
  '-j',
  ...settings({
    fsync: 'on',
    wal_sync_method: 'fsync',
    search_path: 'public',
    exit_on_error: 'false',
    log_checkpoints: 'false',
    io_method: 'sync',
    max_worker_processes: '0',
    max_parallel_workers: '0',
    max_parallel_workers_per_gather: '0',
    max_parallel_maintenance_workers: '0',
    shared_buffers: '16MB',
    max_connections: '5',
    wal_buffers: '1MB',
  }),
]

function settings(values: Record<string, string>): string[] {
  return Object.entries(values).flatMap(([name, value]) => ['-c', `${name}=${value}`])
}
