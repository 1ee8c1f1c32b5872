import { Big, Danger, Earth, earthY, Person } from './scenery'

/** Three long signals, and everybody walks to one place. */
export function SignalDrawing() {
  return (
    <>
      <Earth />
      <Person x={62} y={earthY} scale={1.5} arm />
      <path d="M92 92 118 80V106Z" fill="var(--ink)" />
      <path
        d="M132 82V104M146 76V110M160 70V116"
        stroke="var(--stop)"
        strokeWidth="6"
        strokeLinecap="round"
      />
      <path
        d="M24 22H116M133 22H225M242 22H334"
        stroke="var(--stop)"
        strokeWidth="12"
        strokeLinecap="round"
      />
      <Big name="meet" x={248} y={70} size={44} />
      <Person x={215} y={earthY} />
      <Person x={262} y={earthY} />
      <Person x={278} y={earthY} />
      <Person x={330} y={earthY} />
      <path
        d="M226 132H244M238 126 244 132 238 138M318 132H296M302 126 296 132 302 138"
        fill="none"
        stroke="var(--ink)"
        strokeWidth="2.5"
      />
    </>
  )
}

/** What is worn, and what is looked at. */
export function ToolsDrawing() {
  return (
    <>
      <path d="M16 88H342" stroke="var(--line)" strokeWidth="2" />
      <Big name="glove" x={44} y={14} size={60} />
      <Big name="glasses" x={149} y={14} size={60} />
      <Big name="helmet" x={254} y={14} size={60} />
      <Big name="pruner" x={44} y={102} size={60} />
      <Big name="lopper" x={149} y={102} size={60} />
      <Big name="saw" x={254} y={102} size={60} />
    </>
  )
}

/** A tripod: the third leg uphill, and the top two steps are nobody's. */
export function LadderDrawing() {
  return (
    <>
      <path d="M0 156 358 132V176H0Z" fill="var(--soil)" />
      <path d="M196 20 158 146M214 20 206 143" stroke="var(--ink)" strokeWidth="5" />
      <path d="M205 20 292 137" stroke="var(--ink)" strokeWidth="4" />
      <path
        d="M183 66H209M177 86H208M171 106H207M165 126H206"
        stroke="var(--ink)"
        strokeWidth="4"
      />
      <Danger d="M193 30H214M188 47H212" />
      <Danger d="M226 26 242 42M242 26 226 42" />
      <Person x={190} y={106} scale={1.15} />
      <Person x={118} y={148} scale={1.15} arm />
      <path
        d="M306 96V124M299 117 306 124 313 117"
        fill="none"
        stroke="var(--ink)"
        strokeWidth="2.5"
      />
    </>
  )
}
