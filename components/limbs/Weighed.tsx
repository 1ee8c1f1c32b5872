'use client'

import type { Species } from '@/lib/domain/orchard/types'
import {
  type Carried,
  carry,
  type Hold,
  liftOf,
  limitOf,
  oneHandKg,
  type Take,
} from '@/lib/domain/pruning/carry-limb'
import { multipliersOf } from '@/lib/domain/pruning/lifting'
import {
  densityOf,
  type LimbShape,
  limbKg,
  sideBranches,
  usualFruitWoodKgM3,
} from '@/lib/domain/pruning/limb-weight'
import { houseRuleOf } from '@/lib/domain/safety/house-rules'
import { useSelect } from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { More } from '../ui/More'
import { Note } from '../ui/Note'
import { density, heavySide, lightSide } from './mass'

/** Ten centimetres, or half a foot. */
const gradeM = { metric: 0.1, us: 0.1524 }
/** As the manual prints it in either system. The metric one is reckoned with: it is the smaller. */
const loadConstant = { metric: '23 kg', us: '51 lb' }

type WeighedProps = { shape: LimbShape; species: Species; hold: Hold; take: Take }

/** Its weight as a range, and who takes it by the heavy end. */
export function Weighed({ shape, species, hold, take }: WeighedProps) {
  const { weigh: text } = useWords()
  const units = useSelect((view) => view.state?.orchard.units ?? 'metric')
  const limbCm = useSelect((view) => houseRuleOf(view.state?.orchard.houseRules ?? {}, 'limb_cm'))
  const kg = limbKg(shape, species)
  const limitKg = limitOf(hold, take)
  const carried = carry(shape, { species, limitKg, limbCm, gradeM: gradeM[units] })
  const isRefer = carried.by === 'refer'
  return (
    <section className="stack" aria-live="polite">
      <p className="weight num">
        {text.weight(heavySide(kg.least, units), heavySide(kg.most, units))}
      </p>
      <Note
        tone={isRefer ? 'arb' : 'plain'}
        {...(isRefer ? { mark: 'arborist' as const } : { icon: 'people' as const })}
        lead={text.by[carried.by]}
      >
        <Detail carried={carried} limbCm={limbCm} />
      </Note>
      <p>{text.limit(lightSide(limitKg, units))}</p>
      <More title={text.how}>
        <HowReckoned shape={shape} species={species} hold={hold} take={take} />
      </More>
    </section>
  )
}

function Detail({ carried, limbCm }: { carried: Carried; limbCm: number }) {
  const { weigh: text } = useWords()
  const format = useFormat()
  switch (carried.by) {
    case 'in_pieces':
      return text.pieces(format.list(carried.piecesM.map((metres) => format.reach(metres, 'near'))))
    case 'refer':
      return carried.why === 'thick'
        ? text.whyRefer.thick(format.diameter(limbCm))
        : text.whyRefer.too_many_pieces
    case 'one_hand':
    case 'one_person':
    case 'two_people':
      return null
  }
}

function HowReckoned({ shape, species, hold, take }: WeighedProps) {
  const { weigh: text } = useWords()
  const format = useFormat()
  const units = useSelect((view) => view.state?.orchard.units ?? 'metric')
  const wood = densityOf(species)
  const more = sideBranches[shape.branches].value
  const multipliers = Object.values(multipliersOf(liftOf(hold, take)))
  const factors = multipliers.map((factor) => format.number(factor, 3)).join(' × ')
  return (
    <div className="small stack">
      <p>
        {text.wood(density(wood.value.least, units), density(wood.value.most, units))}{' '}
        {wood.source === null
          ? text.woodUnknown(density(usualFruitWoodKgM3, units))
          : text.woodSource}
      </p>
      <p>{text.more(format.number(more.least, 1), format.number(more.most, 1))}</p>
      <p>{text.niosh}</p>
      <p>{text.factors(loadConstant[units], factors)}</p>
      <p>{text.two}</p>
      <p>{text.oneHand(units === 'us' ? '10 lb' : `${format.number(oneHandKg, 1)} kg`)}</p>
    </div>
  )
}
