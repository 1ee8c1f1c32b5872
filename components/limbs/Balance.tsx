'use client'

import { gapsOf, meanResultant, rayleighP } from '@/lib/domain/pruning/circular'
import { chooseLimbs, type MainLimb } from '@/lib/domain/pruning/limb-balance'
import { houseRuleOf } from '@/lib/domain/safety/house-rules'
import { useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { ButtonLink } from '../ui/ButtonLink'
import { Note } from '../ui/Note'
import { Wheel } from './Wheel'

type BalanceProps = { limbs: readonly MainLimb[]; keep: number; tree: number }

/** How evenly the limbs stand, before and after, and which to keep. A lead decides. */
export function Balance({ limbs, keep, tree }: BalanceProps) {
  const { limbs: text } = useWords()
  const format = useFormat()
  const choice = chooseLimbs(limbs, keep)
  if (!choice || keep === limbs.length) return <Note icon="info">{text.few}</Note>
  const now = Math.floor(Math.min(...gapsOf(bearingsOf(limbs))))
  const then = Math.floor(choice.smallestGapDeg)
  const kept = choice.kept.map((at) => limbs[at]).filter((limb) => limb !== undefined)
  const wheel = (goes: (at: number) => boolean, label: string) => (
    <figure>
      <Wheel
        label={`${label}: ${text.wheel}`}
        limbs={limbs.map(({ bearingDeg }, at) => ({ bearingDeg, goes: goes(at) }))}
      />
      <figcaption className="label">{label}</figcaption>
    </figure>
  )
  return (
    <section className="stack" aria-label={text.after}>
      <div className="wheels">
        {wheel(() => false, text.before)}
        {wheel((at) => !choice.kept.includes(at), text.after)}
      </div>
      <Note icon="info" role="status" lead={text.keepThese(format.list(choice.kept.map(numbered)))}>
        {now === then ? text.outcomeSame(then) : text.outcome(now, then)}{' '}
        {text.others(limbs.length - keep)}
      </Note>
      <Evenness title={text.before} bearings={bearingsOf(limbs)} />
      <Evenness title={text.after} bearings={bearingsOf(kept)} />
      <TooThick limbs={limbs} kept={choice.kept} tree={tree} />
      <p className="small">{text.decides}</p>
      <p className="small">{text.weights}</p>
    </section>
  )
}

function Evenness({ title, bearings }: { title: string; bearings: readonly number[] }) {
  const { limbs: text } = useWords()
  const format = useFormat()
  const p = rayleighP(bearings)
  return (
    <p>
      <b>{title}:</b> {text.noted(bearings.length)}.{' '}
      {text.largest(Math.ceil(Math.max(...gapsOf(bearings))))}{' '}
      {text.evenness(format.share(meanResultant(bearings) ?? 0))}
      {p !== null &&
        ` ${p < 0.01 ? text.chanceLess(format.share(0.01)) : text.chance(format.share(p))}`}
    </p>
  )
}

type TooThickProps = { limbs: readonly MainLimb[]; kept: readonly number[]; tree: number }

/** What should go and is no volunteer's. */
function TooThick({ limbs, kept, tree }: TooThickProps) {
  const { limbs: text } = useWords()
  const format = useFormat()
  const limbCm = useSelect((view) => houseRuleOf(view.state?.orchard.houseRules ?? {}, 'limb_cm'))
  const thick = limbs.flatMap(({ thickCm }, at) =>
    !kept.includes(at) && thickCm !== null && thickCm > limbCm ? [numbered(at)] : []
  )
  if (thick.length === 0) return null
  return (
    <>
      <Note mark="arborist" tone="arb">
        {text.tooThick(format.list(thick), format.diameter(limbCm))}
      </Note>
      <ButtonLink wide icon="flag" href={routes.flagTree(tree, 'limb')}>
        {text.refer}
      </ButtonLink>
    </>
  )
}

function numbered(at: number): string {
  return String(at + 1)
}

function bearingsOf(limbs: readonly MainLimb[]): number[] {
  return limbs.map(({ bearingDeg }) => bearingDeg)
}
