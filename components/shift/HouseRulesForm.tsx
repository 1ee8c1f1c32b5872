'use client'

import { useId, useState } from 'react'

import { houseRuleOf, houseRules } from '@/lib/domain/safety/house-rules'
import { useDraft, useSelect, useSend } from '@/lib/hooks'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { Button } from '../ui/Button'
import { Note } from '../ui/Note'
import { TextField } from '../ui/TextField'
import { Why } from '../ui/Why'
import { RuleChoice } from './RuleChoice'
import { asShown, ruleTyped, shownIn } from './rule-typed'

type Typed = Partial<Record<string, string>>
const untouched: Typed = {}

/** One field a rule; only what was changed is sent, so that nothing drifts by being converted. */
export function HouseRulesForm() {
  const { houseRules: text } = useLeadWords()
  const format = useFormat()
  const set = useSelect((view) => view.state?.orchard.houseRules ?? {})
  const units = useSelect((view) => view.state?.orchard.units ?? 'metric')
  const draft = useDraft<Typed>('house-rules', untouched)
  const send = useSend()
  const whyId = useId()
  const { asked, isAsking, ask } = useAsk()
  const [isSaved, setIsSaved] = useState(false)

  const fields = houseRules.map((rule) => {
    const shown = format.inField(asShown(rule, houseRuleOf(set, rule.key), units))
    const typed = draft.value[rule.key] ?? shown
    const value = ruleTyped(rule, typed, units)
    return { rule, typed, value, isChanged: typed.trim() !== shown }
  })
  const changed = fields.filter(({ isChanged }) => isChanged)
  const isWrong = changed.some(({ value }) => value === null)
  const lacks = changed.length === 0 ? text.nothing : isWrong ? text.fault : null

  const save = () => {
    const next = Object.fromEntries(
      changed.flatMap(({ rule, value }) => (value === null ? [] : [[rule.key, value]]))
    )
    void ask(send('change_orchard', { houseRules: next }), () => {
      draft.write(untouched)
      void draft.drop()
      setIsSaved(true)
    })
  }

  return (
    <>
      {fields.map(({ rule, typed, value, isChanged }) => {
        const unit = text.unit[shownIn(rule, units).unit]
        const said = (number: number) => `${format.inField(asShown(rule, number, units))} ${unit}`
        const { name, says, from } = text.rules[rule.key]
        const write = (next: string) => {
          setIsSaved(false)
          draft.write({ ...draft.value, [rule.key]: next })
        }
        if (rule.key === 'clean_tools')
          return <RuleChoice key={rule.key} value={typed} onChange={write} />
        return (
          <TextField
            key={rule.key}
            label={`${name} (${unit})`}
            hint={`${says} ${from} ${text.usual(said(rule.usual), said(rule.least), said(rule.most))}`}
            fault={isChanged && value === null && text.wrong(said(rule.least), said(rule.most))}
            value={typed}
            onChange={write}
            inputMode="decimal"
            maxLength={6}
          />
        )
      })}
      <AskedNote asked={asked} />
      {isSaved && changed.length === 0 && (
        <Note tone="done" icon="check" role="status">
          {text.saved}
        </Note>
      )}
      {lacks !== null && <Why id={whyId}>{lacks}</Why>}
      {lacks !== null ? (
        <Button kind="call" state="off" describedBy={whyId}>
          {text.save}
        </Button>
      ) : (
        <Button kind="call" state={isAsking ? 'waiting' : 'ready'} onPress={save}>
          {text.save}
        </Button>
      )}
    </>
  )
}
