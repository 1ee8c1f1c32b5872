'use client'

import './openness.css'

import { useState } from 'react'

import { routes } from '@/lib/routes'
import { CrewScreen } from '../layout/CrewScreen'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { NoSuchTree } from '../tree/NoSuchTree'
import { TagInHand } from '../tree/TagInHand'
import { type TreeFacts, useTree } from '../tree/use-tree'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { Facts } from '../ui/Facts'
import { Note } from '../ui/Note'
import { Segmented } from '../ui/Segmented'
import { Why } from '../ui/Why'
import { OneShot } from './OneShot'
import { changeOf, moments } from './shots'
import { TakePhoto } from './TakePhoto'
import { useShots } from './use-shots'

/** How open the crown is before pruning and after, from two photos taken straight up. */
export function OpennessScreen({ no }: { no: number | null }) {
  const facts = useTree(no)
  return facts ? <OpennessOf key={facts.tree.no} facts={facts} /> : <NoSuchTree />
}

function OpennessOf({ facts: { tree, tag } }: { facts: TreeFacts }) {
  const { openness: text } = useWords()
  const { shots, working, wrong, take, startOver } = useShots(tree.no)
  const [view, setView] = useState<'photo' | 'seen'>('seen')
  const isWorking = working !== null
  const hasAny = shots.before !== null || shots.after !== null
  return (
    <CrewScreen
      who={<TagInHand>{tag}</TagInHand>}
      tree={tree.no}
      why={wrong && <Why tone="wrong">{text.unusable[wrong.why]}</Why>}
      step={
        shots.before === null ? (
          <TakePhoto
            kind="call"
            words={isWorking ? text.working : text.takeBefore}
            isWorking={isWorking}
            onFile={(file) => void take('before', file)}
          />
        ) : (
          <ButtonLink kind="call" href={routes.tree(tree.no)}>
            {text.back}
          </ButtonLink>
        )
      }
    >
      <h1>{text.title}</h1>
      <Note icon="sun" lead={text.sunLead}>
        {text.sunSays}
      </Note>
      {shots.before !== null && shots.after === null && (
        <Note icon="saw" lead={text.pruneNow}>
          {text.comeBack}
        </Note>
      )}
      <Compared shots={shots} />
      {hasAny ? (
        <Segmented
          label={text.show}
          hideLabel
          options={[
            { value: 'seen', label: text.asSeen },
            { value: 'photo', label: text.asPhoto },
          ]}
          value={view}
          onChange={setView}
        />
      ) : (
        <Facts facts={text.how.map((how, at) => ({ icon: howIcons[at] ?? 'info', text: how }))} />
      )}
      {hasAny && (
        <div className="shots">
          {moments.map((moment) => (
            <OneShot
              key={moment}
              {...{ moment, tag }}
              shot={shots[moment]}
              asSeen={view === 'seen'}
            >
              <TakePhoto
                kind="plain"
                words={
                  working === moment ? text.working : shots[moment] ? text.again : text.takeAfter
                }
                label={shots[moment] ? text.againOf(text[moment]) : undefined}
                isWorking={isWorking}
                onFile={(file) => void take(moment, file)}
              />
            </OneShot>
          ))}
        </div>
      )}
      {hasAny && (
        <Button icon="undo" state={isWorking ? 'waiting' : 'ready'} onPress={startOver}>
          {text.startOver}
        </Button>
      )}
      <p className="small">
        {text.onlyHere} {text.source}
      </p>
    </CrewScreen>
  )
}

const howIcons = ['person', 'camera', 'undo'] as const

/** What pruning has done, where it can be told. */
function Compared({ shots }: { shots: ReturnType<typeof useShots>['shots'] }) {
  const { openness: text } = useWords()
  const format = useFormat()
  const change = changeOf(shots)
  if (!change || !shots.before || !shots.after) return null
  const points = format.number(change.points)
  const said = { more: text.more(points), less: text.less(points), same: text.same }[change.state]
  return (
    <Note icon="check" tone="done" role="status" lead={`${said}.`}>
      {text.fromTo(format.share(shots.before.gap), format.share(shots.after.gap))}{' '}
      {change.state === 'less' && text.likeness}
    </Note>
  )
}
