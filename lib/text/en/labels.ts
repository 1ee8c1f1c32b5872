/** Labels for trees, and the poster by which a crew joins. */

import { plural } from './plural'

export const labels = {
  title: 'Print tree labels',
  link: 'Print tree labels',
  lead: 'Each label says block, row and tree, and has a code that opens the tree on whoever’s phone scans it.',
  block: 'Block',
  fromRow: 'From row',
  toRow: 'To row',
  rowsRange: (from: number, to: number) => `Write rows from ${from} to ${to}, the lower one first.`,
  noTrees: 'No tree stands in this block. Choose another one.',
  sheet: 'Sheet',
  sheets: {
    a4_cards: 'A4 plain paper, 8 cards of 105 × 74 mm to cut',
    a4_99x68: 'A4, 8 labels of 99.1 × 67.7 mm',
    a4_70x37: 'A4, 24 labels of 70 × 37 mm',
    a4_64x38: 'A4, 21 labels of 63.5 × 38.1 mm',
    letter_cards: 'US Letter plain paper, 8 cards of 4¼ × 2¾ in to cut',
    letter_102x51: 'US Letter, 10 labels of 4 × 2 in',
    letter_67x25: 'US Letter, 30 labels of 2⅝ × 1 in',
  },
  first: 'Begin at label',
  firstHint: 'For a sheet that is used in part: count from the top left, row by row.',
  firstRange: (most: number) => `Write a number from 1 to ${most}.`,
  count: (labels: number, sheets: number) =>
    `${plural(labels, '1 label', `${labels} labels`)} on ${plural(sheets, '1 sheet', `${sheets} sheets`)}`,
  tooMany: (most: number) => `Print at most ${most} labels at a time: choose fewer rows.`,
  print: 'Print the labels',
  howTo:
    'Print at 100 %, without margins, on the paper named above. Print one sheet on plain paper first and hold it against the labels.',
  preview: 'The sheets',
  sheetNo: (no: number) => `Sheet ${no}`,
  row: 'Row',
  tree: 'Tree',
  code: (tag: string) => `Code of ${tag}`,
  trial:
    'This is a trial address: codes printed now work only on this network, while this machine keeps its address. Print labels that stay once Rowcall has an https name.',
  onlyHere:
    'This address works on this machine only, so no phone could open these codes. Open Rowcall by the address that phones reach, then print.',
  opensAt: (address: string) => `The codes open ${address}`,

  poster: 'Print a poster',
  posterTitle: 'Poster to join',
  posterNote:
    'Hang it up at the meeting point. Take it down when the shift ends: its code ends then.',
  posterHowTo: 'A4 and US Letter both fit.',
  printPoster: 'Print the poster',
  noLink:
    'Make the join link on the shift page first. Its code is kept on the device it was made on.',
  toShift: 'To the shift',
  joinHere: 'Join the crew',
  scan: 'Scan this with your phone’s camera, or open the address below it.',
  noPhone: 'No phone? Tell the crew lead.',
  ends: (day: string, from: string, to: string) => `${day}, ${from} to ${to}. Ends with the shift.`,
}
