/** The orchard's own picture from above, under the map. */

export const aerial = {
  title: 'Picture from above',
  note: 'Your own photo of the orchard, under the map',
  lead: 'Lay a photo of the orchard, taken straight down, under the map. Use one that is yours or that you may use. Leads and managers see it when they ask for it; the crew’s phones do not fetch it.',
  choose: 'Choose a picture',
  chooseOther: 'Choose another picture',
  working: 'Making it smaller on this device…',
  stripped:
    'It is made smaller here, and what the camera wrote into it, like place and time, is left out.',
  notRead: 'This picture cannot be read. Choose a JPEG or PNG.',
  tooLarge:
    'This picture cannot be made small enough. Choose a smaller one, or cut it to the orchard.',
  pointsTitle: 'Three trees that you know in it',
  pointsNote:
    'Choose trees far apart and not in one line. For each, tap it in the picture, or write how far from the left and the top it is, then write its tag.',
  point: (no: number) => `Tree ${no}`,
  whichPoint: 'Which tree do you tap?',
  picture: 'The picture. Tap where the tree stands.',
  fromLeft: 'From the left, %',
  fromTop: 'From the top, %',
  writeShare: 'Write a number from 0 to 100.',
  tag: 'Its tag',
  noTree: 'No such tree. Write it as on its tag, like S 7·14.',
  noPlace: 'This tree has no place on the map yet. Choose one that has.',
  opacity: 'How strong it shows',
  weaker: 'Weaker',
  stronger: 'Stronger',
  preview: 'As it will lie under the map',
  notYet: 'Give all three trees, then see it here.',
  oneLine: 'The three lie almost on one line. Choose one that is farther to the side.',
  mirrored: 'The picture would lie as in a mirror: two of the trees are swapped.',
  stretched: (times: string) =>
    `The picture would be stretched ${times} times in one direction. One of the three is likely another tree.`,
  save: 'Put it under the map',
  saved: 'It is under the map.',
  remove: 'Remove the picture',
  show: 'Picture',
  showTiles: 'Ground from another site',
  hideTiles: 'Hide the ground',
  tilesFrom: (host: string) =>
    `The pictures come from ${host}. This device asks there, and that server sees which ground is looked at.`,
  hide: 'Hide the picture',
  coming: 'Fetching the picture…',
  notCome: 'The picture did not come. Try again when there is signal.',
}
