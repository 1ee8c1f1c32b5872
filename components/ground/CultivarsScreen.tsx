'use client'

import './ground.css'

import { useState } from 'react'

import type { Cultivar } from '@/lib/domain/orchard/types'
import { useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { capitalised, speciesWords } from '@/lib/text/species'
import { groupBy } from '@/lib/util/group-by'
import { LeadScreen } from '../crew/LeadScreen'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { Dialog } from '../ui/Dialog'
import { List, ListItem } from '../ui/List'
import { CultivarForm } from './CultivarForm'
import { ManagerOnly } from './ManagerOnly'

/** The cultivars of the orchard, by species, each with what is known of its buds. */
export function CultivarsScreen() {
  return (
    <ManagerOnly>
      <Cultivars />
    </ManagerOnly>
  )
}

function Cultivars() {
  const words = useWords()
  const { ground } = useLeadWords()
  const sheet = useSelect((view) => view.sheet)
  const [open, setOpen] = useState<Cultivar | 'new' | null>(null)
  const bySpecies = groupBy(sheet?.cultivars ?? [], ({ species }) => species)
  const trees = groupBy(sheet?.trees ?? [], ({ cultivar }) => cultivar)
  const treesOf = (no: number) =>
    (trees.get(no) ?? []).filter(({ life }) => life !== 'removed').length
  return (
    <LeadScreen here="rooms">
      <div className="ground-screen">
        <h1>{ground.cultivarsTitle}</h1>
        <p>{ground.cultivarsLead}</p>
        {bySpecies.size === 0 && <p>{ground.noCultivars}</p>}
        <div className="ground-buttons">
          <Button kind="call" icon="plus" onPress={() => setOpen('new')}>
            {ground.newCultivar}
          </Button>
          <ButtonLink href={routes.ground()}>{ground.back}</ButtonLink>
        </div>
        {[...bySpecies].map(([species, cultivars]) => (
          <section key={species} className="panel">
            <h2>{capitalised(speciesWords(words, species).name)}</h2>
            <List>
              {cultivars.map((cultivar) => (
                <ListItem
                  key={cultivar.no}
                  title={cultivar.name}
                  note={`${ground.habit} ${ground.habits[cultivar.habit]}. ${ground.buds} ${ground.budSites[cultivar.buds]}.`}
                  end={<span className="small num">{ground.treesOf(treesOf(cultivar.no))}</span>}
                  onPress={() => setOpen(cultivar)}
                />
              ))}
            </List>
          </section>
        ))}
        <Dialog
          open={open !== null}
          title={
            open === null || open === 'new' ? ground.newCultivar : ground.editCultivar(open.name)
          }
          closeLabel={ground.close}
          onClose={() => setOpen(null)}
        >
          {open !== null && (
            <CultivarForm
              key={open === 'new' ? 'new' : open.no}
              cultivar={open === 'new' ? null : open}
              trees={open === 'new' ? 0 : treesOf(open.no)}
              onDone={() => setOpen(null)}
            />
          )}
        </Dialog>
      </div>
    </LeadScreen>
  )
}
