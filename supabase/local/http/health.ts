/** Whether the database answers. */
import type { Engine } from '../engine/engine'
import type { Answer } from './answers'

const patienceMs = 3_000

export async function health(engine: Engine): Promise<Answer> {
  const uptimeSeconds = Math.round(process.uptime())
  const isAnswering = await Promise.race([answers(engine), after(patienceMs)])
  return isAnswering
    ? { status: 200, body: { status: 'ok', engine: engine.name, uptimeSeconds } }
    : { status: 503, body: { status: 'no database', engine: engine.name, uptimeSeconds } }
}

async function answers(engine: Engine): Promise<boolean> {
  try {
    await engine.query('select 1')
    return true
  } catch {
    return false
  }
}

function after(delayMs: number): Promise<false> {
  return new Promise((resolve) => setTimeout(() => resolve(false), delayMs).unref())
}
