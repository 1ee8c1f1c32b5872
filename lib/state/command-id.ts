import { browserRandom } from '@/lib/sync/browser'

/** For what is written down before it is sent, and may be sent twice under the same id. */
export function newCommandId(): string {
  return browserRandom.id()
}
