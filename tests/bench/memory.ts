/** Memory of the host: of its process now, and the most that it and its children took while starting. Linux only. */

import { readdirSync, readFileSync } from 'node:fs'

import { type Figure, MB, noted } from './figures'

/** Watches a process and its children until stopped; the most they took together. */
export function watchMemory(processId: () => number | undefined): () => number {
  let most = 0
  const timer = setInterval(() => {
    const id = processId()
    if (id !== undefined)
      most = Math.max(
        most,
        familyOf(id).reduce((sum, one) => sum + residentBytes(one), 0)
      )
  }, 50)
  return () => {
    clearInterval(timer)
    return most
  }
}

export function memoryFigures(idleOf: number, mostAtStart: number): Figure[] {
  if (process.platform !== 'linux') return [noted('memory', 'read on Linux only')]
  return [
    noted('memory of the host, most at first start', MB(mostAtStart)),
    noted('memory of the host, idle', MB(residentBytes(idleOf))),
  ]
}

function familyOf(id: number): number[] {
  if (process.platform !== 'linux') return []
  const children = readdirSync('/proc')
    .map(Number)
    .filter((other) => other > 0 && parentOf(other) === id)
  return [id, ...children]
}

const parentOf = (id: number) => fieldOf(id, 'PPid')
export const residentBytes = (id: number) => fieldOf(id, 'VmRSS') * 1024

function fieldOf(id: number, field: string): number {
  try {
    const status = readFileSync(`/proc/${id}/status`, 'utf8')
    return Number(new RegExp(`^${field}:\\s+(\\d+)`, 'm').exec(status)?.[1] ?? 0)
  } catch {
    return 0
  }
}
