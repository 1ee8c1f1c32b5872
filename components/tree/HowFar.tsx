'use client'

import { routes } from '@/lib/routes'
import { useGo } from '../layout/use-go'
import { useWords } from '../layout/Words'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Mark } from '../ui/Mark'
import { Tile } from '../ui/Tile'

/** All is done, or part is left; for the second there is a screen of its own. */
export function HowFar({ tree }: { tree: number }) {
  const { tree: text } = useWords()
  const go = useGo()
  return (
    <ChoiceGroup label={text.howFar} hideLabel as="tiles">
      <Tile
        type="radio"
        name="how-far"
        beside
        tone="done"
        checked
        onChange={() => {}}
        art={<Mark name="done" size={24} />}
      >
        {text.allDone}
      </Tile>
      <Tile
        type="radio"
        name="how-far"
        beside
        checked={false}
        onChange={() => go.push(routes.halfDoneTree(tree))}
        art={<Mark name="inProgress" size={24} />}
      >
        {text.partLeft}
      </Tile>
    </ChoiceGroup>
  )
}
