'use client'

import type { Skill } from '@/lib/events/state'
import { useDraft, useSend } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Dialog } from '../ui/Dialog'
import { TextField } from '../ui/TextField'
import { AskedNote } from './AskedNote'
import { useAsk } from './use-ask'
import { useLeadWords } from './use-lead-words'

type GrantSkillProps = {
  id: string
  skill: Skill
  onClose: () => void
}

/** A skill for somebody, and the last day it holds. */
export function GrantSkill({ id, skill, onClose }: GrantSkillProps) {
  const { common, things } = useWords()
  const { people: text } = useLeadWords()
  const send = useSend()
  const draft = useDraft(`grant|${id}|${skill}`, '')
  const { asked, ask } = useAsk()
  const until = draft.value === '' ? null : draft.value
  return (
    <Dialog
      open
      title={text.grantSkill(things.skill[skill])}
      onClose={onClose}
      closeLabel={common.close}
    >
      <TextField
        label={text.until}
        hint={text.untilHint}
        type="date"
        value={draft.value}
        onChange={draft.write}
      />
      <AskedNote asked={asked} />
      <Button
        kind="call"
        onPress={() =>
          ask(send('grant_skill', { subject: id, skill, until }), () => {
            void draft.drop()
            onClose()
          })
        }
      >
        {text.grant}
      </Button>
    </Dialog>
  )
}
