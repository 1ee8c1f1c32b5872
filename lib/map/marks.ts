/**
 * The marks on the canvas, shape first: the same shapes as `components/ui/mark-shapes`, in the
 * same units (a box of 17 round the middle).
 */

import type { Mark } from '@/lib/domain/orchard/status'

import type { Palette } from './palette'

/** What an ordinary canvas and one off the screen have in common. */
export type Pencil = CanvasRenderingContext2D | OffscreenCanvasRenderingContext2D

/** Round the pencil's origin, in the palette's colours; legible from 8 pixels a side. */
export function drawMark(pencil: Pencil, mark: Mark, sidePx: number, palette: Palette): void {
  const unit = sidePx / 17
  pencil.save()
  pencil.scale(unit, unit)
  // Below a pixel a line turns grey, so none is thinner.
  shapes[mark]({ pencil, leastLine: 1 / unit }, palette)
  pencil.restore()
}

type Pen = { pencil: Pencil; leastLine: number }

const shapes: Record<Mark, (pen: Pen, palette: Palette) => void> = {
  unpruned: (pen, { paper, unpruned }) => {
    fill(pen, paper, disc(5.3))
    stroke(pen, unpruned, 2.6, disc(5.3))
  },
  in_progress: (pen, { paper, in_progress }) => {
    fill(pen, paper, disc(5.4))
    stroke(pen, in_progress, 2.4, disc(5.4))
    fill(pen, in_progress, (pencil) => pencil.arc(0, 0, 6.3, 0, Math.PI))
  },
  done: (pen, { done }) => fill(pen, done, disc(6.5)),
  disease: (pen, { disease, paper }) => {
    fill(pen, disease, polygon([0, -8, 8, 0, 0, 8, -8, 0]))
    fill(pen, paper, disc(2.1))
  },
  arborist: (pen, { arborist, paper }) => {
    const triangle = polygon([0, -7.6, 8, 6.4, -8, 6.4])
    // A thin halo: this colour stands least clear of the canopy.
    stroke(pen, paper, 3, triangle)
    fill(pen, arborist, triangle)
    stroke(pen, paper, 2, lines([0, -2.6, 0, 2, 0, 3.2, 0, 5]))
  },
  held_by_me: (pen, { called, ink }) => {
    fill(pen, called, disc(6.4))
    stroke(pen, ink, 2.6, disc(6.4))
    fill(pen, ink, disc(2.6))
  },
  dealt_to_me: (pen, { called, ink }) => {
    fill(pen, called, peg)
    stroke(pen, ink, 2.2, peg)
  },
  // Somebody's name is on it.
  dealt: (pen, { paper, ink }) => {
    fill(pen, paper, peg)
    stroke(pen, ink, 2.2, peg)
    stroke(pen, ink, 2.2, lines([-2.9, -2.2, 2.9, -2.2]))
  },
  closed: (pen, { ink, paper }) => {
    fill(pen, ink, polygon([-7, -7, 7, -7, 7, 7, -7, 7]))
    stroke(pen, paper, 3, lines([-4, 0, 4, 0]))
  },
}

type Trace = (pencil: Pencil) => void

function fill({ pencil }: Pen, colour: string, trace: Trace): void {
  pencil.beginPath()
  trace(pencil)
  pencil.fillStyle = colour
  pencil.fill()
}

function stroke({ pencil, leastLine }: Pen, colour: string, width: number, trace: Trace): void {
  pencil.beginPath()
  trace(pencil)
  pencil.strokeStyle = colour
  pencil.lineWidth = Math.max(leastLine, width)
  pencil.stroke()
}

function disc(radius: number): Trace {
  return (pencil) => pencil.arc(0, 0, radius, 0, 2 * Math.PI)
}

/** Corners as x, y, x, y. */
function polygon(corners: readonly number[]): Trace {
  return (pencil) => {
    for (let at = 0; at < corners.length; at += 2)
      pencil.lineTo(corners[at] ?? 0, corners[at + 1] ?? 0)
    pencil.closePath()
  }
}

/** Separate lines, each from x, y to x, y. */
function lines(ends: readonly number[]): Trace {
  return (pencil) => {
    for (let at = 0; at < ends.length; at += 4) {
      pencil.moveTo(ends[at] ?? 0, ends[at + 1] ?? 0)
      pencil.lineTo(ends[at + 2] ?? 0, ends[at + 3] ?? 0)
    }
  }
}

const peg = polygon([-5.4, -6.7, 5.4, -6.7, 5.4, 0.6, 0, 7.4, -5.4, 0.6])
