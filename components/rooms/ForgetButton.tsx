'use client'

import { useState } from 'react'

import { useSend } from '@/lib/hooks'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { TextField } from '../ui/TextField'
import { useTries } from '../ui/use-tries'
import { Why } from '../ui/Why'
import { isSameName } from './is-same-name'

type ForgetButtonProps = { id: string; name: string; onForgotten: () => void }

/** The name is written once more: a press alone is too near to the next person in the list. */
export function ForgetButton({ id, name, onForgotten }: ForgetButtonProps) {
  const { forget: text } = useLeadWords()
  const send = useSend()
  const [typed, setTyped] = useState('')
  const { wasTried, tried } = useTries()
  const { asked, isAsking, ask } = useAsk()
  const forget = () => {
    tried()
    if (isAsking || !isSameName(typed, name)) return
    void ask(send('forget_person', { subject: id }), onForgotten)
  }
  return (
    <div className="room-form">
      <Why icon="warn">{text.cannotUndo}</Why>
      <TextField
        label={text.type(name)}
        value={typed}
        onChange={setTyped}
        autoComplete="off"
        fault={wasTried && !isSameName(typed, name) && text.typeWrong(name)}
      />
      <AskedNote asked={asked} whose={name} />
      <Button state={isAsking ? 'waiting' : 'ready'} onPress={forget}>
        {text.button(name)}
      </Button>
    </div>
  )
}
