/** The sheet that goes to a licensed arborist, on paper. */

export const referral = {
  title: 'Referral to a licensed arborist',
  print: 'Print',
  back: 'Back to the flags',
  onPaper: 'A4 or Letter, one page a tree, good in black and white.',
  over: 'This flag is over. There is nothing to refer.',
  none: 'No tree is flagged for the arborist.',
  decides:
    'Reported by people who are no arborists. A licensed arborist judges and decides; local rules win.',

  orchard: 'Orchard',
  tree: 'Tree',
  kind: 'Kind',
  height: 'Height',
  notMeasured: 'not measured',
  where: 'Where',
  rowAndTree: (block: string, row: number, place: number) =>
    `${block}, row ${row}, tree ${place} of the row`,
  coordinates: 'Coordinates',
  reckoned: 'Reckoned from the corner of the block, some metres either way.',
  notSurveyed: 'Nobody has measured this tree. Go by block, row and tree.',
  access: 'Access',
  noAccess: 'Not written on the emergency card.',

  seen: 'What was seen',
  at: 'On the tree',
  howBad: 'How bad',
  keepOut: 'Keep-out',
  keepOutOf: (distance: string) => `${distance} around the tree, closed to the crew`,
  noKeepOut: 'Only the tree itself is closed',
  note: 'In their words',
  reported: 'Reported',
  reportedBy: (name: string, date: string, time: string) => `${name}, ${date}, ${time}`,
  since: 'Since then',
  notRead: 'Notes and photos could not be read. Print again when there is signal.',

  map: 'The trees around it',
  northUp: 'North is up',
  rowsUp: 'Not measured: rows run up the page, not north',
  scale: (distance: string) => `${distance} long`,
  thisTree: 'this tree',
  otherTree: 'another tree: row·tree',
  closedGround: 'keep-out',
  photo: (no: number) => `Photo ${no}`,

  forArborist: 'For the arborist',
  name: 'Name, company',
  licence: 'Licence number',
  done: 'What was done',
  date: 'Date',
  signature: 'Signature',
}
