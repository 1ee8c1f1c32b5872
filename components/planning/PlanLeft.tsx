'use client'

import { useLeadWords } from '../crew/use-lead-words'
import { Facts } from '../ui/Facts'
import { More } from '../ui/More'
import type { Planning } from './use-plan'

/** What is not dealt, with why, and the rules by which the plan is made. */
export function PlanLeft({ planning: { plan, planned } }: { planning: Planning }) {
  const { plan: text } = useLeadWords()
  const count = (why: string) => plan.left.filter((one) => one.why === why).length
  const left = (['hours', 'beside_overhead', 'skills'] as const).map((why) => ({
    why,
    count: count(why),
  }))
  const aside = (['dealt', 'off', 'closed'] as const).map((why) => ({
    why,
    count: planned.aside[why],
  }))
  const stays = [...left, ...aside].filter(({ count }) => count > 0)
  return (
    <section className="ahead" aria-label={text.left}>
      {stays.length > 0 && <h2>{text.left}</h2>}
      <Facts
        facts={stays.map(({ why, count }) => ({ icon: 'lock', text: text.leftWhy[why](count) }))}
      />
      <More title={text.rules}>
        <Facts
          facts={[
            ...Object.values(text.rule).map((rule) => ({ icon: 'check' as const, text: rule })),
            { icon: 'clock' as const, text: text.minutes(planned.finished) },
          ]}
        />
      </More>
    </section>
  )
}
