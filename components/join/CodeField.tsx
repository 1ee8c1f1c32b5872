'use client'

import { useState } from 'react'

import { useDoorWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { TextField } from '../ui/TextField'
import { codeIn } from './use-code'

type CodeFieldProps = {
  label: string
  action: string
  onCode: (code: string) => void
}

/** For whoever has a code and no camera. */
export function CodeField({ label, action, onCode }: CodeFieldProps) {
  const { join } = useDoorWords()
  const [written, setWritten] = useState('')
  const [isWrong, setIsWrong] = useState(false)
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault()
        const code = codeIn(written)
        setIsWrong(code === '')
        if (code !== '') onCode(code)
      }}
    >
      <TextField
        label={label}
        hint={join.codeHint}
        fault={isWrong && join.writeCode}
        value={written}
        onChange={setWritten}
        autoComplete="off"
        maxLength={300}
      />
      <Button type="submit" wide>
        {action}
      </Button>
    </form>
  )
}
