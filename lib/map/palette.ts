/** The map's colours, read from the page's tokens, so that light and dark have one source. */

const tokens = {
  ground: '--map',
  block: '--map-block',
  alley: '--map-alley',
  canopy: '--map-canopy',
  text: '--map-text',
  paper: '--paper',
  ink: '--ink',
  onInk: '--on-ink',
  called: '--called',
  onCalled: '--on-called',
  unpruned: '--bare',
  in_progress: '--work',
  done: '--map-done',
  disease: '--sick',
  arborist: '--arb',
  font: '--font',
} as const

export type Palette = { [Name in keyof typeof tokens]: string }

export function paletteFrom(read: (token: string) => string): Palette {
  const entries = Object.entries(tokens).map(([name, token]) => [name, read(token).trim()])
  // The keys are those of the table above.
  return Object.fromEntries(entries) as Palette
}

/** As the page has it at this element. */
export function paletteAt(element: Element): Palette {
  const style = getComputedStyle(element)
  return paletteFrom((token) => style.getPropertyValue(token))
}
