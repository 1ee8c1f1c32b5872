import { expect, test } from 'vitest'

import { centimetresOf, lengthScale, thicknessScale } from '@/components/cuts/wood-steps'
import { toolFor } from '@/lib/domain/pruning/cut'
import { houseRuleOf } from '@/lib/domain/safety/house-rules'
import { formatFor } from '@/lib/text/format'

const limits = {
  prunerCm: houseRuleOf({}, 'pruner_cm'),
  lopperCm: houseRuleOf({}, 'lopper_cm'),
  poleCm: houseRuleOf({}, 'pole_cm'),
  limbCm: houseRuleOf({}, 'limb_cm'),
}

// Common practice: pruner to 3/4 in, lopper to 1 1/2 in, 4 in is the most that is sawn here.
test.each([
  [3, '3/4 in', 'pruner'],
  [4, '1 in', 'lopper'],
  [6, '1\u00a01/2 in', 'lopper'],
  [7, '1\u00a03/4 in', 'saw'],
  [15, '3\u00a03/4 in', 'saw'],
  [16, '4 in', null],
])('%s quarter inches are %s, and the tool is %s', (steps, says, tool) => {
  const diameterCm = centimetresOf(thicknessScale.us, steps)
  const found = toolFor({ diameterCm, isDead: false, reach: 'within' }, limits)

  expect(formatFor({ language: 'en', units: 'us', timeZone: 'UTC' }).thickness(diameterCm)).toBe(
    says
  )
  expect(found.state === 'ours' ? found.tool : null).toBe(tool)
})

test.each([thicknessScale, lengthScale])('both scales reach about as far', ({ metric, us }) => {
  const most = [metric, us].map((scale) => centimetresOf(scale, scale.most))
  expect(Math.abs((most[0] ?? 0) / (most[1] ?? 1) - 1)).toBeLessThan(0.05)
})
