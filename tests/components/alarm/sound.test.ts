import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'

/** A browser that is silent until it may speak, and writes down the notes it was asked for. */
function aBrowser() {
  const notes: number[] = []
  const contexts: FakeContext[] = []
  class FakeContext {
    state = 'suspended'
    currentTime = 0
    destination = {}
    onstatechange: (() => void) | null = null
    mayStart = true
    constructor() {
      contexts.push(this)
    }
    async resume() {
      if (!this.mayStart) throw new Error('Not allowed.')
      this.state = 'running'
    }
    createOscillator() {
      const frequency = { value: 0 }
      const node = { type: '', frequency, connect: (to: unknown) => to, stop: () => {} }
      return { ...node, start: () => notes.push(frequency.value) }
    }
    createGain() {
      const gain = { setValueAtTime: () => {}, linearRampToValueAtTime: () => {} }
      return { gain, connect: (to: unknown) => to }
    }
  }
  return { notes, contexts, FakeContext }
}

/** As it is when the page is opened: what is on or off is remembered by the module. */
async function opened() {
  vi.resetModules()
  return import('@/components/alarm/sound')
}

beforeEach(() => vi.stubGlobal('navigator', {}))
afterEach(() => vi.unstubAllGlobals())

describe('a device', () => {
  test('whose browser makes no sound says so, and ringing harms nothing', async () => {
    vi.stubGlobal('AudioContext', undefined)
    const { soundNow, turnOnSound, ring, canVibrate } = await opened()

    await turnOnSound()
    ring('call')

    expect(soundNow()).toBe('none')
    expect(canVibrate()).toBe(false)
  })

  test('is silent until the sound is turned on, then plays a tone of its own for calls and for stops', async () => {
    const { notes, FakeContext } = aBrowser()
    vi.stubGlobal('AudioContext', FakeContext)
    const { soundNow, turnOnSound, ring } = await opened()

    ring('call')
    expect([soundNow(), notes]).toEqual(['locked', []])
    await turnOnSound()
    ring('call')
    const call = notes.splice(0)
    ring('stop')

    expect(soundNow()).toBe('on')
    expect(call.length).toBeGreaterThan(0)
    expect(notes).not.toEqual(call)
  })

  test('that may not start stays silent, and one whose sound was taken away says so at once', async () => {
    const { contexts, FakeContext } = aBrowser()
    vi.stubGlobal('AudioContext', FakeContext)
    const { soundNow, turnOnSound, onSoundChange } = await opened()
    const heard: string[] = []
    const stop = onSoundChange(() => heard.push(soundNow()))

    await turnOnSound()
    const [context] = contexts
    if (context) Object.assign(context, { state: 'interrupted', mayStart: false })
    context?.onstatechange?.()
    await turnOnSound()
    stop()

    expect(heard).toEqual(['on', 'locked', 'locked'])
  })

  test('vibrates only once it was touched, or the browser would complain', async () => {
    vi.stubGlobal('AudioContext', undefined)
    const vibrate = vi.fn()
    const userActivation = { hasBeenActive: false }
    vi.stubGlobal('navigator', { vibrate, userActivation })
    const { ring } = await opened()

    ring('stop')
    expect(vibrate).not.toHaveBeenCalled()
    userActivation.hasBeenActive = true
    ring('stop')
    expect(vibrate).toHaveBeenCalledOnce()
  })
})
