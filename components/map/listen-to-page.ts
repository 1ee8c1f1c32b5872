import type { Map as LeafletMap } from 'leaflet'

/** The box may change its size, the page its colours, the font may come late. Returns how to stop. */
export function listenToPage(map: LeafletMap, onNewColours: () => void) {
  let width = map.getSize().x
  const sizes = new ResizeObserver(() => {
    const { clientWidth } = map.getContainer()
    // Something below it grew or shrank: nothing moves under the thumb. A turned tablet keeps its middle.
    map.invalidateSize({ animate: false, pan: clientWidth !== width })
    width = clientWidth
  })
  sizes.observe(map.getContainer())

  const theme = new MutationObserver(onNewColours)
  theme.observe(document.documentElement, { attributeFilter: ['data-theme', 'class'] })

  const dusk = window.matchMedia('(prefers-color-scheme: dark)')
  dusk.addEventListener('change', onNewColours)
  document.fonts.addEventListener('loadingdone', onNewColours)
  return () => {
    sizes.disconnect()
    theme.disconnect()
    dusk.removeEventListener('change', onNewColours)
    document.fonts.removeEventListener('loadingdone', onNewColours)
  }
}
