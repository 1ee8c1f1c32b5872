import type { DoorMessages } from '@/lib/text/messages'
import { Icon, type IconName } from '../ui/Icon'
import { joinClasses } from '../ui/join-classes'

/** A way to another screen, or something to do here. */
export type Way = { href: string } | { onPress: () => void }

/** What is needed when something is wrong; what a person cannot use yet is left out. */
export type StripWays = {
  emergency?: Way
  callLead?: Way
  flag?: Way
  stopWork?: Way
}

type StripProps = {
  ways: StripWays
  text: DoorMessages['common']['strip']
}

const order: readonly { key: keyof StripWays; icon: IconName }[] = [
  { key: 'emergency', icon: 'aid' },
  { key: 'callLead', icon: 'call' },
  { key: 'flag', icon: 'flag' },
  { key: 'stopWork', icon: 'stop' },
]

/** The lowest thing on every phone screen: the same four, always in this order. */
export function Strip({ ways, text }: StripProps) {
  return (
    <nav className="wrong" aria-label={text.label}>
      {order.map(({ key, icon }) => {
        const way = ways[key]
        if (way === undefined) return null
        const className = joinClasses(key === 'stopWork' && 'is-stop')
        const face = (
          <>
            <Icon name={icon} size={26} />
            {text[key]}
          </>
        )
        return 'href' in way ? (
          <a key={key} className={className} href={way.href}>
            {face}
          </a>
        ) : (
          <button key={key} type="button" className={className} onClick={way.onPress}>
            {face}
          </button>
        )
      })}
    </nav>
  )
}
