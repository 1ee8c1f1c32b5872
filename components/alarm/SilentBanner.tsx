'use client'

import { useLeadWords } from '../crew/use-lead-words'
import { Banner } from '../layout/Banner'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { ring, turnOnSound } from './sound'
import { useSound } from './use-sound'

/** Says to a lead that this device would not be heard. Any touch of the page turns the sound on as well. */
export function SilentBanner() {
  const { call } = useWords()
  const { calls: text } = useLeadWords()
  if (useSound() === 'none') return <Banner>{call.sound.none}</Banner>
  return (
    <Banner
      action={
        <Button
          onPress={async () => {
            await turnOnSound()
            ring('call')
          }}
        >
          {text.turnOn}
        </Button>
      }
    >
      {text.silent}
    </Banner>
  )
}
