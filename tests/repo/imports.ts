/** What a file imports, in whatever way it is written. */

import { dirname, join } from 'node:path'

/** `ours`: a path from the root, without ending. `npm`: a package's name, `node` for what Node.js brings. */
export type Import = { ours: string } | { npm: string } | { unreadable: string }

const quoted = String.raw`(['"])([^'"\n]+)\1`
/** `import … from '…'`, `export … from '…'`, `import '…'`, `import('…')`, `require('…')`, `@import '…'` */
const written = new RegExp(
  String.raw`(?:\bfrom|(?<!-)\bimport|\b(?:import|require)\s*\()\s*${quoted}`,
  'g'
)
/** `import(` with anything but a string, which nobody can follow. (`${` is a program written for a thread.) */
const computed = /\bimport\s*\((?!\s*['"]|\$\{)([^)]*)/g

export function importsOf(path: string, text: string): Import[] {
  const code = withoutComments(text)
  return [
    ...[...code.matchAll(written)].map(([, , source = '']) => importOf(path, source)),
    ...[...code.matchAll(computed)].map(([, source = '']) => ({ unreadable: source })),
  ]
}

function importOf(path: string, source: string): Import {
  if (source.startsWith('@/')) return { ours: bare(source.slice(2)) }
  if (source.startsWith('.')) return { ours: bare(join(dirname(path), source)) }
  if (source.startsWith('node:')) return { npm: 'node' }
  const parts = source.split('/')
  return { npm: parts.slice(0, source.startsWith('@') ? 2 : 1).join('/') }
}

function bare(path: string): string {
  return path.replace(/\.(?:ts|tsx|mjs|css)$/, '')
}

/** Whole lines only: a string may hold two slashes. */
function withoutComments(text: string): string {
  return text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/^\s*\/\/.*$/gm, '')
}
