'use client'

import { useDraft, useSelect, useSend } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { TextField } from '../ui/TextField'
import { type AboutFlag, FlagForm } from './FlagForm'
import { asTyped, metresTyped, mostM } from './keep-out-typed'

/** How far around a hazard the ground is closed. */
export function KeepOutOf({ flag, tag, onClose, isManager }: AboutFlag & { isManager: boolean }) {
  const { flags: text } = useLeadWords()
  const format = useFormat()
  const send = useSend()
  const units = useSelect((view) => view.state?.orchard.units ?? 'metric')
  const usualM = useSelect((view) => view.state?.orchard.houseRules.keep_out_m ?? 0)
  const nowM = flag.keepOutM ?? 0
  const draft = useDraft(`keep-out|${flag.id}`, asTyped(nowM, units))
  const metres = metresTyped(draft.value, units)
  const lacks =
    metres === null
      ? text.keepOutWrong(format.keepAway(mostM))
      : metres < nowM && !isManager
        ? text.keepOutNarrower(format.keepAway(nowM))
        : null
  return (
    <FlagForm
      title={text.keepOutTitle(tag)}
      note={text.keepOutNote}
      lacks={lacks}
      words={text.keepOutSet}
      send={() => send('change_keep_out', { flag: flag.id, keepOutM: metres ?? nowM })}
      onDone={() => {
        void draft.drop()
        onClose()
      }}
      onClose={onClose}
    >
      <TextField
        label={text.keepOutHow(units === 'us' ? text.feet : text.metres)}
        hint={`${text.keepOutSource(format.keepAway(usualM))} ${text.keepOutWider}`}
        value={draft.value}
        onChange={draft.write}
        inputMode="decimal"
        maxLength={6}
      />
    </FlagForm>
  )
}
