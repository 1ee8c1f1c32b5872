import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'

import { Bench } from '@/components/layout/Bench'
import { NotFound } from '@/components/layout/NotFound'
import { PhoneFrame } from '@/components/layout/PhoneFrame'
import { Strip } from '@/components/layout/Strip'
import { WentWrong } from '@/components/layout/WentWrong'
import { OfflineNote } from '@/components/sync/OfflineNote'
import { RefusedNote } from '@/components/sync/RefusedNote'
import { UnsentBadge } from '@/components/sync/UnsentBadge'
import { crew } from '@/lib/text/en/crew'
import { languages } from '@/lib/text/language'
import { leadMessages, messages } from '@/lib/text/messages'
import { Gallery } from './gallery/Gallery'
import { nothing } from './gallery/nothing'
import { PhoneScreen, WideScreen } from './gallery/Screens'

test('the four stand in one order, whatever order they are given in', () => {
  const strip = renderToStaticMarkup(
    <Strip
      text={crew.common.strip}
      ways={{
        stopWork: { onPress: nothing },
        flag: { href: '/flag' },
        emergency: { href: '/emergency' },
        callLead: { href: '/call' },
      }}
    />
  )
  const words = [...strip.matchAll(/<\/svg>([^<]+)/g)].map(([, word]) => word)
  expect(words).toEqual(['Emergency', 'Call lead', 'Flag', 'Stop work'])
})

test('what a person cannot use yet is not in the strip', () => {
  const strip = renderToStaticMarkup(
    <Strip text={crew.common.strip} ways={{ emergency: { href: '/emergency' } }} />
  )
  expect(strip.match(/<a /g)).toHaveLength(1)
  expect(strip).not.toContain('<button')
})

test('a phone screen has one main part, and the bench after it', () => {
  const screen = renderToStaticMarkup(
    <PhoneFrame who="Quillet Hill" bench={<Bench step="step" strip="strip" />}>
      middle
    </PhoneFrame>
  )
  expect(screen.match(/<main/g)).toHaveLength(1)
  expect(screen.indexOf('</main>')).toBeLessThan(screen.indexOf('class="bench"'))
})

test.each([
  [{ unsent: 0, needYou: 0, online: true }, 'Signal, everything sent'],
  [{ unsent: 2, needYou: 0, online: true }, 'Sending 2'],
  [{ unsent: 0, needYou: 0, online: false }, 'No signal'],
  [{ unsent: 3, needYou: 0, online: false }, '3 kept'],
  [{ unsent: 3, needYou: 1, online: false }, '1 needs you'],
])('the signal says the most pressing thing: %o', (outbox, words) => {
  expect(renderToStaticMarkup(<UnsentBadge {...outbox} text={crew.common.net} />)).toContain(words)
})

test('after 15 minutes out of touch the note says so and says what to do', () => {
  const note = (minutes: number) =>
    renderToStaticMarkup(
      <OfflineNote
        minutesOutOfTouch={minutes}
        signal={crew.things.signal.horn}
        text={crew.unsent}
      />
    )
  expect(note(14)).toContain(crew.unsent.stopDoesNotReach)
  expect(note(14)).not.toContain(crew.unsent.outOfTouchNote)
  expect(note(15)).toContain('Out of touch for 15 minutes.')
  expect(note(15)).toContain(crew.unsent.outOfTouchNote)
})

test('a refusal says every reason, and keeps what was written', () => {
  const note = renderToStaticMarkup(
    <RefusedNote title="Claim" reasons={['One.', 'Two.']} written={<p>my words</p>} />
  )
  expect(note).toContain('<li>One.</li><li>Two.</li>')
  expect(note).toContain('my words')
})

test('no component writes a style into the markup, where the policy would drop it', async () => {
  for (const language of languages) {
    const [text, lead] = [await messages(language), await leadMessages(language)]
    const everything = renderToStaticMarkup(
      <>
        <Gallery text={text} />
        <PhoneScreen text={text} />
        <WideScreen text={text} lead={lead} />
        <NotFound language={language} />
        <WentWrong language={language} onAgain={nothing} />
      </>
    )
    expect(everything).not.toMatch(/ style=|<style/)
  }
})
