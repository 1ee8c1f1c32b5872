/** An orchard in each state that a shift can be in, with somebody in every situation that the rules tell apart. */

import { createHash, randomBytes, randomUUID } from 'node:crypto'

import type { TestDatabase } from '../support/engines'

export const stages = ['none', 'scheduled', 'open', 'stopped', 'closed'] as const
export type Stage = (typeof stages)[number]

const names = ['lead', 'ann', 'bo', 'cy', 'dee', 'eve', 'fay', 'gus'] as const
/**
 * Ann is ready and holds nothing, and finished tree 20 just now; Bo holds tree 2 with Cy's help; the lead hauls row 4; Dee has not arrived; Eve is on a
 * break; Fay was removed; Gus waits to be let in.
 */
export type Name = 'manager' | (typeof names)[number]

export type Scene = {
  orchard: string
  round: string
  person: Record<Name, string>
  user: Record<Name, string>
  /** The id of Ann's login. */
  login: string
  flag: string
  hazard: string
  photo: string
  /** Ann's. */
  call: string
  invite: string
  /** What Gus handed in; nobody has accepted it. */
  handIn: string
  epoch: string
  /** Of another orchard, on its way in by the set-up code. */
  archive: string
  code: { setUp: string; join: string; role: string; device: string }
  /** From the stage on where there is one; before, an id of nothing. */
  shift: string
  claim: string
  brush: string
  stop: string
}

export async function buildScene(database: TestDatabase): Promise<Scene> {
  const user = { manager: await database.newUser() } as Scene['user']
  const code = { setUp: newCode(), join: newCode(), role: newCode(), device: newCode() }
  const first = newCode()
  for (const each of [first, code.setUp]) {
    await database.asOwner('select private.make_setup_code($1)', [sha256(each)])
  }
  const { orchard } = await send(database, user.manager, 'create_orchard', {
    p_code: first,
    p_name: 'Three Wells',
    p_person_name: 'Manager',
    p_time_zone: 'Europe/Madrid',
    p_language: 'en',
    p_units: 'metric',
  })
  const scene = { orchard, user, code, person: { manager: orchard } } as Scene
  for (const unknown of ['shift', 'claim', 'brush', 'stop'] as const) scene[unknown] = randomUUID()
  await plant(database, scene)
  await people(database, scene)
  await things(database, scene)
  return scene
}

/** Brings the orchard from the stage before to this one. */
export async function advance(database: TestDatabase, scene: Scene, stage: Stage): Promise<void> {
  const by = actor(database, scene)
  switch (stage) {
    case 'none':
      return
    case 'scheduled': {
      const shift = await by('lead', 'schedule_shift', {
        p_round: scene.round,
        p_date: '2026-11-24',
        p_starts_at: '2026-11-24T08:00:00Z',
        p_ends_at: '2026-11-24T14:00:00Z',
      })
      scene.shift = shift.shift
      await by('lead', 'write_briefing', { p_shift: scene.shift, p_topics: [{ code: 'ladders' }] })
      return
    }
    case 'open':
      await by('lead', 'open_shift', { p_shift: scene.shift, p_off: { pear: 'rain' } })
      await makeReady(by, scene)
      await finish(by, 33)
      await finish(by, 20)
      scene.brush = await commandId(by('lead', 'take_brush', { p_block: 1, p_row: 4 }))
      scene.claim = await commandId(
        by('bo', 'claim_tree', { p_tree: 2, p_helpers: [scene.person.cy] })
      )
      await by('eve', 'start_break', {})
      return
    case 'stopped':
      scene.stop = await commandId(by('ann', 'stop_work', {}))
      return
    case 'closed': {
      await by('lead', 'resume_work', { p_stop: scene.stop })
      const here = ['lead', 'ann', 'bo', 'cy', 'eve'] as const
      await by('lead', 'close_shift', {
        p_why: {
          people: Object.fromEntries(here.map((name) => [scene.person[name], 'went home'])),
          claims: { [scene.claim]: 'dusk', [scene.brush]: 'dusk' },
          tools: { 1: 'in the van', 2: 'in the van', 3: 'in the van' },
        },
      })
    }
  }
}

export const sha256 = (text: string) => createHash('sha256').update(text).digest('hex')
const newCode = () => randomBytes(16).toString('hex')

