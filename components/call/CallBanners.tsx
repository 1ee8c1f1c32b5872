'use client'

import { callsToMe, lostPersonCalls, myCalls, useNow, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { Banner } from '../layout/Banner'
import { useWords } from '../layout/Words'
import { useNameOf, useTagOf } from '../sync/use-refusal-words'
import { ButtonLink } from '../ui/ButtonLink'
import { useCallTitle } from './call-title'
import { useMyCallWords } from './my-call-words'

/** On a phone screen: who calls this lead, what became of my call, who is looked for. */
export function CallBanners({ hideMine }: { hideMine: boolean }) {
  return (
    <>
      <CallsToMe />
      {!hideMine && <Mine />}
      <LookedFor />
    </>
  )
}

function CallsToMe() {
  const { call: text } = useWords()
  const titleOf = useCallTitle()
  const tagOf = useTagOf()
  const now = useNow(5_000)
  const first = useSelect((view) => (now === null ? undefined : callsToMe(view, now)[0]))
  if (first === undefined) return null
  const where = first.tree === null ? '' : ` · ${tagOf(first.tree)}`
  return (
    <Banner
      tone="ink"
      icon="call"
      action={<ButtonLink href={routes.calls()}>{text.banner.see}</ButtonLink>}
    >
      {titleOf(first)}
      {where}
    </Banner>
  )
}

function Mine() {
  const { banner } = useWords().call
  const first = useSelect((view) => myCalls(view)[0])
  if (first === undefined) return null
  return (
    <Banner
      tone="call"
      icon="call"
      action={<ButtonLink href={routes.callLead()}>{banner.see}</ButtonLink>}
    >
      <StateOfMine />
    </Banner>
  )
}

function StateOfMine() {
  const first = useSelect((view) => myCalls(view)[0])
  const say = useMyCallWords()
  return first === undefined ? null : say(first).title
}

/** Everybody may have seen them. Leads have it as a call, with what they can do. */
function LookedFor() {
  const { banner } = useWords().call
  const nameOf = useNameOf()
  const tagOf = useTagOf()
  const me = useSelect((view) => view.me?.personId)
  const isLead = useSelect((view) => view.state?.me.role !== 'volunteer')
  const lost = useSelect(lostPersonCalls)
  if (isLead) return null
  return lost.map(({ id, calledBy, subject, tree }) => (
    <Banner key={id} tone="ink" icon="person">
      {subject === me
        ? banner.forYou(nameOf(calledBy))
        : [
            banner.looking(nameOf(calledBy), subject === null ? banner.somebody : nameOf(subject)),
            ...(tree === null ? [] : [banner.lastAt(tagOf(tree))]),
            banner.seen,
          ].join(' ')}
    </Banner>
  ))
}
