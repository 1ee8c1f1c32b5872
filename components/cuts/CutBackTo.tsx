'use client'

import { useState } from 'react'

import { isRivalOfLeader, lateralShare, lateralTakesOver } from '@/lib/domain/pruning/cut'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { More } from '../ui/More'
import { Slider } from '../ui/Slider'
import { centimetresOf, type WoodScale } from './wood-steps'

type CutBackToProps = { removedCm: number; scale: WoodScale; hasLeader: boolean }

/** Whether the side branch that stays can take over; and beside a leader, whether it is its rival. */
export function CutBackTo({ removedCm, scale, hasLeader }: CutBackToProps) {
  const { cuts } = useWords()
  const { cut: text } = cuts
  const format = useFormat()
  const [lateral, setLateral] = useState(2)
  const [leader, setLeader] = useState(scale.usual * 2)
  const lateralCm = centimetresOf(scale, lateral)
  const leaderCm = centimetresOf(scale, leader)
  const leastCm = removedCm * lateralShare.value
  const bounds = { least: scale.least, most: scale.most }
  const labels = { lessLabel: text.thinner, moreLabel: text.thicker }
  return (
    <More title={text.lateralTitle}>
      <Slider
        {...bounds}
        {...labels}
        label={text.lateral}
        value={lateral}
        onChange={setLateral}
        says={format.thickness(lateralCm)}
      />
      <p role="status">
        {lateralTakesOver({ removedCm, lateralCm })
          ? text.lateralOk
          : text.lateralBad(format.diameter(leastCm, 'up'))}
      </p>
      {hasLeader && (
        <>
          <Slider
            {...bounds}
            {...labels}
            label={text.leader}
            value={leader}
            onChange={setLeader}
            says={format.thickness(leaderCm)}
          />
          <p role="status">
            {isRivalOfLeader({ lateralCm, leaderCm }) ? text.rival : text.noRival}
          </p>
        </>
      )}
    </More>
  )
}
