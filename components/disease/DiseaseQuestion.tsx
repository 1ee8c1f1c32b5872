'use client'

import { useSelect } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { signWords } from '../tree/flag-words'
import { Segmented } from '../ui/Segmented'
import { SelectField } from '../ui/SelectField'
import { type Question, signsOf } from './question'

type DiseaseQuestionProps = { question: Question; onChange: (question: Question) => void }

/** Which sign, where, which flags count, and how far round the sick trees. */
export function DiseaseQuestion({ question, onChange }: DiseaseQuestionProps) {
  const words = useWords()
  const { disease } = useLeadWords()
  const signs = useSelect((view) => signsOf(view.state?.flags ?? {}))
  const blocks = useSelect((view) => view.sheet?.blocks ?? [])
  return (
    <div className="disease-question">
      <SelectField
        label={disease.sign}
        options={[
          { value: '', label: disease.anySign },
          ...signs.map(({ sign, trees }) => ({
            value: sign,
            label: `${signWords(words, 'disease', sign)} (${trees})`,
          })),
        ]}
        value={question.sign ?? ''}
        onChange={(sign) => onChange({ ...question, sign: sign === '' ? null : sign })}
      />
      <SelectField
        label={disease.where}
        options={[
          { value: '', label: disease.everywhere },
          ...blocks.map(({ no, name }) => ({ value: String(no), label: name })),
        ]}
        value={question.block === null ? '' : String(question.block)}
        onChange={(no) => onChange({ ...question, block: no === '' ? null : Number(no) })}
      />
      <Segmented
        label={disease.which}
        options={[
          { value: 'all', label: disease.suspectedToo },
          { value: 'confirmed', label: disease.confirmedOnly },
        ]}
        value={question.confirmedOnly ? 'confirmed' : 'all'}
        onChange={(which) => onChange({ ...question, confirmedOnly: which === 'confirmed' })}
      />
      <Segmented
        label={disease.howFar}
        options={[
          { value: '1', label: disease.ring1 },
          { value: '2', label: disease.ring2 },
        ]}
        value={question.rings === 1 ? '1' : '2'}
        onChange={(rings) => onChange({ ...question, rings: rings === '1' ? 1 : 2 })}
      />
    </div>
  )
}
