'use client'

import { useLeadWords } from '../crew/use-lead-words'

/** Blank lines for who came: written by hand, entered later when a manager clears the flag. */
export function ArboristLines() {
  const { referral } = useLeadWords()
  return (
    <section className="lines" aria-label={referral.forArborist}>
      <h3>{referral.forArborist}</h3>
      <div className="pair">
        <Blank word={referral.name} />
        <Blank word={referral.licence} />
      </div>
      <Blank word={referral.done} />
      <Blank />
      <Blank />
      <div className="pair">
        <Blank word={referral.date} />
        <Blank word={referral.signature} />
      </div>
    </section>
  )
}

function Blank({ word = '' }: { word?: string }) {
  return <p className="blank">{word}</p>
}
