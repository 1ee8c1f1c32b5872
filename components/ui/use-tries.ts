'use client'

import { useEffect, useState } from 'react'

/** Whether somebody tried to go on; each try that left a fault puts the keys into the first faulty field. */
export function useTries() {
  const [tries, setTries] = useState(0)
  useEffect(() => {
    // By now the fields say what is wrong with them.
    if (tries > 0) firstFaulty()?.focus()
  }, [tries])
  return {
    wasTried: tries > 0,
    tried: () => setTries((before) => before + 1),
    /** It went on, and the form is a new one. */
    startAgain: () => setTries(0),
  }
}

/** Of the dialog on top, else of the page. */
function firstFaulty(): HTMLElement | null {
  const dialogs = document.querySelectorAll('dialog[open]')
  const top = dialogs[dialogs.length - 1] ?? document
  return top.querySelector<HTMLElement>('[aria-invalid="true"]')
}
