'use client'

import { useState } from 'react'

import { myTree, type Sent, useSelect, useSend } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { CrewScreen } from '../layout/CrewScreen'
import { useStartWords } from '../layout/Words'
import { WhyNot } from '../sync/WhyNot'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { Steps } from '../ui/Steps'
import { Why } from '../ui/Why'
import { MeetingPoint } from './MeetingPoint'
import { ReadyStepLine } from './ReadyStepLine'
import { type StepName, stepNow, waitsForBriefing } from './ready-steps'
import { useReadySteps } from './use-ready'

/** Before you start: all that is missing, and the way to each. */
export function ReadyScreen() {
  const { ready } = useStartWords()
  const steps = useReadySteps()
  const isVisitor = useSelect((view) => view.state?.me.role === 'visitor')
  const now = stepNow(steps)
  const toDo = steps.filter(({ state }) => state === 'mine')
  const isReady = steps.every(({ state }) => state === 'done')
  const shown = isVisitor ? steps.filter(({ name }) => forVisitors.includes(name)) : steps

  return (
    <CrewScreen
      why={!isReady && !isVisitor && <Why icon="lock">{ready.whyLocked}</Why>}
      step={isVisitor ? visitorStep(now) : isReady ? <ToTree /> : <NextStep now={now} />}
    >
      <h1>
        {isVisitor
          ? ready.visitorTitle
          : isReady
            ? ready.readyTitle
            : toDo.length > 0
              ? ready.toDo(toDo.length)
              : waitsForBriefing(steps)
                ? ready.waitBriefingTitle
                : ready.waitTitle}
      </h1>
      {(isVisitor || isReady) && <p>{isVisitor ? ready.visitorNote : ready.readyNote}</p>}
      <Steps roomy label={ready.title}>
        {shown.map((step) => (
          <ReadyStepLine
            key={step.name}
            step={step}
            isNow={step.name === now}
            number={toDo.indexOf(step) + 1}
          />
        ))}
      </Steps>
      <MeetingPoint />
    </CrewScreen>
  )
}

const forVisitors: readonly StepName[] = [
  'crew',
  'shift',
  'no_shift',
  'stopped',
  'stop_answer',
  'arrive',
  'on_break',
]

function visitorStep(now: StepName | null) {
  return now !== null && forVisitors.includes(now) ? <NextStep now={now} /> : null
}

function ToTree() {
  const { ready } = useStartWords()
  const held = useSelect((view) => {
    const mine = myTree(view)
    return mine.state === 'none' ? null : mine.tree
  })
  return (
    <ButtonLink kind="call" href={held === null ? routes.nextTree() : routes.tree(held)}>
      {held === null ? ready.goToTree : ready.backToTree}
    </ButtonLink>
  )
}

/** The way to the first thing that is mine; nothing while all waits for others. */
function NextStep({ now }: { now: StepName | null }) {
  const { ready } = useStartWords()
  switch (now) {
    case 'arrive':
      return <SendStep name="arrive">{ready.arriveButton}</SendStep>
    case 'on_break':
      return <SendStep name="end_break">{ready.endBreakButton}</SendStep>
    case 'consent':
      return <LinkStep href={routes.consent()}>{ready.consentButton}</LinkStep>
    case 'briefing':
      return <LinkStep href={routes.briefing()}>{ready.briefingButton}</LinkStep>
    case 'equipment':
      return <LinkStep href={routes.tools()}>{ready.equipmentButton}</LinkStep>
    case 'tools':
      return <LinkStep href={routes.tools()}>{ready.toolsButton}</LinkStep>
    default:
      return null
  }
}

function LinkStep({ href, children }: { href: string; children: string }) {
  return (
    <ButtonLink kind="call" href={href}>
      {children}
    </ButtonLink>
  )
}

function SendStep({ name, children }: { name: 'arrive' | 'end_break'; children: string }) {
  const send = useSend()
  const [sent, setSent] = useState<Sent | null>(null)
  return (
    <div className="grow">
      <WhyNot sent={sent} />
      <Button kind="call" wide onPress={async () => setSent(await send(name, {}))}>
        {children}
      </Button>
    </div>
  )
}
