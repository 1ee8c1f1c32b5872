/** One cut: which tool and how; and how much of a shoot may go. */

export const cuts = {
  backTo: (tag: string) => `Back to ${tag}`,
  notSure: 'Not sure: call the lead',
  less: 'Less',
  more: 'More',
  sources: 'Where the numbers come from',
  cut: {
    title: 'Which tool, and how?',
    thickness: 'How thick where you would cut',
    thinner: 'Thinner',
    thicker: 'Thicker',
    wood: 'The wood is',
    live: 'Live',
    dead: 'Dead',
    where: 'It would be cut',
    reaches: { within: 'Within reach', above: 'Above reach' },
    how: {
      pole_pruner:
        'Both feet on the ground, never on a ladder. Stand to the side, hook over a side branch or at the collar, and let it fall clear.',
      pruner: 'One clean cut at the collar or a side branch, blade towards what stays.',
      lopper:
        'Both hands, one cut at the collar or a side branch. If it does not close easily, take the saw.',
      saw: 'At the collar or a side branch, with the other hand well away from the blade.',
    },
    pole: {
      below: 'Helmet and eye protection on. Nobody under it: it comes down along the pole.',
      line: (distance: string) =>
        `Never near a power line: keep pole, branch and yourself ${distance} away or more, its whole length counted. A line near the tree? Not yours: flag it.`,
    },
    notFromGround: 'Not from the ground.',
    notFromGroundSays: (limit: string) =>
      `A pole pruner takes live wood up to ${limit}. This is cut only from a ladder, by two people, one of them allowed to use it; otherwise leave it to your lead.`,
    deadWood: 'Dead wood springs off and dulls a pruner: saw it, and stand to the side.',
    threeTitle: 'In three cuts, so that the bark does not tear',
    three: {
      first: (depth: string, out: string) =>
        `From below, ${depth} deep, ${out} out from the collar.`,
      second: (out: string) => `From above, ${out} out, until it falls.`,
      third: 'Off with the stub, just outside the collar. Not flush, and no stub left.',
    },
    standClear:
      'Nobody under it, nor nearer than one and a half times its length. On a ladder nobody holds a limb.',
    oneHand: 'A branch that you hold easily with one hand may go in one cut.',
    refer: (limit: string) => `Thicker than ${limit}: not yours.`,
    referSays: 'Leave it as it is. Flag it, and a licensed arborist is asked.',
    referStep: 'Flag and refer',
    pictureOne: (thickness: string) =>
      `A branch ${thickness} thick, cut once, just outside its collar.`,
    pictureThree: (thickness: string) =>
      `A limb ${thickness} thick. Cut 1 from below, cut 2 from above a little further out, cut 3 just outside the collar. Drawn to scale.`,
    pictureRefer: (thickness: string) => `A limb ${thickness} thick. Nothing on it is cut.`,
    lateralTitle: 'Is what you cut back to thick enough?',
    lateral: 'Side branch that stays',
    lateralOk: 'A third of what goes, or more: it can take over.',
    lateralBad: (least: string) =>
      `Too thin to take over: it wants ${least} or more. Cut at another one, or at the collar.`,
    leader: 'The leader beside it',
    rival: 'Thicker than half the leader: a rival. Take it out, or ask.',
    noRival: 'Half the leader or less: it may stay.',
    houseLimits: (pruner: string, lopper: string, limb: string) =>
      `Pruner to ${pruner}, lopper to ${lopper}, saw to ${limb}: this orchard’s rules. Common practice; no published number.`,
    poleLimit: (limit: string) => `Pole pruner to ${limit}, live wood: the same.`,
    lineFrom: (distance: string) =>
      `${distance} from a line: 29 CFR 1910.269(x), up to 50 kV; more above. Local rules win.`,
    rule: (undercut: string, out: string, further: string) =>
      `From below ${undercut} through, ${out} out; from above ${further} further.`,
    house: 'Used here (common practice)',
    lateralFrom: 'A third: general references, second hand.',
    leaderFrom: (source: string) => `Half of the leader: ${source}.`,
    oneHandFrom: 'One hand, one cut: ANSI A300-1995, as reprinted.',
    range: (least: string, most: string) => `${least} to ${most}`,
  },
  shorten: {
    taken: 'How much goes',
    length: 'Length of the shoot',
    shorter: 'Shorter',
    longer: 'Longer',
    lengths: (left: string, taken: string) => `${left} stay, ${taken} go.`,
    budsLost: (share: string) => `${share} of its fruit buds go.`,
    pull: (least: string, most: string) =>
      `The crop pulls ${least} to ${most} less where the limb begins.`,
    onSpurs: 'Its fruit sits on spurs on older wood: the shoots carry little.',
    may_go: 'May go.',
    lead_says: 'Further than a half: only where your lead says so.',
    too_much: (share: string) => `Too much. Not more than ${share}.`,
    refused: 'Do not shorten.',
    wouldCost: (share: string) => `It would cost ${share} of the fruit buds.`,
    tipShoot: {
      leave: (length: string) => `Up to ${length}: leave it.`,
      may_cut: (length: string) => `Longer than ${length}: may be cut to a bud.`,
    },
    tipShootFrom: (length: string) =>
      `One source, second hand, on apples that bear at the tip: shoots up to ${length} stay; a longer one may be cut to a bud. In doubt, leave it.`,
    ask: 'Call your lead',
    profile: 'Where the fruit buds sit',
    profiles: { base: 'Near the base', middle: 'Middle', tip: 'Tip', counted: 'Counted' },
    keep: (cultivar: string) => `Write it down for every ‘${cultivar}’`,
    counts: 'Buds in each tenth, base to tip',
    countsHint: 'Ten numbers: divide one shoot into ten and count.',
    countsWrong: 'Write ten whole numbers from 0 to 20, not all of them 0.',
    picture: (share: string) =>
      `A shoot at the end of a limb, with its fruit buds. The outer ${share} is cut. An arrow shows where the crop pulls, a dotted one where it would pull uncut.`,
    before: 'uncut',
    reckoned: (shoot: string, limb: string) =>
      `For a shoot of ${shoot} at the end of a level limb of ${limb}. Less: as much fruit, borne further in. More: the fruit of the buds that go is missing too. Real limbs lie between.`,
    budsFrom: 'How many buds sit where is our own drawing of that word. A lead can count.',
  },
}
