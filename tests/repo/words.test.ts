import { expect, test } from 'vitest'

import { filesOfRepository, textOf } from './files'

const binary = /\.(?:png|woff2|ico|jpg)$/
const texts = filesOfRepository().filter((path) => !binary.test(path))
const isTest = (path: string) => path.startsWith('tests/') || path.startsWith('e2e/')
const code = texts.filter((path) => /\.(?:ts|tsx|mjs|css|sql)$/.test(path))

/** Longer than a file is to be, each with its reason. */
const longFiles: Record<string, string> = {
  'supabase/schema.sql': 'generated',
}
const mostLines = 250
/** A test is a table of cases: it ends where its subject ends. */
const mostLinesOfTest = 520

test('no file says where on somebody’s machine it was written', () => {
  const place = /(?<![\w.)}\]*-])\/(?:work|tmp|home|Users|root|mnt)\//
  expect(
    linesWith(
      place,
      texts.filter((path) => !isTest(path))
    )
  ).toEqual([])
})

test('no file names the host that packages came from', () => {
  const host = /"resolve[d]":|\bregistry\s*=|https?:\/\/[\w.-]*(?:registry|artifact|mirror)/i
  expect(linesWith(host, texts)).toEqual([])
})

test('no file is longer than one reads at once', () => {
  const long = code
    .filter((path) => !Object.hasOwn(longFiles, path))
    .map((path) => ({ path, lines: textOf(path).split('\n').length - 1 }))
    .filter(({ path, lines }) => lines > (isTest(path) ? mostLinesOfTest : mostLines))
  expect(long).toEqual([])
})

test('every file that may be long is long', () => {
  const short = Object.keys(longFiles).filter(
    (path) => textOf(path).split('\n').length <= mostLines
  )
  expect(short).toEqual([])
})

test('nothing is left for later in a comment', () => {
  expect(linesWith(/\b(?:TO[D]O|FIX[M]E|X{3})\b/, texts)).toEqual([])
})

test('no test is left out, and none keeps the others from running', () => {
  const left = /\b(?:test|it|describe)(?:\.\w+)*\.(?:only|skip|fixme|todo)\b/
  expect(linesWith(left, code)).toEqual([])
})

function linesWith(pattern: RegExp, paths: readonly string[]): string[] {
  return paths.flatMap((path) =>
    textOf(path)
      .split('\n')
      .flatMap((line, at) => (pattern.test(line) ? [`${path}:${at + 1} ${line.trim()}`] : []))
  )
}
