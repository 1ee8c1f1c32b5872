'use client'

import { useState } from 'react'

import { type Invite, type Membership, useSelect } from '@/lib/hooks'
import { KnownHere } from './KnownHere'
import { LinkDevice } from './LinkDevice'
import { NameAndAge } from './NameAndAge'

/** A link that works: who opens it gives a name, is known already, or brings one more device. */
export function Invited({ code, invite }: { code: string; invite: Invite }) {
  const [isSomeoneElse, setIsSomeoneElse] = useState(false)
  const known = useSelect((view) => view.memberships.find((one) => isThere(one, invite)) ?? null)

  if (invite.kind === 'device' || invite.kind === 'recovery') {
    return <LinkDevice code={code} invite={invite} />
  }
  if (known !== null && invite.kind === 'join' && !isSomeoneElse) {
    return (
      <KnownHere
        code={code}
        invite={invite}
        name={known.personName}
        onSomeoneElse={() => setIsSomeoneElse(true)}
      />
    )
  }
  return <NameAndAge code={code} invite={invite} />
}

/** A link does not say the id of its orchard, so that it tells a stranger nothing. */
function isThere(known: Membership, invite: Invite): boolean {
  return known.orchardName === invite.orchardName && known.role === invite.role
}
