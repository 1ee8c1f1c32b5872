/** Who of those who are here was briefed, and who signed which version. */

import { briefedOf, claimOf, isTold } from '@/lib/events/look-ups'
import { openShiftOf, type View } from '@/lib/hooks'

export type Signature = 'signed' | 'older' | 'none'

/** Here, and not briefed yet; by name, visitors last. */
export function toBrief(view: View): string[] {
  return hereByName(view)
    .filter((id) => givenTo(view, id) === 0)
    .toSorted((a, b) => Number(isVisitor(view, a)) - Number(isVisitor(view, b)))
}

/** Briefed before everybody had to come down, and neither told since nor signed by their own hand. */
export function toTellAgain(view: View): string[] {
  const { state } = view
  const shift = openShiftOf(view)
  if (!state || !shift) return []
  return hereByName(view).filter(
    (id) => givenTo(view, id) > 0 && !isTold(briefedOf(state, id), shift)
  )
}

/** Visitors do not prune: whether they are briefed holds nobody up. */
export function crewToBrief(view: View): string[] {
  return [...toBrief(view), ...toTellAgain(view)].filter((id) => !isVisitor(view, id))
}

/** `tree`: whom one looks for there; null without one. */
export type BriefedLine = { id: string; signature: Signature; tree: number | null }

/** Briefed; who is at a tree and has still to sign comes first, then who has still to sign. */
export function briefedLines(view: View): BriefedLine[] {
  const version = openShiftOf(view)?.briefingVersion ?? 0
  const rank = ({ signature, tree }: BriefedLine) =>
    signature === 'signed' ? 2 : tree === null ? 1 : 0
  return hereByName(view)
    .filter((id) => givenTo(view, id) > 0)
    .map((id) => ({
      id,
      signature: signatureOf(view.state?.briefed[id]?.signedVersion, version),
      tree: (view.state && claimOf(view.state, id)?.tree) ?? null,
    }))
    .toSorted((a, b) => rank(a) - rank(b))
}

/** At a tree, and has not signed since everybody was told to come down. */
export function stillUp(view: View): { id: string; tree: number | null }[] {
  const { state } = view
  const shift = openShiftOf(view)
  if (!state || !shift) return []
  return hereByName(view).flatMap((id) => {
    const claim = claimOf(state, id)
    const isUp = claim && briefedOf(state, id).signedVersion < shift.comeDownVersion
    return isUp ? [{ id, tree: claim.tree }] : []
  })
}

export function countSigned(view: View): { signed: number; here: number } {
  const version = openShiftOf(view)?.briefingVersion ?? 0
  const here = hereByName(view).filter((id) => !isVisitor(view, id))
  const signed = here.filter((id) => {
    return signatureOf(view.state?.briefed[id]?.signedVersion, version) === 'signed'
  })
  return { signed: signed.length, here: here.length }
}

function givenTo({ state }: Pick<View, 'state'>, id: string): number {
  return state ? briefedOf(state, id).givenVersion : 0
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