/** What an accepted command answers with, and its id. */
type Answer = { command: string; orchard: string; person: string; shift: string }

/** Sends a command that must be accepted. */
async function send(
  database: TestDatabase,
  user: string,
  name: string,
  args: Record<string, unknown>
): Promise<Answer> {
  const command = randomUUID()
  const { status, body } = await database.as(user, name, { p_command: command, ...args })
  const answer = body as Answer & { refused?: unknown }
  if (status !== 200 || answer.refused) {
    throw new Error(`${name} was not accepted: ${status} ${JSON.stringify(body)}`)
  }
  return { ...answer, command }
}

type Act = (name: Name, command: string, args: Record<string, unknown>) => Promise<Answer>

function actor(database: TestDatabase, scene: Scene): Act {
  return (name, command, args) =>
    send(database, scene.user[name], command, {
      p_orchard: scene.orchard,
      p_person: scene.person[name],
      ...args,
    })
}

async function commandId(answer: Promise<Answer>): Promise<string> {
  return (await answer).command
}

async function plant(database: TestDatabase, scene: Scene): Promise<void> {
  await actor(database, scene)('manager', 'bring_in_trees', {
    p_blocks: [
      { code: 'A', name: 'Upper', rowSpacingM: 5, treeSpacingM: 4 },
      { code: 'Z', name: 'Laid out by mistake', rowSpacingM: 5, treeSpacingM: 4 },
    ],
    p_cultivars: [{ species: 'pear', name: 'Nobody has it' }],
    p_trees: [
      ...Array.from({ length: 40 }, (_, i) => ({
        block: 'A',
        row: 1 + Math.floor(i / 10),
        place: 1 + (i % 10),
        species: 'apple',
        heightCm: 240,
      })),
      { block: 'Z', row: 1, place: 1, species: 'apple' },
    ],
  })
}

async function people(database: TestDatabase, scene: Scene): Promise<void> {
  const by = actor(database, scene)
  for (const name of names) {
    const role = name === 'lead' ? 'lead' : 'volunteer'
    const { person } = await by('manager', 'add_person', { p_name: name, p_role: role })
    scene.person[name] = person
    scene.user[name] = await database.newUser()
    await database.asOwner(
      `insert into public.logins (orchard_id, person_id, user_id, linked_at) values ($1, $2, $3, now())`,
      [scene.orchard, person, scene.user[name]]
    )
  }
  const [login] = await database.asOwner('select id from public.logins where user_id = $1', [
    scene.user.ann,
  ])
  scene.login = String(login?.id)
  await database.asOwner('update public.people set admitted_at = null where id = $1', [
    scene.person.gus,
  ])
  await by('manager', 'remove_person', { p_subject: scene.person.fay })
  const [head] = await database.asOwner(
    'select epoch from public.orchard_heads where orchard_id = $1',
    [scene.orchard]
  )
  scene.epoch = String(head?.epoch)
}

