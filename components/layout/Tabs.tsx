import { Count } from '../ui/Count'
import { Icon } from '../ui/Icon'

type Tab = { href: string; word: string; count?: number; isHere: boolean }

type TabsProps = {
  label: string
  tabs: readonly Tab[]
}

/** Ways between the screens of a lead or manager; on a phone behind one button, or they would take a third of it. */
export function Tabs({ label, tabs }: TabsProps) {
  const here = tabs.find(({ isHere }) => isHere)
  const elsewhere = tabs.reduce((sum, { count, isHere }) => sum + (isHere ? 0 : (count ?? 0)), 0)
  return (
    <nav className="tabs" aria-label={label}>
      <div className="tabs-row">
        <Ways tabs={tabs} />
      </div>
      <details className="tabs-fold">
        <summary>
          <Icon name="down" size={18} />
          {here?.word ?? label}
          {elsewhere > 0 && <Count>{elsewhere}</Count>}
        </summary>
        <div className="tabs-grid">
          <Ways tabs={tabs} />
        </div>
      </details>
    </nav>
  )
}

function Ways({ tabs }: Pick<TabsProps, 'tabs'>) {
  return tabs.map(({ href, word, count, isHere }) => (
    <a key={href} href={href} aria-current={isHere ? 'page' : undefined}>
      {word}
      {count !== undefined && count > 0 && <Count>{count}</Count>}
    </a>
  ))
}
