'use client'

import { useLeadWords } from '../crew/use-lead-words'

/** As the map draws them: a whole ring, a broken one, and the ground between. */
export function DiseaseLegend() {
  const { disease } = useLeadWords()
  const ring = { r: 9, fill: 'none', stroke: 'var(--sick)', strokeWidth: 3 }
  const items = [
    { word: disease.confirmed, sign: <circle {...ring} /> },
    { word: disease.suspected, sign: <circle {...ring} strokeDasharray="4 4" /> },
    { word: disease.toScout, sign: <circle r="11" fill="var(--sick)" fillOpacity="0.3" /> },
  ]
  return (
    <ul className="legend disease-legend" aria-label={disease.legend}>
      {items.map(({ word, sign }) => (
        <li key={word}>
          <svg width="24" height="24" viewBox="-12 -12 24 24" aria-hidden="true">
            {sign}
          </svg>
          {word}
        </li>
      ))}
    </ul>
  )
}
