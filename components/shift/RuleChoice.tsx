import { cleaningPolicies } from '@/lib/domain/disease/sanitation'
import { useLeadWords } from '../crew/use-lead-words'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Pick } from '../ui/Pick'

type RuleChoiceProps = {
  /** The place in the list of policies, from 1, as the form keeps every rule. */
  value: string
  onChange: (value: string) => void
}

/** Where the sources differ, the orchard chooses, and every source is named. */
export function RuleChoice({ value, onChange }: RuleChoiceProps) {
  const { houseRules: text } = useLeadWords()
  const { name, says, from } = text.rules.clean_tools
  return (
    <div className="field">
      <ChoiceGroup label={name} as="picks">
        {cleaningPolicies.map((policy, at) => (
          <Pick
            key={policy}
            type="radio"
            name="clean_tools"
            checked={value === String(at + 1)}
            onChange={() => onChange(String(at + 1))}
          >
            {text.cleaning[policy]}
          </Pick>
        ))}
      </ChoiceGroup>
      <p className="small hint">
        {says} {from}
      </p>
    </div>
  )
}
