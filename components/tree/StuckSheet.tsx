'use client'

import { useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useNameOf } from '../sync/use-refusal-words'
import { ButtonLink } from '../ui/ButtonLink'
import { Dialog } from '../ui/Dialog'

/** Not sure: who to ask by voice, and the ways to leave the tree as it should be left. */
export function StuckSheet({ tree, onClose }: { tree: number; onClose: () => void }) {
  const { breakLeave, common, tree: text } = useWords()
  const format = useFormat()
  const nameOf = useNameOf()
  const leads = useLeadsHere()
  return (
    <Dialog open kind="sheet" title={text.stuckTitle} closeLabel={common.close} onClose={onClose}>
      <div className="stack">
        {leads.length > 0 && <p>{text.askThem(format.list(leads.map(nameOf)))}</p>}
        <p>{text.askThemHow}</p>
        <ButtonLink wide icon="call" href={routes.callLead()}>
          {common.strip.callLead}
        </ButtonLink>
        <ButtonLink wide icon="flag" href={routes.flagTree(tree)}>
          {text.somethingWrong}
        </ButtonLink>
        <ButtonLink wide icon="undo" href={routes.halfDoneTree(tree)}>
          {text.leaveHalf}
        </ButtonLink>
        <ButtonLink wide icon="house" href={routes.breakOrLeave()}>
          {breakLeave.title}
        </ButtonLink>
      </div>
    </Dialog>
  )
}

/** Leads who are counted as here. */
export function useLeadsHere(): readonly string[] {
  return useSelect(({ state }) =>
    Object.keys(state?.attendance ?? {}).filter((id) => state?.people[id]?.role === 'lead')
  )
}
