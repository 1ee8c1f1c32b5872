/**
 * PGlite's files on disk with a real fsync. As it comes, PGlite has none under Node: a commit would be
 * acknowledged while its record is still in the memory of the machine.
 */
import { fdatasyncSync } from 'node:fs'
import type { PGlite } from '@electric-sql/pglite'
import { NodeFS } from '@electric-sql/pglite/nodefs'

type EngineOptions = Parameters<NodeFS['init']>[1]

/** The part of Emscripten's file system that we reach into; `assertDurable` notices if it moves. */
type FileSystemModule = { NODEFS: { stream_ops: { fsync?: (stream: { nfd: number }) => void } } }

export class DurableFiles extends NodeFS {
  syncs = 0

  override async init(pglite: PGlite, options: EngineOptions) {
    const { emscriptenOpts } = await super.init(pglite, options)
    const addSync = (module: unknown) => {
      const { NODEFS } = module as FileSystemModule
      NODEFS.stream_ops.fsync = (stream) => {
        fdatasyncSync(stream.nfd)
        this.syncs += 1
      }
    }
    return { emscriptenOpts: { ...emscriptenOpts, preRun: [...preRunOf(emscriptenOpts), addSync] } }
  }
}

function preRunOf(options: EngineOptions) {
  const { preRun } = options
  return Array.isArray(preRun) ? preRun : []
}

/** Commits something and refuses to go on if the disk was not asked to keep it. */
export async function assertDurable(pglite: PGlite, files: DurableFiles): Promise<void> {
  const before = files.syncs
  await pglite.query("select pg_logical_emit_message(true, 'rowcall', 'is this kept?')")
  if (files.syncs === before) {
    throw new Error(
      'This build of PGlite does not write its commits to the disk. Rowcall does not start on it, because a power cut would lose work.'
    )
  }
}
