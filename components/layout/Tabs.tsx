import { Count } from '../ui/Count'

type TabsProps = {
  label: string
  tabs: readonly { href: string; word: string; count?: number; isHere: boolean }[]
}

/** Ways between the screens of a lead or manager. */
export function Tabs({ label, tabs }: TabsProps) {
  return (
    <nav className="tabs" aria-label={label}>
      {tabs.map(({ href, word, count, isHere }) => (
        <a key={href} href={href} aria-current={isHere ? 'page' : undefined}>
          {word}
          {count !== undefined && count > 0 && <Count>{count}</Count>}
        </a>
      ))}
    </nav>
  )
}
