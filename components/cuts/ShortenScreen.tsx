'use client'

import { useState } from 'react'
import { longTipShootCm, mayGo } from '@/lib/domain/pruning/last-years-wood'
import { isLeadView, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { ShootsDrawing } from '../tree/drawings/ShootsDrawing'
import { NoSuchTree } from '../tree/NoSuchTree'
import { stepWords } from '../tree/step-words'
import { type TreeFacts, useTree } from '../tree/use-tree'
import { useWorkCard } from '../tree/use-work-card'
import { ButtonLink } from '../ui/ButtonLink'
import { Note } from '../ui/Note'
import { Slider } from '../ui/Slider'
import { BudProfile } from './BudProfile'
import { ShortenDrawing } from './drawings/ShortenDrawing'
import { HelperScreen } from './HelperScreen'
import { ShootFigures } from './ShootFigures'
import { shootsOf, useShoot } from './use-shoot'
import { centimetresOf, lengthScale } from './wood-steps'
import './cuts.css'

/** Three quarters at most: more than that is no shortening. */
const parts = 12
const mostParts = 9

export function ShortenScreen({ no }: { no: number | null }) {
  const facts = useTree(no)
  return facts ? <OneShoot facts={facts} /> : <NoSuchTree />
}

/** How much of a shoot may go, what it costs, and what the limb gains; or that nothing may, and why. */
function OneShoot({ facts }: { facts: TreeFacts }) {
  const words = useWords()
  const { cuts } = words
  const { shorten: text } = cuts
  const format = useFormat()
  const { card } = useWorkCard(facts)
  const what = shootsOf(card)
  const shoot = useShoot(facts, what)
  const isLead = useSelect(isLeadView)
  const scale = useSelect((view) => lengthScale[view.state?.orchard.units ?? 'metric'])
  const [taken, setTaken] = useState(parts / 3)
  const [length, setLength] = useState(scale.usual)
  const share = taken / parts
  const shootCm = centimetresOf(scale, length)
  const last = card.steps.at(-1)
  const said = last && stepWords(words, format, last)
  const tipVerdict = shoot.tipVerdict(shootCm)
  const isAsked = shoot.counts === null && mayGo(shoot.bearing) === null
  const isCalling = isAsked && !isLead

  return (
    <HelperScreen
      facts={facts}
      isCalling={isCalling}
      step={
        isCalling && (
          <ButtonLink kind="call" href={routes.callLead()}>
            {text.ask}
          </ButtonLink>
        )
      }
    >
      <h1>{said?.title}</h1>
      <p>{said?.why}</p>
      {said && tipVerdict === null && <Lines of={isAsked ? said.do : said.do.slice(1)} />}
      {isAsked && said && <LeftAlone picture={said.picture} />}
      {!isAsked && (
        <>
          <ShortenDrawing counts={shoot.counts} taken={share} shootCm={shootCm} />
          <Slider
            label={text.taken}
            value={taken}
            least={0}
            most={mostParts}
            onChange={setTaken}
            says={format.share(share)}
            lessLabel={cuts.less}
            moreLabel={cuts.more}
          />
          <ShootFigures shoot={shoot} taken={share} shootCm={shootCm} />
          <Slider
            label={text.length}
            value={length}
            least={scale.least}
            most={scale.most}
            onChange={setLength}
            says={format.span(shootCm)}
            lessLabel={text.shorter}
            moreLabel={text.longer}
          />
          <TipShoot verdict={tipVerdict} />
        </>
      )}
      {isLead && <BudProfile shoot={shoot} cultivar={facts.cultivar} />}
    </HelperScreen>
  )
}

function Lines({ of }: { of: readonly string[] }) {
  return of.map((line) => <p key={line}>{line}</p>)
}

/** Of a tip-bearing apple: what is said of a shoot of this length. */
function TipShoot({ verdict }: { verdict: ReturnType<ReturnType<typeof useShoot>['tipVerdict']> }) {
  const { shorten: text } = useWords().cuts
  const length = useFormat().span(longTipShootCm, 'up')
  if (verdict === null) return null
  return (
    <Note icon="info" role="status" lead={text.tipShoot[verdict](length)}>
      {text.tipShootFrom(length)}
    </Note>
  )
}

function LeftAlone({ picture }: { picture: string }) {
  return (
    <figure className="step-drawing">
      <svg className="art" viewBox="0 0 358 200" role="img" aria-label={picture}>
        <ShootsDrawing what="leave_and_ask" />
      </svg>
    </figure>
  )
}
