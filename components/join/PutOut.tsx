'use client'

import { useState } from 'react'

import { type Sent, useRowcall, useSelect, type View } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useDoorWords } from '../layout/Words'
import { WhyNot } from '../sync/WhyNot'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { Note } from '../ui/Note'
import { JoinFrame } from './JoinFrame'
import { OtherPeople } from './OtherPeople'

/** Not in the crew any more: what was not sent is handed in, once, and a lead looks at it. */
export function PutOut() {
  const { common, join } = useDoorWords()
  const { handIn } = useRowcall()
  const orchard = useSelect((view) => view.me?.orchardName ?? '')
  const unsent = useSelect((view) => view.unsent.length - photosIn(view))
  const photos = useSelect(photosIn)
  const [isAsking, setIsAsking] = useState(false)
  const [sent, setSent] = useState<Sent | null>(null)

  async function handAllIn() {
    setIsAsking(true)
    setSent(await handIn())
    setIsAsking(false)
  }

  return (
    <JoinFrame
      bench={
        unsent > 0 ? (
          <>
            <WhyNot sent={sent} />
            <Button
              kind="call"
              state={isAsking ? 'waiting' : 'ready'}
              onPress={() => void handAllIn()}
            >
              {isAsking ? common.asking : join.handIn}
            </Button>
            <OtherPeople />
          </>
        ) : (
          <>
            <ButtonLink kind="call" href={routes.join()}>
              {join.joinAgain}
            </ButtonLink>
            <OtherPeople />
          </>
        )
      }
    >
      <h1>{join.outTitle(orchard)}</h1>
      <p>{join.outWhy}</p>
      {unsent > 0 && (
        <Note tone="call" icon="kept" lead={join.toHandIn(unsent)}>
          {join.handInNote}
        </Note>
      )}
      {sent?.state === 'accepted' && (
        <Note tone="done" icon="check" role="status">
          {join.handedIn}
        </Note>
      )}
      {photos > 0 && <Note icon="camera">{join.photosStay(photos)}</Note>}
    </JoinFrame>
  )
}

/** Photos are not handed in: whoever is out sends no pictures. */
function photosIn(view: View): number {
  return view.unsent.filter(({ command }) => command.name === 'add_photo').length
}
