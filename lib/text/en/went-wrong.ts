/** The page for what should not happen. Both languages are in it, for it may come without signal. */

export const wentWrong = {
  appName: 'Rowcall',
  title: 'Something broke on this screen',
  kept: 'What you did is kept on this device. Load the screen again.',
  again: 'Load it again',
  notFoundTitle: 'There is nothing at this address',
  notFoundWhy: 'The link may be old or cut short. Go on from the first screen.',
  toStart: 'To the first screen',
  ifItStays: 'If it happens again, tell your lead and keep working.',
}
