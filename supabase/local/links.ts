/** What is said once the host is reachable, besides its addresses. */
import type { Engine } from './engine/engine'

export type Ready = {
  /** Where phones reach it: on the local network if there is one. */
  address: string
  engine: Engine
  /** The database was made by this start. */
  isNew: boolean
  /** Without the demo orchard (`--empty`). */
  isEmpty: boolean
}

export async function onReady(_ready: Ready): Promise<void> {}
