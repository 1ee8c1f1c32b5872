import type { ReactNode } from 'react'

import { Banner, Banners } from '@/components/layout/Banner'
import { LanguageChoice } from '@/components/layout/LanguageChoice'
import { ThemeChoice } from '@/components/layout/ThemeChoice'
import { KeptList } from '@/components/sync/KeptList'
import { OfflineNote } from '@/components/sync/OfflineNote'
import { RefusedNote } from '@/components/sync/RefusedNote'
import { UnsentBadge } from '@/components/sync/UnsentBadge'
import { Button } from '@/components/ui/Button'
import { CheckRow } from '@/components/ui/CheckRow'
import { ChoiceGroup } from '@/components/ui/ChoiceGroup'
import { Face } from '@/components/ui/Face'
import { Facts } from '@/components/ui/Facts'
import { Icon, type IconName } from '@/components/ui/Icon'
import { iconShapes } from '@/components/ui/icon-shapes'
import { Legend } from '@/components/ui/Legend'
import { List, ListItem } from '@/components/ui/List'
import { Logo } from '@/components/ui/Logo'
import { Note } from '@/components/ui/Note'
import { Panel } from '@/components/ui/Panel'
import { Pick } from '@/components/ui/Pick'
import { Plate } from '@/components/ui/Plate'
import { RowLine } from '@/components/ui/RowLine'
import { Segmented } from '@/components/ui/Segmented'
import { Step, Steps } from '@/components/ui/Steps'
import { Tag } from '@/components/ui/Tag'
import { TextArea } from '@/components/ui/TextArea'
import { TextField } from '@/components/ui/TextField'
import { Tile } from '@/components/ui/Tile'
import { Why } from '@/components/ui/Why'
import { ZoomButtons } from '@/components/ui/ZoomButtons'
import type { Messages } from '@/lib/text/messages'
import { nothing } from './nothing'

