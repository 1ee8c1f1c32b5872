import { describe, expect, test } from 'vitest'

import { readHourly } from '@/lib/domain/safety/hourly-csv'

const dayFirst = { dayFirst: true }

describe('a pasted table of hours', () => {
  test('in English with commas', () => {
    const text = `time,temperature (°C),relative humidity (%),wind (km/h),gusts (km/h),rain (mm)
2027-04-03T09:00,12.5,61,8,14,0
2027-04-03T10:00,13,58,9,,0.2`

    expect(readHourly(text, dayFirst)).toEqual({
      problems: [],
      rows: [
        {
          day: '2027-04-03',
          time: '09:00',
          temperatureC: 12.5,
          humidity: 61,
          windKmh: 8,
          gustKmh: 14,
          rainMm: 0,
        },
        expect.objectContaining({ time: '10:00', gustKmh: null, rainMm: 0.2 }),
      ],
    })
  })

  test('in Spanish with semicolons, a decimal comma, date and hour apart, in another order', () => {
    const text = `Fecha;Hora;Precipitación (mm);Rachas (km/h);Humedad;Temp. (ºC)
3/4/2027;9:00;0,4;22,5;88;9,5`

    expect(readHourly(text, dayFirst)).toMatchObject({
      problems: [],
      rows: [
        {
          day: '2027-04-03',
          time: '09:00',
          rainMm: 0.4,
          gustKmh: 22.5,
          humidity: 88,
          temperatureC: 9.5,
        },
      ],
    })
  })

  test('in US units, with tabs and halves of the day', () => {
    const text = 'Hour\tTemp (F)\tWind (mph)\tRain (in)\n4/3/2027 9:00 PM\t50\t10\t0.1'

    expect(readHourly(text, { dayFirst: false })).toMatchObject({
      rows: [{ day: '2027-04-03', time: '21:00', temperatureC: 10, windKmh: 16.09, rainMm: 2.54 }],
    })
  })

  test.each([
    ['13/4/2027 9:00', false, '2027-04-13'],
    ['4/13/2027 9:00', true, '2027-04-13'],
    ['4/3/2027 9:00', true, '2027-03-04'],
    ['4/3/2027 9:00', false, '2027-04-03'],
    ['03.04.2027 09:00', true, '2027-04-03'],
    ['2027-04-03 09:00:00', true, '2027-04-03'],
  ])('%s, day first %s: %s', (written, first, day) => {
    expect(readHourly(`time,rain\n${written},0`, { dayFirst: first }).rows[0]?.day).toBe(day)
  })

  test.each([
    ['', [{ code: 'empty' }]],
    ['time,rain', [{ code: 'empty' }]],
    ['place,rain\nhere,0', [{ code: 'no_time' }]],
    ['time,colour\n2027-04-03T09:00,red', [{ code: 'no_values' }]],
    ['time,rain\nsoon,0', [{ code: 'not_a_time', line: 2, text: 'soon' }]],
    ['time,rain\n2027-13-01T09:00,0', [{ code: 'not_a_time', line: 2, text: '2027-13-01T09:00' }]],
    ['time,rain\n2027-02-30T09:00,0', [{ code: 'not_a_time', line: 2, text: '2027-02-30T09:00' }]],
    ['time,rain\n2027-04-03T09:00,much', [{ code: 'not_a_number', line: 2, text: 'much' }]],
    ['time,humidity\n2027-04-03T09:00,140', [{ code: 'out_of_range', line: 2, text: '140' }]],
    ['time,rain\n"2027-04-03T09:00,0', [{ code: 'quote_open' }]],
  ])('%j: %j', (text, problems) => {
    expect(readHourly(text, dayFirst).problems).toEqual(problems)
  })
})
