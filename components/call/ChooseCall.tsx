'use client'

import type { CallKind } from '@/lib/events/state'
import { CrewScreen } from '../layout/CrewScreen'
import { useWords } from '../layout/Words'
import { Icon } from '../ui/Icon'
import { callIcons, callKinds } from './call-kinds'
import { Leads, OtherWays } from './OtherWays'
import './call.css'

/** Four large answers; each opens what helps first. */
export function ChooseCall({ onKind }: { onKind: (kind: CallKind) => void }) {
  const { call } = useWords()
  return (
    <CrewScreen isAboutCall>
      <h1>{call.title}</h1>
      <fieldset className="field call-kinds">
        <legend className="lab">{call.what}</legend>
        <div className="tiles">
          {callKinds.map((kind) => (
            <button key={kind} type="button" className="tile" onClick={() => onKind(kind)}>
              <span className="art">
                <Icon name={callIcons[kind]} size={34} />
              </span>
              <span>{call.kinds[kind]}</span>
            </button>
          ))}
        </div>
        <p className="small hint">{call.nothingYet}</p>
      </fieldset>
      <OtherWays title={call.otherWays} />
      <Leads />
    </CrewScreen>
  )
}
