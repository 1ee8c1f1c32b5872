'use client'

import { useState } from 'react'

import type { ToolCheckCode } from '@/lib/domain/safety/tool-checks'
import { type Sent, useSend } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { WhyNot } from '../sync/WhyNot'
import { Button } from '../ui/Button'
import { offWhen } from '../ui/button-look'
import { Icon } from '../ui/Icon'
import { joinClasses } from '../ui/join-classes'
import { FaultPicks } from './FaultPicks'
import type { NumberedTool } from './tool-facts'
import { toolIcons, useToolName } from './use-tool-name'

/** What I hold: cleaned, given back, or put out of use. */
export function ToolsInHand({ inHand }: { inHand: readonly NumberedTool[] }) {
  const { tools } = useWords()
  return (
    <section>
      <h2>{tools.inHand}</h2>
      <ul>
        {inHand.map((tool) => (
          <ToolInHand key={tool.no} tool={tool} />
        ))}
      </ul>
    </section>
  )
}

function ToolInHand({ tool }: { tool: NumberedTool }) {
  const { tools } = useWords()
  const name = useToolName()(tool)
  const send = useSend()
  const [sent, setSent] = useState<Sent | null>(null)
  const [isReporting, setIsReporting] = useState(false)
  const { no, fit, clean } = tool

  return (
    <li className={joinClasses('look', (!fit || isReporting) && 'is-bad')}>
      <div className="row">
        <Icon name={toolIcons[tool.kind]} size={28} />
        <div className="grow">
          <b>{name}</b>
          <p className="tiny">{!fit ? tools.failed : clean ? tools.fit : tools.cleanFirst}</p>
        </div>
      </div>
      <div className="doings">
        {fit && !clean && (
          <Button
            kind="ink"
            icon="spray"
            onPress={async () => setSent(await send('clean_tool', { tools: [no] }))}
          >
            {tools.cleaned}
          </Button>
        )}
        <Button
          label={tools.giveBackTool(name)}
          onPress={async () => setSent(await send('return_tool', { tool: no }))}
        >
          {tools.giveBack}
        </Button>
        {fit && !isReporting && (
          <Button onPress={() => setIsReporting(true)} expanded={false}>
            {tools.reportFault}
          </Button>
        )}
      </div>
      <WhyNot sent={sent} />
      {fit && isReporting && <Report tool={tool} name={name} onSent={setSent} />}
    </li>
  )
}

type ReportProps = { tool: NumberedTool; name: string; onSent: (sent: Sent) => void }

/** Out of use for everybody, at once; it goes back to be mended. */
function Report({ tool, name, onSent }: ReportProps) {
  const { tools } = useWords()
  const send = useSend()
  const [faults, setFaults] = useState<readonly ToolCheckCode[]>([])
  const why = `why-${tool.no}`
  return (
    <div className="stack fault-here">
      <FaultPicks
        kind={tool.kind}
        faults={faults}
        onFault={(fault, isOn) =>
          setFaults([...faults.filter((one) => one !== fault), ...(isOn ? [fault] : [])])
        }
      />
      <p id={why}>
        <b>{faults.length === 0 ? tools.sayWhatIsWrong : tools.willBeOutOfUse(name)}</b>{' '}
        {faults.length > 0 && tools.hangItAway}
      </p>
      <Button
        {...offWhen(faults.length === 0, why)}
        onPress={async () =>
          onSent(await send('fail_tool', { tool: tool.no, failedItems: [...faults] }))
        }
      >
        {tools.markFailed(name)}
      </Button>
    </div>
  )
}
