import type { ReactNode } from 'react'

import type { Drawing } from '@/lib/domain/safety/briefing-topics'
import { DiseaseDrawing, NestDrawing } from './drawings/Life'
import { KeepOutDrawing, LineDrawing, SawDrawing } from './drawings/SawAndLines'
import { LadderDrawing, SignalDrawing, ToolsDrawing } from './drawings/StopAndTools'
import { MinorDrawing, OffDrawing, ThunderDrawing, WetDrawing } from './drawings/TodayAndWho'
import { ColdDrawing, HeatDrawing, SlopeDrawing, WindDrawing } from './drawings/Weather'

/** One drawing a topic. Silent: the sentences below say what it shows. */
export function TopicDrawing({ name }: { name: Drawing }) {
  return (
    <svg className="topic-art" viewBox="0 0 358 176" aria-hidden="true">
      {drawingOf(name)}
    </svg>
  )
}

function drawingOf(name: Drawing): ReactNode {
  switch (name) {
    case 'signal':
      return <SignalDrawing />
    case 'tools':
      return <ToolsDrawing />
    case 'off':
      return <OffDrawing />
    case 'minor':
      return <MinorDrawing />
    case 'wet':
      return <WetDrawing />
    case 'thunder':
      return <ThunderDrawing />
    case 'ladder':
      return <LadderDrawing />
    case 'saw':
      return <SawDrawing />
    case 'keep_out':
      return <KeepOutDrawing />
    case 'line_over_rows':
      return <LineDrawing />
    case 'slope':
      return <SlopeDrawing />
    case 'heat':
      return <HeatDrawing />
    case 'cold':
      return <ColdDrawing />
    case 'wind':
      return <WindDrawing />
    case 'disease':
      return <DiseaseDrawing />
    case 'nest':
      return <NestDrawing />
  }
}
