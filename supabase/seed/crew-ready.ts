/** A simulated person gets ready: one thing after the other, as "before you start" lists them. */

import { claimOf, toolsOf } from '@/lib/events/look-ups'
import { missingOfPerson } from '@/lib/events/missing'

import type { Sim } from './crew-person'
import { mustSend } from './referee'

/** Null when nothing is missing. */
export async function getReady(sim: Sim): Promise<string | null> {
  const { phone, manager, random } = sim
  const { personId } = phone.seat
  const state = phone.state()
  const [first] = missingOfPerson(state, personId)
  if (!first) return null
  const tools = ownTools(sim)

  // In a hurry: a claim before one is ready. The referee lists all that is missing.
  const hurried = first.code !== 'holds_another' && random.percent(10) && sim.anyTree()
  if (hurried && claimOf(state, personId) === null) {
    await phone.ask('claim_tree', { tree: hurried })
    return `asked for tree ${hurried} before being ready`
  }
  switch (first.code) {
    case 'not_arrived':
      await phone.keep('arrive', {})
      return 'arrived'
    case 'on_break':
      await phone.keep('end_break', {})
      return 'came back from the break'
    case 'consent_missing':
      await phone.keep('give_consent', { textVersion: 1 })
      return 'consented'
    case 'briefing_not_given':
      await mustSend(manager.seat, 'give_briefing', { people: [personId] })
      return 'was briefed'
    case 'briefing_not_signed': {
      const version = Number(first.detail?.version)
      await phone.keep('sign_briefing', { version, language: 'en', how: 'heard' })
      return 'signed the briefing'
    }
    case 'equipment_not_checked': {
      const failedItems = random.percent(15) ? ['gloves'] : []
      await phone.keep('check_equipment', { failedItems })
      return failedItems.length > 0 ? 'has no gloves' : 'is equipped'
    }
    case 'no_tool_in_hand':
      for (const tool of tools) await phone.keep('take_tool', { tool, failedItems: [] })
      return 'took tools'
    case 'tool_not_clean':
      await phone.keep('clean_tool', { tools: toolsOf(state, [personId]) })
      return 'cleaned the tools'
    case 'stopped':
    case 'stop_not_answered':
      await phone.keep('answer_stop', { stop: String(first.detail?.stop) })
      return 'answered the stop'
    default:
      return `waits (${first.code})`
  }
}

function ownTools({ phone }: Sim): number[] {
  const { personId } = phone.seat
  return Object.entries(phone.state().tools).flatMap(([no, tool]) =>
    tool.ownedBy === personId && tool.fit && tool.heldBy === null ? [Number(no)] : []
  )
}
