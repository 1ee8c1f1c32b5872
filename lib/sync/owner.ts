/** Whose things are in the storage: kept apart by backend, orchard, login and person. */

export type Owner = { backend: string; orchardId: string; userId: string; personId: string }

export function ownerKey({ backend, orchardId, userId, personId }: Owner): string {
  return [backend, orchardId, userId, personId].join('|')
}
