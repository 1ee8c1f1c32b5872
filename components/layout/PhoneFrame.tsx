import type { ReactNode } from 'react'

import { Logo } from '../ui/Logo'

type PhoneFrameProps = {
  /** "Quillet Hill · Saturday", or the tag of the tree in hand. */
  who: ReactNode
  /** A tag at the top left takes the place of the logo. */
  hideLogo?: boolean
  /** The signal, or a way to close. */
  net?: ReactNode
  banners?: ReactNode
  bench?: ReactNode
  children: ReactNode
}

/** Every phone screen: top line, the middle that scrolls, and the bench at the thumbs. */
export function PhoneFrame(props: PhoneFrameProps) {
  const { who, hideLogo = false, net, banners, bench, children } = props
  return (
    <div className="phone">
      <header className="top">
        {!hideLogo && <Logo size={26} />}
        <span className="who">{who}</span>
        {net}
      </header>
      <div className="told">{banners}</div>
      <main className="main">{children}</main>
      {bench}
    </div>
  )
}
