/** What the work already amounts to when it has to stop at once; null: nothing yet. */
export function shareAfter(stepsDone: number, steps: number): number | null {
  return stepsDone === 0 ? null : Math.min(99, Math.round((stepsDone / steps) * 100))
}
