/** `npm run bench`: every figure side by side in one run, with the machine's name. Build first. */

import { mkdtempSync, rmSync } from 'node:fs'
import { cpus, hostname, tmpdir, totalmem } from 'node:os'
import { join } from 'node:path'

import { backendAt } from '../../supabase/seed/public-client'
import { benchHost } from './bench-host'
import { benchBringIn } from './bring-in'
import { benchClaims, benchWhatHttpAdds } from './claims'
import { benchCommitToPhone, benchJoining, benchSheet } from './crowd'
import { benchDay } from './day'
import { print } from './figures'
import { benchFirstScreen } from './first-screen'
import { benchJoins } from './joins'
import { layoutFigures } from './layout'
import { benchLimbs } from './limbs'
import { benchMap, mapFigures } from './map'
import { memoryFigures } from './memory'
import { benchOpenness } from './openness'
import { foundOrchard, joinCode, readyPeople } from './orchard'
import { Phone } from './phone'
import { benchPlanning } from './planning'

const folder = mkdtempSync(join(tmpdir(), 'rowcall-bench-'))
console.log(
  `${hostname()}: ${cpus().length} × ${cpus()[0]?.model}, ${(totalmem() / 1e9).toFixed(0)} GB, Node ${process.version}`
)
try {
  const { host, code, mostAtStart } = await benchHost(folder)
  try {
    print('Memory', memoryFigures(host.processId, mostAtStart))
    const anonKey = (await backendAt(host.address)).anonKey ?? ''
    const orchard = await foundOrchard(await Phone.signUp(host.address, anonKey), code, 10_000)
    const people = await readyPeople(orchard, 50)
    print('Claims', await benchClaims(people))
    const { figures, phones } = await benchJoining(orchard)
    print('Joining', figures)
    print('Broadcast', await benchCommitToPhone(phones, people))
    await finishMany(people, 4000)
    print('Sheet and snapshot', await benchSheet(orchard.manager))
    print('First screen', await benchFirstScreen(`${host.address}/join#${await joinCode(orchard)}`))
  } finally {
    await host.stop()
  }
  print('What HTTP adds', await benchWhatHttpAdds(join(folder, 'second')))
  print('Bringing in and out', await benchBringIn(join(folder, 'in-and-out')))
  print('Limbs', benchLimbs())
  print('Planning ahead', benchPlanning())
  print('Lay out a block', layoutFigures())
  print('Map', mapFigures(await benchMap()))
  print('Disease', await benchJoins())
  print('Openness', await benchOpenness())
  print('A day of forty', await benchDay(join(folder, 'day')))
} finally {
  rmSync(folder, { recursive: true, force: true })
}

/** A day's work: fifty people finish trees in their own hundreds. */
async function finishMany(people: readonly Phone[], trees: number): Promise<void> {
  const each = Math.floor(trees / people.length)
  await Promise.all(
    people.map(async (person, index) => {
      for (let done = 0; done < each; done++) {
        const tree = 1 + index * 200 + done
        const { id } = await person.must('claim_tree', { p_tree: tree })
        await person.must('finish_tree', { p_tree: tree, p_claim: id })
      }
    })
  )
}
