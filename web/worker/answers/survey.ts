import { allNorth, heightFromShadow, skyFrom, weatherFile, whyBurnt } from '../../../engine/index.ts';
import type {
  CivilDate,
  MonthDay,
  NorthObservation,
  Plan,
  PlanPoint,
  ShadowSeen,
  WhyRequest,
} from '../../../engine/index.ts';
import type { MethodsOf } from '../methods.ts';
import type { Method, Task } from '../protocol.ts';
import { asBuilt, sure } from './as-built.ts';

interface NorthArgs {
  readonly plan: Plan;
  readonly observations: readonly NorthObservation[];
  readonly date: CivilDate;
}

interface SkyArgs {
  readonly at: PlanPoint;
  /** [m] */
  readonly height: number;
  readonly monthDay: MonthDay;
}

/** What the first stages ask beyond the map: the place, north, heights, and why something burnt. */
export const answers = {
  height: (seen: ShadowSeen) => sure(heightFromShadow(seen)),
  north: ({ plan, observations, date }: NorthArgs) => sure(allNorth(plan, observations, date)),
  skyFrom: asBuilt((plan, { at, height, monthDay }: SkyArgs) => skyFrom(plan, at, height, monthDay)),
  weatherFile: ({ plan, bytes }: { readonly plan: Plan; readonly bytes: Uint8Array }) => weatherFile(plan, bytes),
  why: ({ plan, request }: { readonly plan: Plan; readonly request: WhyRequest }, { weather }: Task) =>
    whyBurnt(plan, { ...request, weather }),
} satisfies Record<MethodsOf<'survey'>, Method>;
