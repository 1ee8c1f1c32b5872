'use client'

import { useState } from 'react'

import { useSelect } from '@/lib/hooks'
import { Button } from '../ui/Button'
import { List } from '../ui/List'
import { AddTool } from './AddTool'
import { ShedTool } from './ShedTool'
import { toolsInOrder } from './tools-in-order'
import { useLeadWords } from './use-lead-words'

/** All tools: who has which, what is out of use; adding one. */
export function Shed() {
  const { people: text } = useLeadWords()
  const tools = useSelect(toolsInOrder)
  const [isAdding, setIsAdding] = useState(false)
  const out = tools.filter(({ heldBy }) => heldBy !== null).length
  return (
    <div className="shed">
      <div className="head">
        <h2>{text.shed}</h2>
        <span className="small">{text.shedCounts(out, tools.length)}</span>
      </div>
      <div className="shed-add">
        <Button icon="plus" wide onPress={() => setIsAdding(true)}>
          {text.addTool}
        </Button>
      </div>
      {tools.length === 0 && <p className="crew-empty small">{text.shedEmpty}</p>}
      <List label={text.shed}>
        {tools.map((tool) => (
          <ShedTool key={tool.no} tool={tool} />
        ))}
      </List>
      <AddTool open={isAdding} onClose={() => setIsAdding(false)} />
    </div>
  )
}
