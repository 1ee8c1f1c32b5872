/** What a limb weighs, and who takes it. */

export const weigh = {
  title: 'What does this limb weigh?',
  lead: 'Measure with your feet on the ground. The higher figure decides.',
  thick: 'Thickness where it would be cut',
  thin: 'Thickness at its outer end',
  length: 'Length',
  branches: 'Side branches',
  branchesOf: { bare: 'Few, no leaves', leafy: 'Many, or in leaf' },
  hold: 'How is it held?',
  holds: { close: 'Close to the body', at_arms_length: 'At arm’s length' },
  take: 'Where do the hands take it?',
  takes: { off_the_tree: 'As it comes off the tree', from_the_ground: 'From the ground' },
  fillAll: 'Thickness and length first.',

  weight: (least: string, most: string) => `${least} to ${most}`,
  by: {
    one_hand: 'One person, with both hands free for it.',
    one_person: 'One person, with both hands.',
    two_people: 'Two people, one at each end.',
    in_pieces: 'Lower it in pieces.',
    refer: 'The arborist’s.',
  },
  pieces: (lengths: string) => `From the tip inwards: ${lengths}.`,
  whyRefer: {
    thick: (limit: string) => `Thicker than ${limit}, this orchard’s rule.`,
    too_many_pieces: 'More than four pieces, or pieces too short to hold.',
  },
  limit: (limit: string) => `One person, held like this: up to ${limit}.`,
  flag: 'Ours or the arborist’s?',

  cautions: {
    ladder: 'On a ladder nobody holds anything.',
    falls: 'A falling limb pulls harder than its weight.',
    below: 'Nobody stands below or beside it, and the way out is clear.',
    decides: 'The lead on the spot decides. Local rules win.',
  },
  how: 'How it is reckoned',
  wood: (least: string, most: string) => `Green wood of this kind: ${least} to ${most}.`,
  woodSource:
    'Green log weights as quoted from the US National Park Service and another public list; the heavier counts.',
  woodUnknown: (usual: string) =>
    `Nothing is printed for this kind. Often reckoned as ${usual}; here from the lightest to the heaviest fruit wood. Common practice.`,
  more: (least: string, most: string) =>
    `The stem as a tapering log, times ${least} to ${most} for side branches. No source.`,
  niosh:
    'Limit: the revised NIOSH lifting equation (DHHS (NIOSH) 94-110), once a minute for an hour at most. It covers two hands and feet on firm ground. It covers neither one hand nor ladders.',
  factors: (kg: string, factors: string) => `${kg} × ${factors}`,
  two: 'Two people: two thirds of what both lift alone. From memory.',
  oneHand: (weight: string) =>
    `Up to ${weight} it needs no second thought for one person: this orchard’s rule, no source.`,

  leads: 'A lead judges what a limb weighs.',
  helper: 'You can be the lead’s helper: stand where they say, and hold nothing on a ladder.',
  call: 'Call your lead',
}
