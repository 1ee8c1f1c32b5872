/** The status marks: shape first, then colour. The canvas of the map draws the same shapes. */

const hole = 'var(--mk-hole, var(--paper))'

export const markShapes = {
  unpruned: <circle r="5.3" fill={hole} stroke="var(--bare)" strokeWidth="2.6" />,
  inProgress: (
    <>
      <circle r="5.4" fill={hole} stroke="var(--work)" strokeWidth="2.4" />
      <path d="M-6.3 0A6.3 6.3 0 0 0 6.3 0Z" fill="var(--work)" />
    </>
  ),
  done: <circle r="6.5" fill="var(--done)" />,
  disease: (
    <>
      <path d="M0-8 8 0 0 8-8 0Z" fill="var(--sick)" />
      <circle r="2.1" fill={hole} />
    </>
  ),
  arborist: (
    <>
      <path d="M0-7.6 8 6.4H-8Z" fill="var(--arb)" />
      <path d="M0-2.6V2M0 3.2V5" stroke={hole} strokeWidth="2" />
    </>
  ),
  mine: (
    <>
      <circle r="6.4" fill="var(--called)" stroke="var(--mk-edge, var(--ink))" strokeWidth="2.6" />
      <circle r="2.6" fill="var(--on-called)" />
    </>
  ),
  dealt: (
    <path
      d="M-5.4-6.7H5.4V.6L0 7.4-5.4.6Z"
      fill="var(--called)"
      stroke="var(--mk-edge, var(--ink))"
      strokeWidth="2.2"
    />
  ),
  dealtToOther: (
    <>
      <path
        d="M-5.4-6.7H5.4V.6L0 7.4-5.4.6Z"
        fill={hole}
        stroke="var(--mk-edge, var(--ink))"
        strokeWidth="2.2"
      />
      <path d="M-2.9-2.2H2.9" stroke="var(--mk-edge, var(--ink))" strokeWidth="2.2" />
    </>
  ),
  closed: (
    <>
      <path d="M-7-7H7V7H-7Z" fill="var(--ink)" />
      <path d="M-4 0H4" stroke={hole} strokeWidth="3" />
    </>
  ),
}

export type MarkName = keyof typeof markShapes
