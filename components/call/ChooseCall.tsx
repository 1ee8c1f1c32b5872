'use client'

import type { CallKind } from '@/lib/events/state'
import { BackToWork } from '../layout/BackToWork'
import { CrewScreen } from '../layout/CrewScreen'
import { useWords } from '../layout/Words'
import { useNameOf } from '../sync/use-refusal-words'
import { Icon } from '../ui/Icon'
import { callIcons, callKinds } from './call-kinds'
import { Leads, OtherWays } from './OtherWays'
import './call.css'

type ChooseCallProps = {
  forPerson: string | null
  onKind: (kind: CallKind) => void
}

/** Four large answers; each opens what helps first. */
export function ChooseCall({ forPerson, onKind }: ChooseCallProps) {
  const { call } = useWords()
  const nameOf = useNameOf()
  return (
    <CrewScreen isAboutCall step={<BackToWork />}>
      <h1>{forPerson === null ? call.title : call.titleFor(nameOf(forPerson))}</h1>
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
