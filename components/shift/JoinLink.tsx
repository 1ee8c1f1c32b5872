'use client'

import { useDraft, useRowcall } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { AskedNote } from '../crew/AskedNote'
import { LinkToShow } from '../crew/LinkToShow'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { Panel } from '../ui/Panel'

/** The link by which the crew joins. Kept on this device only, since nobody else ever knows the code. */
export function JoinLink({ shiftId }: { shiftId: string }) {
  const { shift: text, labels } = useLeadWords()
  const { makeInvite } = useRowcall()
  const code = useDraft<string | null>(`join-link|${shiftId}`, null)
  const { asked, ask } = useAsk()
  const make = async () => {
    const made = await makeInvite({ kind: 'join', shift: shiftId })
    await ask(Promise.resolve(made.sent), () => void code.writeNow(made.code))
  }
  return (
    <Panel title={text.joinLink}>
      <div className="stack">
        <p className="small">
          {text.joinLinkNote} {text.linkEnds}
        </p>
        {code.value !== null && (
          <>
            <LinkToShow path={routes.join(code.value)} title={text.joinLink} />
            <ButtonLink href={routes.poster(shiftId)}>{labels.poster}</ButtonLink>
          </>
        )}
        <AskedNote asked={asked} />
        {code.ready && (
          <Button onPress={make}>{code.value === null ? text.makeLink : text.newLink}</Button>
        )}
      </div>
    </Panel>
  )
}
