'use client'

import { cleaningPolicyOf, houseRuleOf, houseRules } from '@/lib/domain/safety/house-rules'
import { useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { LeadScreen } from '../crew/LeadScreen'
import { useLeadWords } from '../crew/use-lead-words'
import { ButtonLink } from '../ui/ButtonLink'
import { Panel } from '../ui/Panel'
import { HouseRulesForm } from './HouseRulesForm'
import { asShown, shownIn } from './rule-typed'
import './shift.css'
import { useFormat } from '../layout/use-format'

/** The numbers of this orchard, each with where it comes from; a manager changes them. */
export function HouseRulesScreen() {
  const { houseRules: text } = useLeadWords()
  const isManager = useSelect((view) => view.state?.me.role === 'manager')
  return (
    <LeadScreen here="shift" reads>
      <div className="shift-screen">
        <h1>{text.title}</h1>
        <p>{text.lead}</p>
        {isManager ? <HouseRulesForm /> : <InForce />}
      </div>
    </LeadScreen>
  )
}

function InForce() {
  const { houseRules: text, leadMap } = useLeadWords()
  const format = useFormat()
  const set = useSelect((view) => view.state?.orchard.houseRules ?? {})
  const units = useSelect((view) => view.state?.orchard.units ?? 'metric')
  return (
    <>
      <p className="label">{text.onlyManager}</p>
      <p>
        <ButtonLink icon="undo" href={routes.shift()}>
          {text.back}
        </ButtonLink>
      </p>
      {houseRules.map((rule) => {
        const { name, says, from } = text.rules[rule.key]
        const value =
          rule.key === 'clean_tools'
            ? text.cleaning[cleaningPolicyOf(set)]
            : `${format.inField(asShown(rule, houseRuleOf(set, rule.key), units))} ${text.unit[shownIn(rule, units).unit]}`
        return (
          <Panel key={rule.key} title={`${name}: ${value}`}>
            <p>{says}</p>
            <p className="small">{from}</p>
          </Panel>
        )
      })}
      {/* Also what the keyboard scrolls the list by. */}
      <ButtonLink href={routes.shift()}>{leadMap.tabs.shift}</ButtonLink>
    </>
  )
}
