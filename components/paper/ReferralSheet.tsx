'use client'

import type { ReactNode } from 'react'

import type { ReferReason } from '@/lib/events/state'
import { useFlagDetails, useSelect } from '@/lib/hooks'
import { useFlagWords } from '../crew/use-flag-words'
import { useLeadWords } from '../crew/use-lead-words'
import { inDegrees } from '../day/where-we-are'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useNameOf } from '../sync/use-refusal-words'
import { useLimbWords, useReasonWords, useSourceWords } from '../tree/reason-words'
import { kindWords } from '../tree/tree-words'
import { type TreeFacts, useTree } from '../tree/use-tree'
import { ArboristLines } from './ArboristLines'
import { AroundPlan } from './AroundPlan'
import { inMinutes } from './in-minutes'
import { PaperPhoto } from './PaperPhoto'
import { usePlaces } from './use-places'
import './referral.css'

/** As many as leave room for the arborist's lines. */
const mostPhotos = 2

/** One page for a licensed arborist: which tree, where, what limb, why. For leads and managers. */
export function ReferralSheet({ flag: id }: { flag: string }) {
  const { referral } = useLeadWords()
  const flag = useSelect((view) => view.state?.flags[id] ?? null)
  const orchard = useSelect((view) => view.state?.orchard.name ?? '')
  const photos = useSelect((view) => view.confirmed?.flags[id]?.photos ?? [])
  const facts = useTree(flag?.tree ?? null)
  if (flag?.kind !== 'arborist' || !facts) return <p className="referral">{referral.over}</p>
  return (
    <article className="referral">
      <header>
        <h2>
          {referral.title}: <span className="num">{facts.tag}</span>
        </h2>
        <p>{orchard}</p>
      </header>
      <div className="halves">
        <dl>
          <Place facts={facts} />
          <Seen id={id} />
        </dl>
        <div>
          <AroundPlan facts={facts} keepOutM={flag.keepOutM} />
          <div className="photos">
            {photos.slice(0, mostPhotos).map((photo, at) => (
              <PaperPhoto key={photo} photo={photo} alt={referral.photo(at + 1)} />
            ))}
          </div>
        </div>
      </div>
      {flag.reasons && flag.reasons.length > 0 && <Sources reasons={flag.reasons} />}
      <p className="decides">{referral.decides}</p>
      <ArboristLines />
    </article>
  )
}

function Place({ facts: { tree, block, cultivar } }: { facts: TreeFacts }) {
  const words = useWords()
  const { referral } = useLeadWords()
  const format = useFormat()
  const access = useSelect((view) => view.emergency?.access)
  const placed = usePlaces().get(tree.no)
  const { help } = words
  return (
    <>
      <Line term={referral.where}>{referral.rowAndTree(block.name, tree.row, tree.place)}</Line>
      <Line term={referral.coordinates}>
        {placed ? (
          <>
            <b className="num">{inDegrees(placed.position)}</b>
            <br />
            {inMinutes(placed.position, help.compass)}
            {!placed.surveyed && <small>{referral.reckoned}</small>}
          </>
        ) : (
          referral.notSurveyed
        )}
      </Line>
      <Line term={referral.access}>{access || referral.noAccess}</Line>
      <Line term={referral.kind}>{kindWords(words, tree, cultivar)}</Line>
      <Line term={referral.height}>
        {tree.heightCm === null ? referral.notMeasured : format.height(tree.heightCm / 100)}
      </Line>
    </>
  )
}

function Seen({ id }: { id: string }) {
  const { flag: text, ours } = useWords()
  const { referral } = useLeadWords()
  const format = useFormat()
  const nameOf = useNameOf()
  const limbWords = useLimbWords()
  const flagWords = useFlagWords()
  const flag = useSelect((view) => view.state?.flags[id] ?? null)
  const details = useFlagDetails([id])
  if (!flag) return null
  const { sign, severity } = flagWords(flag)
  const read = details.state === 'read' ? details.value[id] : undefined
  const places: Record<string, string> = text.places
  const at = new Date(flag.raisedAt)
  const limb = limbWords(flag.limb)
  return (
    <>
      <Line term={referral.seen}>
        <b>{sign}</b>
      </Line>
      {read?.part && <Line term={referral.at}>{places[read.part] ?? read.part}</Line>}
      {limb !== null && <Line term={ours.limb}>{limb}</Line>}
      {flag.reasons && (
        <Line term={ours.why}>
          <Why reasons={flag.reasons} />
        </Line>
      )}
      <Line term={referral.howBad}>{severity}</Line>
      <Line term={referral.keepOut}>
        {flag.keepOutM ? referral.keepOutOf(format.keepAway(flag.keepOutM)) : referral.noKeepOut}
      </Line>
      {read?.note && <Line term={referral.note}>{read.note}</Line>}
      <Line term={referral.reported}>
        {referral.reportedBy(nameOf(flag.raisedBy), format.fullDate(at), format.clock(at))}
      </Line>
      {read && read.notes.length > 0 && (
        <Line term={referral.since}>{read.notes.map(({ note }) => note).join(' ')}</Line>
      )}
      {details.state === 'failed' && <Line term={referral.note}>{referral.notRead}</Line>}
    </>
  )
}

/** Each reason on its own line. */
function Why({ reasons }: { reasons: readonly ReferReason[] }) {
  const { ours } = useWords()
  const wordsOf = useReasonWords()
  if (reasons.length === 0) return ours.foundNothing
  return wordsOf(reasons).map((line) => (
    <span key={line} className="reason">
      {line}
    </span>
  ))
}

/** In small print, where the rules behind the reasons come from. */
function Sources({ reasons }: { reasons: readonly ReferReason[] }) {
  const { ours } = useWords()
  const sourcesOf = useSourceWords()
  return (
    <p className="sources">
      {ours.sources}: {sourcesOf(reasons).join('; ')}.
    </p>
  )
}

function Line({ term, children }: { term: string; children: ReactNode }) {
  return (
    <div>
      <dt>{term}</dt>
      <dd>{children}</dd>
    </div>
  )
}
