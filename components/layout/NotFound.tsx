import { routes } from '@/lib/routes'
import type { Language } from '@/lib/text/language'
import { wentWrongIn } from '@/lib/text/went-wrong'
import { ButtonLink } from '../ui/ButtonLink'
import { Bench } from './Bench'
import { PhoneFrame } from './PhoneFrame'

/** For an address that leads nowhere. */
export function NotFound({ language }: { language: Language }) {
  const text = wentWrongIn(language)
  return (
    <PhoneFrame
      who={text.appName}
      bench={
        <Bench
          step={
            <ButtonLink kind="call" href={routes.home()}>
              {text.toStart}
            </ButtonLink>
          }
        />
      }
    >
      <h1>{text.notFoundTitle}</h1>
      <p>{text.notFoundWhy}</p>
    </PhoneFrame>
  )
}
