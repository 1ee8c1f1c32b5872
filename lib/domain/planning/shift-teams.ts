/** Who goes with whom: newcomers beside experienced people, minors beside their own adult, saw and ladder in twos. */

export type PlanPerson = {
  id: string
  handSaw: boolean
  ladder: boolean
  /** Also leads: they need no marks. */
  prunesAlone: boolean
  isMinor: boolean
  guardian: string | null
  /** In their hands and fit. */
  hasSaw: boolean
  hasLadder: boolean
}

/** One person, or two. */
export type Team = readonly PlanPerson[]

export type Teams = { teams: readonly Team[]; withoutAdult: readonly PlanPerson[] }

/** In the order given; the same people give the same teams. Who works together now stays together. */
export function teamsOf(
  people: readonly PlanPerson[],
  together: readonly (readonly string[])[] = []
): Teams {
  const free = new Set(people)
  const teams: Team[] = []
  const withoutAdult: PlanPerson[] = []
  const join = (...team: PlanPerson[]) => {
    teams.push(team)
    for (const one of team) free.delete(one)
  }

  for (const pair of together) {
    const both = people.filter((one) => pair.includes(one.id) && free.has(one))
    const [adult, other] = both.toSorted((a, b) => Number(a.isMinor) - Number(b.isMinor))
    if (both.length === 2 && adult && other && !other.isMinor) join(adult, other)
  }
  for (const minor of people.filter(({ isMinor }) => isMinor)) {
    free.delete(minor)
    const adult = people.find(({ id, isMinor }) => id === minor.guardian && !isMinor)
    if (adult && free.has(adult)) join(adult, minor)
    else withoutAdult.push(minor)
  }
  const skilled = () => [...free].filter(({ prunesAlone }) => prunesAlone).toSorted(byWhatTheyMay)
  const newcomers = () => [...free].filter(({ prunesAlone }) => !prunesAlone)
  for (const newcomer of newcomers()) {
    const [experienced] = skilled()
    if (experienced) join(experienced, newcomer)
  }
  for (const one of skilled()) {
    if (!free.has(one) || !mayOverhead(one)) continue
    // The one who may least, so that two teams may use a ladder rather than one.
    const other = skilled().findLast((next) => next !== one)
    if (other) join(one, other)
  }
  for (const one of skilled()) join(one)
  for (const one of newcomers()) {
    const other = newcomers().find((next) => next !== one)
    if (free.has(one)) join(...(other ? [one, other] : [one]))
  }
  return { teams, withoutAdult }
}

function mayOverhead({ handSaw, ladder }: PlanPerson): boolean {
  return handSaw || ladder
}

/** Who may most comes first: with them a newcomer makes two, which saw and ladder ask for. */
function byWhatTheyMay(a: PlanPerson, b: PlanPerson): number {
  const may = ({ handSaw, ladder, hasSaw, hasLadder }: PlanPerson) =>
    Number(ladder && hasLadder) * 4 + Number(handSaw && hasSaw) * 2 + Number(ladder || handSaw)
  return may(b) - may(a)
}

/** What a tree asks of whoever takes it. */
export type Demand = { saw: boolean; ladder: boolean; marked: boolean }

export function isOverhead({ saw, ladder }: Demand): boolean {
  return saw || ladder
}

/** The same rules as the referee's: one of them holds the tree and must have every skill it asks for. */
export function mayTake(team: Team, { saw, ladder, marked }: Demand): boolean {
  if ((saw || ladder) && (team.length < 2 || team.some(({ isMinor }) => isMinor))) return false
  if (saw && !team.some(({ hasSaw }) => hasSaw)) return false
  if (ladder && !team.some(({ hasLadder }) => hasLadder)) return false
  return team.some(
    (holder) =>
      !holder.isMinor &&
      (!saw || holder.handSaw) &&
      (!ladder || holder.ladder) &&
      (marked || holder.prunesAlone)
  )
}
