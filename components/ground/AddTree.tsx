'use client'

import { useId, useState } from 'react'

import { toE7 } from '@/lib/domain/orchard/ellipsoid'
import { positionFor } from '@/lib/domain/orchard/next-place'
import type { Block, Position, Tree } from '@/lib/domain/orchard/types'
import { useSelect, useSend } from '@/lib/hooks'
import { treeTag } from '@/lib/text/tree-name'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { Button } from '../ui/Button'
import { offWhen } from '../ui/button-look'
import { Segmented } from '../ui/Segmented'
import { SelectField } from '../ui/SelectField'
import { TextField } from '../ui/TextField'
import { Why } from '../ui/Why'
import { useSpeciesOptions } from './NameFields'
import { StandingNote } from './StandingNote'
import { numberTyped, yearTyped } from './typed'
import { useWhereIStand } from './use-where-i-stand'

type AddTreeProps = {
  block: Block
  trees: readonly Tree[]
  /** The empty place that is to be filled. */
  gap?: Tree | undefined
  onDone: (words: string) => void
}

/** One tree more: on its row and place, where those put it, or where this phone is; an empty place is filled. */
export function AddTree({ block, trees, gap, onDone }: AddTreeProps) {
  const { ground } = useLeadWords()
  const send = useSend()
  const whyId = useId()
  const options = useSpeciesOptions()
  const { asked, isAsking, ask } = useAsk()
  const [typed, setTyped] = useState(() => ({
    row: gap ? String(gap.row) : '',
    place: gap ? String(gap.place) : '',
    species: usualSpecies(trees, gap),
    cultivar: '',
    planted: '',
  }))
  const [where, setWhere] = useState<'spacing' | 'here'>('spacing')
  const [here, setHere] = useState<Position | null>(null)
  const { standing, find } = useWhereIStand(setHere)
  const cultivars = useSelect((view) => view.sheet?.cultivars)
  const change = (changes: Partial<typeof typed>) => setTyped({ ...typed, ...changes })

  const [row, place] = [numberTyped(typed.row), numberTyped(typed.place)]
  const there = trees.find((tree) => tree.row === row && tree.place === place)
  const planted = yearTyped(typed.planted)
  const isTaken = there !== undefined && there.life !== 'gap'
  const canAdd =
    row !== null &&
    place !== null &&
    !isTaken &&
    planted !== 'wrong' &&
    (where === 'spacing' || here !== null)
  const add = () => {
    if (row === null || place === null || planted === 'wrong') return
    const position = where === 'here' ? here : positionFor(block, trees, { row, place })
    const at = position && { latE7: toE7(position.lat), lonE7: toE7(position.lon) }
    const { species } = typed
    const cultivar = typed.cultivar === '' ? null : Number(typed.cultivar)
    const args = { block: block.no, row, place, species, cultivar, planted, ...at }
    void ask(send('add_tree', args), () => onDone(ground.added))
  }
  return (
    <div className="ground-part">
      {!gap && (
        <div className="ground-pair">
          {(['row', 'place'] as const).map((name) => (
            <TextField
              key={name}
              label={ground[name]}
              value={typed[name]}
              onChange={(next) => change({ [name]: next })}
              fault={typed[name] !== '' && numberTyped(typed[name]) === null && ground.placeFault}
              inputMode="numeric"
              maxLength={4}
            />
          ))}
        </div>
      )}
      {isTaken && (
        <p id={whyId} role="alert">
          {ground.taken(treeTag({ ...there, block: block.code }))}
        </p>
      )}
      {there?.life === 'gap' && <p className="small">{ground.fillsGap}</p>}
      <SelectField
        label={ground.speciesOf}
        options={options}
        value={typed.species}
        onChange={(species) => change({ species, cultivar: '' })}
      />
      <SelectField
        label={ground.cultivar}
        options={[
          { value: '', label: ground.unknown },
          ...(cultivars ?? [])
            .filter(({ species }) => species === typed.species)
            .map(({ no, name }) => ({ value: String(no), label: name })),
        ]}
        value={typed.cultivar}
        onChange={(cultivar) => change({ cultivar })}
      />
      <TextField
        label={ground.planted}
        value={typed.planted}
        onChange={(planted) => change({ planted })}
        fault={planted === 'wrong' && ground.plantedFault}
        inputMode="numeric"
        maxLength={4}
      />
      <Segmented
        label={ground.putWhere}
        options={[
          { value: 'spacing', label: ground.putBySpacing },
          { value: 'here', label: ground.putHere },
        ]}
        value={where}
        onChange={(next) => {
          setWhere(next)
          if (next === 'here') find()
        }}
      />
      {where === 'here' && (
        <div id={isTaken ? undefined : whyId}>
          <StandingNote standing={standing} />
        </div>
      )}
      <AskedNote asked={asked} />
      {!canAdd && !isTaken && where === 'spacing' && (
        <Why id={whyId}>{planted === 'wrong' ? ground.plantedFault : ground.placeFault}</Why>
      )}
      <Button
        kind="call"
        {...(isAsking ? { state: 'waiting' } : offWhen(!canAdd, whyId))}
        onPress={add}
      >
        {ground.addTreeDo}
      </Button>
    </div>
  )
}

/** Of the tree next to the gap, else of the block. */
function usualSpecies(trees: readonly Tree[], gap: Tree | undefined): string {
  const standing = trees.filter(({ life }) => life !== 'gap')
  const inRow = standing.filter(({ row }) => row === gap?.row)
  const away = ({ place }: Tree) => Math.abs(place - (gap?.place ?? 0))
  const [nearest] = inRow.toSorted((a, b) => away(a) - away(b))
  return (nearest ?? standing[0])?.species ?? 'apple'
}
