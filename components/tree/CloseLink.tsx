'use client'

import { useWords } from '../layout/Words'
import { Icon } from '../ui/Icon'

/** Back to where one was; what was entered stays as a draft. */
export function CloseLink({ href }: { href: string }) {
  const { common } = useWords()
  return (
    <a className="net" href={href}>
      <Icon name="cross" size={18} />
      {common.close}
    </a>
  )
}