async function things(database: TestDatabase, scene: Scene): Promise<void> {
  const by = actor(database, scene)
  // A busy machine takes longer than two minutes through all the doors.
  await by('manager', 'change_orchard', { p_house_rules: { withdraw_minutes: 60 } })
  await by('manager', 'place_aerial', { p_points: aerialPoints, p_opacity: 70, p_jpeg: plainJpeg })
  const round = await by('manager', 'open_round', {
    p_kind: 'winter',
    p_season: 2026,
    p_species: ['apple'],
    p_from: '2026-11-01',
    p_to: '2027-03-01',
  })
  scene.round = round.command
  for (const name of ['lead', 'ann', 'bo', 'cy', 'eve'] as const) {
    await by(name, 'give_consent', { p_by: null, p_text_version: 1 })
  }
  for (const name of ['ann', 'bo'] as const) {
    await by('lead', 'grant_skill', { p_subject: scene.person[name], p_skill: 'prunes_alone' })
  }
  for (const label of ['P1', 'P2', 'P3', 'P4']) {
    await by('lead', 'add_tool', { p_label: label, p_kind: 'pruner' })
  }
  scene.flag = await commandId(
    by('ann', 'flag_tree', { p_tree: 30, p_kind: 'disease', p_sign: 'canker', p_severity: 'low' })
  )
  scene.call = await commandId(by('ann', 'call_for_help', { p_kind: 'question', p_tree: 2 }))
  scene.hazard = await commandId(
    by('ann', 'flag_tree', {
      p_tree: 35,
      p_kind: 'arborist',
      p_sign: 'crack',
      p_severity: 'high',
      p_keep_out_m: 0,
    })
  )
  scene.photo = await commandId(
    by('ann', 'add_photo', { p_jpeg: plainJpeg, p_purpose: 'flag', p_flag: scene.flag })
  )
  scene.handIn = randomUUID()
  await database.asOwner(
    `insert into public.hand_ins (id, orchard_id, person_id, work, handed_in_at) values ($1, $2, $3, $4, now())`,
    [
      scene.handIn,
      scene.orchard,
      scene.person.gus,
      JSON.stringify([{ name: 'finish_tree', args: { tree: 7 } }]),
    ]
  )
  scene.archive = await onItsWay(database, scene)
  scene.invite = await commandId(
    by('lead', 'make_invite', {
      p_kind: 'join',
      p_role: 'volunteer',
      p_code_hash: sha256(scene.code.join),
    })
  )
  await by('manager', 'make_invite', {
    p_kind: 'role',
    p_role: 'lead',
    p_code_hash: sha256(scene.code.role),
  })
  await by('ann', 'make_invite', {
    p_kind: 'device',
    p_subject: scene.person.ann,
    p_code_hash: sha256(scene.code.device),
  })
}

/** The smallest orchard there is: its row, its number and its manager. */
async function onItsWay(database: TestDatabase, { user, code }: Scene): Promise<string> {
  const archive = randomUUID()
  const at = '2026-11-24T08:00:00Z'
  const rows = {
    orchards: { id: archive, name: 'Far Field', time_zone: 'UTC', created_at: at },
    orchard_heads: { orchard_id: archive, head: 0 },
    people: { id: archive, name: 'Far', role: 'manager', added_at: at, admitted_at: at },
  }
  for (const [part, [table, row]] of Object.entries(rows).entries()) {
    const defaults = {
      orchards: {
        language: 'en',
        units: 'metric',
        house_rules: {},
        emergency: {},
        emergency_version: 0,
        min_client: 0,
      },
      orchard_heads: { channel_epoch: 1, sheet_version: 1, last_tree_no: 0 },
      people: { orchard_id: archive, age_band: 'adult' },
    }[table]
    const whole = { ...row, ...defaults }
    await database.as(user.manager, 'put_archive_part', {
      p_code: code.setUp,
      p_archive: archive,
      p_part: part,
      p_table: table,
      p_columns: Object.keys(whole),
      p_rows: JSON.stringify([whole]),
    })
  }
  return archive
}

/** Corners of the picture, a hundred metres apart. */
export const aerialPoints = [
  [0, 0, 410_000_000, -28_000_000],
  [10_000, 0, 410_000_000, -27_988_000],
  [0, 10_000, 409_991_000, -28_000_000],
]

/** Begins and ends as a JPEG does; nothing looks further. */
export const plainJpeg = Buffer.from([0xff, 0xd8, 0xff, 0xdb, 0, 0, 0xff, 0xd9]).toString('base64')

async function makeReady(by: Act, scene: Scene): Promise<void> {
  const crew = ['lead', 'ann', 'bo', 'cy', 'eve'] as const
  for (const name of crew) await by(name, 'arrive', {})
  await by('lead', 'give_briefing', { p_people: crew.map((name) => scene.person[name]) })
  for (const name of crew) {
    await by(name, 'sign_briefing', { p_version: 1, p_language: 'en', p_how: 'heard' })
    await by(name, 'check_equipment', { p_failed_items: [] })
  }
  for (const [tool, name] of [
    [1, 'ann'],
    [2, 'bo'],
    [3, 'cy'],
  ] as const) {
    await by(name, 'take_tool', { p_tool: tool, p_failed_items: [] })
  }
}

async function finish(by: Act, tree: number): Promise<void> {
  const { command } = await by('ann', 'claim_tree', { p_tree: tree })
  await by('ann', 'finish_tree', { p_tree: tree, p_claim: command })
}
