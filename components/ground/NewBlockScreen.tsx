'use client'

import './ground.css'
import './ground-fields.css'

import { useState } from 'react'

import { LeadScreen } from '../crew/LeadScreen'
import { useLeadWords } from '../crew/use-lead-words'
import type { LayoutMode } from '../map/layout-map-props'
import { Button } from '../ui/Button'
import { Segmented } from '../ui/Segmented'
import { BlockMap } from './BlockMap'
import { BlockSums } from './BlockSums'
import { CornersField } from './CornersField'
import { MakeBlock } from './MakeBlock'
import { ManagerOnly } from './ManagerOnly'
import { NameFields } from './NameFields'
import { NumberFields } from './NumberFields'
import { positionsIn } from './new-block'
import { SpacingFields } from './SpacingFields'
import { type NewBlockNow, useNewBlock } from './use-new-block'

/** A block from its corners: the map answers while one types. */
export function NewBlockScreen() {
  return (
    <ManagerOnly>
      <NewBlock />
    </ManagerOnly>
  )
}

function NewBlock() {
  const { ground } = useLeadWords()
  const now = useNewBlock()
  const [chosen, setChosen] = useState<number | null>(null)
  const [mode, setMode] = useState<LayoutMode>('corners')
  const { block, layout } = now
  const isEmpty = positionsIn(block).length === 0
  const name = block.name.trim()
  return (
    <LeadScreen here="rooms" fill>
      <div className="ground-new">
        <div className="ground-form">
          <div className="ground-fields">
            <h1>{name ? ground.newNamed(name) : ground.newTitle}</h1>
            <p className="small">{ground.newLead}</p>
            <NameFields now={now} />
            <CornersField now={now} chosen={chosen} onChoose={setChosen} />
            <SpacingFields now={now} />
            <NumberFields now={now} />
          </div>
          <MakeBlock now={now} />
        </div>
        <div className="ground-preview">
          <div className="ground-map-box">
            <BlockMap now={now} mode={mode} chosen={chosen} onChoose={setChosen} />
            {isEmpty && <p className="over ground-begin">{ground.mapEmpty}</p>}
          </div>
          {!isEmpty && <MapTools now={now} mode={mode} onMode={setMode} />}
          {layout && <BlockSums layout={layout} />}
        </div>
      </div>
    </LeadScreen>
  )
}

type MapToolsProps = { now: NewBlockNow; mode: LayoutMode; onMode: (mode: LayoutMode) => void }

function MapTools({ now, mode, onMode }: MapToolsProps) {
  const { ground } = useLeadWords()
  return (
    <div className="over ground-tools">
      <Segmented
        label={ground.tools}
        hideLabel
        options={[
          { value: 'corners', label: ground.toolCorners, icon: 'pick' },
          { value: 'place', label: ground.toolPlace, icon: 'cross' },
          { value: 'area', label: ground.toolArea, icon: 'lasso' },
        ]}
        value={mode}
        onChange={onMode}
      />
      {now.block.empty.length > 0 && (
        <Button kind="quiet" icon="undo" onPress={() => now.change({ empty: [] })}>
          {ground.clearEmpty}
        </Button>
      )}
    </div>
  )
}
