'use client'

import { useState } from 'react'

import { useLeadWords } from '../crew/use-lead-words'
import { useTagOf } from '../sync/use-refusal-words'
import { TreeByTag } from '../tree/TreeByTag'
import { Button } from '../ui/Button'
import { Tag } from '../ui/Tag'

type AtWhichTreeProps = { tree: number | null; onTree: (tree: number | null) => void }

/** The tree where it happened, if it was at one; found by what its tag says. */
export function AtWhichTree({ tree, onTree }: AtWhichTreeProps) {
  const { calls: text } = useLeadWords()
  const tagOf = useTagOf()
  const [isLooking, setLooking] = useState(false)
  if (tree !== null)
    return (
      <div className="row">
        <span className="grow">
          {text.atTree} <Tag>{tagOf(tree)}</Tag>
        </span>
        <Button onPress={() => onTree(null)}>{text.noTree}</Button>
      </div>
    )
  return (
    <>
      <Button expanded={isLooking} onPress={() => setLooking(!isLooking)}>
        {text.atTree}
      </Button>
      {isLooking && <TreeByTag near={null} onFound={onTree} />}
    </>
  )
}
