'use client'

import dynamic from 'next/dynamic'
import { useState } from 'react'

import { isLeadView, openShiftOf, type Sent, stopInForce, useSelect, useSend } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { CrewScreen } from '../layout/CrewScreen'
import { Fetching } from '../layout/Fetching'
import { useStartWords } from '../layout/Words'
import { WhyNot } from '../sync/WhyNot'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Note } from '../ui/Note'
import { Pick } from '../ui/Pick'
import { Why } from '../ui/Why'
import { StopInForce } from './StopInForce'
import './stop.css'

/** What only a lead sees is fetched only for them; ahead (`Screens`), since without signal people are counted too. */
export const fetchHeadCount = async () => (await import('../count/HeadCountScreen')).HeadCountScreen
const HeadCountScreen = dynamic(fetchHeadCount, { loading: () => <Fetching /> })

/** Calls a stop: the site's signal first, in the largest type; the phone counts, it is not the alarm. */
export function StopWorkScreen() {
  const inForce = useSelect(stopInForce)
  const isLead = useSelect(isLeadView)
  if (inForce === null) return <CallStop />
  return isLead ? <HeadCountScreen /> : <StopInForce stop={inForce} />
}

function CallStop() {
  const { common, stop } = useStartWords()
  const send = useSend()
  const [sent, setSent] = useState<Sent | null>(null)
  const [block, setBlock] = useState<number | null>(null)
  const blocks = useSelect((view) => view.ground.blocks)
  const blockName = block === null ? null : (blocks.get(block)?.name ?? null)
  const signal = useSelect((view) => openShiftOf(view)?.signal ?? null)

  return (
    <CrewScreen
      side={
        <ButtonLink kind="square" icon="left" href={routes.home()}>
          {common.back}
        </ButtonLink>
      }
      why={signal === null ? <Why>{stop.noShift}</Why> : <WhyNot sent={sent} />}
      step={
        signal !== null && (
          <Button
            kind="stop"
            wide
            icon="stop"
            sub={stop.sendNote}
            onPress={async () => setSent(await send('stop_work', { block }))}
          >
            {blockName === null ? stop.send : stop.sendBlock(blockName)}
          </Button>
        )
      }
    >
      <h1>{stop.title}</h1>
      <div className="signal">
        {stop.first}
        <b>{stop.signals[signal ?? 'voice']}</b>
      </div>
      <p className="label">{stop.shoutToo}</p>
      {blocks.size > 1 && (
        <ChoiceGroup label={stop.where} as="picks">
          <Pick
            type="radio"
            name="stop-where"
            checked={block === null}
            onChange={() => setBlock(null)}
          >
            {stop.everywhere}
          </Pick>
          {[...blocks.values()].map(({ no, name }) => (
            <Pick
              key={no}
              type="radio"
              name="stop-where"
              checked={block === no}
              onChange={() => setBlock(no)}
            >
              {name}
            </Pick>
          ))}
        </ChoiceGroup>
      )}
      <Note icon="warn">{stop.phoneNote}</Note>
    </CrewScreen>
  )
}
