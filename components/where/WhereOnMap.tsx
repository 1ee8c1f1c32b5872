'use client'

import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import type { useLocation } from './use-location'
import { WhereAmI } from './WhereAmI'

type WhereOnMapProps = {
  here: ReturnType<typeof useLocation>
  onTree: (tree: number) => void
}

/** Over the map, which draws the circle: the words and the trees that go with it. */
export function WhereOnMap({ here: { location, look, stop }, onTree }: WhereOnMapProps) {
  const { where } = useWords()
  const isOff = location.state === 'off'
  return (
    <>
      <Button icon="meet" expanded={!isOff} onPress={isOff ? look : stop}>
        {isOff ? where.title : where.stop}
      </Button>
      {!isOff && (
        <section className="where-now" aria-label={where.title}>
          <WhereAmI location={location} onAgain={look} onTree={onTree} />
        </section>
      )}
    </>
  )
}
