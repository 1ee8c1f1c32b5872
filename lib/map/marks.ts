/**
 * The marks on the canvas, shape first: the same shapes as `components/ui/mark-shapes`, in the
 * same units (a box of 17 round the middle). All marks of one kind are one path.
 */

import type { Mark } from '@/lib/domain/orchard/status'

import type { Palette } from './palette'

/** Middles of marks of one kind, in canvas pixels: x, y, x, y. */
export type Middles = readonly number[]

/** `unit` is the pixels of one unit; a mark is legible from 8 / 17 upwards. */
export function drawMarks(
  context: CanvasRenderingContext2D,
  mark: Mark,
  middles: Middles,
  { unit, palette }: { unit: number; palette: Palette }
): void {
  if (middles.length === 0) return
  const pen: Pen = {
    fill: (colour, trace) => {
      context.fillStyle = colour
      tracing(context, middles, trace)
      context.fill()
    },
    stroke: (colour, width, trace) => {
      context.strokeStyle = colour
      // Below about a pixel a line turns grey, so it is kept.
      context.lineWidth = Math.max(1, width * unit)
      tracing(context, middles, trace)
      context.stroke()
    },
    path: context,
    unit,
  }
  shapes[mark](pen, palette)
}

type Trace = (x: number, y: number) => void

type Pen = {
  fill: (colour: string, trace: Trace) => void
  stroke: (colour: string, width: number, trace: Trace) => void
  path: CanvasRenderingContext2D
  unit: number
}

const shapes: Record<Mark, (pen: Pen, palette: Palette) => void> = {
  unpruned: (pen, { paper, unpruned }) => {
    pen.fill(paper, disc(pen, 5.3))
    pen.stroke(unpruned, 2.6, disc(pen, 5.3))
  },
  in_progress: (pen, { paper, in_progress }) => {
    pen.fill(paper, disc(pen, 5.4))
    pen.stroke(in_progress, 2.4, disc(pen, 5.4))
    pen.fill(in_progress, lowerHalf(pen, 6.3))
  },
  done: (pen, { done }) => pen.fill(done, disc(pen, 6.5)),
  disease: (pen, { disease, paper }) => {
    pen.fill(disease, polygon(pen, [0, -8, 8, 0, 0, 8, -8, 0]))
    pen.fill(paper, disc(pen, 2.1))
  },
  arborist: (pen, { arborist, paper }) => {
    const triangle = polygon(pen, [0, -7.6, 8, 6.4, -8, 6.4])
    // A thin halo: this colour stands least clear of the canopy.
    pen.stroke(paper, 3, triangle)
    pen.fill(arborist, triangle)
    pen.stroke(paper, 2, lines(pen, [0, -2.6, 0, 2, 0, 3.2, 0, 5]))
  },
  held_by_me: (pen, { called, ink }) => {
    pen.fill(called, disc(pen, 6.4))
    pen.stroke(ink, 2.6, disc(pen, 6.4))
    pen.fill(ink, disc(pen, 2.6))
  },
  dealt_to_me: (pen, { called, ink }) => {
    const peg = polygon(pen, [-5.4, -6.7, 5.4, -6.7, 5.4, 0.6, 0, 7.4, -5.4, 0.6])
    pen.fill(called, peg)
    pen.stroke(ink, 2.2, peg)
  },
  closed: (pen, { ink, paper }) => {
    pen.fill(ink, polygon(pen, [-7, -7, 7, -7, 7, 7, -7, 7]))
    pen.stroke(paper, 3, lines(pen, [-4, 0, 4, 0]))
  },
}

function tracing(context: CanvasRenderingContext2D, middles: Middles, trace: Trace): void {
  context.beginPath()
  for (let at = 0; at < middles.length; at += 2) trace(middles[at] ?? 0, middles[at + 1] ?? 0)
}

function disc({ path, unit }: Pen, radius: number): Trace {
  return (x, y) => {
    path.moveTo(x + radius * unit, y)
    path.arc(x, y, radius * unit, 0, 2 * Math.PI)
  }
}

function lowerHalf({ path, unit }: Pen, radius: number): Trace {
  return (x, y) => {
    path.moveTo(x + radius * unit, y)
    path.arc(x, y, radius * unit, 0, Math.PI)
  }
}

function polygon({ path, unit }: Pen, corners: readonly number[]): Trace {
  return (x, y) => {
    for (let at = 0; at < corners.length; at += 2) {
      const corner = [x + (corners[at] ?? 0) * unit, y + (corners[at + 1] ?? 0) * unit] as const
      if (at === 0) path.moveTo(...corner)
      else path.lineTo(...corner)
    }
    path.closePath()
  }
}

/** Separate lines: from x, y to x, y each. */
function lines({ path, unit }: Pen, ends: readonly number[]): Trace {
  return (x, y) => {
    for (let at = 0; at < ends.length; at += 4) {
      path.moveTo(x + (ends[at] ?? 0) * unit, y + (ends[at + 1] ?? 0) * unit)
      path.lineTo(x + (ends[at + 2] ?? 0) * unit, y + (ends[at + 3] ?? 0) * unit)
    }
  }
}
