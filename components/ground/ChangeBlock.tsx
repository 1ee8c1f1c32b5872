'use client'

import { useState } from 'react'

import { ranges } from '@/lib/domain/orchard/layout'
import type { Block } from '@/lib/domain/orchard/types'
import { useSelect, useSend } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { useGo } from '../layout/use-go'
import { Button } from '../ui/Button'
import { Segmented } from '../ui/Segmented'
import { TextField } from '../ui/TextField'
import { shownLength, typedLength, typedNumber, unitOf, withUnit } from './lengths'

type ChangeBlockProps = { block: Block; onDone: (words: string) => void }

/** What a block is called and how it lies; and taking away one that was a mistake. */
export function ChangeBlock({ block, onDone }: ChangeBlockProps) {
  const { ground } = useLeadWords()
  const units = useSelect((view) => view.state?.orchard.units ?? 'metric')
  const send = useSend()
  const go = useGo()
  const { asked, isAsking, ask } = useAsk()
  const [typed, setTyped] = useState({
    name: block.name,
    code: block.code,
    rowSpacing: shownLength(block.rowSpacingM, units),
    treeSpacing: shownLength(block.treeSpacingM, units),
    bearing: block.bearingDeg === null ? '' : String(block.bearingDeg),
    taggedEnd: block.taggedEnd,
  })
  const change = (changes: Partial<typeof typed>) => setTyped({ ...typed, ...changes })
  const { least, most } = ranges.rowSpacingM
  const spacing = (text: string, before: number) => {
    // What was not touched does not drift by being converted.
    if (text === shownLength(before, units)) return before
    const metres = typedLength(text, units)
    return metres !== null && metres >= least && metres <= most ? Number(metres.toFixed(2)) : null
  }
  const rowSpacingM = spacing(typed.rowSpacing, block.rowSpacingM)
  const treeSpacingM = spacing(typed.treeSpacing, block.treeSpacingM)
  const degrees = typedNumber(typed.bearing)
  const isBearingWrong = typed.bearing.trim() !== '' && !(degrees !== null && degrees <= 360)
  const inRange = ground.range(withUnit(least, units), withUnit(most, units))
  const save = () => {
    if (rowSpacingM === null || treeSpacingM === null || isBearingWrong) return
    const { name, code, taggedEnd } = typed
    const bearingDeg = degrees === null ? null : degrees % 360
    const args = { block: block.no, name, code, taggedEnd, rowSpacingM, treeSpacingM, bearingDeg }
    void ask(send('change_block', args), () => onDone(ground.saveBlock))
  }
  const remove = () =>
    void ask(send('remove_block', { block: block.no }), () => go.push(routes.ground()))
  return (
    <div className="ground-part">
      <TextField
        label={ground.name}
        value={typed.name}
        onChange={(name) => change({ name })}
        maxLength={60}
      />
      <TextField
        label={ground.code}
        value={typed.code}
        onChange={(code) => change({ code })}
        maxLength={4}
      />
      <div className="ground-pair">
        <TextField
          label={`${ground.rowSpacing} (${unitOf(units)})`}
          value={typed.rowSpacing}
          onChange={(rowSpacing) => change({ rowSpacing })}
          fault={rowSpacingM === null && inRange}
          inputMode="decimal"
        />
        <TextField
          label={`${ground.treeSpacing} (${unitOf(units)})`}
          value={typed.treeSpacing}
          onChange={(treeSpacing) => change({ treeSpacing })}
          fault={treeSpacingM === null && inRange}
          inputMode="decimal"
        />
      </div>
      <TextField
        label={`${ground.bearing} (°)`}
        hint={ground.bearingUnknown}
        value={typed.bearing}
        onChange={(bearing) => change({ bearing })}
        fault={isBearingWrong && ground.range('0°', '360°')}
        inputMode="decimal"
      />
      <Segmented
        label={ground.taggedEnd}
        options={[
          { value: 'low', label: ground.taggedEnds.low },
          { value: 'high', label: ground.taggedEnds.high },
        ]}
        value={typed.taggedEnd}
        onChange={(taggedEnd) => change({ taggedEnd })}
      />
      <AskedNote asked={asked} />
      <Button kind="call" state={isAsking ? 'waiting' : 'ready'} onPress={save}>
        {ground.saveBlock}
      </Button>
      <details>
        <summary>{ground.removeBlock}</summary>
        <p className="small">{ground.removeBlockNote}</p>
        <Button state={isAsking ? 'waiting' : 'ready'} onPress={remove}>
          {ground.removeBlockDo(block.name)}
        </Button>
      </details>
    </div>
  )
}
