'use client'

import { useRef } from 'react'

import { Button } from '../ui/Button'

type FileButtonProps = {
  label: string
  onFile: (file: File | undefined) => void
  /** The next step of its screen, which a second file is not. */
  isCalled?: boolean
  accept?: string
}

/** The device's own picker behind a button. */
export function FileButton({
  label,
  onFile,
  isCalled = true,
  accept = '.csv,.txt,.tsv,.json,.geojson,text/csv,application/geo+json',
}: FileButtonProps) {
  const input = useRef<HTMLInputElement>(null)
  return (
    <>
      <input
        ref={input}
        hidden
        type="file"
        accept={accept}
        onChange={(event) => {
          const [file] = event.target.files ?? []
          onFile(file)
          // The same file, mended, is a file chosen again.
          event.target.value = ''
        }}
      />
      <Button kind={isCalled ? 'call' : 'plain'} onPress={() => input.current?.click()}>
        {label}
      </Button>
    </>
  )
}
