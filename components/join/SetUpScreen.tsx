'use client'

import dynamic from 'next/dynamic'
import { useState } from 'react'

import { useLeadWords } from '../layout/Words'
import { CodeField } from './CodeField'
import { JoinFrame } from './JoinFrame'
import { LanguageFirst } from './LanguageFirst'
import { SetUpForm } from './SetUpForm'
import { useCodeInLink } from './use-code'

/** Few come with one. */
const ArchiveSetUp = dynamic(async () => (await import('../bring-in/ArchiveSetUp')).ArchiveSetUp, {
  ssr: false,
  loading: () => <ArchiveComing />,
})

function ArchiveComing() {
  const { takeOut } = useLeadWords()
  return (
    <JoinFrame>
      <h1>{takeOut.inTitle}</h1>
    </JoinFrame>
  )
}

/** The first manager makes the orchard, by the code that an empty Rowcall prints. */
export function SetUpScreen() {
  const { setUp } = useLeadWords()
  const inLink = useCodeInLink()
  const [typed, setTyped] = useState<string | null>(null)
  const code = typed ?? inLink
  const [hasArchive, setHasArchive] = useState(false)
  if (code && hasArchive) {
    return <ArchiveSetUp code={code} onBack={() => setHasArchive(false)} />
  }
  if (code) return <SetUpForm code={code} onArchive={() => setHasArchive(true)} />
  return (
    <JoinFrame>
      <h1>{setUp.title}</h1>
      {code === '' && (
        <>
          <p>{setUp.noCode}</p>
          <LanguageFirst />
          <CodeField label={setUp.codeLabel} action={setUp.useCode} onCode={setTyped} />
        </>
      )}
    </JoinFrame>
  )
}
