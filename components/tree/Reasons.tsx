import { Why } from '../ui/Why'

/** Why it was not to be, all of it. */
export function Reasons({ reasons }: { reasons: readonly string[] }) {
  return reasons.map((reason) => (
    <Why key={reason} tone="wrong">
      {reason}
    </Why>
  ))
}
