import type { ReactNode } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, test } from 'vitest'

import { Button } from '@/components/ui/Button'
import { ButtonLink } from '@/components/ui/ButtonLink'
import { CheckRow } from '@/components/ui/CheckRow'
import { Dialog } from '@/components/ui/Dialog'
import { initialsOf } from '@/components/ui/Face'
import { Icon } from '@/components/ui/Icon'
import { iconShapes } from '@/components/ui/icon-shapes'
import { markShapes } from '@/components/ui/mark-shapes'
import { NetBadge } from '@/components/ui/NetBadge'
import { Pick } from '@/components/ui/Pick'
import { Plate } from '@/components/ui/Plate'
import { RowLine } from '@/components/ui/RowLine'
import { Segmented } from '@/components/ui/Segmented'
import { Sprite } from '@/components/ui/Sprite'
import { Step, Steps } from '@/components/ui/Steps'
import { TextField } from '@/components/ui/TextField'
import { Tile } from '@/components/ui/Tile'
import { ZoomButtons } from '@/components/ui/ZoomButtons'
import { nothing } from './gallery/nothing'

const html = (content: ReactNode) => renderToStaticMarkup(content)

describe('a button', () => {
  test('that is off stays focusable, says so, names its reason and never submits', () => {
    const off = html(
      <Button kind="call" type="submit" state="off" describedBy="reason">
        Claim
      </Button>
    )

    expect(off).toMatch(/^<button type="button"/)
    expect(off).toContain('aria-disabled="true"')
    expect(off).toContain('aria-describedby="reason"')
    expect(off).toContain('class="btn is-call is-off"')
    expect(off).not.toMatch(/\sdisabled/)
  })

  test('that is ready submits when asked to', () => {
    expect(html(<Button type="submit">Save</Button>)).toMatch(/^<button type="submit" class="btn">/)
  })

  test('that waits is not pressed twice', () => {
    const waiting = html(<Button state="waiting">Kept</Button>)
    expect(waiting).toContain('is-wait')
    expect(waiting).toContain('aria-disabled="true"')
  })

  test('without words takes its name from the label', () => {
    expect(html(<Button icon="cross" label="Close" />)).toContain('aria-label="Close"')
  })

  test('that leads somewhere is a link; off, it leads nowhere but is still found', () => {
    expect(html(<ButtonLink href="/ready">Go</ButtonLink>)).toContain('href="/ready"')
    const off = html(
      <ButtonLink href="/ready" state="off" describedBy="reason">
        Go
      </ButtonLink>
    )
    expect(off).not.toContain('href')
    expect(off).toContain('role="link"')
    expect(off).toContain('tabindex="0"')
  })
})

describe('choices are real radios and boxes', () => {
  test('one of a few: a group with a name, one radio each, one of them chosen', () => {
    const options = [
      { value: 'en', label: 'English' },
      { value: 'es', label: 'Español', lang: 'es' },
    ]
    const seg = html(<Segmented label="Language" options={options} value="es" onChange={nothing} />)

    expect(seg).toContain('<legend class="lab">Language</legend>')
    expect(seg.match(/type="radio"/g)).toHaveLength(2)
    expect(seg.match(/checked=""/g)).toHaveLength(1)
    expect(seg).toContain('lang="es"')
  })

  test.each([
    [
      'pick',
      <Pick key="" type="checkbox" checked onChange={nothing}>
        Blunt
      </Pick>,
    ],
    [
      'tile',
      <Tile key="" type="checkbox" checked onChange={nothing}>
        Blunt
      </Tile>,
    ],
    [
      'check',
      <CheckRow key="" checked onChange={nothing}>
        Blunt
      </CheckRow>,
    ],
  ])('%s', (_, choice) => {
    expect(html(choice)).toMatch(/^<label[^>]*><input[^>]*type="checkbox"[^>]*checked=""/)
    expect(html(choice)).toContain('Blunt')
  })
})

test('a field keeps what was typed, and ties its label, hint and fault to it', () => {
  const field = html(
    <TextField label="Name" hint="Crew only" fault="Write a name" value=" M" onChange={nothing} />
  )
  const id = /<input id="([^"]+)"/.exec(field)?.[1]

  expect(field).toContain(`for="${id}"`)
  expect(field).toContain(`aria-describedby="${id}-hint ${id}-fault"`)
  expect(field).toContain('aria-invalid="true"')
  expect(field).toContain('value=" M"')
})

test('the open step is the current one, and a done one is done for the ear as well', () => {
  const steps = html(
    <Steps>
      <Step state="done" title="Dead wood out" doneWord="done" />
      <Step state="now" number={2} title="Open the centre" doneWord="done" />
    </Steps>
  )
  expect(steps.match(/aria-current="step"/g)).toHaveLength(1)
  expect(steps).toContain('aria-label="done"')
})

test.each([
  ['plate', <Plate key="" label="S, row 7" cells={[{ word: 'Row', sign: '7' }]} />, 'S, row 7'],
  [
    'row line',
    <RowLine key="" label="Topic 2 of 3" steps={['done', 'now', 'later']} />,
    'Topic 2 of 3',
  ],
  ['icon with a name', <Icon key="" name="check" label="done" />, 'done'],
])('a %s is a picture with a name', (_, picture, name) => {
  expect(html(picture)).toContain('role="img"')
  expect(html(picture)).toContain(`aria-label="${name}"`)
})

test('an icon beside a word is silent', () => {
  expect(html(<Icon name="flag" />)).toContain('aria-hidden="true"')
})

test('the sprite has every icon and every mark once', () => {
  const ids = [...html(<Sprite />).matchAll(/<symbol id="([^"]+)"/g)].map(([, id]) => id)
  const wanted = [
    ...Object.keys(iconShapes).map((name) => `i-${name}`),
    ...Object.keys(markShapes).map((name) => `m-${name}`),
  ]
  expect(ids).toEqual(wanted)
})

test('the signal is announced, and while all is sent only the ear gets words', () => {
  expect(html(<NetBadge state="kept">3 kept</NetBadge>)).toContain(
    '<span role="status">3 kept</span>'
  )
  expect(html(<NetBadge state="sent">All sent</NetBadge>)).toContain(
    '<span role="status" class="sr">'
  )
})

test('a dialog is named by its title and can be closed by a named button', () => {
  const dialog = html(
    <Dialog open={false} title="Which tree?" onClose={nothing} closeLabel="Close">
      …
    </Dialog>
  )
  const titleId = /aria-labelledby="([^"]+)"/.exec(dialog)?.[1]
  expect(dialog).toContain(`<h2 id="${titleId}">Which tree?</h2>`)
  expect(dialog).toContain('aria-label="Close"')
})

test('plus and minus have names', () => {
  const zoom = html(
    <ZoomButtons inLabel="Closer" outLabel="Further" onIn={nothing} onOut={nothing} />
  )
  expect(zoom.match(/<button type="button" aria-label="(Closer|Further)"/g)).toHaveLength(2)
})

test.each([
  ['Marta Olvera', 'MO'],
  ['Inés María Carrizo', 'IC'],
  ['teo', 'TE'],
  ['Ñ', 'Ñ'],
  ['  ', ''],
])('the initials of %s are %s', (name, initials) => {
  expect(initialsOf(name)).toBe(initials)
})
