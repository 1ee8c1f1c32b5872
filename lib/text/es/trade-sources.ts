import type { tradeSources as en } from '../en/trade-sources'

export const tradeSources: typeof en = {
  ansi_a300: 'ANSI A300-1995, 5.3.1, según una reimpresión; ya sustituida',
  apricot_reference: 'una referencia general sobre albaricoqueros; coincide con la práctica común',
  garden_press: 'prensa de jardinería',
  garden_references: 'referencias generales de jardinería',
  master_gardener_column: 'columna de UC Master Gardener, San Joaquin',
  master_gardener_pages: 'páginas de UC Master Gardener',
  scottsdale: 'Ciudad de Scottsdale',
  uc_anr_8502: 'UC ANR, publicación 8502 (2014)',
  uc_ipm_74109: 'UC IPM, boletín 74109',
  uc_ipm_apricot: 'UC IPM, guía de plagas del albaricoquero',
  uc_ipm_cherry: 'UC IPM, guía de plagas del cerezo',
  uc_ipm_wsu_fire_blight: 'UC IPM, boletín 7414, en reposo; WSU 2018 en crecimiento',
  us_park_service: 'US National Park Service, seguridad para podadores',
  wisconsin: 'Programa forestal de Wisconsin',
  wsu_2025: 'Universidad Estatal de Washington, diciembre de 2025',
}
