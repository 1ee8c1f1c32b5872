/** Calling for help, for whoever calls. */

export const call = {
  title: 'Call your lead',
  titleFor: (name: string) => `Call for ${name}`,
  what: 'What is it?',
  nothingYet: 'Tap to open it. Nothing is sent yet.',
  kinds: {
    question: 'A question',
    tool: 'A tool',
    injury: 'Somebody is hurt',
    lost_person: 'Somebody is missing',
  },
  otherWays: 'Or without the phone',
  at: (tag: string) => `You are at ${tag}. This is sent too.`,
  near: (tag: string) => `You were last at ${tag}. This is sent too.`,
  nowhere: 'Nobody knows at which tree you are. Write it below, or shout.',

  note: 'A few words, if you like',
  noteHint: 'Only leads read them.',
  noteInjury: 'What they need, if you have a hand free',
  noteInjuryHint: 'Only leads read it. Nothing about anybody’s health.',
  injuryFirst: 'Help first, and phone. Nothing is sent yet.',
  send: 'Call a lead',
  sendInjury: 'Call a lead too',
  goesTo: (names: string) => `to ${names}`,
  goesToAll: 'to everybody who leads',

  whoIsMissing: 'Who is missing?',
  somebodyElse: 'Somebody else',
  sayWho: 'Say who is missing.',
  lastAt: (name: string, tag: string, time: string) => `${name} was at ${tag} from ${time} on.`,
  lastNowhere: (name: string) => `Nobody knows at which tree ${name} was.`,
  crewIsTold: 'Everybody in the crew is told who is missing. Do not go looking alone.',

  sent: 'Your call is sent',
  asked: (names: string) => `Asked: ${names}.`,
  askedAll: 'Everybody who leads is asked, wherever they are.',
  notYet: (time: string) => `Called ${time} ago.`,
  nobodyFor: (time: string) => `Nobody has answered for ${time}`,
  nobodyWay: 'Do not wait for the phone: shout, use the radio, phone.',
  notSent: 'Not sent yet',
  notSentWay: 'There is no signal. It goes out by itself. Shout, use the radio or walk over now.',
  coming: (name: string) => `${name} is coming`,
  comingNote: 'Stay where you can be seen.',
  noLonger: 'No longer needed',
  settled: 'It is settled',
  another: 'Call for something else',

  banner: {
    mine: 'You have called a lead.',
    looking: (caller: string, name: string) => `${caller} is looking for ${name}.`,
    lastAt: (tag: string) => `Last at ${tag}.`,
    seen: 'If you have seen them, tell a lead. Do not go looking alone.',
    forYou: (caller: string) => `${caller} is looking for you. Tell your lead where you are.`,
    somebody: 'somebody',
    see: 'See',
  },

  /** As a lead reads it of somebody. */
  of: {
    question: (name: string) => `${name} has a question`,
    tool: (name: string) => `${name} needs a tool`,
    injury: (name: string) => `${name}: somebody is hurt`,
    lost_person: (name: string, lost: string) => `${name} is looking for ${lost}`,
  },

  sound: {
    title: 'Sound on this device',
    on: 'It makes a sound at a new call for leads, and at a stop.',
    locked: 'It is silent: browsers wait for a first touch.',
    none: 'This browser cannot make a sound.',
    turnOn: 'Turn on sound',
    tryIt: 'Try it',
    vibrates: 'It vibrates too, if it can.',
    still: 'This browser does not vibrate.',
    neverTheAlarm: 'The phone is never the alarm: asleep or in a pocket it may stay silent.',
  },
}
