'use client'

import { useSelect } from '@/lib/hooks'
import { CrewScreen } from '../layout/CrewScreen'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Icon, type IconName } from '../ui/Icon'
import { Plate } from '../ui/Plate'
import { ConditionsLine, KindsOff } from '../weather/ConditionsLine'
import { FoundAtMyTrees, PassedTrees } from './FoundAtMyTrees'
import { HaulInstead } from './HaulInstead'
import { LastWorkNote } from './LastWorkNote'
import type { DayInHand } from './my-day'
import { RowsMap } from './RowsMap'
import type { Suggestion } from './suggestions'
import { TreeFactsList } from './TreeFactsList'
import { plateCells, wayNote, wayTitle } from './tree-words'
import type { TreeFacts } from './use-tree'
import { useWay } from './use-way'
import { WhereNote } from './WhereNote'

type NextTreeProps = {
  facts: TreeFacts
  suggestion: Suggestion
  day: DayInHand
  onClaim: () => void
  onOther: () => void
  onWhere: () => void
}

/** Name, way, map, reason, button: what you look for, then how, then why. */
export function NextTree({ facts, suggestion, day, onClaim, onOther, onWhere }: NextTreeProps) {
  const { tree, block } = facts
  const words = useWords()
  const format = useFormat()
  const way = useWay(day.at, tree.no)
  const isHere = day.at === tree.no
  const isOffline = useSelect((view) => view.signal === 'no_signal')
  return (
    <CrewScreen
      tree={tree.no}
      side={
        <Button kind="square" icon="other" onPress={onOther}>
          {words.nextTree.otherTree}
        </Button>
      }
      step={
        <Button
          kind="call"
          onPress={onClaim}
          sub={isOffline ? words.common.net.offline : undefined}
        >
          {words.nextTree.claim}
        </Button>
      }
    >
      <ConditionsLine />
      <LastWorkNote day={day} />
      <FoundAtMyTrees next={tree.no} />
      <div className="row wrap">
        <Plate
          label={words.common.treeSpoken(block.name, tree.row, tree.place)}
          cells={plateCells(words, tree, block)}
        />
        <div className="beside">
          <h1 className="beside-plate">{words.nextTree.title}</h1>
          <p className="small">{block.name}</p>
        </div>
      </div>
      {isHere && <p className="place">{words.findTree.atIt}</p>}
      {way && !isHere && (
        <div className="row way-words">
          <Icon name={arrow[way.towards === 'across' ? 'ahead' : way.side]} size={32} />
          <div className="grow">
            <h2>{wayTitle(words, way)}</h2>
            <p className="small">{wayNote(words, format, way)}</p>
          </div>
        </div>
      )}
      {way && <RowsMap facts={facts} from={day.at} way={way} />}
      <TreeFactsList facts={facts} why={suggestion.why} />
      <WhereNote day={day} block={block.name} onChange={onWhere} />
      <HaulInstead />
      <KindsOff />
      <PassedTrees />
    </CrewScreen>
  )
}

const arrow: Record<'left' | 'right' | 'ahead', IconName> = {
  left: 'turnleft',
  right: 'turnright',
  ahead: 'up',
}
