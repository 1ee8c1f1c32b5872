'use client'

import { useFormat } from '../layout/use-format'
import { useLeadWords } from '../layout/Words'
import { More } from '../ui/More'
import { Panel } from '../ui/Panel'
import { SelectField } from '../ui/SelectField'
import { Stepper } from '../ui/Stepper'
import { TextArea } from '../ui/TextArea'
import type { SeasonToCome } from './use-season'

const months = Array.from({ length: 12 }, (_, at) => at + 1)

/** Between what each may lie, and by how much a key changes it. */
const numbers = [
  { key: 'daysAMonth', least: 1, most: 31 },
  { key: 'hoursADay', least: 1, most: 10 },
  { key: 'dryTenths', least: 0, most: 10 },
] as const

/** Everything that nobody has measured: shown, and to be changed. */
export function SeasonSupposed({ coming }: { coming: SeasonToCome }) {
  const { season: text } = useLeadWords()
  const format = useFormat()
  const { supposed, counted, change } = coming
  const options = months.map((month) => ({ value: `${month}`, label: format.month(month) }))
  return (
    <Panel title={text.supposed}>
      <div className="stack">
        <div className="season-fields">
          {(['fromMonth', 'toMonth'] as const).map((key) => (
            <SelectField
              key={key}
              label={text[key]}
              options={options}
              value={`${supposed[key]}`}
              onChange={(month) => change({ [key]: Number(month) })}
            />
          ))}
          {numbers.map(({ key, least, most }) => (
            <Stepper
              key={key}
              label={text[key]}
              shown={format.number(supposed[key])}
              less={{
                label: text.fewer(text[key]),
                onPress: () => change({ [key]: Math.max(least, supposed[key] - 1) }),
              }}
              more={{
                label: text.more(text[key]),
                onPress: () => change({ [key]: Math.min(most, supposed[key] + 1) }),
              }}
            />
          ))}
        </div>
        <p className="small">{text.ownMonths}</p>
        <More title={text.paste}>
          <TextArea
            label={text.paste}
            hint={text.pasteHint}
            value={supposed.pasted}
            onChange={(pasted) => change({ pasted })}
            maxLength={400_000}
          />
          {counted.days > 0 && <p role="status">{text.counted(counted.days, counted.dry)}</p>}
        </More>
      </div>
    </Panel>
  )
}
