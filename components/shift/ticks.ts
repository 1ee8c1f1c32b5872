/** Who is ticked as briefed: those who had come by then, unless a lead says otherwise. */

/** What a lead said about somebody, either way. */
export type Ticks = Readonly<Record<string, boolean>>

export const noTicks: Ticks = {}

/** Whoever left meanwhile, or was briefed by another lead, is ticked in vain. */
export function ticked(
  said: Ticks,
  waiting: readonly string[],
  hadCome: readonly string[]
): string[] {
  return waiting.filter((id) => said[id] ?? hadCome.includes(id))
}

export function tickedAs(said: Ticks, people: readonly string[], isOn: boolean): Ticks {
  return { ...said, ...Object.fromEntries(people.map((id) => [id, isOn])) }
}
