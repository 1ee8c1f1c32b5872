'use client'

import { useWords } from '../layout/Words'
import type { useLocation } from './use-location'
import { WhereAmI } from './WhereAmI'

type WhereOnMapProps = {
  here: ReturnType<typeof useLocation>
  onTree: (tree: number) => void
}

/** Over the map, which draws the circle: the words and the trees that go with it. */
export function WhereOnMap({ here: { location, look }, onTree }: WhereOnMapProps) {
  const { where } = useWords()
  if (location.state === 'off') return null
  return (
    <section className="where-now" aria-label={where.title}>
      <WhereAmI location={location} onAgain={look} onTree={onTree} />
    </section>
  )
}
