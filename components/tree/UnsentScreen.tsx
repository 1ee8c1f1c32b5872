'use client'

import { myTree, openShiftOf, useNow, useRowcall, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { CrewScreen } from '../layout/CrewScreen'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { KeptList } from '../sync/KeptList'
import { OfflineNote } from '../sync/OfflineNote'
import { useTagOf } from '../sync/use-refusal-words'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { CameInOtherwise } from './CameInOtherwise'
import { RefusedThings } from './RefusedThings'
import { useKeptThings } from './use-kept-things'
import { WorksOffline } from './WorksOffline'

/** What is kept on this phone, what became of it, and the one thing that does not work: a stop. */
export function UnsentScreen() {
  const { brush, claim, unsent, things } = useWords()
  const format = useFormat()
  const tagOf = useTagOf()
  const { retry } = useRowcall()
  const now = useNow()
  const kept = useKeptThings()
  const mine = useSelect(myTree)
  const isOffline = useSelect((view) => view.signal === 'no_signal')
  const since = useSelect((view) => view.outOfTouchSince)
  const signal = useSelect((view) => openShiftOf(view)?.signal ?? null)
  const minutes =
    since && now ? Math.max(0, Math.floor((now.getTime() - Date.parse(since)) / 60_000)) : 0
  const title = isOffline
    ? since
      ? unsent.offlineSince(format.clock(new Date(since)))
      : unsent.offlineNow
    : kept.length > 0
      ? unsent.title
      : unsent.allSent

  return (
    <CrewScreen
      side={
        (isOffline || kept.length > 0) && (
          <Button kind="square" icon="send" onPress={retry}>
            {unsent.tryNow}
          </Button>
        )
      }
      step={
        mine.state !== 'none' && mine.tree === null ? (
          <ButtonLink kind="call" href={routes.haul()}>
            {brush.backToIt}
          </ButtonLink>
        ) : mine.state !== 'none' && mine.tree !== null ? (
          <ButtonLink kind="call" href={routes.tree(mine.tree)}>
            {unsent.backToTree(tagOf(mine.tree))}
          </ButtonLink>
        ) : (
          <ButtonLink kind="call" href={routes.nextTree()}>
            {unsent.toNextTree}
          </ButtonLink>
        )
      }
    >
      <div>
        <h1>{title}</h1>
        <p className="muted">
          {isOffline ? unsent.offlineNote : kept.length > 0 ? unsent.waiting : unsent.allSentNote}
        </p>
      </div>
      <RefusedThings />
      <CameInOtherwise />
      {kept.length > 0 && <KeptList kept={kept} label={unsent.title} />}
      {mine.state === 'not_confirmed' && <p className="small">{claim.beginWhy}</p>}
      {isOffline && (
        <>
          <WorksOffline />
          <OfflineNote
            minutesOutOfTouch={minutes}
            signal={signal === null ? '' : things.signal[signal]}
            text={unsent}
          />
        </>
      )}
    </CrewScreen>
  )
}
