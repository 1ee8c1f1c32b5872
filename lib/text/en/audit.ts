/** What happened, in sentences: one for each kind of event. What they name is in words already. */

/** `who`: whose work it was; `by`: who tapped. Undefined: not said, or not known any more. */
export type AuditDetail = {
  who: string
  by: string
  person?: string | undefined
  people?: string | undefined
  role?: string | undefined
  tree?: string | undefined
  trees?: string | undefined
  row?: string | undefined
  block?: string | undefined
  tool?: string | undefined
  tools?: string | undefined
  skill?: string | undefined
  round?: string | undefined
  day?: string | undefined
  until?: string | undefined
  sign?: string | undefined
  reason?: string | undefined
  what?: string | undefined
  share?: string | undefined
  took?: string | undefined
  count?: string | undefined
  changed?: string | undefined
  waits?: boolean | undefined
  isOff?: boolean | undefined
  isResult?: boolean | undefined
}
type D = AuditDetail

const at = (tree: string | undefined) => (tree === undefined ? '' : ` at ${tree}`)
/** An event of another day may not say it. */
const some = (words: string | undefined) => words ?? '…'
const after = (words: string | undefined, before = ', ') =>
  words === undefined ? '' : `${before}${words}`

export const audit = {
  title: 'What happened, and who did it',
  lead: 'The newest first. Nobody can change this, not even a manager.',
  ofPerson: 'What this person did',
  byPerson: 'Person',
  byTree: 'Tree, by its tag',
  byTreeHint: 'As on its tag, like S 7·14.',
  noSuchTree: 'No tree has this tag. Write block, row and tree, like S 7·14.',
  byDay: 'Day',
  byKind: 'About',
  anybody: 'Anybody',
  anything: 'Anything',
  clear: 'Show all again',
  none: 'Nothing like this has happened.',
  older: 'Show older',
  newest: 'Back to the newest',
  number: (n: string) => `no. ${n}`,
  tapped: (by: string) => `Entered by ${by}`,
  forgotten: 'somebody whose name is forgotten',
  groups: {
    work: 'Work on trees',
    flags: 'Flags and photos',
    alarms: 'Stops, calls, incidents',
    day: 'Briefing, arriving, breaks',
    tools: 'Tools',
    people: 'People and links',
    rounds: 'Rounds and shifts',
    orchard: 'The orchard and its trees',
  },
  things: {
    name: 'name',
    language: 'language',
    units: 'units',
    houseRules: 'house rules',
    emergencyVersion: 'emergency card',
    aerialVersion: 'picture from above',
  },
  inTheDark: 'work in the dark',
  inviteKinds: {
    join: 'for the crew',
    role: 'for a lead or manager',
    device: 'for another device',
    recovery: 'as a way back in',
  },
  newer: (by: string, kind: string) => `${by}: ${kind} (this page is older than that)`,

  sentence: {
    orchard_created: ({ by }: D) => `${by} made this orchard`,
    orchard_changed: ({ by, changed }: D) => `${by} changed the settings${after(changed, ': ')}`,
    trees_brought_in: ({ by, count }: D) => `${by} brought in ${count ?? 'some'} trees`,
    block_changed: ({ by, block }: D) => `${by} changed the block ${some(block)}`,
    block_removed: ({ by, block }: D) => `${by} removed the block ${some(block)}`,
    cultivar_written: ({ by }: D) => `${by} wrote down a cultivar`,
    cultivar_removed: ({ by }: D) => `${by} took a cultivar off the list`,
    tree_added: ({ by, tree }: D) => `${by} added the tree ${some(tree)}`,
    tree_moved: ({ by, tree }: D) => `${by} moved the tree ${some(tree)}`,
    trees_changed: ({ by, count }: D) => `${by} changed what is known of ${count ?? 'some'} trees`,
    trees_numbered: ({ by, block }: D) => `${by} numbered the rows and trees of ${some(block)}`,
    trees_left_out: ({ by, trees }: D) =>
      `${by} said which trees are not in this round${after(trees, ': ')}`,

    person_added: ({ by, person, role }: D) => `${by} added ${some(person)}${after(role)}`,
    person_joined: ({ who, role, waits }: D) =>
      `${who} came in by a link${after(role)}${waits ? ', and waits to be let in' : ''}`,
    person_changed: ({ by, person, role }: D) =>
      `${by} changed what is written about ${some(person)}${after(role)}`,
    person_admitted: ({ by, person }: D) =>
      by === person ? `${some(person)} came in` : `${by} let ${some(person)} in`,
    person_removed: ({ by, person }: D) => `${by} removed ${some(person)} from the orchard`,
    person_forgotten: ({ by }: D) => `${by} forgot a name`,
    login_ended: ({ who }: D) => `One of ${who}’s devices was signed out`,
    login_linked: ({ who }: D) => `${who} came in on one more device`,
    invite_made: ({ by, what }: D) => `${by} made a link${after(what, ' ')}`,
    invite_ended: ({ by }: D) => `${by} ended a link`,
    handed_in: ({ person }: D) => `${some(person)} handed in unsent work after being removed`,
    hand_in_accepted: ({ by }: D) => `${by} accepted work that was handed in`,
    consent_given: ({ who, day }: D) => `${who} gave consent${after(day, ' for the season ')}`,
    skill_granted: ({ by, person, skill, until }: D) =>
      `${by} granted ${some(person)} the skill ${some(skill)}${after(until, ' until ')}`,
    skill_ended: ({ by, person, skill }: D) =>
      `${by} took back the skill ${some(skill)} of ${some(person)}`,

    round_opened: ({ by, round }: D) => `${by} opened the round ${some(round)}`,
    round_closed: ({ by, round }: D) => `${by} closed the round ${some(round)}`,
    round_reopened: ({ by, round }: D) => `${by} opened the round ${some(round)} again`,
    shift_scheduled: ({ by, day }: D) => `${by} planned a shift${after(day, ' on ')}`,
    shift_changed: ({ by, day }: D) => `${by} changed the planned shift${after(day, ' on ')}`,
    shift_cancelled: ({ by, day }: D) => `${by} called off the shift${after(day, ' on ')}`,
    shift_opened: ({ by, day }: D) => `${by} opened the shift${after(day, ' of ')}`,
    shift_closed: ({ by, day, people }: D) =>
      `${by} closed the shift${after(day, ' of ')}${after(people, '; not found: ')}`,
    off_changed: ({ by, what, reason, isOff }: D) =>
      isOff
        ? `${by} said: no ${some(what)} today${after(reason, ', because ')}`
        : `${by} said: ${some(what)} again`,

    weather_written: ({ by }: D) => `${by} wrote down the weather`,
    weather_answered: ({ person }: D) => `${some(person)} has come out because of the weather`,
    forecast_brought_in: ({ by }: D) => `${by} brought in the coming hours`,
    exception_made: ({ by, what }: D) => `${by} made an exception for ${some(what)}`,
    exception_ended: ({ by, what }: D) => `${by} ended the exception for ${some(what)}`,

    briefing_written: ({ by, count }: D) => `${by} wrote the briefing, version ${some(count)}`,
    briefing_given: ({ by, people }: D) => `${by} briefed ${some(people)}`,
    briefing_signed: ({ who, count }: D) => `${who} signed the briefing, version ${some(count)}`,
    person_arrived: ({ who }: D) => `${who} was counted in`,
    person_left: ({ who }: D) => `${who} went home`,
    person_found: ({ by, person }: D) => `${by} said that ${some(person)} is found`,
    break_started: ({ who }: D) => `${who} took a break`,
    break_ended: ({ who }: D) => `${who} came back from the break`,
    attendance_entered: ({ who }: D) => `Hours of ${who} were entered from paper`,
    equipment_checked: ({ who, isOff }: D) =>
      isOff ? `${who} lacks some of the protection` : `${who} has the protection in order`,

    tool_added: ({ by, tool }: D) => `${by} put ${some(tool)} on the list`,
    tool_taken: ({ who, tool }: D) => `${who} took ${some(tool)}`,
    tool_returned: ({ who, tool }: D) => `${who} gave ${some(tool)} back`,
    tool_failed: ({ who, tool }: D) => `${who} put ${some(tool)} out of use`,
    tool_mended: ({ by, tool }: D) => `${by} said that ${some(tool)} is repaired`,
    tools_cleaned: ({ who, tools }: D) => `${who} cleaned ${some(tools)}`,

    trees_dealt: ({ by, trees, people }: D) => `${by} dealt ${some(trees)} to ${some(people)}`,
    trees_taken_back: ({ by, trees }: D) => `${by} took back ${trees ?? 'trees that were dealt'}`,
    big_cuts_marked: ({ who, tree }: D) => `${who} marked the big cuts${at(tree)}`,
    big_cuts_unmarked: ({ by, tree }: D) => `${by} removed the mark of the big cuts${at(tree)}`,
    tree_claimed: ({ who, tree, people }: D) =>
      `${who} claimed ${some(tree)}${after(people, ' with ')}`,
    tree_joined: ({ person, tree }: D) => `${some(person)} joined${at(tree)}`,
    tree_left: ({ who }: D) => `${who} left the tree to the others`,
    tree_handed_over: ({ tree, people, person }: D) =>
      `${tree ?? 'A tree'} was handed over by ${some(person)} to ${some(people)}`,
    tree_released: ({ who, tree, share, took }: D) =>
      `${who} left ${some(tree)} ${share === undefined ? 'as it was' : `${share} done`}${after(took)}`,
    tree_released_late: ({ who, tree, share }: D) =>
      `${who} left ${some(tree)} ${share ?? 'partly'} done; it came in after the shift`,
    tree_finished: ({ who, tree, took }: D) => `${who} finished ${some(tree)}${after(took)}`,
    tree_finished_late: ({ who, tree }: D) =>
      `${who} finished ${some(tree)}; it came in after the shift`,
    also_worked: ({ who, tree, took }: D) => `${who} also worked on ${some(tree)}${after(took)}`,
    claim_ended: ({ by, tree }: D) => `${by} ended the claim${at(tree)}`,
    tree_undone: ({ who, tree }: D) => `${who} took back that ${some(tree)} is done`,
    tree_looked_over: ({ by, tree, reason, isResult }: D) =>
      isResult
        ? `${by} looked over ${some(tree)} and passed it`
        : `${by} reopened ${some(tree)}${after(reason, ': ')}`,
    brush_taken: ({ who, row }: D) => `${who} began to haul ${some(row)}`,
    brush_finished: ({ who, trees }: D) => `${who} hauled the wood of ${trees ?? 'no tree'}`,
    brush_marked: ({ by, trees }: D) => `${by} said how far the wood of ${some(trees)} is hauled`,
    brush_directed: ({ by, block }: D) => `${by} said where the wood of ${some(block)} goes`,

    flag_raised: ({ who, tree, sign }: D) => `${who} flagged ${some(tree)}${after(sign, ': ')}`,
    flag_withdrawn: ({ who, tree }: D) => `${who} withdrew the flag${at(tree)}`,
    flag_confirmed: ({ by, tree, sign }: D) =>
      `${by} confirmed the flag${at(tree)}${after(sign, ': ')}`,
    flag_followed_up: ({ by, tree }: D) => `${by} wrote on the flag${at(tree)}`,
    flag_cleared: ({ by, tree }: D) => `${by} cleared the hazard${at(tree)}`,
    keep_out_changed: ({ by, tree, what }: D) =>
      `${by} set the keep-out${at(tree)}${after(what, ' to ')}`,
    keep_out_answered: ({ person, tree }: D) => `${some(person)} is out of the keep-out${at(tree)}`,
    photo_added: ({ who, tree }: D) => `${who} took a photo${at(tree)}`,

    stop_called: ({ who, block }: D) => `${who} called a stop${after(block, ' in ')}`,
    stop_answered: ({ person, isResult }: D) =>
      isResult ? `${some(person)} knows that work goes on` : `${some(person)} has stopped`,
    work_resumed: ({ by }: D) => `${by} let work go on`,
    call_made: ({ who, what, tree }: D) => `${who} called for help${at(tree)}${after(what, ': ')}`,
    call_answered: ({ by }: D) => `${by} answered a call for help`,
    call_ended: ({ by }: D) => `${by} ended a call for help`,
    incident_written: ({ by }: D) => `${by} wrote down an incident`,
  },
}