/** Every component in every state, to be looked at. */
export function Gallery({ text }: { text: Messages }) {
  const { common, nextTree, tools, tree, unsent } = text
  const { status } = common
  return (
    <div className="gallery">
      <h1>
        <Logo /> Rowcall
      </h1>
      <Group title="Next step">
        <Button kind="call">{nextTree.claim}</Button>
        <div>
          <Why id="why" icon="lock">
            {text.briefing.sign}
          </Why>
          <Button kind="call" state="off" describedBy="why" wide>
            {nextTree.claim}
          </Button>
        </div>
        <Button kind="call" icon="kept" state="waiting" sub={common.goesOutByItself}>
          {common.kept}
        </Button>
        <div>
          <Why tone="wrong">{nextTree.wasFirst('Teo', '7·15')}</Why>
          <Button kind="call" wide>
            {nextTree.claimTag('7·15')}
          </Button>
        </div>
        <Button kind="call" sub={tree.thenStep(4)}>
          {text.whatToCut.steps.open_the_centre.done}
        </Button>
      </Group>
      <Group title="Buttons">
        <Button>{common.askLead}</Button>
        <Button kind="ink">{common.save}</Button>
        <Button kind="quiet" icon="undo">
          {common.undo}
        </Button>
        <Button kind="stop" icon="stop">
          {common.strip.stopWork}
        </Button>
        <Button state="wrong">{common.tryAgain}</Button>
        <Button state="off" describedBy="why">
          {common.askLead}
        </Button>
        <Button kind="square" icon="info">
          {tree.stuck}
        </Button>
      </Group>
      <Group title="Plate, tag, progress">
        <Plate label="S" cells={plateCells(text)} />
        <Plate label="S" cells={plateCells(text)} small />
        <span className="row">
          <Tag>S 7·14</Tag>
          <Tag state="asking">S 7·15</Tag>
        </span>
        <RowLine label="3/5" steps={['done', 'done', 'now', 'later', 'off']} />
        <Steps roomy>
          <Step state="done" heading title={text.ready.inCrew} doneWord={common.doneStep}>
            <p className="small">{text.ready.inCrewAs('Marta Olvera')}</p>
          </Step>
          <Step state="now" number={1} title={text.ready.briefing} doneWord={common.doneStep}>
            <p className="small">{text.ready.briefingNote}</p>
          </Step>
          <Step state="off" heading title={text.ready.shiftNotOpen} doneWord={common.doneStep}>
            <p className="small">{text.ready.shiftOpensAt('Inés', '9:00')}</p>
          </Step>
        </Steps>
        <Steps>
          <Step
            state="done"
            title={text.whatToCut.steps.dead_broken_diseased.title}
            doneWord={common.doneStep}
          />
          <Step
            state="now"
            number={2}
            title={text.whatToCut.steps.open_the_centre.title}
            doneWord={common.doneStep}
          >
            <p>{text.whatToCut.steps.open_the_centre.do}</p>
          </Step>
          <Step
            state="later"
            number={3}
            title={text.whatToCut.steps.ground_up_inside_out.title}
            doneWord={common.doneStep}
          />
        </Steps>
      </Group>
      <Group title="Signal">
        <UnsentBadge unsent={0} needYou={0} online text={common.net} />
        <UnsentBadge unsent={2} needYou={0} online text={common.net} />
        <UnsentBadge unsent={0} needYou={0} online={false} text={common.net} />
        <UnsentBadge unsent={3} needYou={0} online={false} text={common.net} />
        <UnsentBadge unsent={3} needYou={1} online text={common.net} />
      </Group>
      <Group title="Notes and banners">
        <Note lead={common.status.closed}>{common.askLead}</Note>
        <Note tone="call" icon="kept">
          {common.keptOnThisDevice}
        </Note>
        <Note tone="stop" icon="warn" lead={text.flag.hazard.stepOut} />
        <Note tone="done" mark="done" lead={tree.isDone('S 7·14')}>
          {tree.yourNth('ninth')}
        </Note>
        <Note tone="sick" mark="disease" lead={text.flag.diseaseFlagged('S 8·14')}>
          {text.flag.wipeBlade}
        </Note>
        <Note tone="arb" mark="arborist" lead={text.flag.hazardFlagged('S 9·11')}>
          {text.flag.comeAway}
        </Note>
        <Banners>
          <Banner icon="people" action={<Button>{common.undo}</Button>}>
            {common.youAre('Marta')}
          </Banner>
          <Banner tone="ink" icon="kept">
            {common.keptOnThisDevice}
          </Banner>
          <Banner tone="stop" icon="stop">
            {text.ready.stopped}
          </Banner>
        </Banners>
      </Group>
      <Group title="Fields and choices">
        <TextField
          label={text.join.yourName}
          hint={text.join.whoSeesIt}
          value="Marta Olvera"
          onChange={nothing}
        />
        <TextField
          label={text.join.yourName}
          fault={text.join.writeName}
          value=""
          onChange={nothing}
        />
        <TextArea label={tree.whatIsLeft} hint={tree.whatIsLeftHint} value="" onChange={nothing} />
        <LanguageChoice value="en" onChange={nothing} text={common} />
        <ThemeChoice value="dark" onChange={nothing} text={common} />
        <Segmented
          label={tools.lookFirst}
          squares
          options={[
            { value: 'ok', label: tools.inOrder, icon: 'check', tone: 'yes' },
            { value: 'fault', label: tools.fault, icon: 'cross', tone: 'no' },
          ]}
          value="ok"
          onChange={nothing}
        />
        <ChoiceGroup label={tools.whatIsWrong} as="picks">
          <Pick type="checkbox" checked onChange={nothing}>
            {tools.faults.blade_tight}
          </Pick>
          <Pick type="checkbox" checked={false} onChange={nothing}>
            {tools.faults.blade_sharp}
          </Pick>
          <Pick type="checkbox" checked onChange={nothing} face={<Face name="Fenna Brouwer" />}>
            Fenna
          </Pick>
        </ChoiceGroup>
        <ChoiceGroup label={tree.howFar} as="tiles">
          <Tile
            type="radio"
            name="far"
            checked
            onChange={nothing}
            beside
            tone="done"
            art={<Icon name="check" />}
          >
            {tree.allDone}
          </Tile>
          <Tile
            type="radio"
            name="far"
            checked={false}
            onChange={nothing}
            beside
            art={<Icon name="other" />}
          >
            {tree.partLeft}
          </Tile>
          <Tile
            type="radio"
            name="see"
            checked
            onChange={nothing}
            art={<Icon name="line" size={64} />}
          >
            {text.flag.hazard.power_line}
          </Tile>
        </ChoiceGroup>
        <ChoiceGroup label={tree.beforeYouWalkOn} as="checks">
          <CheckRow checked onChange={nothing}>
            {tree.woodInAlley}
          </CheckRow>
          <CheckRow checked={false} next onChange={nothing} hint={tree.bladesWhy}>
            {tree.bladesWiped}
          </CheckRow>
        </ChoiceGroup>
      </Group>
      <Group title="Lists, facts, legend">
        <Panel>
          <List>
            <ListItem
              lead={<Face name="Teo Lindqvist" kind="ink" />}
              title="Teo Lindqvist"
              note="…"
              end={<Tag>S 8·4</Tag>}
            />
            <ListItem
              lead={<Face name="Fenna Brouwer" kind="free" />}
              title="Fenna Brouwer"
              onPress={nothing}
              end={<Icon name="right" />}
            />
          </List>
        </Panel>
        <KeptList
          label={unsent.title}
          kept={[
            { id: 'a', icon: 'check', title: unsent.kind.finish('S 7·14'), note: '10:20' },
            { id: 'b', icon: 'clock', title: unsent.kind.claim('S 7·15'), note: unsent.claimNote },
          ]}
        />
        <Facts
          facts={[
            { icon: 'person', text: <b>{nextTree.dealtBy('Inés')}</b> },
            { mark: 'disease', text: nextTree.diseaseThere },
          ]}
        />
        <Legend
          label={common.legend}
          items={[
            { mark: 'unpruned', word: status.unpruned, count: 104 },
            { mark: 'inProgress', word: status.in_progress, count: 11 },
            { mark: 'done', word: status.done },
            { mark: 'disease', word: status.disease },
            { mark: 'arborist', word: status.arborist },
            { mark: 'mine', word: status.held_by_me },
            { mark: 'dealt', word: status.dealt_to_me },
            { mark: 'closed', word: status.closed },
          ]}
        />
        <div className="mapbox">
          <ZoomButtons
            inLabel={common.zoomIn}
            outLabel={common.zoomOut}
            onIn={nothing}
            onOut={nothing}
          />
        </div>
        <OfflineNote minutesOutOfTouch={20} signal={text.things.signal.whistle} text={unsent} />
        <RefusedNote
          title={unsent.kind.claim('S 7·15')}
          reasons={[text.refusals.stopped({}), text.refusals.on_break({})]}
        >
          <Button>{unsent.discard}</Button>
        </RefusedNote>
      </Group>
      <Group title="Icons">
        <div className="row icons">
          {(Object.keys(iconShapes) as IconName[]).map((name) => (
            <Icon key={name} name={name} size={28} />
          ))}
        </div>
      </Group>
    </div>
  )
}

function Group({ title, children }: { title: string; children: ReactNode }) {
  return (
    <section>
      <h2>{title}</h2>
      <div className="group">{children}</div>
    </section>
  )
}

export function plateCells({ common: { plate } }: Messages) {
  return [
    { word: plate.block, sign: 'S' },
    { word: plate.row, sign: '7' },
    { word: plate.tree, sign: '14' },
  ]
}
