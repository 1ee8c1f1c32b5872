import type { Language } from '@/lib/text/language'
import { wentWrongIn } from '@/lib/text/went-wrong'
import { Button } from '../ui/Button'
import { Bench } from './Bench'
import { PhoneFrame } from './PhoneFrame'

type WentWrongProps = {
  language: Language
  /** The number under which the server wrote it down. */
  digest?: string | undefined
  onAgain: () => void
}

/** For what should not happen: says that nothing is lost and offers the way on. */
export function WentWrong({ language, digest, onAgain }: WentWrongProps) {
  const text = wentWrongIn(language)
  return (
    <PhoneFrame
      who={text.appName}
      bench={
        <Bench
          step={
            <Button kind="call" onPress={onAgain}>
              {text.again}
            </Button>
          }
        />
      }
    >
      <h1>{text.title}</h1>
      <p>{text.kept}</p>
      <p className="muted">{text.ifItStays}</p>
      {digest !== undefined && <p className="small num">{digest}</p>}
    </PhoneFrame>
  )
}
