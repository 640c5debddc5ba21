import { crownShapeOf, defaultPm, formatLength, parseLength, parseNumber } from '../../../engine/index.ts';
import type { CrownShape, Estimate, Feature, ShadowSeen } from '../../../engine/index.ts';
import { bareSite } from '../../state/bare-site.ts';
import { keptForYard } from '../../state/kept.ts';
import { plan, units } from '../../state/yard.ts';
import type { When } from '../parts/boxes/WhenFields.tsx';
import { siteNow } from '../parts/typed.ts';

export type HeightWay = 'clock' | 'pole' | 'tilt' | 'courses' | 'picture' | 'theirs';
export type ThingKind = 'top' | 'tree' | 'edge';

/** A height as it is being found out. */
export interface Measuring {
  readonly way: HeightWay;
  readonly thing: ThingKind;
  readonly tip: string;
  readonly when: When;
  readonly pole: string;
  readonly poleShadow: string;
  readonly shape: CrownShape;
  readonly width: string;
  readonly base: string;
  readonly facing: string;
  /** How far off one stands, and how high top and foot are sighted. */
  readonly away: string;
  readonly topTilt: string;
  readonly footTilt: string;
  readonly courses: string;
  readonly course: string;
  readonly cap: string;
  readonly helper: string;
  readonly helperPx: string;
  readonly thingPx: string;
  readonly theirs: string;
  readonly higher: string;
}

export const measuring = keptForYard<Measuring>('height', {
  way: 'clock',
  thing: 'top',
  tip: '',
  when: { ...siteNow(), time: '' },
  pole: '',
  poleShadow: '',
  shape: 'round',
  width: '',
  base: '',
  facing: '',
  away: '',
  topTilt: '',
  footTilt: '',
  courses: '',
  course: '',
  cap: '',
  helper: '',
  helperPx: '',
  thingPx: '',
  theirs: '',
  higher: '',
});

/** A taped length as typed. [m] */
export function taped(text: string): Estimate | null {
  const value = parseLength(text, units.value);
  return value === null ? null : { value, pm: defaultPm('tape', value) };
}

/** What to ask the engine for a shadow, or `null` while something is still to come. */
export function heightAsked(m: Measuring): ShadowSeen | null {
  const tip = taped(m.tip);
  const sun = sunOf(m);
  if (tip === null || sun === null) return null;
  const site = bareSite(plan.value.site);
  if (m.thing === 'top') return { site, sun, thing: { kind: 'top' }, tip };
  if (m.thing === 'edge') {
    const facing = parseNumber(m.facing.replace('°', ''));
    return facing === null ? null : { site, sun, thing: { kind: 'edge', facing }, tip };
  }
  const width = taped(m.width);
  const base = taped(m.base);
  return width === null || base === null
    ? null
    : { site, sun, thing: { kind: 'tree', shape: m.shape, width, base }, tip };
}

function sunOf(m: Measuring): ShadowSeen['sun'] | null {
  if (m.way === 'clock')
    return m.when.date === '' || m.when.time === '' ? null : { by: 'clock', when: `${m.when.date}T${m.when.time}` };
  const pole = taped(m.pole);
  const shadow = taped(m.poleShadow);
  return pole === null || shadow === null ? null : { by: 'pole', pole, shadow };
}

/** What the plan already knows of a thing whose height is asked for. */
export function knownOf(feature: Feature | undefined): Partial<Measuring> {
  if (feature?.kind !== 'tree') return { thing: 'top' };
  return {
    thing: 'tree',
    shape: crownShapeOf(feature),
    width: lengthText(feature.crownWidth),
    base: lengthText(feature.crownBase),
  };
}

function lengthText(metres: number): string {
  return units.value === 'metric' ? String(metres) : formatLength(metres, 'imperial');
}
