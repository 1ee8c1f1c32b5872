'use client'

import { useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useRowWords } from '../brush/use-row-words'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useNameOf, useTagOf } from '../sync/use-refusal-words'
import { useRowTag } from '../sync/use-row-tag'
import { Face } from '../ui/Face'
import { Icon } from '../ui/Icon'
import { ListItem } from '../ui/List'
import { Tag } from '../ui/Tag'
import { type CrewLine, isAtWork, longerThanAnyShift } from './crew-order'
import { useHeardWords } from './use-heard-words'
import { useLeadWords } from './use-lead-words'

type CrewRowProps = {
  line: CrewLine
  onTree: (tree: number) => void
}

/** One person: initials, what is to be known, their tree and the minutes. Opens the tree, else the person. */
export function CrewRow({ line, onTree }: CrewRowProps) {
  const format = useFormat()
  const name = useNameOf()(line.personId)
  const tagOf = useTagOf()
  const note = [useCrewNote(line), useToGo(line), useHeard(line)].filter(Boolean).join(' · ')
  const rowTag = useRowTag()
  const tree = line.tree ?? (line.need?.kind === 'hazard' ? line.need.tree : null)
  const minutes = format.duration(line.minutes)
  return (
    <ListItem
      lead={<Face name={name} kind={line.need ? 'ink' : isAtWork(line) ? 'plain' : 'free'} />}
      title={name}
      note={note}
      end={
        <>
          {tree !== null && <Tag>{tagOf(tree)}</Tag>}
          {tree === null && line.row && <Tag>{rowTag(line.row)}</Tag>}
          {line.need?.kind === 'long' && (
            <b className="crew-long">
              <Icon name="clock" size={18} />
              {minutes}
            </b>
          )}
          {line.need?.kind !== 'long' && isAtWork(line) && <span className="num">{minutes}</span>}
        </>
      }
      {...(tree === null
        ? { href: routes.person(line.personId) }
        : { onPress: () => onTree(tree) })}
    />
  )
}

function useCrewNote(line: CrewLine): string | undefined {
  const { need, part, state, row, isReady, tree } = line
  const { things } = useWords()
  const { leadMap, brushRows } = useLeadWords()
  const rowWords = useRowWords()
  const format = useFormat()
  const role = useSelect((view) => view.state?.people[line.personId]?.role)
  if (need?.kind === 'call') return leadMap.needs.call
  if (need?.kind === 'alone') return leadMap.needs.alone
  if (need?.kind === 'minor_alone') return leadMap.needs.minorAlone
  if (need?.kind === 'hazard') return leadMap.needs.hazard
  if (need?.kind === 'quiet') {
    return need.minutes < longerThanAnyShift
      ? leadMap.needs.quiet(format.duration(need.minutes))
      : leadMap.needs.quietToday
  }
  if (need?.kind === 'long') return leadMap.needs.long
  if (state === 'break') return leadMap.onBreak
  if (row) return brushRows.haulsRow(rowWords(row))
  if (part === 'helper') return leadMap.helps
  if (part === 'learner') return leadMap.learns
  if (tree !== null) return undefined
  if (role === 'visitor') return things.role.visitor
  return isReady ? leadMap.free : leadMap.notReady
}

function useToGo({ toGo }: CrewLine): string | null {
  const { mapTools } = useLeadWords()
  return toGo === 0 ? null : mapTools.dealtLeft(toGo)
}

/** Nothing where it is said already that they were not heard for long. */
function useHeard({ heard, need }: CrewLine): string | null {
  const words = useHeardWords()
  return heard === null || need?.kind === 'quiet' ? null : words(heard)
}
