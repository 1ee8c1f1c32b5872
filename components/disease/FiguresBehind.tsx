'use client'

import { useState } from 'react'

import { knownHosts } from '@/lib/domain/disease/hosts'
import type { Figures } from '@/lib/domain/disease/pattern'
import type { Survey } from '@/lib/domain/disease/survey'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { Button } from '../ui/Button'

/** For whoever wants to know how it was counted. */
export function FiguresBehind({ survey }: { survey: Survey }) {
  const { disease } = useLeadWords()
  const [isOpen, setIsOpen] = useState(false)
  const { pattern } = survey
  return (
    <section className="disease-part" aria-label={disease.figures}>
      <Button icon="info" expanded={isOpen} onPress={() => setIsOpen(!isOpen)}>
        {isOpen ? disease.hideFigures : disease.showFigures}
      </Button>
      {isOpen && (
        <>
          {pattern.state === 'defined' && <FigureLines figures={pattern} />}
          {disease.method.map((sentence) => (
            <p key={sentence} className="small">
              {sentence}
            </p>
          ))}
          <h3>{disease.hosts}</h3>
          {/* What is published keeps its name. */}
          <ul className="disease-sources" lang="en">
            {knownHosts.map(({ source }) => (
              <li key={source} className="small">
                {source}
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  )
}

function FigureLines({ figures }: { figures: Figures }) {
  const { disease } = useLeadWords()
  const format = useFormat()
  const { figure } = disease
  const { counts, expected, shuffled, formula, rows, dispersion } = figures
  const two = (value: number) => format.number(value, 2)
  const p = (value: number) => format.number(value, 3)
  const orNot = <Value,>(value: Value | null, say: (value: Value) => string) =>
    value === null ? figure.notDefined : say(value)
  const mixed = formula?.moments.oneSick.mean
  const lines = [
    [figure.pairs, figure.ofChance(format.number(counts.bothSick), two(expected))],
    [
      figure.mixed,
      mixed === undefined
        ? format.number(counts.oneSick)
        : figure.ofChance(format.number(counts.oneSick), two(mixed)),
    ],
    [figure.chanceOf, figure.inShuffles(p(shuffled.pAtLeast), format.number(shuffled.rounds))],
    [figure.z, formula ? orNot(formula.z, two) : figure.severalKinds],
    [
      figure.moran,
      formula
        ? orNot(formula.moran, ({ i, mean }) =>
            figure.moranValue(two(i), two(mean), p(shuffled.pMoran))
          )
        : figure.severalKinds,
    ],
    [
      figure.rows,
      orNot(rows, ({ together, rows, z }) =>
        figure.rowsValue(format.number(together), format.number(rows), two(z))
      ),
    ],
    [
      figure.quadrats,
      orNot(dispersion, ({ index, quadrats, pAtLeast }) =>
        figure.quadratsValue(two(index), format.number(quadrats), p(pAtLeast))
      ),
    ],
  ] as const
  return (
    <dl className="disease-figures">
      {lines.map(([what, value]) => (
        <div key={what}>
          <dt>{what}</dt>
          <dd className="num">{value}</dd>
        </div>
      ))}
    </dl>
  )
}
