/** What must stand beside every page that tells someone to build, dig, climb, cut, spray, cover or work in heat. */

import type { Plan } from '../../plan/types.ts';
import type { Units } from '../../plan/units/units.ts';
import type { Caution, RiskyTask } from './types.ts';

/**
 * From this area of roof, or this height of post, a licensed engineer is asked. No code that we know of draws these
 * lines: they are this project's own. For the area 10 and 12 m² were weighed; the smaller is taken. [m²], [m]
 */
export const ENGINEER_AREA = 10;
export const ENGINEER_HEIGHT = 3;

/** The same in somebody's units. */
export function engineerFrom(units: Units): { readonly area: string; readonly height: string } {
  return units === 'metric'
    ? { area: `${ENGINEER_AREA} m²`, height: `${ENGINEER_HEIGHT} m` }
    : { area: '108 ft²', height: '10 ft' };
}

/** One of two measures, by the units that somebody reads. */
type Either = (metric: string, imperial: string) => string;

function eitherIn(units: Units): Either {
  return (metric, imperial) => (units === 'metric' ? metric : imperial);
}

/** Shipped with every wind figure. */
export function windWording(units: Units): string {
  return (
    'Orientation only. Wind loads on your site can be several times higher. This is not a structural design and no ' +
    'permission to build. Codes (ASCE 7, EN 1991-1-4, AS/NZS 1170.2 and your own) and your local authority come ' +
    'first; for anything that stays up in storms, stands over people, is fixed to a building, or is larger than ' +
    `about ${engineerFrom(units).area}, ask a licensed engineer.`
  );
}

/** Words with their measures in both units, where they have any. */
type Worded = string | ((or: Either, units: Units) => string);

/**
 * As it is kept. Where other work than its own reminds of it too, its first words stand apart: they are a sentence
 * without the rest.
 */
type KeptCaution = Omit<Caution, 'text'> & { readonly first?: Worded; readonly text: Worded };

