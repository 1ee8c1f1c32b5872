/** Getting in by a link or a code, and what stands in the way. */

export const join = {
  title: 'Join the crew',
  shiftOn: (day: string) => `${day} shift.`,
  noShiftYet: 'No shift yet. A lead lets you in before the first one.',
  forLead: 'This link makes you a crew lead. It works once.',
  forManager: 'This link makes you a manager. It works once.',
  forDevice:
    'This link belongs to somebody who is in the crew already. It makes this device theirs too; no name is asked.',
  forRecovery: 'This code lets a manager back in. It works once.',
  yourName: 'Your name',
  whoSeesIt: 'Only this crew sees it. No e-mail, no password.',
  writeName: 'Write a name the crew knows.',
  nameTooLong: 'Write a shorter name, 60 letters at most.',
  ageQuestion: 'How old are you?',
  adult: 'Adult',
  minor: 'Under age',
  sayAge: 'Say if you are an adult, then join.',
  joinCrew: 'Join the crew',
  linkDevice: 'Make this device mine',
  backIn: 'Back in',
  joining: 'Joining…',
  linkUntilClose: 'This link works until the shift closes.',
  looking: 'Looking at the link…',
  noCode:
    'No code in this link. Scan the code at the meeting point, or ask your lead for the link.',
  codeLabel: 'Code from the lead',
  codeHint: 'The whole link is fine too.',
  writeCode: 'Write the code as it stands on the card.',
  useCode: 'Use this code',
  overTitle: 'This link lets nobody in',
  overWhy: {
    code_wrong: 'Nobody made this link: a part of it may have got lost on the way.',
    code_expired: 'It has expired: it was made for another day, or a lead has ended it.',
    code_used: 'It was used already, and works only once.',
  },
  overDo: 'Scan the code at the meeting point again, or ask your lead for a new link.',
  otherCode: 'Try another code',
  alreadyIn: (name: string) => `This device is in this crew already, as ${name}.`,
  goOnAs: (name: string) => `Go on as ${name}`,
  someoneElse: 'Somebody else joins on this device',
  waitTitle: 'Almost in. A lead lets you in.',
  waitWhy: (name: string) =>
    `No shift is open, so a lead lets each person in. Tell your lead that you are here as ${name}.`,
  leadWaitTitle: 'Almost in. A manager lets you in.',
  leadWaitWhy: (name: string) =>
    `This link is for one person who leads, so a manager looks first. Tell them that you came in as ${name}. Are you here to prune? Ask for the crew’s link.`,
  waitNote: 'This page goes on by itself.',

  welcome: 'An orchard’s pruning day, tree by tree',
  treeWaits: 'You scanned the code of a tree. It opens once you are in.',
  welcomeWhy: 'You get in with a link or a code from the orchard. Nothing to install, no e-mail.',
  chooseTitle: 'Who is it?',
  chooseWhy: 'This device serves several people.',
  waitsToBeLetIn: 'Waits to be let in',
  signedOutTitle: 'This device is signed out',
  signedOutWhy: 'Open the link again to come back. What was not sent is kept on this device.',
  outTitle: (orchard: string) => `This device is not in ${orchard} any more`,
  outWhy: 'You were signed out or removed from the crew. Ask your lead if that is a mistake.',
  toHandIn: (count: number) =>
    count === 1 ? 'One thing was not sent.' : `${count} things were not sent.`,
  handInNote: 'Hand it in: a lead looks at it, and nothing is lost. It goes once, within 48 hours.',
  handIn: 'Hand it in',
  handedIn: 'Handed in. A lead looks at it.',
  photosStay: (count: number) =>
    count === 1
      ? 'A photo stays on this device. Show it to a lead if it matters.'
      : `${count} photos stay on this device. Show them to a lead if they matter.`,
  someoneElseHere: 'Go on as somebody else',
  joinAgain: 'Join by a link',
}
