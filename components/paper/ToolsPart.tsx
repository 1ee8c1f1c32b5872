'use client'

import { useSelect } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { useToolName } from '../ready/use-tool-name'
import { useNameOf } from '../sync/use-refusal-words'
import { BlankRows, PaperTable } from './Page'

/** Every tool, whether it is fit, who has it, and room for who takes it. */
export function ToolsPart() {
  const { paper: text } = useLeadWords()
  const toolName = useToolName()
  const nameOf = useNameOf()
  const tools = useSelect((view) => Object.entries(view.state?.tools ?? {}))
  const columns = [
    { name: 'tool', head: text.tool },
    { name: 'condition', head: text.condition },
    { name: 'with', head: text.withWhom },
    { name: 'clock', head: text.checked },
    { name: 'sign', head: text.out },
    { name: 'clock-2', head: text.back },
  ]
  return (
    <section className="paper-sheet" aria-label={text.tools}>
      <PaperTable title={text.tools} columns={columns}>
        <tbody>
          {tools.map(([no, tool]) => (
            <tr key={no} className={tool.fit ? undefined : 'is-closed'}>
              <th scope="row">{toolName(tool)}</th>
              <td>
                {tool.fit ? text.fit : <b>{text.outOfUse}</b>}
                {!tool.clean && <small>{text.notClean}</small>}
              </td>
              <td>{tool.heldBy !== null && nameOf(tool.heldBy)}</td>
              <td />
              <td />
              <td />
            </tr>
          ))}
          <BlankRows count={4} columns={columns.length} />
        </tbody>
      </PaperTable>
    </section>
  )
}
