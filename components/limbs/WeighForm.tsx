'use client'

import type { Tree } from '@/lib/domain/orchard/types'
import { holds, takes } from '@/lib/domain/pruning/carry-limb'
import { sideBranches } from '@/lib/domain/pruning/limb-weight'
import { useDraft, useSelect } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { MeasureField } from '../tree/MeasureField'
import { measures } from '../tree/measure'
import { Note } from '../ui/Note'
import { Segmented } from '../ui/Segmented'
import { Weighed } from './Weighed'
import { noWeigh, shapeOf, type WeighDraft } from './weigh-draft'

/** Three numbers and how it is held; the answer stands below as soon as it can. */
export function WeighForm({ tree }: { tree: Tree }) {
  const { weigh: text } = useWords()
  const units = useSelect((view) => view.state?.orchard.units ?? 'metric')
  const draft = useDraft(`weigh-${tree.no}`, noWeigh)
  const { thick, thin, length, branches, hold, take } = draft.value
  const change = (part: Partial<WeighDraft>) => draft.write({ ...draft.value, ...part })
  const shape = shapeOf(draft.value, units)
  return (
    <>
      <p>{text.lead}</p>
      <MeasureField
        label={text.thick}
        measure={measures.limbCm}
        value={thick}
        onChange={(thick) => change({ thick })}
      />
      <MeasureField
        label={text.thin}
        measure={measures.limbEndCm}
        value={thin}
        onChange={(thin) => change({ thin })}
      />
      <MeasureField
        label={text.length}
        measure={measures.limbM}
        value={length}
        onChange={(length) => change({ length })}
      />
      <Segmented
        label={text.branches}
        options={choices(sideBranches, text.branchesOf)}
        value={branches}
        onChange={(branches) => change({ branches })}
      />
      <Segmented
        label={text.hold}
        options={choices(holds, text.holds)}
        value={hold}
        onChange={(hold) => change({ hold })}
      />
      <Segmented
        label={text.take}
        options={choices(takes, text.takes)}
        value={take}
        onChange={(take) => change({ take })}
      />
      {shape ? (
        <Weighed shape={shape} species={tree.species} hold={hold} take={take} />
      ) : (
        <Note icon="info">{text.fillAll}</Note>
      )}
    </>
  )
}

function choices<Value extends string>(
  of: Record<Value, unknown>,
  words: Record<Value, string>
): { value: Value; label: string }[] {
  // Object.keys knows no names.
  return (Object.keys(of) as Value[]).map((value) => ({ value, label: words[value] }))
}