const CAUTIONS: readonly KeptCaution[] = [
  {
    // Source: Virginia Tech EHS, after 29 CFR 1910.333: 10 ft up to 50 kV, 4 in more for each 10 kV above.
    id: 'overhead-line',
    tasks: ['build', 'climb'],
    stop: true,
    first: (or) =>
      `Stop if a power line runs above: no ladder, tube or person within ${or('3 m', '10 ft')} of it, farther for ` +
      'high voltage',
    text: (or) =>
      `. A ${or('3 m', '10 ft')} tube held upright reaches over ${or('4 m', '13 ft')}. ` +
      'Many countries ask for more: ask the grid company before you carry tube under a line.',
  },
  {
    // Source: One-call notices: nwga.org, East Grand Forks MN, lenexa.com; english.defensie.nl; other countries from
    // memory.
    id: 'buried-lines',
    tasks: ['dig'],
    stop: true,
    first: 'Stop until you know what is under the ground: gas, electricity, water, irrigation, drains',
    text: (or) =>
      '. Ask the free enquiry line (811 in the United States, 2 to 3 working days ahead; KLIC, LSBUD, DT-DICT, ' +
      `Inkolan, Before You Dig elsewhere). Dig by hand within ${or('0.6 m', '24 in')} of a mark, and push a steel ` +
      'rod down first at every post.',
  },
  {
    // Common practice of roofers and house managers, no source.
    id: 'flat-roof',
    tasks: ['floor'],
    stop: true,
    text:
      'Stop if this is a flat roof or a balcony: nothing goes through its waterproof skin, and each weight stands on ' +
      'a board and a mat. Its owner has to allow it, an engineer says what it bears. Stay back from the edge.',
  },
  {
    // Source: This project’s own distances.
    id: 'shared-wall',
    tasks: ['build', 'dig'],
    stop: true,
    first: 'Stop before you fix anything to a wall, or dig beside one, that is not yours alone: ask its owner',
    text: (or) =>
      `. Keep footings ${or('0.3 m', '1 ft')} from it and the frame a hand’s breadth (${or('100 mm', '4 in')}) off, ` +
      'for hands and for drip from the eaves.',
  },
  {
    // Source: A 200 N push in the middle of a 3 m span takes 1-inch conduit past its allowable stress (Roark, table
    // 8.1).
    id: 'children',
    tasks: ['build'],
    stop: true,
    text:
      'Stop and think who plays here: a frame invites children to climb and swing, and none of these tubes is ' +
      'meant for it. One person’s weight in the middle of a rail can bend it for good. No hammock, no swing, ' +
      'nothing hung from it.',
  },
  {
    // Source: IRC R105.2 and town notices (Whatcom County WA, Canyon TX, Independence OR); England: GPDO 2015 Sch. 2 Pt
    // 1 Class E.
    id: 'permission',
    tasks: ['build'],
    stop: true,
    text:
      'Stop until you have asked: setbacks from the boundary, height limits, homeowners’ associations, leases ' +
      'and listed buildings have their own rules. Small open structures often need no building permit, but zoning ' +
      'still applies. The local authority decides, not this sheet.',
  },
  {
    // Source: This project’s own limits, for the area the smaller of 10 and 12 m²; local rules come first.
    id: 'engineer',
    tasks: ['build', 'wind'],
    stop: true,
    text: (or) =>
      `Stop and ask a licensed engineer when the roof is over ` +
      `${or(`${ENGINEER_AREA} m²`, '108 ft² (a little more than 10 × 10 ft)')}, posts are over ` +
      `${or(`${ENGINEER_HEIGHT} m`, '10 ft')}, the frame is fixed to a building, the public can walk under it, or ` +
      `it is to stay up in storms.`,
  },
  // Source: this project's own wording.
  { id: 'wind-orientation', tasks: ['build', 'wind'], stop: false, text: (_, units) => windWording(units) },
  {
    // Source: This project’s own rule.
    id: 'cloth-off',
    tasks: ['build', 'wind', 'cloth', 'drape'],
    stop: false,
    first: 'Take the cloth off before a storm: also when thunderstorms are forecast',
    text:
      ' (gusts come within minutes), for hail, snow or freezing rain, and when you leave for more than a day. Never ' +
      'put cloth up or take it down in wind that sways small trees, and never alone.',
  },
  {
    // Source: InTents (IFAI), 1 June 2009, on the IFAI / University of Illinois staking study; NBS BSS 142.
    id: 'anchors',
    tasks: ['build', 'wind'],
    stop: false,
    text:
      'What an anchor holds depends on your ground more than on the anchor: pull-test one before you trust ' +
      'it. Wet ground holds about half. Caps on every bar that stands up, flags on every guy.',
  },
  {
    // Source: San Joaquin County safety sheet; OSHA 29 CFR 1926.1053(b)(5)(i), ANSI A14 (from memory).
    id: 'ladder',
    tasks: ['build', 'climb', 'cloth'],
    stop: false,
    first: 'Ladders: a step ladder, set fully open on firm level ground, never leaned against the frame',
    text:
      '; three points of contact, not on its top two steps, nothing heavy in your hands, somebody by to hold it. ' +
      'A ladder that leans on a wall: its foot out by a quarter of the working length (about 75°), tied or held, ' +
      'never on the top three rungs. Put as much together on the ground as you can.',
  },
  {
    // Source: OSHA 3351, Preventing Skin Problems from Working with Portland Cement (from memory).
    id: 'cement',
    tasks: ['concrete'],
    stop: false,
    text:
      'Wet cement burns skin, often hours before it hurts: waterproof gloves, long sleeves, boots and goggles, and a ' +
      'mask while you tip the bag. Wash splashes off at once with plenty of water, take off wet clothes, and see a ' +
      'doctor for a burn or anything in the eye.',
  },
  {
    // Source: OSHA, Using the Heat Index; NIOSH criteria as summarised by NFBA 2022.
    id: 'heat',
    tasks: ['build', 'dig', 'climb', 'cloth', 'drape', 'heat', 'spray'],
    stop: false,
    first:
      'Heat: work before 11 in the morning, earlier on the hottest days, or in spring, in company, a cup of water ' +
      'every 15 to 20 minutes and shade at hand',
    text:
      '. Newcomers start with a fifth of the work and need 7 to 14 days to adapt. At dizziness, headache or ' +
      'confusion stop, cool the person, call for help.',
  },
  {
    // Common practice, no source.
    id: 'cutting',
    tasks: ['build', 'cut'],
    stop: false,
    text:
      'Cutting: goggles, ear protection, gloves: tube in the sun burns hands. Clamp the tube, take the burr off ' +
      'inside and out. Never weld or torch galvanised steel: its fume is poisonous.',
  },
  {
    // Source: E. Ernest, Weekly Crop Update, University of Delaware Extension, on PVC and polyethylene film; stiffness
    // from memory.
    id: 'pvc',
    tasks: ['build', 'cloth'],
    stop: false,
    first: 'Steel tube only',
    text:
      '. PVC pipe sags about 70 times as much, softens in the heat, and spoils polyethylene ' +
      'cloth where the two touch.',
  },
  {
    // Source: 2009 NFPA 1 §10.11.6; IFC 308.1.4; architectureanddesign.com.au on concentrated reflections.
    id: 'fire',
    tasks: ['build', 'cloth', 'drape'],
    stop: false,
    first: 'Shade cloth burns and drips',
    text: (or) =>
      `. No grill, fire bowl or flue within ${or('3 m', '10 ft')} of it, never under it. ` +
      'Glass and polished metal can focus the sun and melt it.',
  },
  {
    // Source: This project’s own distances.
    id: 'paths',
    tasks: ['build'],
    stop: false,
    text: (or) =>
      `Keep ways out at least ${or('0.9 m', '3 ft')} wide and ${or('2.1 m', '7 ft')} clear under rails where people ` +
      'walk, and doors and gates free to swing.',
  },
  {
    // Source: This project’s own rule; a seller’s design note on rain.
    id: 'winter-cover',
    tasks: ['winter'],
    stop: false,
    text:
      'A closed cover catches far more wind than shade cloth, and a level one holds rain and snow until the ' +
      'frame gives way: put it on for frosty calm nights only and take it off in the morning. Open it before the ' +
      'sun heats what is under it.',
  },
  {
    // Common practice from memory; respirator and goggles after general guidance on dust.
    id: 'spray',
    tasks: ['spray'],
    stop: false,
    text: (or) =>
      'Sprays: the label is the law. Dust and mist respirator (N95, FFP2 or better), goggles, gloves, long ' +
      `sleeves. Clay may hold crystalline silica. Not in wind, not above about ${or('30 °C', '86 °F')}, not on ` +
      'open flowers, and no child or pet near until it has dried.',
  },
];

