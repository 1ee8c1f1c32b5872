'use client'

import { type PrivatePeople, useDraft, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { Why } from '../ui/Why'
import { CountBoard } from './CountBoard'
import { headCountOf, kindsHere } from './counted'

type Begun = { at: string; seen: string[] }
/** Of this lead, on this device: a count is looked at by who counts. */
type Counts = { now: Begun | null; last: { at: string; seen: number; all: number } | null }

const noCounts: Counts = { now: null, last: null }

/** A count that a lead begins: whom they see is ticked; who is left is to be looked for. */
export function CountNow({ contacts }: { contacts: PrivatePeople }) {
  const { count: text } = useLeadWords()
  const format = useFormat()
  const draft = useDraft<Counts>('head-count', noCounts)
  const { now, last } = draft.value
  const seen = useSelect(
    (view) => new Map((now?.seen ?? []).map((id) => [id, view.me?.personId ?? null]))
  )
  const count = useSelect((view) => headCountOf(view, seen, contacts))
  const all = count.missing.length + count.found.length
  const tick = (ids: string[]) => now && draft.write({ ...draft.value, now: { ...now, seen: ids } })

  if (now === null)
    return (
      <>
        <h1>{text.title}</h1>
        <Begin
          contacts={contacts}
          onBegin={() =>
            draft.write({ ...draft.value, now: { at: new Date().toISOString(), seen: [] } })
          }
        />
        {last && (
          <p className="muted">{text.last(format.clock(new Date(last.at)), last.seen, last.all)}</p>
        )}
      </>
    )
  return (
    <>
      <div>
        <h1>{text.title}</h1>
        <p className="muted">{text.since(format.clock(new Date(now.at)))}</p>
      </div>
      <CountBoard
        count={count}
        contacts={contacts}
        onSeen={(id) => tick([...now.seen, id])}
        onNotSeen={(id) => tick(now.seen.filter((one) => one !== id))}
        foot={
          <div className="stack">
            <Why icon={count.missing.length === 0 ? 'check' : 'warn'}>
              {count.missing.length === 0 ? text.all : text.some(count.missing.length)}
            </Why>
            {count.missing.length > 0 && (
              <ButtonLink icon="call" wide href={routes.callLead()}>
                {text.lookFor}
              </ButtonLink>
            )}
            <Button
              kind={count.missing.length === 0 ? 'call' : 'plain'}
              wide
              onPress={() =>
                draft.write({ now: null, last: { at: now.at, seen: count.found.length, all } })
              }
            >
              {text.finish}
            </Button>
          </div>
        }
      />
    </>
  )
}

function Begin({ contacts, onBegin }: { contacts: PrivatePeople; onBegin: () => void }) {
  const { count: text } = useLeadWords()
  const { all, ...kinds } = useSelect((view) => kindsHere(view, contacts))
  if (all === 0) return <p>{text.nobody}</p>
  // The keys are those of both.
  const names = Object.keys(kinds) as (keyof typeof kinds)[]
  return (
    <div className="stack count-begin">
      <div className="count-number">
        <b className="num count-big">{all}</b>
        <span className="count-says">
          <b className="count-title">{text.here(all)}</b>
          <span className="small">
            {names
              .filter((name) => kinds[name] > 0)
              .map((name) => text.kinds[name](kinds[name]))
              .join(' · ')}
          </span>
        </span>
      </div>
      <p className="small">{text.countNowNote}</p>
      <Button kind="call" icon="people" wide onPress={onBegin}>
        {text.countNow}
      </Button>
    </div>
  )
}
