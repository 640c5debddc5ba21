import type { Plan } from '../types.ts';

/**
 * A yard on a lane in a river town of inland South Australia: sun from the north, a season across New Year. People,
 * houses and measures are invented. Its faults, to be found: the roof of option A is hidden from the lane but hangs only
 * 0.2 m over the apricot and lets the low sun in; from the window upstairs behind nothing can be hidden.
 *
 * Climate from memory, rounded: rough.
 */
export const lane: Plan = {
  format: 'shadewright-plan',
  version: 1,
  name: 'The lane yard',
  units: 'metric',
  site: {
    latitude: -34.45,
    longitude: 140.57,
    elevation: 40,
    timeZone: 'Australia/Adelaide',
    upBearing: 352,
    boundary: [[0, 0], [16, 0], [16, 22], [0, 22]],
    tap: [13.8, 0.4],
    hose: 25,
    how: { upBearing: { by: 'compass', pm: 4 } },
  },
  season: { year: 2026, from: '12-01', to: '03-15' },
  climate: {
    from: 'rough',
    source: 'From memory, rounded: replace with the months of a weather station near by.',
    gust: 30,
    frost: { first: '05-25', last: '09-15', lowest: -3 },
    turbidity: 3,
    hotAir: 35,
    heatwaveHigh: 46,
    months: [
      { month: 12, high: 29.5, low: 13, humidity: 28, wind: 3, sunshine: 0.78 },
      { month: 1, high: 32, low: 15.5, humidity: 28, wind: 3, sunshine: 0.8 },
      { month: 2, high: 31.5, low: 15, humidity: 28, wind: 3, sunshine: 0.8 },
      { month: 3, high: 28, low: 12, humidity: 28, wind: 3, sunshine: 0.76 },
    ],
    how: { gust: { by: 'guess', pm: 5 } },
  },
  features: [
    { id: 'house', kind: 'building', name: 'House', outline: [[1.5, -9], [14.5, -9], [14.5, 0], [1.5, 0]], height: 3, eaves: 0.6 },
    { id: 'west-fence', kind: 'wall', name: 'Steel fence on the lane', path: [[0, 0], [0, 22]], height: 1.8, thickness: 0.06 },
    { id: 'north-fence', kind: 'wall', name: 'Steel fence at the back', path: [[0, 22], [16, 22]], height: 1.8, thickness: 0.06 },
    { id: 'east-fence', kind: 'wall', name: 'Steel fence to the neighbour', path: [[16, 0], [16, 22]], height: 1.8, thickness: 0.06 },
    { id: 'shed', kind: 'building', name: 'Shed', outline: [[0.6, 18.4], [3.6, 18.4], [3.6, 21.4], [0.6, 21.4]], height: 2.3 },
    {
      id: 'gum', kind: 'tree', name: 'Neighbour’s gum', at: [19, 14], height: 11, crownWidth: 8, crownBase: 3.5, shape: 'round', openness: 0.3,
      how: { height: { by: 'guess', pm: 2 }, openness: { by: 'guess', pm: 0.1 } },
    },
    {
      id: 'lemon-tree', kind: 'tree', name: 'Lemon tree', at: [11, 17], height: 3.2, crownWidth: 3, crownBase: 0.5, shape: 'round', openness: 0.12,
      plant: 'lemon', planted: '2012',
    },
    { id: 'apricot', kind: 'plant', name: 'Young apricot', at: [4.5, 15], height: 1.9, spread: 1.6, plant: 'apricot', planted: '2024', move: 'never', worth: 2 },
    {
      id: 'blueberry', kind: 'plant', name: 'Blueberry pot', at: [13.2, 6], height: 1.6, spread: 1.1, plant: 'blueberry', container: true,
      pot: { width: 0.45, colour: 'dark' }, move: 'trolley', planted: '2026-10-10', worth: 2,
    },
    { id: 'tomatoes-1', kind: 'bed', name: 'Tomatoes near the house', outline: [[6, 8], [9, 8], [9, 9.2], [6, 9.2]], plantHeight: 1.1, plant: 'tomato' },
    { id: 'tomatoes-2', kind: 'bed', name: 'Tomatoes further back', outline: [[6, 10], [9, 10], [9, 11.2], [6, 11.2]], plantHeight: 1.1, plant: 'tomato' },
    { id: 'raspberries', kind: 'bed', name: 'Raspberries', outline: [[14.9, 7], [15.6, 7], [15.6, 13], [14.9, 13]], plantHeight: 0.9, plant: 'raspberry' },
    { id: 'lane', kind: 'eye', name: 'People on the lane', path: [[-3, -2], [-3, 24]], height: 1.6 },
    { id: 'upstairs', kind: 'eye', name: 'Window upstairs behind', path: [[8, 34]], height: 4.4, how: { height: { by: 'guess', pm: 0.5 } } },
  ],
  options: [
    {
      id: 'A',
      name: 'A roof over the apricot',
      adds: [{ id: 'apricot-roof', kind: 'canopy', name: 'Roof over the apricot', center: [4.5, 15], length: 3, width: 3, height: 2.1, density: 0.5 }],
    },
    {
      id: 'B',
      name: 'A screen west of the apricot',
      adds: [{ id: 'apricot-screen', kind: 'screen', name: 'Screen west of the apricot', path: [[3.2, 13.4], [3.2, 16.6]], height: 1.75, density: 0.6 }],
    },
    {
      id: 'C',
      name: 'The blueberry behind the shed, a thin roof over the raspberries',
      adds: [{ id: 'raspberry-roof', kind: 'canopy', name: 'Thin roof over the raspberries', center: [15, 10], length: 6.4, width: 1.6, height: 1.7, density: 0.3 }],
      moves: { blueberry: [4.3, 19.9] },
    },
  ],
  journal: [
    { date: '2026-01-18', what: 'damage', feature: 'apricot', amount: 3, side: 270, part: 'leaf', text: 'Leaves on the lane side brown at the edges.' },
    { date: '2026-01-25', what: 'damage', feature: 'apricot', amount: 2, side: 270, part: 'bark', text: 'Bark of the trunk cracked on the lane side.' },
  ],
};
