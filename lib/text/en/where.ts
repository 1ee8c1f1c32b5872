/** Where this phone is, and which tree it may be at. */

import { plural } from './plural'

export const where = {
  title: 'Where am I?',
  find: 'Find me with this device',
  stop: 'Stop looking',
  looking: 'Looking for this device…',
  stays: 'Where you are stays on this device. It is not sent to anybody.',
  at: (tag: string) => `You are at ${tag}, as far as this device knows.`,
  oneOf: (count: number) =>
    plural(
      count,
      'You are near one tree. Read its tag.',
      `It may be any of ${count} trees. Read the tag.`
    ),
  ofMany: (count: number) => `It may be any of more than ${count} trees. Read the tag.`,
  unsure: (distance: string) =>
    `This device may be off by ${distance}. Under crowns it is often off by more.`,
  elsewhere: (distance: string, wind: string, tag: string) =>
    `You are not among the trees: the nearest, ${tag}, is ${distance} to the ${wind}.`,
  noPlaces:
    'No tree has a place on the map yet, so nobody can say which one you are at. Read the tag.',
  near: 'The nearest trees',
  away: (distance: string, paces: string, wind: string) => `${distance}, ${paces}, to the ${wind}`,
  mayBe: 'it may be this one',
  reckoned: 'Some places are reckoned from the spacing of the block, not measured.',
  insecure:
    'This page has no https address, and a browser tells only https pages where the device is. Read the tag and say where you are.',
  noWay: 'This browser does not tell where the device is. Read the tag and say where you are.',
  denied: 'This page may not know where the device is.',
  deniedDo:
    'Press the sign beside the address at the top, allow the location for this page, then try again. If that does not help, allow it for the browser in the settings of the device.',
  lost: 'The device does not know where it is. Step out from under the crowns, wait half a minute, then try again.',
  again: 'Try again',
  winds: {
    n: 'north',
    ne: 'north-east',
    e: 'east',
    se: 'south-east',
    s: 'south',
    sw: 'south-west',
    w: 'west',
    nw: 'north-west',
  },
  me: 'You',
  plan: 'Plan of the trees around you, north up',
}
