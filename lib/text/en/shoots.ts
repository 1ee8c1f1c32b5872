/** Last year's shoots: what to do with them, by where this one bears. */

export const shoots = {
  outer_third: {
    title: 'Last year’s shoots: the outer third',
    do: 'The outer third can go, at a bud that points outward.',
    never: 'Take more than a third.',
    why: 'Most fruit buds sit further in: little crop goes, and the limb carries it nearer the trunk.',
    picture: 'Shoots with fruit buds in their lower two thirds. The outer third of each is cut.',
  },
  outer_half: {
    title: 'Last year’s shoots: up to a half',
    do: 'Up to a half can go, at a bud that points outward.',
    never: 'Take more than a half, unless your lead says so.',
    why: 'The fruit buds sit near the base: little crop goes.',
    picture: 'Shoots with fruit buds near their base. The outer half of each is cut.',
  },
  never: {
    title: 'Last year’s shoots: never shorten',
    do: 'Leave every tip. Where shoots crowd, take whole ones out at their base.',
    never: 'Shorten one of these.',
    why: 'The fruit buds sit at the tip: the crop would go with it.',
    picture: 'Shoots with fruit buds to the tip. None is shortened; two that crowd are taken out.',
  },
  leave_short: {
    title: 'Last year’s shoots: leave the tips',
    do: 'Leave them whole. Where shoots crowd, take whole ones out at their base.',
    never: 'Take a third off them, as on other trees.',
    why: 'The fruit buds sit at the tip: the crop would go with it.',
    picture: 'Shoots with fruit buds to the tip. None is shortened; two that crowd are taken out.',
  },
  do_not_shorten: {
    title: 'Last year’s shoots: do not shorten',
    do: 'Leave the tips. Where shoots crowd, take whole ones out at their base.',
    never: 'Shorten one of these.',
    why: 'The crop is on these shoots, and nobody wrote down where along them.',
    picture: 'Shoots with fruit buds on them. None is shortened; two that crowd are taken out.',
  },
  leave_and_ask: {
    title: 'Last year’s shoots: ask',
    do: 'Leave them, and ask your lead.',
    never: 'Shorten one of these.',
    why: 'Nobody has written down where this one bears.',
    picture: 'Last year’s shoots on a branch. None of them is cut.',
  },
  another_winter: {
    title: 'Last year’s shoots: not this year',
    do: 'Leave them this year.',
    never: 'Shorten one of these.',
    why: 'The first steps take enough of a neglected tree. Too much at once, and it answers with a thicket.',
    picture: 'Last year’s shoots on a branch. None of them is cut.',
  },
}
