/** Who tries a door, and what must come of it. */

import type { Outcome, Right, Use } from './door'
import type { Scene, Stage } from './scene'

export type Caller = {
  who: string
  user: string | null
  orchard: string
  person: string
  outcome: Outcome
}

type Setting = {
  use: Use
  stage: Stage
  scene: Scene
  elsewhere: Scene
  stranger: string
}

export function callersOf({ use, stage, scene, elsewhere, stranger }: Setting): Caller[] {
  const { right, whose = 'ann', byLead } = use
  const ok = use.outcome[stage] ?? use.outcome.else
  const no = '403 not_allowed'
  const waits = '403 not_admitted'
  const may = (...rights: Right[]) => (rights.includes(right) || right === 'anybody' ? ok : no)
  /** Leads do their own work in their own name, and act for others in theirs. */
  const inWhoseName = right === 'lead' || right === 'manager' ? null : scene.person[whose]
  const here = { orchard: scene.orchard, person: scene.person[whose] }
  const byLeads = (...rights: Right[]) => (rights.includes(right) ? (byLead ?? ok) : may())

  const callers: Caller[] = [
    { ...here, who: 'not signed in', user: null, outcome: '401' },
    { ...here, who: 'a stranger', user: stranger, outcome: may() },
    {
      ...here,
      who: 'their own login',
      user: scene.user[whose],
      outcome: whose === 'gus' ? waits : may('own', 'self', 'member', 'gone'),
    },
    {
      ...here,
      who: 'another volunteer',
      user: scene.user[whose === 'cy' ? 'ann' : 'cy'],
      outcome: may('member'),
    },
    {
      ...here,
      who: 'a lead',
      user: scene.user.lead,
      person: inWhoseName ?? scene.person.lead,
      outcome: byLeads('self', 'lead', 'member', 'reads-lead'),
    },
    {
      ...here,
      who: 'a manager',
      user: scene.user.manager,
      person: inWhoseName ?? scene.person.manager,
      outcome: byLeads('self', 'lead', 'manager', 'member', 'reads-lead', 'reads-manager'),
    },
    {
      ...here,
      who: 'a removed person',
      user: scene.user.fay,
      person: scene.person.fay,
      outcome: may('gone'),
    },
    {
      ...here,
      who: 'a volunteer in the name of a lead',
      user: scene.user.cy,
      person: scene.person.lead,
      outcome: may('member'),
    },
    { ...here, who: 'a manager of another orchard', user: elsewhere.user.manager, outcome: may() },
    {
      who: 'a manager of another orchard in their own name',
      user: elsewhere.user.manager,
      orchard: scene.orchard,
      person: elsewhere.person.manager,
      outcome: may(),
    },
    {
      who: 'a manager in another orchard',
      user: scene.user.manager,
      orchard: elsewhere.orchard,
      person: elsewhere.person[whose],
      outcome: may(),
    },
  ]
  if (right === 'anybody' || right === 'gone') return callers
  return [
    ...callers,
    {
      ...here,
      who: 'somebody not let in yet',
      user: scene.user.gus,
      person: scene.person.gus,
      outcome: ['lead', 'manager', 'reads-lead', 'reads-manager'].includes(right) ? no : waits,
    },
  ]
}
