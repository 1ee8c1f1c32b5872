'use client'

import { darkness } from '@/lib/events/dark'
import { type AuditTrail, useSelect } from '@/lib/hooks'
import { speciesWords } from '@/lib/text/species'
import { useFormat } from '../layout/use-format'
import { useLeadWords, useWords } from '../layout/Words'
import { useTagOf } from '../sync/use-refusal-words'
import { signWords } from '../tree/flag-words'
import { type AuditEvent, auditDetail } from './audit-detail'
import { useDays } from './use-days'
import { useNamesWith } from './use-names-with'

export type AuditSaid = { sentence: string; tapped: string | null }

/** Says an event in a sentence, and who tapped where that is not who it is about. */
export function useAuditSentence(read: AuditTrail): (event: AuditEvent) => AuditSaid {
  const words = useWords()
  const { audit, shift } = useLeadWords()
  const format = useFormat()
  const { day } = useDays()
  const tree = useTagOf()
  const person = useNamesWith(read.names)
  const blocks = useSelect((view) => view.ground.blocks)
  const tools = useSelect((view) => view.state?.tools)
  const { role, skill, offReason } = words.things

  const naming = {
    person,
    tree,
    day,
    block: (no: number) => blocks.get(no)?.code ?? String(no),
    tool: (no: number) => tools?.[no]?.label ?? String(no),
    minutes: (seconds: number) => format.duration(seconds / 60),
    share: (percent: number) => format.share(percent / 100),
    metres: format.keepAway,
    list: format.list,
    round: (kind: string, season: number) =>
      shift.roundIs(wordFor(shift.kinds, kind) ?? kind, String(season)),
    role: (code: string) => wordFor(role, code),
    skill: (code: string) => wordFor(skill, code),
    inviteKind: (code: string) => wordFor(audit.inviteKinds, code),
    callKind: (code: string) => wordFor(words.call.kinds, code),
    offWhat: (code: string) => {
      if (code === darkness) return audit.inTheDark
      return code === 'ladder' ? words.things.tool.ladder : speciesWords(words, code).many
    },
    offReason: (code: string) => wordFor(offReason, code),
    reopenReason: (code: string) => foundWord(words.lookedOver.reasons, code),
    sign: (kind: string, sign: string) =>
      signWords(words, kind === 'arborist' ? 'arborist' : 'disease', sign),
    setting: (field: string) => wordFor(audit.things, field),
  }

  return (event) => {
    const detail = auditDetail(event, read, naming)
    const say = Object.hasOwn(audit.sentence, event.kind)
      ? audit.sentence[event.kind as keyof typeof audit.sentence]
      : null
    const sentence = say ? say(detail) : audit.newer(detail.by, event.kind.replaceAll('_', ' '))
    const isSaid = event.byPersonId === event.personId || sentence.includes(detail.by)
    return { sentence, tapped: isSaid ? null : audit.tapped(detail.by) }
  }
}

function wordFor(dictionary: Record<string, string>, code: string): string | undefined {
  return Object.hasOwn(dictionary, code) ? dictionary[code] : undefined
}

function foundWord(
  dictionary: Record<string, { found: string }>,
  code: string
): string | undefined {
  return Object.hasOwn(dictionary, code) ? dictionary[code]?.found.toLowerCase() : undefined
}
