'use client'

import { useId, useState } from 'react'

import { lives, sizeClasses } from '@/lib/domain/orchard/types'
import { useSelect, useSend } from '@/lib/hooks'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { Button } from '../ui/Button'
import { SelectField } from '../ui/SelectField'
import { TextField } from '../ui/TextField'
import { Why } from '../ui/Why'
import { unitOf, withUnit } from './lengths'
import { useSpeciesOptions } from './NameFields'
import { nothingSet, setOf, type TypedSet, wrongIn } from './trees-set'

type SetManyProps = { trees: readonly number[]; onDone: (words: string) => void }

/** What is known of the picked trees, set for all of them at once; what is not touched stays. */
export function SetMany({ trees, onDone }: SetManyProps) {
  const { ground } = useLeadWords()
  const units = useSelect((view) => view.state?.orchard.units ?? 'metric')
  const [typed, setTyped] = useState(nothingSet)
  const send = useSend()
  const whyId = useId()
  const { asked, isAsking, ask, forget } = useAsk()
  const wrong = wrongIn(typed, units)
  const set = setOf(typed, units)
  const lacks =
    wrong.length > 0
      ? ground.lacks.fault
      : Object.keys(set).length === 0
        ? ground.nothingToSet
        : null
  const change = (changes: Partial<TypedSet>) => {
    forget()
    setTyped({ ...typed, ...changes })
  }
  const save = () =>
    void ask(send('change_trees', { trees: [...trees], set }), () => {
      setTyped(nothingSet)
      onDone(ground.wasSet(trees.length))
    })
  return (
    <section className="ground-part">
      <h2>{ground.setTitle(trees.length)}</h2>
      <KindFields trees={trees} typed={typed} onChange={change} />
      <div className="ground-pair">
        <TextField
          low
          label={ground.planted}
          value={typed.planted}
          onChange={(planted) => change({ planted })}
          fault={wrong.includes('planted') && ground.yearFault}
          inputMode="numeric"
          maxLength={4}
        />
        <TextField
          low
          label={`${ground.height} (${unitOf(units)})`}
          value={typed.height}
          onChange={(height) => change({ height })}
          fault={
            wrong.includes('height') && ground.range(withUnit(0.1, units), withUnit(50, units))
          }
          inputMode="decimal"
          maxLength={6}
        />
        <TextField
          low
          label={`${ground.trunk} (${units === 'us' ? 'in' : 'cm'})`}
          value={typed.trunk}
          onChange={(trunk) => change({ trunk })}
          fault={
            wrong.includes('trunk') &&
            (units === 'us' ? ground.range('0.1 in', '390 in') : ground.range('0.1 cm', '999.9 cm'))
          }
          inputMode="decimal"
          maxLength={6}
        />
      </div>
      <p className="small">{ground.clearHint}</p>
      <AskedNote asked={asked} />
      {lacks !== null && <Why id={whyId}>{lacks}</Why>}
      {lacks !== null ? (
        <Button kind="call" state="off" describedBy={whyId}>
          {ground.set(trees.length)}
        </Button>
      ) : (
        <Button kind="call" state={isAsking ? 'waiting' : 'ready'} onPress={save}>
          {ground.set(trees.length)}
        </Button>
      )}
    </section>
  )
}

type KindFieldsProps = {
  trees: readonly number[]
  typed: TypedSet
  onChange: (changes: Partial<TypedSet>) => void
}

/** What is chosen from lists. */
function KindFields({ trees, typed, onChange }: KindFieldsProps) {
  const { ground } = useLeadWords()
  const species = useSpeciesOptions()
  const cultivars = useCultivarOptions(trees, typed.species)
  const asItIs = { value: '', label: ground.asItIs }
  const unknown = { value: 'unknown', label: ground.unknown }
  return (
    <div className="ground-pair">
      <SelectField
        label={ground.speciesOf}
        options={[asItIs, ...species]}
        value={typed.species}
        // A cultivar of the species before is none of this one.
        onChange={(kind) => onChange({ species: kind, cultivar: '' })}
      />
      <SelectField
        label={ground.cultivar}
        options={[asItIs, unknown, ...cultivars]}
        value={typed.cultivar}
        onChange={(cultivar) => onChange({ cultivar })}
      />
      <SelectField
        label={ground.size}
        options={[
          asItIs,
          unknown,
          ...sizeClasses.map((value) => ({ value, label: ground.sizes[value] })),
        ]}
        value={typed.size}
        onChange={(size) => onChange({ size })}
      />
      <SelectField
        label={ground.asksSaw}
        options={[asItIs, { value: 'yes', label: ground.yes }, { value: 'no', label: ground.no }]}
        value={typed.asksSaw}
        onChange={(asksSaw) => onChange({ asksSaw })}
      />
      <SelectField
        label={ground.life}
        options={[asItIs, ...lives.map((value) => ({ value, label: ground.lives[value] }))]}
        value={typed.life}
        onChange={(life) => onChange({ life })}
      />
    </div>
  )
}

/** Of the species that is chosen with it, else of the species the trees have. */
function useCultivarOptions(trees: readonly number[], species: string) {
  const sheet = useSelect((view) => view.sheet)
  const known = useSelect((view) => view.ground.trees)
  const kinds = new Set(species ? [species] : trees.flatMap((no) => known.get(no)?.species ?? []))
  return (sheet?.cultivars ?? [])
    .filter((cultivar) => kinds.has(cultivar.species))
    .map(({ no, name }) => ({ value: String(no), label: name }))
}
