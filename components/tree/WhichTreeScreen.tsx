'use client'

import { myTree, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { CrewScreen } from '../layout/CrewScreen'
import { useGo } from '../layout/use-go'
import { useWords } from '../layout/Words'
import { useTagOf } from '../sync/use-refusal-words'
import { Icon } from '../ui/Icon'
import { List, ListItem } from '../ui/List'
import { Panel } from '../ui/Panel'
import { Tag } from '../ui/Tag'
import { CloseLink } from './CloseLink'
import { MyReports } from './MyReports'
import { useMyDay } from './my-day'
import { TreeByTag } from './TreeByTag'

/** Which tree the flag is about: the one in hand, the last one, or any by its tag. */
export function WhichTreeScreen() {
  const { claim, findTree, flag } = useWords()
  const go = useGo()
  const tagOf = useTagOf()
  const day = useMyDay()
  const inHand = useSelect((view) => {
    const mine = myTree(view)
    return mine.state === 'none' ? null : mine.tree
  })
  const last = day.last?.tree ?? null
  return (
    <CrewScreen end={<CloseLink href={routes.nextTree()} />}>
      <h1>{flag.whichTree}</h1>
      {(inHand !== null || last !== null) && (
        <Panel>
          <List label={flag.whichTree}>
            {inHand !== null && (
              <ListItem
                lead={<Tag>{tagOf(inHand)}</Tag>}
                title={claim.holdsAnother(tagOf(inHand))}
                href={routes.flagTree(inHand)}
                end={<Icon name="right" />}
              />
            )}
            {last !== null && last !== inHand && (
              <ListItem
                lead={<Tag>{tagOf(last)}</Tag>}
                title={findTree.lastTree}
                href={routes.flagTree(last)}
                end={<Icon name="right" />}
              />
            )}
          </List>
        </Panel>
      )}
      <h2>{findTree.byTag}</h2>
      <TreeByTag near={inHand ?? day.at} onFound={(tree) => go.push(routes.flagTree(tree))} />
      <MyReports />
    </CrewScreen>
  )
}
