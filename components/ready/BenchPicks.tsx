'use client'

import { useWords } from '../layout/Words'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Pick } from '../ui/Pick'
import { ToolToCheck } from './ChecksToDo'
import { type Check, withPicked } from './tool-check'
import type { ToolFacts } from './tool-facts'

type BenchPicksProps = {
  bench: ToolFacts['bench']
  check: Check
  onCheck: (check: Check) => void
}

/** What lies on the bench, by kind and label: who holds one in their hand picks it here. */
export function BenchPicks({ bench, check, onCheck }: BenchPicksProps) {
  const { tools, things } = useWords()
  const isPicked = (no: number) => check.tools.some((tool) => tool.no === no)
  return (
    <section>
      <h2>{tools.bench}</h2>
      <p className="small">{bench.length === 0 ? tools.noneFree : tools.benchNote}</p>
      {bench.map(({ kind, tools: free }) => (
        <div className="bench-kind" key={kind}>
          <ChoiceGroup label={things.tool[kind]} as="picks">
            {free.map(({ no, label, ownedBy }) => (
              <Pick
                key={no}
                type="checkbox"
                checked={isPicked(no)}
                onChange={(isOn) => onCheck(withPicked(check, no, isOn))}
              >
                {ownedBy === null ? label : `${label} (${tools.own})`}
              </Pick>
            ))}
          </ChoiceGroup>
          {/* Below the thumb that picked it, so that nothing moves under it. */}
          <ul>
            {free
              .filter(({ no }) => isPicked(no))
              .map(({ no }) => (
                <ToolToCheck key={no} no={no} check={check} onCheck={onCheck} />
              ))}
          </ul>
        </div>
      ))}
    </section>
  )
}
