import { Big, Danger, Earth, earthY, Person, Tree } from './scenery'

/** Healthy trees first, then the flagged one, and the blade wiped after it. */
export function DiseaseDrawing() {
  return (
    <>
      <Earth />
      <Tree x={58} y={earthY} scale={0.48} />
      <Tree x={148} y={earthY} scale={0.48} />
      <Tree x={252} y={earthY} scale={0.48} />
      <svg x={236} y={6} width={34} height={34} viewBox="-8.5 -8.5 17 17" aria-hidden="true">
        <use href="#m-disease" x="-8.5" y="-8.5" width="17" height="17" />
      </svg>
      <path
        d="M92 164H112M106 158 112 164 106 170M186 164H206M200 158 206 164 200 170"
        fill="none"
        stroke="var(--ink)"
        strokeWidth="3"
      />
      <Big name="spray" x={300} y={58} size={44} />
      <path
        d="M286 164H306M300 158 306 164 300 170"
        fill="none"
        stroke="var(--ink)"
        strokeWidth="3"
      />
      <Big name="pruner" x={300} y={104} size={44} />
    </>
  )
}

/** A nest in the tree, and somebody who walks away from it. */
export function NestDrawing() {
  return (
    <>
      <Earth />
      <Tree x={106} y={earthY} scale={0.8} />
      <path d="M150 52C138 62 136 88 150 96C164 88 164 62 152 52Z" fill="var(--goes)" />
      <path d="M141 66H160M140 76H161M143 86H158" stroke="var(--sky)" strokeWidth="2.5" />
      <Danger d="M172 62h6M180 78h6M170 94h6M126 88h-6M178 44h6" />
      <Person x={252} y={earthY} scale={1.3} />
      <path
        d="M276 118H322M312 108 322 118 312 128"
        fill="none"
        stroke="var(--ink)"
        strokeWidth="4"
      />
    </>
  )
}
