/**
 * A short tone of our own, and vibration, as far as the browser allows. Browsers keep a page silent until it
 * was touched, so every touch turns it on, and screens can ask whether it is.
 */

export type Sound = 'on' | 'locked' | 'none'
export type Tone = 'call' | 'stop'

/** Notes of a tone, one after the other. A call asks, rising; a stop falls, and is longer. */
const notes: Record<Tone, readonly number[]> = { call: [660, 880], stop: [880, 660, 880, 660] }
const noteS = 0.22
const pulseMs: Record<Tone, number[]> = { call: [200, 100, 200], stop: [600, 200, 600] }

let context: AudioContext | null = null
const listeners = new Set<() => void>()

export function soundNow(): Sound {
  if (typeof AudioContext === 'undefined') return 'none'
  return context?.state === 'running' ? 'on' : 'locked'
}

export function onSoundChange(listener: () => void): () => void {
  listeners.add(listener)
  return () => listeners.delete(listener)
}

/** Only of use while somebody touches the page, or has touched it. */
export async function turnOnSound(): Promise<void> {
  if (typeof AudioContext === 'undefined') return
  if (context === null) {
    context = new AudioContext()
    // A telephone call or a closed cover may take the sound away again.
    context.onstatechange = tell
  }
  if (context.state !== 'running') await context.resume().catch(() => {})
  tell()
}

/** From now on every press keeps the sound on. */
export function listenForTouch(): () => void {
  if (navigator.userActivation?.hasBeenActive) void turnOnSound()
  const touched = () => {
    if (soundNow() === 'locked') void turnOnSound()
  }
  // Click and not pointerdown: what appears or goes must not move under a finger that is still down.
  for (const kind of ['click', 'keydown']) addEventListener(kind, touched, true)
  return () => {
    for (const kind of ['click', 'keydown']) removeEventListener(kind, touched, true)
  }
}

export function canVibrate(): boolean {
  return typeof navigator !== 'undefined' && typeof navigator.vibrate === 'function'
}

export function ring(tone: Tone): void {
  // Before a first touch it would only be refused, with a warning in the console.
  if (canVibrate() && navigator.userActivation?.hasBeenActive) navigator.vibrate(pulseMs[tone])
  if (context?.state !== 'running') return
  const { destination, currentTime } = context
  for (const [at, hertz] of notes[tone].entries())
    play(context, destination, currentTime + at * noteS, hertz)
}

function play(audio: AudioContext, to: AudioNode, at: number, hertz: number): void {
  const [oscillator, volume] = [audio.createOscillator(), audio.createGain()]
  oscillator.type = 'triangle'
  oscillator.frequency.value = hertz
  // Softened at both ends, or it clicks.
  volume.gain.setValueAtTime(0, at)
  volume.gain.linearRampToValueAtTime(0.9, at + 0.02)
  volume.gain.setValueAtTime(0.9, at + noteS - 0.05)
  volume.gain.linearRampToValueAtTime(0, at + noteS)
  oscillator.connect(volume).connect(to)
  oscillator.start(at)
  oscillator.stop(at + noteS)
}

function tell(): void {
  for (const listener of listeners) listener()
}
