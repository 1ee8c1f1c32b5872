import type { View } from '@/lib/hooks'

/** The sign of each hazard that nobody has cleared, by its tree. */
export function openHazards({ state }: Pick<View, 'state'>): [tree: number, sign: string][] {
  return Object.values(state?.flags ?? {}).flatMap(({ kind, tree, sign }) =>
    kind === 'arborist' ? [[tree, sign] as [number, string]] : []
  )
}
