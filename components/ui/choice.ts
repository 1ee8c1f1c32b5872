/** A real radio or box, whatever is painted over it. A radio names its group. */
export type Choice = ({ type: 'radio'; name: string } | { type: 'checkbox'; name?: string }) & {
  checked: boolean
  onChange: (checked: boolean) => void
}
