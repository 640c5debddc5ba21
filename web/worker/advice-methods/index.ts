import type { Method } from '../protocol.ts';
import { compare } from './compare.ts';
import { ground } from './ground.ts';
import { height } from './height.ts';
import { hidden } from './hidden.ts';
import { north } from './north.ts';
import { place } from './place.ts';
import { review } from './review.ts';
import { season } from './season.ts';
import { section } from './section.ts';
import { site } from './site.ts';
import { skyFrom } from './sky-from.ts';
import { sunEyeOf } from './sun-eye-of.ts';
import { weeksAt } from './weeks-at.ts';
import { why } from './why.ts';

/** What the page can ask beyond the map, the day and a spot. To add a method: one file beside this one, one line here. */
export const methods = { compare, ground, height, hidden, north, place, review, season, section, site, skyFrom, sunEyeOf, weeksAt, why } satisfies Record<string, Method>;

export type AdviceMethods = typeof methods;
