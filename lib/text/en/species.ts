/** The species, alone, with an article and in number. Shown with a capital where a line begins. */

export const species = {
  almond: { name: 'almond', a: 'an almond', many: 'almonds' },
  apple: { name: 'apple', a: 'an apple', many: 'apples' },
  apricot: { name: 'apricot', a: 'an apricot', many: 'apricots' },
  cherry: { name: 'cherry', a: 'a cherry', many: 'cherries' },
  european_plum: { name: 'European plum', a: 'a European plum', many: 'European plums' },
  fig: { name: 'fig', a: 'a fig', many: 'figs' },
  japanese_plum: { name: 'Japanese plum', a: 'a Japanese plum', many: 'Japanese plums' },
  medlar: { name: 'medlar', a: 'a medlar', many: 'medlars' },
  mulberry: { name: 'mulberry', a: 'a mulberry', many: 'mulberries' },
  nectarine: { name: 'nectarine', a: 'a nectarine', many: 'nectarines' },
  olive: { name: 'olive', a: 'an olive', many: 'olives' },
  other: {
    name: 'tree of another kind',
    a: 'a tree of another kind',
    many: 'trees of another kind',
  },
  peach: { name: 'peach', a: 'a peach', many: 'peaches' },
  pear: { name: 'pear', a: 'a pear', many: 'pears' },
  persimmon: { name: 'persimmon', a: 'a persimmon', many: 'persimmons' },
  plum: { name: 'plum', a: 'a plum', many: 'plums' },
  pomegranate: { name: 'pomegranate', a: 'a pomegranate', many: 'pomegranates' },
  quince: { name: 'quince', a: 'a quince', many: 'quinces' },
  sour_cherry: { name: 'sour cherry', a: 'a sour cherry', many: 'sour cherries' },
  walnut: { name: 'walnut', a: 'a walnut', many: 'walnuts' },
}
