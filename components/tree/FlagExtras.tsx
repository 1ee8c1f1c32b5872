'use client'

import { useWords } from '../layout/Words'
import { TextArea } from '../ui/TextArea'
import type { FlagDraft } from './flag-draft'
import { PhotoPick } from './PhotoPick'

type FlagExtrasProps = {
  flag: FlagDraft
  onChange: (part: Partial<FlagDraft>) => void
  /** Kept at once: it is large, and the next thing may be the end of the page. */
  onPhoto: (jpeg: string) => void
  beforeCamera: () => Promise<void>
}

/** As long as a note may be. */
const longestNote = 500

/** A photo and a few words, for who likes. */
export function FlagExtras({ flag, onChange, onPhoto, beforeCamera }: FlagExtrasProps) {
  const { flag: text } = useWords()
  return (
    <>
      <PhotoPick
        title={text.photo}
        hint={text.photoHint}
        jpeg={flag.photo}
        onPhoto={onPhoto}
        onAway={() => onChange({ photo: null })}
        beforeCamera={beforeCamera}
      />
      <TextArea
        label={text.note}
        hint={text.noteHint}
        value={flag.note}
        onChange={(note) => onChange({ note })}
        maxLength={longestNote}
      />
    </>
  )
}
