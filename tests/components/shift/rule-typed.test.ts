import { describe, expect, test } from 'vitest'

import { asShown, ruleTyped } from '@/components/shift/rule-typed'
import { type HouseRule, type HouseRuleKey, houseRules } from '@/lib/domain/safety/house-rules'

function rule(key: HouseRuleKey): HouseRule {
  const found = houseRules.find((one) => one.key === key)
  if (!found) throw new Error(`no rule ${key}`)
  return found
}

test.each([
  ['limb_cm', 'metric', 10, '10'],
  // A limit is rounded down, a distance up.
  ['limb_cm', 'us', 10, '3 7/8'],
  ['keep_out_m', 'us', 10, '32.9'],
  ['ladder_from_cm', 'us', 250, '8.2'],
  ['quiet_minutes', 'us', 15, '15'],
  ['lopper_cm', 'us', 3.81, '1 1/2'],
  ['pruner_cm', 'us', 1.905, '3/4'],
  ['three_cut_out_cm', 'us', 30.48, '12'],
  ['three_cut_out_cm', 'metric', 30.48, '30'],
  ['feet_cm', 'us', 183, '6'],
  ['lean_deg', 'us', 15, '15'],
] as const)('%s in %s: %s is shown as %s', (key, units, value, shown) => {
  expect(asShown(rule(key), value, units)).toBe(shown)
})

test.each([
  ['limb_cm', 'metric', '8', 8],
  ['limb_cm', 'metric', '7,5', 7.5],
  ['limb_cm', 'us', '3', 7.62],
  ['limb_cm', 'us', '3 1/2', 8.89],
  ['limb_cm', 'metric', '10.1', null],
  ['limb_cm', 'us', '4', null],
  ['lopper_cm', 'us', '1.25', 3.17],
  ['keep_out_m', 'us', '40', 12.2],
  ['keep_out_m', 'metric', 'far', null],
  ['keep_out_m', 'metric', '', null],
  ['keep_out_m', 'metric', '2', null],
] as const)('%s in %s: "%s" means %s', (key, units, typed, value) => {
  expect(ruleTyped(rule(key), typed, units)).toBe(value)
})

describe.each(['metric', 'us'] as const)('in %s', (units) => {
  test.each(houseRules)('least and most of $key can be typed as they are shown', (each) => {
    for (const end of [each.least, each.most])
      for (const mark of ['.', ','])
        expect(ruleTyped(each, asShown(each, end, units).replace('.', mark), units)).toBe(end)
  })
})
