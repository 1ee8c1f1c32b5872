'use client'

import type { Flag } from '@/lib/events/state'
import { useSelect, type View } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useFlagWords } from '../crew/use-flag-words'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useNameOf, useTagOf } from '../sync/use-refusal-words'
import { ButtonLink } from '../ui/ButtonLink'
import { Count } from '../ui/Count'
import { List, ListItem } from '../ui/List'
import { Mark } from '../ui/Mark'
import { Tag } from '../ui/Tag'

/** Open flags of one kind, the worst first, then the newest. Each leads to its tree. */
export function FlagList({ kind }: { kind: Flag['kind'] }) {
  const { board, disease } = useLeadWords()
  const format = useFormat()
  const nameOf = useNameOf()
  const tagOf = useTagOf()
  const flagWords = useFlagWords()
  const flags = useSelect((view) => flagsOf(view, kind))
  const title = kind === 'arborist' ? board.hazards : board.diseases

  return (
    <section className="board-part" aria-label={title}>
      <h2>
        {title} {flags.length > 0 && <Count>{flags.length}</Count>}
      </h2>
      {flags.length === 0 && <p className="small">{board.nothingFlagged}</p>}
      <List label={title}>
        {flags.map(({ id, flag }) => {
          const { sign, severity } = flagWords(flag)
          const at = new Date(flag.raisedAt)
          return (
            <ListItem
              key={id}
              lead={<Mark name={flag.kind} size={24} />}
              title={sign}
              note={`${severity}. ${board.seenAt(`${format.day(at)} ${format.clock(at)}`, nameOf(flag.raisedBy))}`}
              end={<Tag>{tagOf(flag.tree)}</Tag>}
              href={routes.map(flag.tree)}
            />
          )
        })}
      </List>
      {kind === 'disease' && flags.length > 0 && (
        <ButtonLink icon="map" href={routes.disease()}>
          {disease.toMap}
        </ButtonLink>
      )}
    </section>
  )
}

const worst = { danger_now: 0, high: 1, low: 2 }

function flagsOf({ state }: Pick<View, 'state'>, kind: Flag['kind']): { id: string; flag: Flag }[] {
  return Object.entries(state?.flags ?? {})
    .filter(([, flag]) => flag.kind === kind)
    .map(([id, flag]) => ({ id, flag }))
    .toSorted(
      (a, b) =>
        worst[a.flag.severity] - worst[b.flag.severity] ||
        (a.flag.raisedAt < b.flag.raisedAt ? 1 : -1)
    )
}
