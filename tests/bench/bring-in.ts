/** What an orchard costs from 1,000 to 100,000 trees: a file read, brought in, taken out and brought in elsewhere. */

import { randomUUID } from 'node:crypto'
import { mkdirSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'

import { type ArchivePart, archiveText, readArchive } from '@/lib/domain/orchard/archive'
import { planInventory } from '@/lib/domain/orchard/inventory'
import { inventoryArgs } from '@/lib/domain/orchard/inventory-args'
import { tableOf } from '@/lib/domain/orchard/inventory-table'
import { matchColumns } from '@/lib/domain/orchard/match-columns'

import { type Host, startHost } from '../../e2e/support/host'
import { makeSetUpCodes } from '../../e2e/support/set-up-codes'
import { backendAt } from '../../supabase/seed/public-client'
import { atMost, type Figure, MB, ms, noted } from './figures'
import { Phone } from './phone'

const sizes = [1_000, 10_000, 100_000] as const

type Place = { host: Host; codes: string[]; anonKey: string }

export async function benchBringIn(folder: string): Promise<Figure[]> {
  const here = await placeIn(join(folder, 'here'))
  const there = await placeIn(join(folder, 'there'))
  try {
    const figures: Figure[] = []
    for (const size of sizes) figures.push(...(await benchOf(size, here, there)))
    return figures
  } finally {
    await here.host.stop()
    await there.host.stop()
  }
}

async function benchOf(size: number, here: Place, there: Place): Promise<Figure[]> {
  const trees = `${size.toLocaleString('en')} trees`
  const file = spreadsheet(size)
  const manager = await newManager(here)

  const started = performance.now()
  const table = tableOf(file)
  if ('problems' in table) throw new Error(JSON.stringify(table.problems))
  const matching = matchColumns(table, 'metric')
  const plan = planInventory({ table, matching, thisYear: 2026 })
  if (plan.problems.length > 0) throw new Error(JSON.stringify(plan.problems[0]))
  const readMs = performance.now() - started
  const { blocks, cultivars, trees: rows } = inventoryArgs(plan)
  await manager.must('bring_in_trees', { p_blocks: blocks, p_cultivars: cultivars, p_trees: rows })
  const inMs = performance.now() - started

  const beforeOut = performance.now()
  const parts = await takeOut(manager)
  const said = { orchard: manager.orchard, name: 'Bench', at: '2026-11-24T10:00:00.000Z' }
  const text = archiveText(said, parts)
  const outMs = performance.now() - beforeOut

  const beforeBack = performance.now()
  await bringBack(text, manager, there)
  const backMs = performance.now() - beforeBack
  const whole = `${trees}: file to trees in the orchard, one event`
  return [
    noted(`${trees}: file read and checked (${MB(file.length)})`, ms(readMs)),
    size === 10_000 ? atMost(whole, inMs, 5_000, ms) : noted(whole, ms(inMs)),
    noted(`${trees}: archive out (${MB(gzipSync(text).length)} packed)`, ms(outMs)),
    noted(`${trees}: archive into another host`, ms(backMs)),
  ]
}

/** As a spreadsheet program in Spain saves it. */
function spreadsheet(size: number): Uint8Array {
  const heads =
    'Bloque;Fila;Árbol;Especie;Variedad;Plantado;Diámetro (cm);Altura (m);Latitud;Longitud'
  const lines = Array.from({ length: size }, (_, at) => {
    const [block, row, place] = [Math.floor(at / 5000), Math.floor((at % 5000) / 50), at % 50]
    const lat = (41 + block * 0.01 + row * 0.00005 + Math.sin(at) * 0.000002).toFixed(7)
    const lon = (-2 + place * 0.00006 + Math.cos(at) * 0.000002).toFixed(7)
    const cells = [`Ladera ${block}`, row + 1, place + 1, 'Ciruelo', 'Stanley', 1990 + (at % 30)]
    const measures = [
      `${10 + (at % 15)},5`,
      `2,${at % 10}`,
      lat.replace('.', ','),
      lon.replace('.', ','),
    ]
    return [...cells, ...measures].join(';')
  })
  return new TextEncoder().encode([heads, ...lines].join('\r\n'))
}

async function takeOut(manager: Phone): Promise<ArchivePart[]> {
  const parts: ArchivePart[] = []
  let next: { table: string; from: number } | null = { table: 'orchards', from: 0 }
  while (next) {
    const values = { p_orchard: manager.orchard, p_table: next.table, p_from: next.from }
    const { status, body } = await manager.call('take_out', values)
    if (status !== 200) throw new Error(`take_out answered ${status} ${JSON.stringify(body)}`)
    // The app's own client checks this shape.
    const taken = body as ArchivePart & { next: { table: string; from: number } | null }
    parts.push(taken)
    next = taken.next
  }
  return parts
}

async function bringBack(text: string, manager: Phone, { host, codes, anonKey }: Place) {
  const read = readArchive(text)
  if (read.state === 'refused') throw new Error(read.why)
  const newcomer = await Phone.signUp(host.address, anonKey)
  const [code, archive] = [codes.pop() ?? '', randomUUID()]
  for (const [part, { table, columns, rows }] of read.parts.entries()) {
    const whose = { p_code: code, p_archive: archive, p_part: part }
    const values = { ...whose, p_table: table, p_columns: columns, p_rows: `[${rows.join(',')}]` }
    await newcomer.call('put_archive_part', values)
  }
  const { body } = await newcomer.call('bring_in_orchard', {
    p_code: code,
    p_command: archive,
    p_orchard: manager.orchard,
    p_parts: read.parts.length,
    p_person: manager.person,
  })
  if (body.person !== manager.person) throw new Error(JSON.stringify(body))
}

async function newManager({ host, codes, anonKey }: Place): Promise<Phone> {
  const stranger = await Phone.signUp(host.address, anonKey)
  const { body } = await stranger.call('create_orchard', {
    p_code: codes.pop() ?? '',
    p_command: randomUUID(),
    p_name: 'Bench',
    p_person_name: 'Mo',
    p_time_zone: 'Etc/UTC',
    p_language: 'es',
    p_units: 'metric',
  })
  return stranger.as(String(body.orchard), String(body.person))
}

async function placeIn(folder: string): Promise<Place> {
  mkdirSync(folder, { recursive: true })
  const dataFolder = join(folder, 'data')
  await makeSetUpCodes(dataFolder, join(folder, 'codes'))
  const host = await startHost({ dataFolder, logFile: join(folder, 'host.log') })
  const anonKey = (await backendAt(host.address)).anonKey ?? ''
  return { host, codes: readdirSync(join(folder, 'codes')), anonKey }
}
