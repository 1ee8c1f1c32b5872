import { joinClasses } from './join-classes'

/** `off` waits for somebody else. */
export type StepState = 'done' | 'now' | 'later' | 'off'

type RowLineProps = {
  steps: readonly StepState[]
  /** What the picture says: "Topic 3 of 5". */
  label: string
}

/** Progress as a row with trees on it; the current one is taller. */
export function RowLine({ steps, label }: RowLineProps) {
  return (
    <div className="rowline" role="img" aria-label={label}>
      {steps.map((state, place) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a step is its place in the row
        <span key={place} className={joinClasses(state !== 'later' && `is-${state}`)}>
          <i />
        </span>
      ))}
    </div>
  )
}
