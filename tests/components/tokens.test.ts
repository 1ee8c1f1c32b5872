import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'

import { contrast } from './contrast'

const css = readFileSync('app/tokens.css', 'utf8')
const themes = { light: colours('light'), dark: colours('dark') }

/** Words on grounds that say something: 7:1, for glare and for tired eyes. */
const texts: [words: string, ground: string][] = [
  ['ink', 'paper'],
  ['ink', 'ground'],
  ['ink', 'sunk'],
  ['ink-2', 'paper'],
  ['ink-2', 'ground'],
  ['ink-2', 'sunk'],
  ['on-ink', 'ink'],
  ['on-called', 'called'],
  ['on-called', 'called-press'],
  ['on-stop', 'stop'],
  ['stop-ink', 'paper'],
  ['stop-ink', 'stop-wash'],
  ['done', 'paper'],
  ['work', 'paper'],
  ['sick', 'paper'],
  ['arb-ink', 'paper'],
  ['bare', 'paper'],
  ['map-text', 'map'],
  ['map-text', 'map-block'],
  ...['bare', 'called', 'stop', 'done', 'work', 'sick', 'arb'].map((wash): [string, string] => [
    'ink',
    `${wash}-wash`,
  ]),
]

/** Marks and edges that carry meaning: 3:1 (WCAG 2.2, 1.4.11). */
const marks: [mark: string, ground: string][] = [
  ['edge', 'paper'],
  ['edge', 'ground'],
  ['bare', 'map-canopy'],
  ['work', 'map-canopy'],
  ['done', 'map-canopy'],
  ['sick', 'map-canopy'],
  ['arb', 'map-canopy'],
  ['ink', 'map-canopy'],
  ['arb', 'paper'],
  ['arb', 'arb-wash'],
  ['stop-ink', 'paper'],
  ['paper', 'done'],
]

describe.each(Object.entries(themes))('in the %s theme', (_, colour) => {
  test.each(texts)('the words %s on %s stand out 7 to 1', (words, ground) => {
    expect(contrast(colour(words), colour(ground))).toBeGreaterThanOrEqual(7)
  })

  test.each(marks)('the mark or edge %s on %s stands out 3 to 1', (mark, ground) => {
    expect(contrast(colour(mark), colour(ground))).toBeGreaterThanOrEqual(3)
  })
})

test('the two themes name the same colours', () => {
  const names = (theme: string) =>
    [...block(theme).matchAll(/--([\w-]+): #/g)].map(([, name]) => name)
  expect(names('dark')).toEqual(names('light'))
})

test('contrast is computed as WCAG does: black on white is 21, a grey pair as published', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5)
  // WCAG 2.2, technique G18's often cited boundary grey on white.
  expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2)
})

function colours(theme: string): (name: string) => string {
  const values = new Map(
    [...block(theme).matchAll(/--([\w-]+): (#[0-9a-f]{6});/g)].map(([, name = '', value = '']) => [
      name,
      value,
    ])
  )
  return (name) => {
    const value = values.get(name)
    if (value === undefined) throw new Error(`tokens.css has no --${name} in ${theme}`)
    return value
  }
}

/** The first rule of a theme: the one with the colours. */
function block(theme: string): string {
  const found = new RegExp(`\\[data-theme="${theme}"\\] \\{([^}]*)\\}`).exec(css)?.[1]
  if (found === undefined) throw new Error(`tokens.css has no theme ${theme}`)
  return found
}
