/** Work that came in otherwise than by a claim, for a lead to look at. */

export const cameIn = {
  title: 'Came in late',
  link: 'Came in late',
  note: 'Nothing is thrown away. Look at these trees when you pass them.',
  work: 'The last 14 days',
  noWork: 'All work came in as it should.',
  late: 'after the shift',
  withoutClaim: 'begun without signal, no claim',
  alsoWorked: 'also worked on it',
  lacked: (things: string) => `Was missing: ${things}`,
  handedIn: (name: string) => `${name} handed this in`,
  somebody: 'Somebody',
  things: {
    finish_tree: 'Finished',
    release_tree: 'Left half done',
    flag_tree: 'Flagged',
    fail_tool: 'A tool failed',
    return_tool: 'A tool is back',
    answer_stop: 'Answered a stop',
    stop_work: 'Called a stop',
  },
  other: 'Something else of the day',
  acceptNote:
    'Trees that are free count as done or begun, the others as “also worked on”. Flags you raise yourself, at the tree.',
  accept: 'Accept the work',
}
