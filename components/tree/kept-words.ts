/** What somebody did, by name: as it stands in the list of what is not sent yet. */

import type { Command } from '@/lib/events/commands'
import type { Messages } from '@/lib/text/messages'
import { callIcons } from '../call/call-kinds'
import type { IconName } from '../ui/Icon'
import { signWords } from './flag-words'

type KeptNaming = { tag: (tree: number) => string; tool: (tool: number) => string }

export type KeptWords = { icon: IconName; title: string; detail: string | null }

export function keptWords(words: Messages, command: Command, { tag, tool }: KeptNaming): KeptWords {
  const { kind, photoOf, gaveBack } = words.unsent
  switch (command.name) {
    case 'claim_tree':
      return plain('clock', kind.claim(tag(command.args.tree)))
    case 'finish_tree':
      return plain('check', kind.finish(tag(command.args.tree)))
    case 'release_tree':
      return command.args.share === null
        ? plain('undo', gaveBack(tag(command.args.tree)))
        : plain('clock', kind.halfDone(tag(command.args.tree)))
    case 'flag_tree': {
      const { tree, sign } = command.args
      const isDisease = command.args.kind === 'disease'
      return {
        icon: isDisease ? 'drop' : 'warn',
        title: (isDisease ? kind.flagDisease : kind.flagHazard)(tag(tree)),
        detail: signWords(words, command.args.kind, sign),
      }
    }
    case 'call_for_help':
      return plain(callIcons[command.args.kind], kind.call(words.call.kinds[command.args.kind]))
    case 'answer_call':
      return plain('call', kind.answerCall)
    case 'end_call':
      return plain('call', kind.endCall)
    case 'add_photo':
      return plain(
        'camera',
        command.args.tree === null ? kind.photo : photoOf(tag(command.args.tree))
      )
    case 'finish_brush':
    case 'mark_brush':
      return plain('check', kind.brush)
    case 'look_over':
      return plain('eye', kind.lookOver(tag(command.args.tree)))
    case 'arrive':
      return plain('person', kind.arrive)
    case 'leave':
      return plain('house', kind.leave)
    case 'start_break':
      return plain('clock', kind.breakBegan)
    case 'end_break':
      return plain('clock', kind.breakEnded)
    case 'sign_briefing':
      return plain('edit', kind.sign)
    case 'check_equipment':
      return plain('helmet', kind.equipment)
    case 'take_tool':
    case 'return_tool':
    case 'fail_tool':
    case 'mend_tool':
      return plain('pruner', kind.tool(tool(command.args.tool)))
    case 'clean_tool':
      return plain('spray', kind.tool(command.args.tools.map(tool).join(', ')))
    default:
      return plain('kept', kind.other)
  }
}

/** What the person wrote in it, word for word; null when nothing was written. */
export function writtenIn(command: Command): string | null {
  return 'note' in command.args && typeof command.args.note === 'string' ? command.args.note : null
}

function plain(icon: IconName, title: string): KeptWords {
  return { icon, title, detail: null }
}
