'use client'

import { type ReactNode, useState } from 'react'

import { type Sent, useSelect, useSend } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { CrewScreen } from '../layout/CrewScreen'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { WhyNot } from '../sync/WhyNot'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { Why } from '../ui/Why'
import type { Check, NextDoing } from './tool-check'
import type { ToolFacts } from './tool-facts'
import { useReadySteps } from './use-ready'

type ToolsStepProps = {
  doing: NextDoing
  check: Check
  facts: ToolFacts
  /** What was checked is on its way; these tools are out of use now. */
  onDone: (outOfUse: readonly number[]) => void
  children: ReactNode
}

/** The frame of the tools, with what comes next at the thumbs. */
export function ToolsStep({ doing, check, facts, onDone, children }: ToolsStepProps) {
  const { tools } = useWords()
  const [sent, setSent] = useState<Sent | null>(null)
  const sendAll = useSendChecks(check)

  switch (doing.state) {
    case 'look_first':
    case 'say_fault':
      return (
        <CrewScreen
          why={
            <>
              <WhyNot sent={sent} />
              <Why id="tools-why">
                {doing.state === 'look_first' ? tools.checkAll : tools.sayWhatIsWrong}
              </Why>
            </>
          }
          step={
            <Button kind="call" state="off" describedBy="tools-why">
              {check.tools.length > 0 ? <TakeWords check={check} /> : tools.protectionDone}
            </Button>
          }
        >
          {children}
        </CrewScreen>
      )
    case 'send':
      return (
        <CrewScreen
          why={<WhyNot sent={sent} />}
          step={
            <Button
              kind="call"
              onPress={async () => {
                setSent(await sendAll(doing))
                onDone(doing.fails)
              }}
            >
              <SendWords doing={doing} check={check} />
            </Button>
          }
        >
          {children}
        </CrewScreen>
      )
    case 'go_on':
      return (
        <GoOn facts={facts} sent={sent}>
          {children}
        </GoOn>
      )
  }
}

type Sending = Extract<NextDoing, { state: 'send' }>

function SendWords({ doing, check }: { doing: Sending; check: Check }) {
  const { tools } = useWords()
  const labels = useLabels()
  if (doing.takes.length > 0) return <TakeWords check={check} />
  if (doing.fails.length > 0) return tools.markFailed(labels(doing.fails))
  return doing.failedEquipment?.length === 0 ? tools.protectionDone : tools.protectionFault
}

function TakeWords({ check }: { check: Check }) {
  const { tools } = useWords()
  const labels = useLabels()
  return tools.take(
    labels(check.tools.filter(({ found }) => found !== 'fault').map(({ no }) => no))
  )
}

function useLabels(): (tools: readonly number[]) => string {
  const format = useFormat()
  const known = useSelect((view) => view.state?.tools)
  return (tools) => format.list(tools.map((no) => known?.[no]?.label ?? String(no)))
}

/** The first thing that was refused, or the last that was kept. */
function useSendChecks(check: Check): (doing: Sending) => Promise<Sent | null> {
  const send = useSend()
  return async ({ failedEquipment }) => {
    const answers: Sent[] = []
    if (failedEquipment !== null) {
      answers.push(await send('check_equipment', { failedItems: [...failedEquipment] }))
    }
    for (const { no, found, faults } of check.tools) {
      const failedItems = found === 'fault' ? [...faults] : []
      answers.push(await send('take_tool', { tool: no, failedItems }))
    }
    return answers.find(({ state }) => state !== 'kept') ?? answers.at(-1) ?? null
  }
}

type GoOnProps = { facts: ToolFacts; sent: Sent | null; children: ReactNode }

/** Nothing is open: on to what comes next, and what the tools in hand are enough for. */
function GoOn({ facts, sent, children }: GoOnProps) {
  const { tools } = useWords()
  const isReady = useReadySteps().every(({ state }) => state === 'done')
  const hasSaw = facts.inHand.some(({ kind }) => kind === 'saw')
  const holdsOne = facts.inHand.length > 0
  const href = isReady ? routes.nextTree() : routes.ready()
  return (
    <CrewScreen
      why={
        <>
          <WhyNot sent={sent} />
          {holdsOne && !hasSaw && <Why>{tools.withoutSaw}</Why>}
          {!holdsOne && facts.may === 'yes' && <Why>{tools.none}</Why>}
        </>
      }
      step={
        holdsOne || facts.may !== 'yes' ? (
          <ButtonLink kind="call" href={href}>
            {holdsOne && !hasSaw ? tools.goOnWithoutSaw : tools.goOn}
          </ButtonLink>
        ) : (
          <ButtonLink wide href={href}>
            {tools.goOn}
          </ButtonLink>
        )
      }
    >
      {children}
    </CrewScreen>
  )
}
