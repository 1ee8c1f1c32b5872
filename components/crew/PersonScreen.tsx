'use client'

import { useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useNameOf } from '../sync/use-refusal-words'
import { ButtonLink } from '../ui/ButtonLink'
import { Note } from '../ui/Note'
import { LeadScreen } from './LeadScreen'
import { PersonDay } from './PersonDay'
import { PersonDevice } from './PersonDevice'
import { PersonHead } from './PersonHead'
import { PersonPapers } from './PersonPapers'
import { PersonSkills } from './PersonSkills'
import { PersonTools } from './PersonTools'
import { PersonTree } from './PersonTree'
import { RecoveryCode } from './RecoveryCode'
import { RemovePerson } from './RemovePerson'
import { useLeadWords } from './use-lead-words'

/** One person, and everything a lead does for them. */
export function PersonScreen({ id }: { id: string }) {
  const { people: text, forget, audit } = useLeadWords()
  const name = useNameOf()(id)
  const isKnown = useSelect((view) => view.state?.people[id] !== undefined)
  const isManager = useSelect((view) => view.state?.me.role === 'manager')
  const isManagers = useSelect((view) => view.state?.people[id]?.role === 'manager')
  const isMe = useSelect((view) => view.me?.personId === id)

  return (
    <LeadScreen here="people">
      <div className="person">
        <ButtonLink kind="quiet" icon="left" href={routes.people()}>
          {text.back}
        </ButtonLink>
        {isKnown ? (
          <>
            <PersonHead id={id} name={name} />
            {!isMe && <Note icon="edit">{text.actingFor(name)}</Note>}
            <div className="person-parts">
              <PersonDay id={id} name={name} />
              <PersonPapers id={id} name={name} />
              <PersonTree id={id} name={name} />
              <PersonTools id={id} name={name} />
              <PersonSkills id={id} name={name} />
              <PersonDevice id={id} name={name} />
              {isManager && isManagers && <RecoveryCode id={id} name={name} />}
            </div>
            {isMe ? (
              <p className="small">{text.notYourself}</p>
            ) : (
              <div className="tree-buttons">
                <RemovePerson id={id} name={name} />
                {isManager && (
                  <>
                    <ButtonLink href={routes.audit({ person: id })}>{audit.ofPerson}</ButtonLink>
                    <ButtonLink href={routes.forget(id)}>{forget.link}</ButtonLink>
                  </>
                )}
              </div>
            )}
          </>
        ) : (
          <h1>{text.gone}</h1>
        )}
      </div>
    </LeadScreen>
  )
}