/** The cautions in short, where something is only weighed: the sheet that one builds from has them whole. */
export const SHORT_CAUTIONS = {
  wind: (units: Units): string =>
    'Orientation only. Wind loads on your site can be several times higher; local codes and your local authority ' +
    `come first. Over ${engineerFrom(units).area}, over ${engineerFrom(units).height}, ` +
    'fixed to a building or up in storms: ask a licensed engineer. Take the cloth off before a storm.',
  floor:
    'On a flat roof or a balcony nothing goes through the waterproof skin: ask its owner first, and an engineer what ' +
    'it bears.',
  heat:
    'Heat: work before 11 in the morning, earlier on the hottest days, or in spring, in company, with water and ' +
    'shade at hand.',
  spray: 'Sprays: the label is the law.',
} as const;

/**
 * The cautions that belong beside these tasks, stops first, then the plan's own. Every page that tells someone to do
 * one of them shows them.
 * @param yard whose units they are told in, and whose own cautions follow whatever the task
 */
export function cautionsFor(
  tasks: readonly RiskyTask[],
  { cautions: local = [], units = 'metric' }: Pick<Plan, 'cautions' | 'units'> = {},
): readonly Caution[] {
  const own = CAUTIONS.filter((caution) => caution.tasks.some((task) => tasks.includes(task)))
    .toSorted((a, b) => Number(b.stop) - Number(a.stop))
    .map(({ first = '', text, ...kept }): Caution => ({ ...kept, text: inUnits(first, units) + inUnits(text, units) }));
  return [...own, ...local.map(({ text }, index): Caution => ({ id: `local-${index + 1}`, tasks, stop: false, text }))];
}

/** A caution in the words that remind of it where the whole is told elsewhere. */
export function reminderOf({ id, text }: Caution, units: Units): string {
  const first = CAUTIONS.find((kept) => kept.id === id)?.first;
  return first === undefined ? text : `${inUnits(first, units)}.`;
}

function inUnits(words: Worded, units: Units): string {
  return typeof words === 'string' ? words : words(eitherIn(units), units);
}
