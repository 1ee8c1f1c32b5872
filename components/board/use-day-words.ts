'use client'

import { useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useCallTitle } from '../call/call-title'
import { longerThanAnyShift } from '../crew/crew-order'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useNameOf, useTagOf } from '../sync/use-refusal-words'
import type { IconName } from '../ui/Icon'
import type { DayFact } from './day-facts'

export type DaySentence = { says: string; note?: string; icon: IconName; href: string }

/** More names than this do not fit in a sentence. */
const mostNamed = 4

const treeIcons = {
  disease_to_judge: 'flag',
  for_arborist: 'flag',
  half_done: 'clock',
  to_look_over: 'check',
} as const

/** Says what the day so far knows, and where one acts on it. */
export function useDayWords(): (fact: DayFact) => DaySentence {
  const { daySoFar: text } = useLeadWords()
  const { flag } = useWords()
  const format = useFormat()
  const callTitle = useCallTitle()
  const nameOf = useNameOf()
  const tagOf = useTagOf()
  const blocks = useSelect((view) => view.ground.blocks)

  const listed = (all: readonly string[]) =>
    format.list(
      all.length <= mostNamed
        ? all
        : [...all.slice(0, mostNamed - 1), text.andMore(all.length - mostNamed + 1)]
    )
  const names = (people: readonly string[]) => listed(people.map(nameOf))
  const tags = (trees: readonly number[]) => listed(trees.map(tagOf))
  const hazards: Record<string, string> = flag.hazard
  const last = (tree: number | null) => (tree === null ? text.notAtTree : text.lastAt(tagOf(tree)))
  const personOr = (people: readonly string[], otherwise: string) =>
    people.length === 1 && people[0] !== undefined ? routes.person(people[0]) : otherwise

  return (fact) => {
    switch (fact.code) {
      case 'stopped': {
        const block = fact.block === null ? undefined : blocks.get(fact.block)
        const waiting = fact.notAnswered.length
        return {
          says: text.stopped(block ? text.inBlock(block.code) : text.everywhere, nameOf(fact.by)),
          note: waiting > 0 ? text.notAnsweredYet(waiting) : text.allAnswered,
          icon: 'stop',
          href: routes.stopWork(),
        }
      }
      case 'called': {
        const { tree, answeredBy } = fact.call
        const coming = answeredBy === null ? text.nobodyComes : text.comes(nameOf(answeredBy))
        return {
          says: callTitle(fact.call),
          note: tree === null ? coming : `${tagOf(tree)}. ${coming}`,
          icon: 'call',
          href: routes.calls(),
        }
      }
      case 'still_inside':
        return {
          says: text.still_inside(fact.people.length, names(fact.people)),
          icon: 'people',
          href: personOr(fact.people, routes.map()),
        }
      case 'hazard':
        return {
          says: text.hazard(tagOf(fact.tree), hazards[fact.sign] ?? fact.sign),
          note: text.since(format.clock(new Date(fact.at)), nameOf(fact.by)),
          icon: 'flag',
          href: routes.map(fact.tree),
        }
      case 'alone_with_ladder':
        return {
          says: text.alone_with_ladder(nameOf(fact.person), tagOf(fact.tree)),
          note: text.aloneNote,
          icon: 'ladder',
          href: routes.map(fact.tree),
        }
      case 'waits_for_lead':
        return {
          says: text.waits_for_lead(nameOf(fact.person), tagOf(fact.tree)),
          icon: 'person',
          href: routes.map(fact.tree),
        }
      case 'not_heard':
        return {
          says:
            fact.minutes < longerThanAnyShift
              ? text.not_heard(nameOf(fact.person), format.duration(fact.minutes))
              : text.not_heard_today(nameOf(fact.person)),
          note: last(fact.tree),
          icon: 'nobars',
          href: routes.person(fact.person),
        }
      case 'many_not_heard':
        return {
          says: text.many_not_heard(fact.people.length, names(fact.people)),
          note: text.manyNotHeardNote,
          icon: 'nobars',
          href: routes.map(),
        }
      case 'long_at_tree': {
        const where = fact.tree === null ? text.atRow : text.atTree(tagOf(fact.tree))
        return {
          says: text.long_at_tree(nameOf(fact.person), where, format.duration(fact.minutes)),
          icon: 'clock',
          href: fact.tree === null ? routes.person(fact.person) : routes.map(fact.tree),
        }
      }
      case 'disease_to_judge':
      case 'for_arborist':
      case 'half_done':
      case 'to_look_over':
        return {
          says: text[fact.code](fact.trees.length, tags(fact.trees)),
          icon: treeIcons[fact.code],
          href: fact.code === 'to_look_over' ? routes.lookOver() : routes.map(fact.trees[0]),
        }
      case 'not_briefed':
        return {
          says: text.not_briefed(fact.people.length, names(fact.people)),
          icon: 'people',
          href: routes.giveBriefing(),
        }
      case 'without_tree':
        return {
          says: text.without_tree(fact.people.length, names(fact.people)),
          icon: 'person',
          href: routes.map(),
        }
      case 'not_let_in':
      case 'not_answered':
      case 'without_equipment':
      case 'without_tool':
      case 'lacks_other':
      case 'on_brush':
        return {
          says: text[fact.code](fact.people.length, names(fact.people)),
          icon: 'people',
          href: personOr(fact.people, routes.people()),
        }
    }
  }
}
