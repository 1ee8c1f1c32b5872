'use client'

import { myDealtTrees, useSelect } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { Icon } from '../ui/Icon'

/** What one can go on with. */
export function WorksOffline() {
  const { unsent } = useWords()
  const dealt = useSelect(myDealtTrees).length
  const { works } = unsent
  const things = [
    works.workCards,
    works.emergency,
    works.finish,
    works.flags,
    works.map,
    ...(dealt > 0 ? [works.deals(dealt)] : []),
  ]
  return (
    <section>
      <h2>{unsent.worksTitle}</h2>
      <ul className="works">
        {things.map((thing) => (
          <li key={thing}>
            <Icon name="check" size={20} />
            {thing}
          </li>
        ))}
      </ul>
    </section>
  )
}
