import { Big, Danger, Earth, earthY, Person, Tree } from './scenery'

/** Above the limb that falls, never below it. */
export function SlopeDrawing() {
  return (
    <>
      <path d="M0 62 358 160V176H0Z" fill="var(--soil)" />
      <Tree x={176} y={111} scale={0.5} />
      <Person x={92} y={88} scale={1.15} arm />
      <path d="M196 92 244 118" stroke="var(--wood)" strokeWidth="7" />
      <path
        d="M222 88 254 116M250 102 254 116 240 116"
        fill="none"
        stroke="var(--goes)"
        strokeWidth="3.5"
      />
      <Person x={300} y={145} />
      <Danger d="M284 98 316 146M316 98 284 146" />
    </>
  )
}

/** Sun, and a place in the shade with water. */
export function HeatDrawing() {
  return (
    <>
      <circle cx="58" cy="48" r="26" fill="var(--called)" stroke="var(--ink)" strokeWidth="3" />
      <path
        d="M58 8V0M58 96V88M18 48H8M108 48H98M30 20 23 13M86 20 93 13M30 76 23 83M86 76 93 83"
        stroke="var(--ink)"
        strokeWidth="3"
      />
      <Earth />
      <path d="M168 62 250 34 332 62Z" fill="var(--ink)" />
      <path d="M180 62V150M320 62V150" stroke="var(--ink)" strokeWidth="4" />
      <path d="M180 150H320V156H180Z" fill="var(--ink)" opacity="0.3" />
      <Person x={218} y={earthY} scale={1.2} />
      <Person x={244} y={earthY} scale={1.2} />
      <Big name="water" x={270} y={102} size={46} />
    </>
  )
}

/** Ice on bark and steps, and hands that are warmed first. */
export function ColdDrawing() {
  return (
    <>
      <path d="M0 150H358V176H0Z" fill="var(--paper)" stroke="var(--edge)" strokeWidth="2" />
      <Tree x={92} y={earthY} scale={0.68} />
      <path
        d="M206 24v28M194 31l24 14M218 31l-24 14M270 52v28M258 59l24 14M282 59l-24 14M328 18v28M316 25l24 14M340 25l-24 14"
        stroke="var(--work)"
        strokeWidth="3"
      />
      <Big name="glove" x={186} y={84} size={58} />
      <Person x={296} y={earthY} scale={1.3} />
    </>
  )
}

/** The ladder lies down; feet on the ground. */
export function WindDrawing() {
  return (
    <>
      <Earth />
      <g transform="rotate(9 110 150)">
        <Tree x={110} y={earthY} scale={0.66} />
      </g>
      <Big name="wind" x={10} y={10} size={70} />
      <path d="M188 138 330 144M190 150 332 152" stroke="var(--ink)" strokeWidth="4" />
      <path
        d="M208 139v11M236 140v11M264 141v11M292 142v10M316 143v9"
        stroke="var(--ink)"
        strokeWidth="3"
      />
      <Person x={158} y={earthY} scale={1.2} />
      <Person x={178} y={earthY} scale={1.2} />
    </>
  )
}
