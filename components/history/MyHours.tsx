'use client'

import { useMyHours } from '@/lib/hooks'
import { groupBy } from '@/lib/util/group-by'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { List, ListItem } from '../ui/List'
import { Panel } from '../ui/Panel'

/** One's own hours, season by season. Nothing is said while nothing is known. */
export function MyHours() {
  const { myHours: text } = useWords()
  const format = useFormat()
  const reading = useMyHours()
  if (reading.state !== 'read') return null
  const seasons = [...groupBy(reading.value, ({ season }) => season)]
  return (
    <Panel title={text.title}>
      {seasons.length === 0 ? (
        <p>{text.none}</p>
      ) : (
        <>
          <List label={text.title}>
            {seasons.map(([season, shifts]) => {
              const seconds = shifts.reduce((all, { hereS, breakS }) => all + hereS - breakS, 0)
              return (
                <ListItem
                  key={season}
                  title={text.season(season)}
                  note={text.total(format.duration(seconds / 60), shifts.length)}
                />
              )
            })}
          </List>
          <p className="small">{text.note}</p>
        </>
      )}
    </Panel>
  )
}
