import { Icon } from './Icon'

type ZoomButtonsProps = {
  inLabel: string
  outLabel: string
  onIn: () => void
  onOut: () => void
}

/** Plus and minus over a map, so that nothing needs two fingers. */
export function ZoomButtons({ inLabel, outLabel, onIn, onOut }: ZoomButtonsProps) {
  return (
    <div className="zoom">
      <button type="button" aria-label={inLabel} onClick={onIn}>
        <Icon name="plus" />
      </button>
      <button type="button" aria-label={outLabel} onClick={onOut}>
        <Icon name="minus" />
      </button>
    </div>
  )
}
