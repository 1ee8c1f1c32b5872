/** English words that a Spanish screen must not show: those of our messages that no Spanish message has. */

import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

import type { Page } from '@playwright/test'

import { personNames } from './orchard'
import { blockName, orchardName } from './things'

/** What people and trees are called is the same in every language. */
const names = [orchardName, blockName, 'Rowcall', ...personNames, ...personNames.map(initialsOf)]

/** Addresses are for machines. Time zones are called after English names of cities, and a regulation by its own, everywhere. */
const noWords = /https?:\/\/\S+|^[A-Z]\w+\/[\w/ -]+$|Cal\. Code Regs\. Title \d+/g

/** What a person sees or hears of the page: text, labels, hints, values, the title. */
export async function englishOn(page: Page): Promise<string[]> {
  const texts = await page.evaluate(readablePage)
  return [...new Set(texts.flatMap((text) => englishIn(text)))]
}

/** `word: the text it stands in`, for a text that should have none. */
function englishIn(text: string): string[] {
  const found = wordsIn(text.replace(noWords, ' ')).filter((word) => englishOnly().has(word))
  return found.map((word) => `${word}: ${text.trim().replace(/\s+/g, ' ').slice(0, 80)}`)
}

let known: ReadonlySet<string> | null = null

function englishOnly(): ReadonlySet<string> {
  if (known) return known
  const both = new Set([...messageWords('es'), ...names.map((name) => name.toLowerCase())])
  known = new Set([...messageWords('en')].filter((word) => !both.has(word)))
  return known
}

/** All words of all messages, also of those that are put together from parts. */
function messageWords(language: 'en' | 'es'): Set<string> {
  const folder = fileURLToPath(new URL(`../../lib/text/${language}/`, import.meta.url))
  const sources = readdirSync(folder).map((file) => readFileSync(`${folder}${file}`, 'utf8'))
  return new Set(sources.flatMap(quoted).flatMap(wordsIn))
}

function quoted(source: string): string[] {
  const withoutComments = source.replace(/\/\*[\s\S]*?\*\/|^\s*\/\/.*$|^import .*$/gm, '')
  const strings = withoutComments.match(/'(?:\\.|[^'\\\n])*'|"[^"\n]*"|`[^`]*`/g) ?? []
  return strings.map((text) => text.replace(/\$\{[^}]*\}/g, ' '))
}

function initialsOf(name: string): string {
  return name.slice(0, 2)
}

function wordsIn(text: string): string[] {
  return (text.toLowerCase().match(/\p{L}[\p{L}’']*/gu) ?? []).map((word) =>
    word.replace(/[’']+$/, '')
  )
}

/** Runs in the page. What says that it is in another language, as the names of languages do, is left out. */
function readablePage(): string[] {
  const isSpanish = (element: Element | null) =>
    element?.closest<HTMLElement>('[lang]')?.lang !== 'en'
  const texts = [document.title]
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const parent = node.parentElement
    if (parent && !parent.closest('script, style, template') && isSpanish(parent))
      texts.push(node.textContent ?? '')
  }
  for (const element of document.body.querySelectorAll('*')) {
    if (!isSpanish(element)) continue
    for (const name of ['aria-label', 'aria-description', 'title', 'placeholder', 'alt'])
      texts.push(element.getAttribute(name) ?? '')
  }
  return texts
}
