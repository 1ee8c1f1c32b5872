import { joinClasses } from './join-classes'

type TagProps = {
  children: string
  /** In outline while the referee has not answered yet. */
  state?: 'sure' | 'asking'
}

/** The plate in small: a tree's name inside a line of text. */
export function Tag({ children, state = 'sure' }: TagProps) {
  return <span className={joinClasses('tag', state === 'asking' && 'is-line')}>{children}</span>
}
