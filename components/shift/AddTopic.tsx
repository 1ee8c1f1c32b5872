'use client'

import { useState } from 'react'

import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Dialog } from '../ui/Dialog'
import { List, ListItem } from '../ui/List'
import { emptyTopic, ownTopic, type TopicDraft, topicsLeft } from './briefing-draft'

type AddTopicProps = {
  topics: readonly TopicDraft[]
  onAdd: (topic: TopicDraft) => void
}

/** The topics that are not told yet, and one in the lead's own words. */
export function AddTopic({ topics, onAdd }: AddTopicProps) {
  const words = useWords()
  const { shift: text } = useLeadWords()
  const [isOpen, setIsOpen] = useState(false)
  const add = (topic: TopicDraft) => {
    onAdd(topic)
    setIsOpen(false)
  }
  return (
    <div>
      <Button icon="plus" onPress={() => setIsOpen(true)}>
        {text.addTopics}
      </Button>
      <Dialog
        open={isOpen}
        title={text.addTopics}
        onClose={() => setIsOpen(false)}
        closeLabel={words.common.close}
      >
        <List label={text.addTopics}>
          {topicsLeft(topics).map((code) => (
            <ListItem
              key={code}
              title={words.topics[code].title}
              onPress={() => add(emptyTopic(code))}
            />
          ))}
          <ListItem title={text.ownTopic} onPress={() => add(ownTopic(topics))} />
        </List>
      </Dialog>
    </div>
  )
}
