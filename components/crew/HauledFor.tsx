'use client'

import { brushOfRow, useSelect, useSend } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useRowWords } from '../brush/use-row-words'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useRowTag } from '../sync/use-row-tag'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { Tag } from '../ui/Tag'
import { AskedNote } from './AskedNote'
import type { OpenClaim } from './claims'
import { useAsk } from './use-ask'
import { useLeadWords } from './use-lead-words'

type HauledForProps = {
  id: string
  name: string
  claim: OpenClaim
  row: { block: number; row: number }
}

/** The row somebody hauls: all of it gone, or handed back as it is, for them. */
export function HauledFor({ id, name, claim, row }: HauledForProps) {
  const { brush, tree: words } = useWords()
  const { people: text, brushRows } = useLeadWords()
  const format = useFormat()
  const rowTag = useRowTag()
  const rowWords = useRowWords()
  const send = useSend()
  const { asked, ask } = useAsk()
  const open = useSelect((view) => brushOfRow(view, row.block, row.row)?.open ?? [])
  const finish = (trees: number[]) =>
    ask(send('finish_brush', { claim: claim.id, trees }, { personId: id }))
  return (
    <div className="stack">
      <p>
        <Tag>{rowTag(row)}</Tag> {brushRows.haulsRow(rowWords(row))},{' '}
        {text.atTreeSince(format.clock(new Date(claim.openedAt)))}
      </p>
      <AskedNote asked={asked} whose={name} />
      <div className="tree-buttons">
        {claim.people[id] === 'learner' ? (
          <Button onPress={() => ask(send('leave_tree', { claim: claim.id }, { personId: id }))}>
            {words.leaveTree}
          </Button>
        ) : (
          <>
            <Button icon="check" onPress={() => finish(open)}>
              {brush.finish}
            </Button>
            <Button icon="undo" onPress={() => finish([])}>
              {brushRows.handBack}
            </Button>
          </>
        )}
        <ButtonLink href={routes.brush()}>{brushRows.toRows}</ButtonLink>
      </div>
    </div>
  )
}
