'use client'

import { type FlagDetails, type OpenFlag, type Reading, useNow, useSelect } from '@/lib/hooks'
import { useFlagWords } from '../crew/use-flag-words'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useNameOf, useTagOf } from '../sync/use-refusal-words'
import { Mark } from '../ui/Mark'
import { Tag } from '../ui/Tag'
import { FlagActs } from './FlagActs'
import { FlagPhoto } from './FlagPhoto'
import { FlagReasons } from './FlagReasons'
import { InsideList } from './InsideList'

type FlagCardProps = {
  flag: OpenFlag
  details: Reading<FlagDetails>
  /** The one to look at first. */
  isNext: boolean
}

/** One flag: what was seen, by whom, how long ago, what was written, and what a lead can do. */
export function FlagCard({ flag, details, isNext }: FlagCardProps) {
  const { flags: text } = useLeadWords()
  const format = useFormat()
  const nameOf = useNameOf()
  const tagOf = useTagOf()
  const now = useNow(30_000)
  const { sign, severity } = useFlagWords()(flag)
  // Of what is sent only: before that it cannot be read.
  const photos = useSelect((view) => view.confirmed?.flags[flag.id]?.photos ?? [])
  const tag = tagOf(flag.tree)
  const at = new Date(flag.raisedAt)
  const isHazard = flag.kind === 'arborist'
  return (
    <article className="panel flag-card" aria-label={`${tag}: ${sign}`}>
      <div className="flag-head">
        <Mark name={flag.kind} size={28} />
        <h3 className="grow">{sign}</h3>
        <Tag>{tag}</Tag>
      </div>
      <p className="label">
        {severity}, {text.states[flag.state]}
        {isHazard && (
          <>
            {' · '}
            {flag.keepOutM ? text.keepOut(format.keepAway(flag.keepOutM)) : text.noKeepOut}
          </>
        )}
      </p>
      <p className="small">
        {now &&
          text.reported(
            nameOf(flag.raisedBy),
            `${format.date(at)} ${format.clock(at)}`,
            format.duration((now.getTime() - at.getTime()) / 60_000)
          )}
      </p>
      {photos.length > 0 && (
        <div className="flag-photos">
          {photos.map((photo, no) => (
            <FlagPhoto key={photo} photo={photo} alt={text.photo(tag, no + 1)} />
          ))}
        </div>
      )}
      <Written id={flag.id} details={details} />
      <FlagReasons reasons={flag.reasons} limb={flag.limb} />
      <InsideList flag={flag} />
      <FlagActs flag={flag} tag={tag} isNext={isNext} />
    </article>
  )
}

function Written({ id, details }: { id: string; details: Reading<FlagDetails> }) {
  const { flag: words } = useWords()
  const { flags: text } = useLeadWords()
  const format = useFormat()
  const nameOf = useNameOf()
  if (details.state === 'reading') return <p className="small">{text.reading}</p>
  if (details.state === 'failed') return <p className="small">{text.notRead}</p>
  const read = details.value[id]
  if (!read) return null
  const places: Record<string, string> = words.places
  return (
    <>
      {read.part && <p>{places[read.part] ?? read.part}</p>}
      {read.note && <blockquote className="said">{read.note}</blockquote>}
      {read.notes.map(({ note, at, personId }) => (
        <p key={at} className="since">
          <b>{note}</b>{' '}
          <span className="small">
            {nameOf(personId)}, {format.date(new Date(at))} {format.clock(new Date(at))}
          </span>
        </p>
      ))}
    </>
  )
}
