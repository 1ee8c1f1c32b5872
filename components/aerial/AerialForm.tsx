'use client'

import { useState } from 'react'

import { type AerialRead, useSelect, useSend } from '@/lib/hooks'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useFormat } from '../layout/use-format'
import { useLeadWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Segmented } from '../ui/Segmented'
import { Slider } from '../ui/Slider'
import { Why } from '../ui/Why'
import { AerialPreview } from './AerialPreview'
import { fitOf, pointsSent } from './aerial-typed'
import { PicturePoints } from './PicturePoints'
import { PointFields } from './PointFields'
import { useThreePoints } from './use-three-points'

type AerialFormProps = {
  jpeg: string
  /** Not sent yet. */
  isNew: boolean
  kept: AerialRead | null
  /** Something is no longer as it was saved. */
  onChanged: () => void
  onSaved: () => void
}

/** Ten steps of the slider from a tenth to whole. */
const perStep = 10

/** The three trees, how strong the picture shows, and how it will lie. */
export function AerialForm({ jpeg, isNew, kept, onChanged, onSaved }: AerialFormProps) {
  const { aerial: text } = useLeadWords()
  const format = useFormat()
  const send = useSend()
  const { asked, isAsking, ask } = useAsk()
  const three = useThreePoints(kept)
  const [active, setActive] = useState(0)
  const [size, setSize] = useState<{ width: number; height: number } | null>(null)
  const [steps, setSteps] = useState(Math.round((kept?.opacity ?? 80) / perStep))
  const hasKept = useSelect((view) => (view.state?.orchard.aerialVersion ?? 0) > 0) && kept !== null

  const fit = three.placed && size && fitOf(three.placed, size)
  const why = whyNot()
  const save = () => {
    if (!three.placed) return
    const points = pointsSent(three.placed)
    const args = { points, opacity: steps * perStep, ...(isNew && { jpeg }) }
    void ask(send('place_aerial', args), onSaved)
  }

  return (
    <>
      <h2>{text.pointsTitle}</h2>
      <p>{text.pointsNote}</p>
      <Segmented
        label={text.whichPoint}
        options={[0, 1, 2].map((at) => ({ value: String(at), label: text.point(at + 1) }))}
        value={String(active)}
        onChange={(value) => setActive(Number(value))}
      />
      <PicturePoints
        jpeg={jpeg}
        points={three.marks}
        active={active}
        onSize={setSize}
        onPoint={(left, top) => {
          onChanged()
          three.set(active, { left: left.toFixed(1), top: top.toFixed(1) })
        }}
      />
      {three.typed.map((typed, at) => (
        <PointFields
          // biome-ignore lint/suspicious/noArrayIndexKey: the first, second and third tree
          key={at}
          no={at + 1}
          typed={typed}
          read={three.read[at] ?? { state: 'lacking' }}
          onTyped={(next) => {
            onChanged()
            three.set(at, next)
          }}
        />
      ))}
      <Slider
        label={text.opacity}
        value={steps}
        least={1}
        most={10}
        says={format.share((steps * perStep) / 100)}
        onChange={setSteps}
        lessLabel={text.weaker}
        moreLabel={text.stronger}
      />
      <h2>{text.preview}</h2>
      {three.placed && fit?.state !== 'one_line' ? (
        <AerialPreview jpeg={jpeg} three={three.placed} opacity={steps * perStep} />
      ) : (
        <p className="small">{text.notYet}</p>
      )}
      <AskedNote asked={asked} />
      {why !== null && (
        <Why id="aerial-why" {...(fit && fit.state !== 'fits' && { tone: 'wrong' as const })}>
          {why}
        </Why>
      )}
      {fit && fit.state !== 'one_line' && fit.state !== 'mirrored' ? (
        <Button kind="call" state={isAsking ? 'waiting' : 'ready'} onPress={save}>
          {text.save}
        </Button>
      ) : (
        <Button kind="call" state="off" describedBy="aerial-why">
          {text.save}
        </Button>
      )}
      {hasKept && (
        <Button icon="cross" onPress={() => void ask(send('remove_aerial', {}), onChanged)}>
          {text.remove}
        </Button>
      )}
    </>
  )

  function whyNot(): string | null {
    if (!fit) return text.notYet
    if (fit.state === 'one_line') return text.oneLine
    if (fit.state === 'mirrored') return text.mirrored
    return fit.state === 'stretched' ? text.stretched(format.number(fit.times, 1)) : null
  }
}
