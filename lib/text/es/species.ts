import type { species as en } from '../en/species'

/** Apricots and peaches have one name in Spain and another in Mexico and California. */
export const species: typeof en = {
  almond: { name: 'almendro', a: 'un almendro', many: 'almendros' },
  apple: { name: 'manzano', a: 'un manzano', many: 'manzanos' },
  apricot: {
    name: 'albaricoquero (chabacano)',
    a: 'un albaricoquero (chabacano)',
    many: 'albaricoqueros (chabacanos)',
  },
  cherry: { name: 'cerezo', a: 'un cerezo', many: 'cerezos' },
  european_plum: {
    name: 'ciruelo europeo',
    a: 'un ciruelo europeo',
    many: 'ciruelos europeos',
  },
  fig: { name: 'higuera', a: 'una higuera', many: 'higueras' },
  japanese_plum: {
    name: 'ciruelo japonés',
    a: 'un ciruelo japonés',
    many: 'ciruelos japoneses',
  },
  medlar: { name: 'níspero europeo', a: 'un níspero europeo', many: 'nísperos europeos' },
  mulberry: { name: 'morera', a: 'una morera', many: 'moreras' },
  nectarine: { name: 'nectarino', a: 'un nectarino', many: 'nectarinos' },
  olive: { name: 'olivo', a: 'un olivo', many: 'olivos' },
  other: {
    name: 'árbol de otra clase',
    a: 'un árbol de otra clase',
    many: 'árboles de otra clase',
  },
  peach: {
    name: 'melocotonero (durazno)',
    a: 'un melocotonero (durazno)',
    many: 'melocotoneros (duraznos)',
  },
  pear: { name: 'peral', a: 'un peral', many: 'perales' },
  persimmon: { name: 'caqui', a: 'un caqui', many: 'caquis' },
  plum: { name: 'ciruelo', a: 'un ciruelo', many: 'ciruelos' },
  pomegranate: { name: 'granado', a: 'un granado', many: 'granados' },
  quince: { name: 'membrillero', a: 'un membrillero', many: 'membrilleros' },
  sour_cherry: { name: 'guindo', a: 'un guindo', many: 'guindos' },
  walnut: { name: 'nogal', a: 'un nogal', many: 'nogales' },
}
