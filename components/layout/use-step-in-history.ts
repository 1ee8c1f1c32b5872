'use client'

import { useEffect, useRef, useState } from 'react'

/**
 * The step that a screen is at, from 0, each with an entry of its own in the browser's history: the phone's back button
 * leads to the step before and not out of the screen, and a screen that is loaded anew goes on where it was.
 */
export function useStepInHistory(of: string): [number, (step: number) => void] {
  const [step, setStep] = useState(() => stepKept(of))
  const entry = useRef(step)

  useEffect(() => {
    for (let next = entry.current + 1; next <= step; next++)
      history.pushState({ stepInScreen: { of, step: next } }, '')
    if (step < entry.current) history.go(step - entry.current)
    entry.current = step
  }, [of, step])

  useEffect(() => {
    const follow = () => {
      entry.current = stepKept(of)
      setStep(entry.current)
    }
    addEventListener('popstate', follow)
    return () => removeEventListener('popstate', follow)
  }, [of])

  return [step, setStep]
}

/** What the entry that is open says, if it is of the same thing. */
function stepKept(of: string): number {
  const state: { stepInScreen?: { of: string; step: number } } | null =
    typeof window === 'undefined' ? null : history.state
  return state?.stepInScreen?.of === of ? state.stepInScreen.step : 0
}
