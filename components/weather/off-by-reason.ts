/** What is off, said once for each reason. */

export type Off = { what: string; why: string }

/** In the order in which the reasons first come. */
export function offByReason(offs: readonly Off[]): { why: string; whats: string[] }[] {
  const groups = new Map<string, string[]>()
  for (const { what, why } of offs) groups.set(why, [...(groups.get(why) ?? []), what])
  return [...groups].map(([why, whats]) => ({ why, whats }))
}
