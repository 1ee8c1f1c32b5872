/** A command as the backend takes it: a function's name and its named arguments. */

import { type Command, isFromOutside } from '@/lib/events/commands'

export function wireOf(command: Command): { name: string; values: Record<string, unknown> } {
  const { name, id, orchardId, personId, args } = command
  const whose = isFromOutside(name)
    ? { p_command: id }
    : { p_orchard: orchardId, p_command: id, p_person: personId }
  const named = Object.entries(args).map(([key, value]) => [`p_${snake(key)}`, value])
  return { name, values: { ...whose, ...Object.fromEntries(named) } }
}

function snake(camel: string): string {
  return camel.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`)
}
