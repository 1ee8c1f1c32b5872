/** What skills, tools, roles and reasons are called. The keys are the referee's codes. */

export const things = {
  skill: {
    hand_saw: 'hand saw',
    ladder: 'ladder',
    prunes_alone: 'prunes alone',
  },
  tool: {
    pruner: 'Hand pruner',
    lopper: 'Lopper',
    saw: 'Pruning saw',
    pole_pruner: 'Pole pruner',
    ladder: 'Ladder',
    other: 'Other tool',
  },
  role: {
    manager: 'Manager',
    lead: 'Crew lead',
    volunteer: 'Volunteer',
    visitor: 'Visitor',
  },
  offReason: {
    season: 'it is not their season',
    rain: 'rain is too near',
    wet_wood: 'the wood is wet',
    wind: 'of the wind',
    thunder: 'of thunder',
    heat: 'of the heat',
    light: 'the light is going',
    lead: 'your lead said so',
  },
  signal: {
    horn: 'Three long blasts of the horn mean stop work.',
    whistle: 'Three long whistles mean stop work.',
    voice: 'A shout of “stop work” means everybody.',
  },
  source: {
    published: (name: string) => `From: ${name}. Where local rules ask for more, they win.`,
    common_practice: 'Common practice. Where local rules ask for more, they win.',
    house_rule: 'This orchard’s own rule. Where local rules ask for more, they win.',
  },
  severity: {
    low: 'Low',
    high: 'High',
    danger_now: 'Danger now',
  },
}
