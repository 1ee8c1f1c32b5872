/** At a sick tree: how far below one cuts, when a blade is cleaned, where the wood goes. */

export const sanitation = {
  below: (length: string) => `Cut at least ${length} below the last sign you see.`,
  belowWhy: (disease: string, source: string) => `That far in case it is ${disease} (${source}).`,
  noNumber:
    'Cut into wood that is sound all through. No source gives a length for this: ask your lead.',
  disease: {
    eutypa: 'Eutypa dieback',
    bacterial_canker: 'bacterial canker',
    fire_blight: 'fire blight',
    silver_leaf: 'silver leaf',
    cytospora: 'Cytospora canker',
    brown_rot: 'brown rot',
  },
  clean: {
    each_cut: 'Clean the blade after each cut into sick wood, and after this tree.',
    each_tree: 'Clean the blade after this tree, before the next.',
  },
  cleanHow:
    '70 % alcohol for 30 seconds, or one part of bleach to nine of water; then dry and oil it.',
  wood: {
    carry_away: 'Carry the wood away.',
    bag: 'Bag the wood, and do not drag it past other trees.',
    leave_no_pile: 'Carry the wood away: no pile may stay in the orchard.',
  },
  differ: 'Sources differ on cleaning. This is your orchard’s rule.',
  cleanSources:
    'UC IPM: when cutting into infected wood. University of Illinois: only in the growing season. Washington State University: being quick matters more.',
}
