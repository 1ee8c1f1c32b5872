'use client'

import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Panel } from '../ui/Panel'
import { canVibrate, ring, turnOnSound } from './sound'
import { useSound } from './use-sound'

/** Whether this device can be heard, said plainly, and the way to turn it on. */
export function SoundPanel() {
  const { sound: text } = useWords().call
  const sound = useSound()
  return (
    <Panel title={text.title}>
      <div className="stack">
        <p role="status">
          {text[sound]} {sound !== 'none' && (canVibrate() ? text.vibrates : text.still)}
        </p>
        {sound !== 'none' && (
          <Button
            onPress={async () => {
              await turnOnSound()
              ring('call')
            }}
          >
            {sound === 'on' ? text.tryIt : text.turnOn}
          </Button>
        )}
        <p className="small">{text.neverTheAlarm}</p>
      </div>
    </Panel>
  )
}
