/** The house rules of weather and season. A part of `houseRules`, where their kinds are explained. */

import type { HouseRule } from './house-rules'

/** Months as 1 to 12; a season may go over the end of the year. */
const month = { unit: 'month', least: 1, most: 12, cautious: 'either' } as const

export const weatherRules = [
  /** What was written longer ago says nothing about now. */
  { key: 'weather_minutes', unit: 'min', usual: 60, least: 15, most: 180, cautious: 'either' },
  // NWS: 30 minutes after the last thunder; an orchard may wait longer, never less.
  { key: 'thunder_minutes', unit: 'min', usual: 30, least: 30, most: 120, cautious: 'more' },
  // Beaufort 5 begins at 19 mph, 30.6 km/h, and ends at 24 mph; 6 ends at 31 mph. That they are limits is common practice.
  { key: 'ladder_gust_kmh', unit: 'km/h', usual: 30, least: 10, most: 39, cautious: 'less' },
  { key: 'work_gust_kmh', unit: 'km/h', usual: 40, least: 15, most: 50, cautious: 'less' },
  // As it feels: NWS calls it danger from 103 °F, 39.4 °C, and extreme danger from 125 °F.
  { key: 'heat_stop_c', unit: '°C', usual: 39, least: 27, most: 51, cautious: 'less' },
  { key: 'light_minutes', unit: 'min', usual: 30, least: 0, most: 120, cautious: 'more' },
  { key: 'dry_hours', unit: 'h', usual: 4, least: 0, most: 72, cautious: 'more' },
  // UC Master Gardeners, Napa: no rain within 24 hours; a second text says two days.
  { key: 'rain_hours', unit: 'h', usual: 24, least: 0, most: 72, cautious: 'more' },
  // UC IPM: six weeks; Ramos, Moller and English 1975: fall wounds stay open at least 42 days.
  { key: 'rain_free_days', unit: 'd', usual: 42, least: 14, most: 90, cautious: 'more' },
  // California's months by source; elsewhere the driest ones after harvest.
  { key: 'first_rain_month', ...month, usual: 10 },
  { key: 'apricot_from_month', ...month, usual: 7 },
  { key: 'apricot_to_month', ...month, usual: 8 },
  { key: 'cherry_from_month', ...month, usual: 7 },
  { key: 'cherry_to_month', ...month, usual: 8 },
] as const satisfies readonly HouseRule[]
