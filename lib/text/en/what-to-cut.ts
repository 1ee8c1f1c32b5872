/** What to cut here: the steps of the tree in hand, each with what to look for, do and never do, and why. */

import { shoots } from './shoots'

export const whatToCut = {
  lookFor: 'Look for',
  never: 'Never',
  why: 'Why, and where it comes from',
  steps: {
    dead_broken_diseased: {
      title: 'Dead, broken and diseased wood out',
      look: 'Brittle twigs without buds, snapped ends, sunken or oozing bark.',
      do: 'Cut back to sound wood, at a side branch or the collar.',
      never: 'Leave a stub, or cut flush with the trunk.',
      why: 'Dead wood lets rot and disease in, and hides what else has to go.',
      done: 'Dead wood is out',
      picture:
        'Dead branches in the tree, each cut where it begins. Close up: a sunken patch, and the cut below it at the next side branch.',
    },
    crossing_rubbing: {
      title: 'Crossing and rubbing wood out',
      look: 'Two branches that touch, or will when they carry fruit. Bark rubbed bare.',
      do: 'Keep the one that grows outward. Take the other off at a side branch or the collar.',
      never: 'Take a main limb without your lead.',
      why: 'Bark that rubs is a wound that does not close.',
      done: 'Nothing rubs',
      picture: 'Two branches rub in the tree. The one that grows inward is cut at its collar.',
    },
    open_the_centre: {
      title: 'Open the centre',
      look: 'What grows up or across inside the bowl.',
      do: 'Cut it at the limb it comes from, at the collar.',
      never: 'Take a main limb without your lead, or strip the inside bare: bark burns in the sun.',
      why: 'Light and air inside keep low wood fruitful, and leaves dry sooner.',
      done: 'Centre is open',
      picture:
        'From the side: a bowl, with what stands up in its middle cut. From above: main limbs like the spokes of a wheel, with what grows inward cut.',
    },
    free_the_leader: {
      title: 'Free the leader',
      look: 'What stands up beside the leader, half as thick as it or more.',
      do: 'Take rivals out at the collar, or back to a flatter side branch.',
      never: 'Cut the leader itself.',
      why: 'Two leaders make a fork that splits.',
      done: 'Leader is free',
      picture: 'One stem goes on upward. Two that stand up beside it are cut.',
    },
    let_light_in: {
      title: 'Let light in',
      look: 'Thin wood that crowds the middle.',
      do: 'Thin it out. Ask your lead which shape this tree has.',
      never: 'Cut anything thicker than a thumb until you know the shape.',
      why: 'A bowl and a tree with a leader want different cuts.',
      done: 'Light comes in',
      picture: 'A bowl from the side and from above: what crowds its middle is cut.',
    },
    ground_up_inside_out: {
      title: 'Ground up, inside out',
      look: 'Suckers at the foot, shoots that hang to the ground, weak wood in the shade.',
      do: 'Begin low and near the trunk, work up and out. Step back after every few cuts.',
      never: 'Strip a limb and leave a tuft at its end.',
      why: 'From below one sees what each cut does to the tree.',
      done: 'Inside is clear',
      picture: 'An arrow leads from the foot of the tree up and outward. Shoots inside are cut.',
    },
    renew_spurs: {
      title: 'Renew old spurs',
      look: {
        pome: 'Old spurs: knobbly, branched many times, hanging, with small buds.',
        stone: 'Old spurs: short, grey and bare, with few or small buds, mostly in the shade.',
      },
      do: {
        pome: 'Take out the oldest, or cut them back to a young bud.',
        stone: 'Cut the small branch that carries the oldest back to a young side shoot.',
      },
      never: 'Take all on one limb, or a young spur with plump buds.',
      why: 'Spurs wear out. One part each year keeps all of them young.',
      done: 'Spurs are renewed',
      picture: 'A limb with spurs: an old, branched one is cut, the young ones stay.',
    },
    renew_shoots: {
      title: 'Make room for new shoots',
      look: 'Last year’s shoots: smooth and reddish, with no side shoots.',
      do: 'Take the weak, the shaded and the crowding ones off at their base.',
      never: 'Leave a limb without any: the crop is on them.',
      why: 'It fruits on last year’s shoots alone, and on each only once.',
      done: 'Shoots are thinned',
      picture: 'A branch with last year’s shoots: every other one is cut at its base.',
    },
    last_years_wood: {
      look: 'The thin shoots of the last season, smooth and without side shoots.',
      done: 'Shoots are done',
    },
    in_training: {
      title: 'The rest is your lead’s',
      look: 'A young tree: its limbs are still being chosen.',
      do: 'Stop here and call your lead.',
      never: 'Choose a limb, or shorten a shoot.',
      why: 'What is cut in the first years shapes the tree for life.',
      done: 'My lead has seen it',
      picture: 'A young tree with few limbs. Nothing on it is cut.',
    },
  },
  shoots,
  /** Of a tip-bearing apple. */
  longTip: (length: string) =>
    `One longer than ${length} may be cut to a bud (one source, second hand). In doubt, leave it.`,
  /** How much, for the steps that make wood new. */
  share: {
    renew_spurs: (share: string) => `About ${share} of them this year, over the whole tree.`,
    renew_shoots: (share: string, shortest: string, longest: string) =>
      `${share} of them go. Keep those of ${shortest} to ${longest}.`,
    shoots: (share: string) =>
      `Not every shoot: in a usual year ${share} of last year’s growth goes.`,
    fewShoots: 'Few of them: little goes in a usual year.',
    one: (share: string) => `${share}`,
    range: (least: string, most: string) => `${least} to ${most}`,
  },
  limit: {
    crown: (share: string) => `All steps together: not more than ${share} of the crown this year.`,
    last_years_wood: (share: string) =>
      `All steps together: not more than ${share} of last year’s wood.`,
  },
  gone: {
    title: 'How much has gone?',
    of: { crown: 'Of the crown, by eye', last_years_wood: 'Of last year’s wood, by eye' },
    tooMuch: 'More than one year’s share. Stop here and call your lead.',
  },
  neglected: {
    yes: 'Not pruned for years',
    winters: (least: string, most: string) =>
      `Brought back over ${least} or ${most} winters. Dead and crossing wood first; leave the rest for the next.`,
    asEver: 'Steps stay as they are: half of last year’s wood goes every year anyway.',
  },
  outOfSeason: {
    lead: 'Not its usual season.',
    says: 'It is pruned in dry weeks after harvest, or disease gets in. Ask your lead whether today is right.',
  },
  form: {
    open_centre: 'open-centre',
    leader: 'one leader',
    unknown: 'shape: ask your lead',
  },
  fruitsOn: {
    spur: 'fruits on spurs',
    shoot: 'fruits on last year’s shoots',
    both: 'fruits on spurs and shoots',
    unknown: 'where it fruits is not written down',
  },
  budsAt: {
    base: 'buds near the base of the shoot',
    middle: 'buds in the middle of the shoot',
    tip: 'buds at the tip of the shoot',
  },
  bornOn: {
    spurs: 'spurs',
    last_years_shoots: 'last year’s shoots',
    base_of_last_years_shoots: 'the base of last year’s shoots',
    tips_of_last_years_shoots: 'the tips of some shoots',
    current_shoots: 'this year’s shoots, which grow from last year’s wood',
    shoots_from_last_years_tips:
      'this year’s shoots, which grow from the tips of last year’s: a tip cut off bears nothing',
  },
  about: 'About this tree',
  speciesBears: (species: string, wood: string) => `${species} usually fruit on ${wood}.`,
  season: {
    dormant: 'Usually pruned without leaves.',
    dormant_or_summer: 'Usually pruned without leaves or in summer.',
    dry_after_harvest: 'Usually pruned in the dry weeks after harvest.',
    dry: 'Usually pruned in the dry season.',
    not_late_winter: 'Usually not pruned in late winter, when it bleeds.',
    unknown: 'When it is pruned, your lead says.',
  },
  caution: {
    milky_sap: {
      lead: 'Its milky sap burns skin in the sun.',
      says: 'Gloves and long sleeves. Wash it off with soap, and keep it out of your eyes.',
    },
    thorns: {
      lead: 'It has thorns.',
      says: 'Gloves over the wrist, and eye protection on.',
    },
  },
  take: {
    light: 'Little goes in a usual year.',
    varies: 'How much goes in a year differs widely.',
    bearing_wood: (share: string) => `In a usual year ${share} of the wood that bears goes.`,
    last_years_wood: (share: string) => `In a usual year ${share} of last year’s growth goes.`,
  },
  from: {
    second_hand: (source: string) => `Second hand: ${source}`,
    from_memory: 'From memory, not looked up.',
    practice: 'Common practice, no source.',
    not_confirmed: 'Sources do not agree.',
  },
  ways: {
    cut: 'Which tool, how to cut',
    shorten: 'How much to shorten',
    limbs: 'Which limbs stay',
    openness: 'How open is it',
    weight: 'How heavy is it',
    notSure: 'Not sure: call the lead',
  },
}
