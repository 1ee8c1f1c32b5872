'use client'

import { useState } from 'react'

import { useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { HistoryRead } from './HistoryRead'

/** The past of a tree, looked up when somebody asks for it. */
export function TreeHistory({ tree }: { tree: number }) {
  const { history: text } = useWords()
  const isManager = useSelect((view) => view.state?.me.role === 'manager')
  const [isOpen, setIsOpen] = useState(false)
  return (
    <section className="stack" aria-label={text.show}>
      <div className="row wrap">
        <Button icon="clock" expanded={isOpen} onPress={() => setIsOpen(!isOpen)}>
          {text.show}
        </Button>
        {isOpen && <ButtonLink href={routes.treeHistory(tree)}>{text.all}</ButtonLink>}
        {isOpen && isManager && (
          <ButtonLink href={routes.audit({ tree })}>{text.whoDidWhat}</ButtonLink>
        )}
      </div>
      {isOpen && <HistoryRead tree={tree} />}
    </section>
  )
}
