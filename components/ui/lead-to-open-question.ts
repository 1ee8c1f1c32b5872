/**
 * A press on a button that is off leads to what it waits for: the first question around it that has no answer yet.
 * Where all are answered it waits for something else, which the reason above it says, and nothing moves.
 */
export function leadToOpenQuestion(pressed: Element): void {
  const around = pressed.closest('dialog, .phone, main')
  const questions = [...(around?.querySelectorAll<HTMLElement>('fieldset, .check') ?? [])]
  const open = questions.find(isOpen)
  open?.scrollIntoView({ block: 'center' })
  open?.querySelector('input')?.focus({ preventScroll: true })
}

/** Shown, and nothing in it is chosen. */
function isOpen(question: HTMLElement): boolean {
  const answers = [
    ...question.querySelectorAll<HTMLInputElement>('[type="radio"], [type="checkbox"]'),
  ]
  return answers.length > 0 && question.checkVisibility() && !answers.some(({ checked }) => checked)
}
