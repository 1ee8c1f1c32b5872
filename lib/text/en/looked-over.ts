/**
 * What a lead found at a finished tree, and in one sentence what to do better. Collar, stubs and flush cuts: extension
 * advice on pruning cuts (UC IPM); three cuts for a heavy limb: the same. The outer third of last year's shoots:
 * how the cultivar bears, as the work card has it. The rest is common practice, no source.
 */

export const lookedOver = {
  reasons: {
    stubs_left: {
      found: 'Stubs left',
      better: 'Cut back to a side branch or to the collar: no stub, and not flush.',
    },
    centre_closed: {
      found: 'Centre still closed',
      better: 'Stand at the trunk and look outward and up: take out what grows into the middle.',
    },
    crossing_left: {
      found: 'Crossing wood left',
      better:
        'Of two that cross or rub, keep the one that points outward. Take the other at its base.',
    },
    dead_left: {
      found: 'Dead, broken or sick wood left',
      better: 'Begin every tree with it, and go back to sound wood.',
    },
    too_much_shortened: {
      found: 'Too much taken from last year’s shoots',
      better:
        'See on the card where the fruit buds sit before you shorten: the outer third at most, or nothing.',
    },
    torn_bark: {
      found: 'Bark torn',
      better: 'A heavy limb takes three cuts: from below, further out from above, then the stub.',
    },
    wood_hanging: {
      found: 'Cut wood left hanging',
      better: 'Look up before you go and bring it down. What you cannot reach, tell your lead.',
    },
    not_tidy: {
      found: 'Tree not tidy',
      better: 'Pull cut wood out of the tree and lay it where the brush is hauled from.',
    },
  },
  by: (tag: string, name: string) => `${tag} was looked over by ${name}.`,
  toTree: (tag: string) => `To ${tag}`,
  withOther: (name: string) => `${name} has it now.`,
  passed: 'Looked over and passed',
}
