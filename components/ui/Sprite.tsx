import { iconShapes } from './icon-shapes'
import { markShapes } from './mark-shapes'

/**
 * All icons and marks, once in the page. Rendered on the server only: drawings are then markup
 * and not script, and they are there without signal and before anything else has loaded.
 */
export function Sprite() {
  return (
    <svg className="sprite" width="0" height="0" aria-hidden="true">
      {Object.entries(iconShapes).map(([name, shape]) => (
        <symbol key={name} id={`i-${name}`} viewBox="0 0 24 24">
          {shape}
        </symbol>
      ))}
      {Object.entries(markShapes).map(([name, shape]) => (
        <symbol key={name} id={`m-${name}`} viewBox="-8.5 -8.5 17 17" overflow="visible">
          {shape}
        </symbol>
      ))}
    </svg>
  )
}
