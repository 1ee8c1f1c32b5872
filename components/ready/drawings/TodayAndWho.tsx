import { Danger, Earth, earthY, Person, Tree } from './scenery'

/** One kind of tree is pruned, another is left. */
export function OffDrawing() {
  return (
    <>
      <Earth />
      <Tree x={84} y={earthY} />
      <Person x={138} y={earthY} scale={1.2} arm />
      <Tree x={268} y={earthY} />
      <Danger d="M222 40 314 132M314 40 222 132" />
    </>
  )
}

/** A grown-up stands by; the ladder is not for somebody under age. */
export function MinorDrawing() {
  return (
    <>
      <Earth />
      <Tree x={104} y={earthY} />
      <Person x={176} y={earthY} scale={1} arm />
      <Person x={208} y={earthY} scale={1.5} />
      <path
        d="M276 150 300 52M324 150 300 52M284 118H316M290 94H310"
        fill="none"
        stroke="var(--wood)"
        strokeWidth="5"
      />
      <Danger d="M264 62 336 140M336 62 264 140" />
    </>
  )
}

/** Rain on bark, on rungs and on the blade. */
export function WetDrawing() {
  return (
    <>
      <path
        d="M30 18 22 46M78 12 70 40M126 22 118 50M174 12 166 40M222 20 214 48M270 12 262 40M318 22 310 50"
        stroke="var(--work)"
        strokeWidth="4"
      />
      <Earth />
      <Tree x={120} y={earthY} />
      <Person x={226} y={earthY} scale={1.2} />
      <path d="M188 156H290" stroke="var(--work)" strokeWidth="5" strokeDasharray="18 10" />
    </>
  )
}

/** Everybody goes, away from trees and ladders. */
export function ThunderDrawing() {
  return (
    <>
      <path
        d="M96 8 74 62H102L84 112"
        fill="none"
        stroke="var(--ink)"
        strokeWidth="6"
        strokeLinejoin="round"
      />
      <Earth />
      <Tree x={92} y={earthY} />
      <Person x={214} y={earthY} scale={1.2} />
      <Person x={246} y={earthY} scale={1.2} />
      <path
        d="M270 112H334M316 98 334 112 316 126"
        fill="none"
        stroke="var(--goes)"
        strokeWidth="5"
      />
    </>
  )
}
