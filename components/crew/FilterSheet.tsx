'use client'

import type { ReactNode } from 'react'

import type { Species } from '@/lib/domain/orchard/types'
import { useSelect } from '@/lib/hooks'
import { capitalised, speciesWords } from '@/lib/text/species'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Dialog } from '../ui/Dialog'
import { Pick } from '../ui/Pick'
import { FilterCount } from './FilterCount'
import { shownKinds, toggled } from './map-filter'
import { useLeadWords } from './use-lead-words'
import type { MapFilterNow } from './use-map-filter'

type FilterSheetProps = { open: boolean; now: MapFilterNow; onClose: () => void }

/** By block, kind of tree and status; what is chosen is seen at once on the map behind. */
export function FilterSheet({ open, now, onClose }: FilterSheetProps) {
  const words = useWords()
  const { mapTools } = useLeadWords()
  const blocks = useSelect((view) => view.sheet?.blocks ?? [])
  const species = useSelect((view) => [
    ...new Set((view.sheet?.trees ?? []).map((tree) => tree.species)),
  ])
  const { filter, change } = now
  return (
    <Dialog
      kind="sheet"
      open={open}
      title={mapTools.filterTitle}
      onClose={onClose}
      closeLabel={words.common.close}
    >
      <Chips
        label={mapTools.blocks}
        of={blocks.map(({ no }) => no)}
        chosen={filter.blocks}
        onChange={(chosen) => change({ ...filter, blocks: chosen })}
        say={(no) => blocks.find((block) => block.no === no)?.name ?? ''}
      />
      <Chips<Species>
        label={mapTools.species}
        of={species}
        chosen={filter.species}
        onChange={(chosen) => change({ ...filter, species: chosen })}
        say={(one) => capitalised(speciesWords(words, one).name)}
      />
      <Chips
        label={mapTools.statuses}
        of={shownKinds}
        chosen={filter.kinds}
        onChange={(chosen) => change({ ...filter, kinds: chosen })}
        say={(kind) => capitalised(mapTools.shown[kind])}
      />
      <p className="small">{mapTools.stillThere}</p>
      {open && <FilterCount now={now} />}
      {now.choices > 0 && <Button onPress={now.clear}>{mapTools.showAll}</Button>}
    </Dialog>
  )
}

type ChipsProps<Item> = {
  label: string
  of: readonly Item[]
  chosen: readonly Item[]
  onChange: (chosen: readonly Item[]) => void
  say: (item: Item) => ReactNode
}

function Chips<Item extends string | number>({
  label,
  of,
  chosen,
  onChange,
  say,
}: ChipsProps<Item>) {
  return (
    <ChoiceGroup label={label} as="picks">
      {of.map((item) => (
        <Pick
          key={item}
          type="checkbox"
          checked={chosen.includes(item)}
          onChange={() => onChange(toggled(chosen, item))}
        >
          {say(item)}
        </Pick>
      ))}
    </ChoiceGroup>
  )
}
