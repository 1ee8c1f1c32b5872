/** Who of those who are here was briefed, and who signed which version. */

import { openShiftOf, type View } from '@/lib/hooks'

export type Signature = 'signed' | 'older' | 'none'

/** Here, and not given the briefing yet; by name, visitors last. */
export function toBrief(view: View): string[] {
  return hereByName(view)
    .filter((id) => !view.state?.briefed[id]?.given)
    .toSorted((a, b) => Number(isVisitor(view, a)) - Number(isVisitor(view, b)))
}

/** Visitors do not prune: whether they are briefed holds nobody up. */
export function crewToBrief(view: View): string[] {
  return toBrief(view).filter((id) => !isVisitor(view, id))
}

export type BriefedLine = { id: string; signature: Signature }

/** Given the briefing; who has still to sign comes first. */
export function briefedLines(view: View): BriefedLine[] {
  const version = openShiftOf(view)?.briefingVersion ?? 0
  return hereByName(view)
    .filter((id) => view.state?.briefed[id]?.given)
    .map((id) => ({ id, signature: signatureOf(view.state?.briefed[id]?.signedVersion, version) }))
    .toSorted((a, b) => Number(a.signature === 'signed') - Number(b.signature === 'signed'))
}

export function countSigned(view: View): { signed: number; here: number } {
  const version = openShiftOf(view)?.briefingVersion ?? 0
  const here = hereByName(view).filter((id) => !isVisitor(view, id))
  const signed = here.filter((id) => {
    return signatureOf(view.state?.briefed[id]?.signedVersion, version) === 'signed'
  })
  return { signed: signed.length, here: here.length }
}

function signatureOf(signedVersion: number | undefined, version: number): Signature {
  if (!signedVersion) return 'none'
  return signedVersion === version ? 'signed' : 'older'
}

function isVisitor({ state }: Pick<View, 'state'>, id: string): boolean {
  return state?.people[id]?.role === 'visitor'
}

function hereByName({ state, names }: View): string[] {
  return Object.keys(state?.attendance ?? {}).toSorted((a, b) =>
    (names[a] ?? '').localeCompare(names[b] ?? '')
  )
}
