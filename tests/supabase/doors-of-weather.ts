/** The doors of weather: readings and answers are taken in every state, exceptions are of an open shift. */

import { always, inShift, nothing, type Use } from './door'

export const doorsOfWeather: Record<string, Use[]> = {
  write_weather: [
    {
      right: 'lead',
      args: () => ({ p_temperature_c: 12.5, p_gust_kmh: 14, p_canopy: 'dry', p_rain_in_h: 96 }),
      outcome: always,
    },
    { as: 'thunder', right: 'lead', args: () => ({ p_thunder: true }), outcome: always },
  ],
  answer_weather: [{ right: 'self', args: nothing, outcome: always }],
  make_exception: [
    {
      right: 'lead',
      args: () => ({ p_what: 'apple', p_because: 'bark_is_dry' }),
      outcome: { ...inShift(), else: 'refused: not_off' },
    },
    {
      as: 'of what a lead put off',
      right: 'lead',
      args: () => ({ p_what: 'pear', p_because: 'lead_judges', p_note: 'Two by the gate' }),
      outcome: inShift(),
    },
  ],
  end_exception: [{ right: 'lead', args: () => ({ p_what: 'apple' }), outcome: inShift() }],
  bring_in_forecast: [
    {
      right: 'lead',
      args: () => ({ p_hours: [['2026-11-25T08:00:00.000Z', 9.5, null, 8, 14, 0]] }),
      outcome: always,
    },
  ],
  read_forecast: [{ right: 'member', args: nothing, outcome: always }],
  close_watch: [{ right: 'reads-lead', args: nothing, outcome: always }],
  read_exceptions: [{ right: 'reads-lead', args: nothing, outcome: always }],
}
