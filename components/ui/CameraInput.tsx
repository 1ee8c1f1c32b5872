import type { RefObject } from 'react'

type CameraInputProps = {
  /** Its `click` opens the camera. */
  input: RefObject<HTMLInputElement | null>
  onFile: (file: File) => void
}

/** The hidden field behind a button that opens the camera, or the phone's own pictures. */
export function CameraInput({ input, onFile }: CameraInputProps) {
  return (
    <input
      ref={input}
      hidden
      type="file"
      accept="image/*"
      capture="environment"
      onChange={(event) => {
        const [file] = event.target.files ?? []
        // The same file again is a choice, too.
        event.target.value = ''
        if (file) onFile(file)
      }}
    />
  )
}
