'use client'

import { type OpenCall, useSelect, useSend } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { BandRow } from '../layout/BandRow'
import { useNameOf } from '../sync/use-refusal-words'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { CallNote } from './CallNote'
import { useCallTitle } from './call-title'
import './call-band.css'

type CallRowProps = { call: OpenCall; onEnd: () => void }

/** One call in the ink band: who, what, where, how long; one press says that I come. */
export function CallRow({ call, onEnd }: CallRowProps) {
  const { leadMap, calls: text } = useLeadWords()
  const nameOf = useNameOf()
  const titleOf = useCallTitle()
  const send = useSend()
  const { asked, ask } = useAsk()
  const me = useSelect((view) => view.me?.personId)
  const isMine = call.answeredBy === me
  const title = titleOf(call)

  return (
    <BandRow
      name={nameOf(call.calledBy)}
      title={title}
      note={<CallNote call={call} />}
      action={
        <div className="call-acts">
          <AskedNote asked={asked} />
          {call.tree !== null && (
            <ButtonLink icon="map" href={routes.map(call.tree)} label={`${text.where}: ${title}`}>
              {text.where}
            </ButtonLink>
          )}
          {isMine ? (
            <Button label={text.endTitle(title)} onPress={onEnd}>
              {text.end}
            </Button>
          ) : (
            <Button
              label={`${leadMap.coming}: ${title}`}
              onPress={() => void ask(send('answer_call', { call: call.id }))}
            >
              {call.answeredBy === null ? leadMap.coming : text.alsoYou}
            </Button>
          )}
        </div>
      }
    />
  )
}
