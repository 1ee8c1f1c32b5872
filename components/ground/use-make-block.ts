'use client'

import { mostTreesInBlock } from '@/lib/domain/orchard/layout'
import { useSelect, useSend } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useGo } from '../layout/use-go'
import { laidOutArgs } from './laid-out-args'
import { useMostCommonSpecies } from './NameFields'
import { positionsIn } from './new-block'
import type { NewBlockNow } from './use-new-block'

/** What still lacks, in a sentence; else how the block is made. */
export function useMakeBlock(now: NewBlockNow) {
  const { ground } = useLeadWords()
  const format = useFormat()
  const go = useGo()
  const send = useSend()
  const { asked, isAsking, ask } = useAsk()
  const mostCommon = useMostCommonSpecies()
  const { block, layout, fault, plan, isBehind } = now
  const [code, name] = [block.code.trim(), block.name.trim()]
  const isTaken = useSelect((view) => view.sheet?.blocks.some((one) => one.code === code) ?? false)

  const lacks = (() => {
    if (positionsIn(block).length < 3) return ground.lacks.corners
    if (plan === null) return ground.lacks.fault
    if (fault?.code === 'no_room') return ground.lacks.no_room
    if (fault?.code === 'too_many_trees')
      return ground.lacks.too_many_trees(
        format.number(Math.round(fault.about)),
        format.number(mostTreesInBlock)
      )
    if (fault !== null) return ground.lacks.fault
    if (name === '' || code === '') return ground.lacks.name
    return isTaken ? ground.lacks.codeTaken : null
  })()

  const make = () => {
    if (layout === null || isBehind) return
    const args = laidOutArgs({ code, name, species: block.species ?? mostCommon }, layout)
    void ask(send('bring_in_trees', args), () => {
      void now.drop()
      go.push(routes.ground(code))
    })
  }
  return { lacks, asked, isAsking, make }
}
