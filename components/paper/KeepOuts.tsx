import type { KeepOutOnPlan } from './paper-plan'

/** Ground that is closed, dashed. */
export function KeepOuts({ keepOuts }: { keepOuts: readonly KeepOutOnPlan[] }) {
  return keepOuts.map(({ tree, x, y, r }) => (
    <circle key={tree} className="keep-out" cx={x} cy={y} r={r} />
  ))
}
