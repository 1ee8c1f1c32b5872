/** The house rules of weather and season, each with where it comes from. */

const months =
  'UC IPM, Apricot and Cherry: July and August in California. Elsewhere the driest months after harvest. 11 to 2 goes over the end of the year.'

export const weatherRules = {
  weather_minutes: {
    name: 'Weather is old after',
    says: 'Older weather puts nothing off, and screens say that it is unknown.',
    from: 'Common practice, no published number.',
  },
  thunder_minutes: {
    name: 'After the last thunder wait',
    says: 'Until then nobody claims a tree or hauls brush. There is no exception.',
    from: 'National Weather Service: 30 minutes. It can be longer, never shorter.',
  },
  ladder_gust_kmh: {
    name: 'No ladders from gusts of',
    says: 'Whoever is on one is told to come down. There is no exception: a lead measures again.',
    from: 'Beaufort 5, small trees sway (National Weather Service). That it is a limit is common practice.',
  },
  work_gust_kmh: {
    name: 'No work from gusts of',
    says: 'Everybody at a tree is told to come out. There is no exception.',
    from: 'Beaufort 6, large branches move (National Weather Service). That it is a limit is common practice.',
  },
  heat_stop_c: {
    name: 'No work when it feels like',
    says: 'By heat index, in shade; full sun feels hotter still. There is no exception.',
    from: 'National Weather Service: danger from 103 °F (39.4 °C). That it is a limit is common practice.',
  },
  light_minutes: {
    name: 'Ladders end before sunset by',
    says: 'Work on the ground ends at sunset. Hills and crowns darken earlier.',
    from: 'Common practice, no published number.',
  },
  dry_hours: {
    name: 'Apricots and cherries wait after wet wood',
    says: 'Counted from when the trees were last known to be wet.',
    from: 'Common practice. OSU Extension: prune only in dry weather.',
  },
  rain_hours: {
    name: 'No pruning with rain expected within',
    says: 'For every species. A lead makes an exception.',
    from: 'UC Master Gardeners, Napa: 24 hours in one text, two days in another.',
  },
  rain_free_days: {
    name: 'Rain-free days for apricots and cherries',
    says: 'With fewer days to the first rain the verdict says so. It refuses nothing.',
    from: 'UC IPM: six weeks. Fall wounds stay open at least 42 days (Ramos, Moller and English 1975).',
  },
  first_rain_month: {
    name: 'The rain begins in month',
    says: 'Counted from its first day.',
    from: 'October in California. Take your own.',
  },
  apricot_from_month: {
    name: 'Apricots: first month',
    says: 'In other months they are off.',
    from: months,
  },
  apricot_to_month: {
    name: 'Apricots: last month',
    says: 'In other months they are off.',
    from: months,
  },
  cherry_from_month: {
    name: 'Cherries: first month',
    says: 'In other months they are off.',
    from: months,
  },
  cherry_to_month: {
    name: 'Cherries: last month',
    says: 'In other months they are off.',
    from: months,
  },
}
