import { joinClasses } from './join-classes'

type FaceProps = {
  name: string
  /** `ink` asked for help, `free` has no tree, `call` is meant by the next step. */
  kind?: 'plain' | 'ink' | 'call' | 'free'
}

/** A person: initials in a disc. Silent, since the name stands beside it. */
export function Face({ name, kind = 'plain' }: FaceProps) {
  return (
    <span className={joinClasses('face', kind !== 'plain' && `is-${kind}`)} aria-hidden>
      {initialsOf(name)}
    </span>
  )
}

/** First letters of the first and the last word; of one word, its first two letters. */
export function initialsOf(name: string): string {
  const words = name.trim().split(/\s+/)
  const first = words[0] ?? ''
  const last = words.at(-1) ?? ''
  const letters =
    words.length > 1 ? [...first].slice(0, 1).concat([...last].slice(0, 1)) : [...first].slice(0, 2)
  return letters.join('').toUpperCase()
}
