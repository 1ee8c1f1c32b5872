/** The icons' shapes: 24 grid, 2.25 line, flat ends, because a cut is clean. Only the sprite loads them. */

export const iconShapes = {
  check: <path d="M3.5 12.5 9.5 18.5 20.5 6" />,
  cross: <path d="M5.5 5.5 18.5 18.5M18.5 5.5 5.5 18.5" />,
  right: <path d="M8.5 4.5 16 12l-7.5 7.5" />,
  left: <path d="M15.5 4.5 8 12l7.5 7.5" />,
  down: <path d="M4.5 8.5 12 16l7.5-7.5" />,
  higher: <path d="M4.5 15.5 12 8l7.5 7.5" />,
  up: <path d="M12 21V4.5M5 11.5l7-7 7 7" />,
  turnleft: <path d="M18 21v-8.5a4.5 4.5 0 0 0-4.5-4.5H5M10.5 2.5 5 8l5.5 5.5" />,
  turnright: <path d="M6 21v-8.5a4.5 4.5 0 0 1 4.5-4.5H19M13.5 2.5 19 8l-5.5 5.5" />,
  plus: <path d="M12 4v16M4 12h16" />,
  minus: <path d="M4 12h16" />,
  pruner: (
    <>
      <path d="M6 22 12.6 10.5M18 22 11.4 10.5" />
      <path d="M12.8 10.4C15.6 8.4 16.2 5 15 2c-3 2-4 5-3.8 8.2" fill="currentColor" />
      <path d="M11.2 10.4C8.9 9.6 7.8 7.4 8.3 4.4" />
    </>
  ),
  lopper: (
    <>
      <path d="M3.5 22 12 8.5M20.5 22 12 8.5" />
      <path d="M3.2 22.4 6.4 17.4M20.8 22.4 17.6 17.4" strokeWidth="4" />
      <path d="M12.4 8.4C14.8 6.8 15.2 4 14.2 1.8 11.9 3.6 11.2 5.8 11.5 8.4" fill="currentColor" />
      <path d="M11.6 8.4C9.8 7.6 9 6 9.4 3.6" />
    </>
  ),
  saw: (
    <>
      <path
        d="M9 8.2 22.5 11v3l-1.8-.2-1.1 2-1.6-2.3-1.2 2-1.6-2.3-1.2 2-1.6-2.3L11 15.2 9 13.4Z"
        fill="currentColor"
        strokeWidth="1"
      />
      <path d="M9 7.5H4.5A2.5 2.5 0 0 0 2 10v4.5A2.5 2.5 0 0 0 4.5 17H7l2-2.4Z" />
    </>
  ),
  glove: (
    <>
      <path d="M7 17.5 4.2 12.4a1.7 1.7 0 0 1 2.9-1.7l.9 1.3V5.2a1.6 1.6 0 0 1 3.2 0V10 3.8a1.6 1.6 0 0 1 3.2 0V10 5a1.6 1.6 0 0 1 3.2 0v8c0 2-.5 3.2-1.4 4.5Z" />
      <path d="M6.5 21.5h10" />
    </>
  ),
  glasses: (
    <>
      <path d="M1.5 9h21" />
      <path d="M3.5 9v3.5a3.7 3.7 0 0 0 7.4 0L11 9M13 9l.1 3.5a3.7 3.7 0 0 0 7.4 0V9" />
    </>
  ),
  helmet: (
    <>
      <path d="M4.5 15.5V14a7.5 7.5 0 0 1 15 0v1.5" />
      <path d="M1.5 16.5h21v3.5H3.5Z" />
      <path d="M9.8 12V4.5h4.4V12" />
    </>
  ),
  shoe: <path d="M3 5.5h6.500l1 5.500 7.500 2.500c2.200.7 3 2.200 3 5H3ZM3 18.500h18M3 13h5" />,
  sleeves: (
    <>
      <path d="M8.5 3 2.5 7v13H6M15.5 3l6 4v13H18" />
      <path d="M8.5 3c1 3 6 3 7 0M6.500 10.500V21h11V10.500" />
    </>
  ),
  ladder: <path d="M8.5 2.5 4 22M13 2.5 17 22M7.5 7h6.4M6.6 11.5h8.3M5.5 16.2h10.4M10.8 3 21 22" />,
  wind: <path d="M2 9h12.2a3 3 0 1 0-3-3M2 14h16a3 3 0 1 1-3 3M2 19h8" />,
  line: (
    <>
      <path d="M6 22.5V2M2 6.5h8" />
      <path d="M9.5 6.5C13 10 18 10.5 22.5 8" />
      <path d="M17.8 12 14 17.2h4.6L15.2 22.5" strokeWidth="2" />
    </>
  ),
  flag: (
    <>
      <path d="M5.5 22.5V2.5" />
      <path d="M5.5 4h13.2l-4 4.7 4 4.8H5.5" />
    </>
  ),
  call: (
    <path d="M4.5 3h4.6l2.1 5.2-2.7 2a12.5 12.5 0 0 0 5.3 5.3l2-2.7 5.2 2.1v4.6A1.6 1.6 0 0 1 19.4 21 16.8 16.8 0 0 1 3 4.6 1.6 1.6 0 0 1 4.5 3Z" />
  ),
  stop: (
    <>
      <path d="M8 2h8l6 6v8l-6 6H8l-6-6V8Z" fill="currentColor" stroke="none" />
      <path d="M7 12h10" stroke="var(--stop-bar, #fff)" strokeWidth="3.2" />
    </>
  ),
  aid: (
    <>
      <path d="M2.5 5h19v14.5h-19Z" />
      <path d="M12 8.2v8M8 12.2h8" strokeWidth="2.8" />
    </>
  ),
  lock: (
    <>
      <path d="M4.5 11h15v10.5h-15Z" />
      <path d="M8 11V7.5a4 4 0 0 1 8 0V11M12 14.5v3.5" />
    </>
  ),
  person: (
    <>
      <circle cx="12" cy="7" r="4" />
      <path d="M3.5 22c.6-5 3.8-8 8.5-8s7.9 3 8.5 8" />
    </>
  ),
  people: (
    <>
      <circle cx="9" cy="7.5" r="3.6" />
      <path d="M1.5 21.500c.5-4.6 3.3-7.3 7.5-7.300s7 2.7 7.5 7.300M15.5 4.200a3.6 3.6 0 0 1 0 6.600M18.2 14.700c2.5.9 4 3.2 4.3 6.8" />
    </>
  ),
  clock: (
    <>
      <circle cx="12" cy="12" r="9.3" />
      <path d="M12 6v6.500l4.2 2.5" />
    </>
  ),
  camera: (
    <>
      <path d="M2.5 7.500h4.800l2-3h5.400l2 3h4.800v12.500h-19Z" />
      <circle cx="12" cy="13.4" r="3.7" />
    </>
  ),
  globe: (
    <>
      <circle cx="12" cy="12" r="9.3" />
      <path d="M2.7 12h18.600M12 2.700c-5 5-5 13.6 0 18.6 5-5 5-13.6 0-18.600Z" />
    </>
  ),
  bars: <path d="M4 21v-4M9.3 21v-8M14.7 21V9M20 21V4" strokeWidth="3" />,
  nobars: (
    <>
      <path d="M4 21v-4M9.3 21v-8M14.7 21v-5M20 21V4" strokeWidth="3" />
      <path d="M2 2.5 22 22" strokeWidth="2.5" />
    </>
  ),
  kept: (
    <>
      <path d="M6.5 1.800h11v20.400h-11Z" />
      <path d="M12 6v7M8.8 10.2 12 13.400l3.2-3.200M9.5 17.500h5" />
    </>
  ),
  send: <path d="M12 16V3.500M6 9.500l6-6 6 6M3.5 14v7h17v-7" />,
  down2: <path d="M12 3v12.500M6 9.500l6 6 6-6M3.5 15v6h17v-6" />,
  print: <path d="M7 8V2.500h10V8M7 17.500H2.500V8h19v9.500H17M7 14h10v7.500H7Z" />,
  meet: (
    <>
      <path d="M12 1.500v6M12 22.500v-6M1.5 12h6M22.5 12h-6" />
      <path d="M9.5 5 12 7.6 14.5 5M9.5 19l2.5-2.6 2.5 2.600M5 9.5 7.6 12 5 14.500M19 9.5 16.4 12l2.6 2.5" />
      <circle cx="12" cy="12" r="1.6" fill="currentColor" stroke="none" />
    </>
  ),
  sun: (
    <>
      <circle cx="12" cy="12" r="4.3" />
      <path d="M12 1.500v3M12 19.500v3M1.5 12h3M19.5 12h3M4.6 4.600l2.1 2.100M17.3 17.300l2.1 2.100M4.6 19.400l2.1-2.100M17.3 6.700l2.1-2.1" />
    </>
  ),
  drop: <path d="M12 2c4.6 5.2 7 8.8 7 12.200a7 7 0 0 1-14 0C5 10.8 7.4 7.2 12 2Z" />,
  wheel: (
    <>
      <circle cx="12" cy="12" r="9.3" />
      <path d="M12 12 12 2.700M12 12l8.8-2.700M12 12l5.3 7.600M12 12l-5.6 7.400M12 12 3.1 9.3" />
    </>
  ),
  spray: <path d="M7 10h8v12H7ZM9 10V6h4v4M9 6V3h6.500M17.5 2l3-1M17.5 3.600h4M17.5 5l3 1.2" />,
  undo: <path d="M9 3.5 3.5 9 9 14.500M3.5 9h10.500a6.5 6.5 0 0 1 0 13H9" />,
  other: (
    <>
      <path d="M20.5 3v6h-6M3.5 21v-6h6" />
      <path d="M20 9A8.5 8.5 0 0 0 4.5 8M4 15a8.5 8.5 0 0 0 15.5 1" />
    </>
  ),
  map: <path d="M2.5 6 9 3l6 3 6.5-3v15L15 21l-6-3-6.5 3ZM9 3v15M15 6v15" />,
  info: (
    <>
      <circle cx="12" cy="12" r="9.3" />
      <path d="M12 10.500V17M12 6.500v2.3" strokeWidth="2.6" />
    </>
  ),
  warn: <path d="M12 2.5 22.5 21h-21ZM12 9v6M12 16.800v2.3" />,
  lasso: (
    <>
      <path d="M4 14C2 9 5 3.5 12 3.500S22.5 7 21 11s-8 6-12.5 4.5" />
      <circle cx="7" cy="16" r="2.6" />
      <path d="M6.5 18.500c.5 2-.5 3.5-2.5 4" />
    </>
  ),
  pick: <path d="M5 2.5 19 12l-6.5 1.300L9.5 20Z" />,
  water: <path d="M7.5 7h9l1 15h-11ZM9 7V2.500h6V7M7 13h10" />,
  house: <path d="M3 11 12 3.5 21 11M5.5 9.500V21h13V9.500M10 21v-6h4v6" />,
  eye: (
    <>
      <path d="M1.5 12C4 7.5 7.5 5.2 12 5.200s8 2.3 10.5 6.800C20 16.5 16.5 18.8 12 18.800S4 16.5 1.5 12Z" />
      <circle cx="12" cy="12" r="3.4" />
    </>
  ),
  heap: <path d="M2 20.500h20M4 17l7-9M8.5 18 20 11M6 11l9 7M12 18l6-9M3.5 14.500l13 3" />,
  edit: <path d="M4 20l1-4.500L16.5 4l3.5 3.500L8.5 19Z" />,
}

export type IconName = keyof typeof iconShapes
