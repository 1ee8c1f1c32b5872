import { BandRow } from '@/components/layout/BandRow'
import { Bar } from '@/components/layout/Bar'
import { Bench } from '@/components/layout/Bench'
import { PhoneFrame } from '@/components/layout/PhoneFrame'
import { Strip } from '@/components/layout/Strip'
import { Tabs } from '@/components/layout/Tabs'
import { WideFrame } from '@/components/layout/WideFrame'
import { UnsentBadge } from '@/components/sync/UnsentBadge'
import { Button } from '@/components/ui/Button'
import { ButtonLink } from '@/components/ui/ButtonLink'
import { Face } from '@/components/ui/Face'
import { Facts } from '@/components/ui/Facts'
import { List, ListItem } from '@/components/ui/List'
import { Pick } from '@/components/ui/Pick'
import { Plate } from '@/components/ui/Plate'
import { Tag } from '@/components/ui/Tag'
import { ZoomButtons } from '@/components/ui/ZoomButtons'
import { routes } from '@/lib/routes'
import type { LeadMessages, Messages } from '@/lib/text/messages'
import { plateCells } from './Gallery'
import { nothing } from './nothing'

/** The phone frame with a screen's worth in it. */
export function PhoneScreen({ text }: { text: Messages }) {
  const { common, nextTree } = text
  return (
    <PhoneFrame
      who="Quillet Hill · Saturday"
      net={
        <UnsentBadge
          unsent={3}
          needYou={0}
          online={false}
          href={routes.unsent()}
          text={common.net}
        />
      }
      bench={
        <Bench
          side={
            <Button kind="square" icon="other">
              {nextTree.other}
            </Button>
          }
          step={
            <ButtonLink kind="call" href={routes.tree(12)}>
              {nextTree.claim}
            </ButtonLink>
          }
          strip={
            <Strip
              text={common.strip}
              ways={{
                emergency: { href: routes.emergency() },
                callLead: { href: routes.callLead() },
                flag: { href: routes.flag() },
                stopWork: { onPress: nothing },
              }}
            />
          }
        />
      }
    >
      <div className="row">
        <Plate label={common.treeSpoken('Stone Barn', 7, 14)} cells={plateCells(text)} />
        <div className="grow">
          <h2>{nextTree.title}</h2>
          <p className="small">Stone Barn</p>
        </div>
      </div>
      <Facts facts={[{ icon: 'person', text: <b>{nextTree.dealtBy('Inés')}</b> }]} />
    </PhoneFrame>
  )
}

/** The wide frame with all its slots filled. */
export function WideScreen({ text, lead }: { text: Messages; lead: LeadMessages }) {
  const { leadMap } = lead
  return (
    <WideFrame
      fill
      bar={
        <Bar
          title={lead.shift.named('Saturday')}
          sub={leadMap.openSince('9:02', text.common.people(14))}
          tabs={
            <Tabs
              label={leadMap.title}
              tabs={[
                { href: routes.map(), word: leadMap.tabs.map, isHere: true },
                { href: routes.people(), word: leadMap.tabs.people, isHere: false, count: 3 },
                { href: routes.board(), word: leadMap.tabs.board, isHere: false },
              ]}
            />
          }
          end={
            <>
              <span className="clock">10:42</span>
              <Button kind="stop" icon="stop">
                {leadMap.stop}
              </Button>
            </>
          }
        />
      }
      band={
        <>
          <BandRow
            name="Teo Lindqvist"
            title="Teo: is this limb dead?"
            note={<Tag>S 8·4</Tag>}
            action={<Button>{leadMap.coming}</Button>}
          />
          <BandRow
            name="Ruben Kostka"
            title="Ruben: saw is stuck"
            note={<Tag>C 7·4</Tag>}
            action={<Button>{leadMap.coming}</Button>}
          />
        </>
      }
      sideLabel={leadMap.crew}
      side={
        <>
          <div className="head">
            <h2>{leadMap.crew}</h2>
            <span className="small">{leadMap.crewCounts(11, 2, 1)}</span>
          </div>
          <List label={leadMap.crew}>
            {['Teo Lindqvist', 'Marta Olvera', 'Amina Haddad', 'Dag Eskola'].map((name) => (
              <ListItem
                key={name}
                lead={<Face name={name} />}
                title={name}
                end={<Tag>S 8·4</Tag>}
              />
            ))}
          </List>
        </>
      }
      deal={
        <>
          <h2>{leadMap.picked(12)}</h2>
          <Pick
            type="radio"
            name="to"
            checked
            onChange={nothing}
            face={<Face name="Fenna Brouwer" />}
          >
            Fenna
          </Pick>
          <Pick
            type="radio"
            name="to"
            checked={false}
            onChange={nothing}
            face={<Face name="Oskar Wren" />}
          >
            Oskar
          </Pick>
          <Button kind="call">{leadMap.deal(12, 'Fenna')}</Button>
        </>
      }
    >
      <div className="mapbox">
        <ZoomButtons
          inLabel={text.common.zoomIn}
          outLabel={text.common.zoomOut}
          onIn={nothing}
          onOut={nothing}
        />
      </div>
    </WideFrame>
  )
}
