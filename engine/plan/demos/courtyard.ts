import type { Plan } from '../types.ts';

/**
 * A walled courtyard in a town of southern Spain, sun from the south, drawn askew on purpose. People, houses and measures
 * are invented. Its faults, to be found: the roof of option A lets the low sun in from the west under it; in winter the
 * best summer spot of the lemon pot is dark.
 *
 * Mean highs and lows: Córdoba airport, 1971–2000, as printed on a public page. Sunshine, humidity and wind from memory.
 */
export const courtyard: Plan = {
  format: 'shadewright-plan',
  version: 1,
  name: 'The well courtyard',
  units: 'metric',
  site: {
    latitude: 37.88,
    longitude: -4.78,
    elevation: 120,
    timeZone: 'Europe/Madrid',
    upBearing: 20,
    boundary: [[0, 0], [11, 0], [11, 8.5], [0, 8.5]],
    tap: [7.6, 5.4],
    hose: 8,
    how: { upBearing: { by: 'shadow', pm: 1.5 } },
  },
  season: { year: 2026, from: '06-01', to: '09-15' },
  climate: {
    from: 'months',
    source: 'Monthly means of the airport near by, 1971 to 2000; recent summers run hotter. Sunshine, humidity and wind from memory.',
    gust: 22,
    frost: { first: '12-10', last: '02-10', lowest: -3 },
    turbidity: 3,
    hotAir: 35,
    heatwaveHigh: 44,
    months: [
      { month: 5, high: 26.2, low: 11.8, wind: 1 },
      { month: 6, high: 31.6, low: 15.5, humidity: 40, wind: 1, sunshine: 0.88 },
      { month: 7, high: 36.2, low: 18.1, humidity: 34, wind: 1, sunshine: 0.93 },
      { month: 8, high: 35.9, low: 18.5, humidity: 36, wind: 1, sunshine: 0.9 },
      { month: 9, high: 31.7, low: 16.2, humidity: 45, wind: 1, sunshine: 0.8 },
      { month: 10, high: 25, low: 12.1, wind: 1 },
    ],
    how: { gust: { by: 'guess', pm: 4 } },
  },
  features: [
    {
      id: 'house', kind: 'building', name: 'House, two floors', outline: [[0, 8.5], [11, 8.5], [11, 13], [0, 13]], height: 6.2, eaves: 0.3,
      how: { height: { by: 'guess', pm: 0.4 } },
    },
    {
      id: 'east-house', kind: 'building', name: 'Neighbour to the east, white wall', outline: [[11, 0], [16, 0], [16, 8.5], [11, 8.5]], height: 5.8,
      how: { height: { by: 'guess', pm: 0.4 } },
    },
    { id: 'west-wall', kind: 'wall', name: 'West wall', path: [[0, 0], [0, 8.5]], height: 3.4, thickness: 0.3 },
    { id: 'south-wall', kind: 'wall', name: 'South wall', path: [[0, 0], [11, 0]], height: 2.6, thickness: 0.3 },
    {
      id: 'orange', kind: 'tree', name: 'Orange tree', at: [4.2, 4], height: 4.2, crownWidth: 3, crownBase: 1.6, shape: 'round', openness: 0.12,
      plant: 'orange', planted: '1998', how: { openness: { by: 'guess', pm: 0.06 } },
    },
    {
      id: 'lemon', kind: 'plant', name: 'Lemon pot', at: [9.6, 6.4], height: 1.7, spread: 1.1, plant: 'lemon', container: true,
      pot: { width: 0.5, colour: 'terracotta' }, move: 'trolley', worth: 3,
    },
    {
      id: 'hydrangea', kind: 'plant', name: 'Hydrangea', at: [1.2, 3], height: 0.8, spread: 0.8, plant: 'hydrangea', container: true,
      pot: { colour: 'light' }, move: 'carry',
    },
    { id: 'geraniums', kind: 'bed', name: 'Geraniums along the house', outline: [[1, 7.6], [6, 7.6], [6, 8.3], [1, 8.3]], plantHeight: 0.9, plant: 'geranium' },
    { id: 'herbs', kind: 'bed', name: 'Herbs along the south wall', outline: [[6, 0.4], [10, 0.4], [10, 1.2], [6, 1.2]], plantHeight: 0.3, plant: 'thyme' },
    {
      id: 'well', kind: 'keepout', name: 'Well',
      outline: [[7.6, 5], [7.52, 5.3], [7.3, 5.52], [7, 5.6], [6.7, 5.52], [6.48, 5.3], [6.4, 5], [6.48, 4.7], [6.7, 4.48], [7, 4.4], [7.3, 4.48], [7.52, 4.7]],
      blocks: ['posts', 'pots'],
    },
    { id: 'door', kind: 'keepout', name: 'Path to the door', outline: [[7.5, 7.3], [8.7, 7.3], [8.7, 8.5], [7.5, 8.5]], blocks: ['posts', 'pots'] },
    { id: 'terrace', kind: 'eye', name: 'Neighbour’s roof terrace', path: [[13, 4]], height: 7.2 },
  ],
  options: [
    {
      id: 'A',
      name: 'A roof over the lemon',
      adds: [{ id: 'lemon-roof', kind: 'canopy', name: 'Roof over the lemon', center: [9.6, 6.4], length: 2.6, width: 2.6, height: 2.6, density: 0.5 }],
    },
    {
      id: 'B',
      name: 'A lower roof and a screen to the west',
      adds: [
        { id: 'lemon-low-roof', kind: 'canopy', name: 'Lower roof over the lemon', center: [9.6, 6.4], length: 2.6, width: 2.6, height: 2.3, density: 0.5 },
        { id: 'lemon-screen', kind: 'screen', name: 'Screen west of the lemon', path: [[8.4, 5], [8.4, 7.8]], height: 2.2, density: 0.6 },
      ],
    },
    { id: 'C', name: 'The lemon behind the west wall, nothing built', moves: { lemon: [1, 5.6] } },
  ],
  journal: [
    {
      date: '2025-07-19', what: 'damage', feature: 'lemon', amount: 3, side: 225, part: 'leaf',
      text: 'Up to half of the leaves on the terrace side bleached and brown after the hot week.',
    },
  ],
};
