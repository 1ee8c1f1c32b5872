/** What was read, by a name that can be looked up. */

export const tradeSources = {
  ansi_a300: 'ANSI A300-1995, 5.3.1, as reprinted; superseded',
  apricot_reference: 'a general reference on apricots; common practice agrees',
  garden_press: 'garden press',
  garden_references: 'general garden references',
  master_gardener_column: 'UC Master Gardener column, San Joaquin',
  master_gardener_pages: 'UC Master Gardener pages',
  scottsdale: 'City of Scottsdale',
  uc_anr_8502: 'UC ANR publication 8502 (2014)',
  uc_ipm_74109: 'UC IPM Pest Note 74109',
  uc_ipm_apricot: 'UC IPM Pest Management Guidelines, apricot',
  uc_ipm_cherry: 'UC IPM Pest Management Guidelines, cherry',
  uc_ipm_wsu_fire_blight: 'UC IPM Pest Note 7414 when dormant, WSU 2018 when growing',
  us_park_service: 'Safety for Tree Workers, US National Park Service',
  wisconsin: 'Wisconsin woodland programme',
  wsu_2025: 'Washington State University, December 2025',
}
