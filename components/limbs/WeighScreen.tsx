'use client'

import { isLeadView, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { HelperScreen } from '../cuts/HelperScreen'
import { useWords } from '../layout/Words'
import { NoSuchTree } from '../tree/NoSuchTree'
import { useTree } from '../tree/use-tree'
import { ButtonLink } from '../ui/ButtonLink'
import { Facts } from '../ui/Facts'
import { Note } from '../ui/Note'
import './limbs.css'
import { WeighForm } from './WeighForm'

/** What a limb weighs, for leads; a volunteer learns whose work it is, and what never to do. */
export function WeighScreen({ no }: { no: number | null }) {
  const facts = useTree(no)
  const { weigh: text } = useWords()
  const isLead = useSelect(isLeadView)
  if (!facts) return <NoSuchTree />
  const { tree } = facts
  return (
    <HelperScreen
      facts={facts}
      isCalling
      step={
        isLead ? null : (
          <ButtonLink kind="call" href={routes.callLead()}>
            {text.call}
          </ButtonLink>
        )
      }
    >
      <h1>{isLead ? text.title : text.leads}</h1>
      {isLead ? <WeighForm tree={tree} /> : <Note icon="people">{text.helper}</Note>}
      <Facts
        facts={[
          { icon: 'ladder', text: text.cautions.ladder },
          { icon: 'warn', text: text.cautions.falls },
          { icon: 'people', text: text.cautions.below },
          { icon: 'info', text: text.cautions.decides },
        ]}
      />
      <ButtonLink wide icon="flag" href={routes.flagTree(tree.no, 'limb')}>
        {text.flag}
      </ButtonLink>
    </HelperScreen>
  )
}
