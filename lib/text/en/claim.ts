/** Taking a tree: the questions, and what became of asking. */

export const claim = {
  somebody: 'Somebody',
  withHelper: 'A helper',
  withBuddy: 'Someone in earshot',
  withLearner: 'A learner',
  who: 'Who?',
  nobodyHere: 'Nobody else is counted in. Ask your lead.',
  chooseWho: 'Say who works with you, then claim.',
  ground: 'Feet on the ground',
  ladder: 'With a ladder',
  ladderWhy: (height: string) => `This tree is ${height} high.`,

  noAnswer: 'No answer in 8 seconds. The tree is not yours yet; nothing was changed.',
  refusedTitle: (tag: string) => `${tag} cannot be yours yet`,
  severalMissing: (count: number) => `${count} things stand in the way: see above.`,
  everythingMissing: 'All that is missing:',
  takeInstead: (tag: string) => `Take ${tag}`,
  needsSignal: 'A claim needs signal. Trees dealt to you can be begun without.',
  begin: (tag: string) => `Begin ${tag}`,
  beginSub: 'Not confirmed until there is signal',
  beginWhy:
    'Dealt to you, so likely yours. If somebody was first, you are told and your work counts.',
  cannotBegin: 'This tree cannot be begun without signal. Take one dealt to you.',
  holdsAnother: (tag: string) => `You hold ${tag}`,
  holdsAnotherNote: 'Finish it, leave it half done or hand it over. Then take the next.',
  backToIt: 'Back to your tree',
  twoNeedSignal: 'Ladder or saw needs signal first. Without it, take a tree from the ground.',
}
