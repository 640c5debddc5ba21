/** How to take a reading that is worth comparing. */

import type { Advice } from '../year/advice.ts';

export const READING_PROTOCOL: readonly Advice[] = [
  {
    basis: 'common practice',
    text:
      'Choose a clear, still afternoon in the hot hours; note the clock time to the minute, and the air’s ' +
      'temperature in the shade, a metre or more up, out of the wind of a wall.',
  },
  {
    basis: 'trial',
    source: 'Leigh et al. 2006, Functional Plant Biology 33:515–519',
    text:
      'Point the infrared thermometer at a leaf that faces the sun, 0.1 to 0.3 m (4 to 12 in) off; shade the ' +
      'spot you read for a second or two and read at once: sunlight thrown back by the leaf falsifies the reading ' +
      'by 2 °C (4 °F) and more.',
  },
  {
    basis: 'trial',
    source: 'López et al. 2012, Sci. Hortic. 137:49–58',
    text:
      'Set the emissivity to 0.97; leave shiny and wet leaves out, and make sure that no ground behind the ' +
      'leaf is in the spot.',
  },
  {
    basis: 'our estimate',
    text:
      'Take readings in pairs, one under the cloth and one in the open, on plants of the same kind and within ' +
      '5 minutes: the difference is what counts. One pair claims nothing; three begin to.',
  },
  {
    basis: 'our estimate',
    text:
      'With a light meter held level, read in the open and under the cloth in the same minute: the ratio is ' +
      'the cloth’s true density.',
  },
];

/** What the damage scores mean. */
export const DAMAGE_SCALE: readonly string[] = [
  'none',
  'a few leaf tips',
  'up to a quarter of the leaves, or a few fruit',
  'up to half',
  'more than half',
  'dead',
];
