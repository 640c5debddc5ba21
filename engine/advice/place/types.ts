import type { LightStanding } from '../../load/light/light-class.ts';
import type { PotLoad, Verdict } from '../../load/types.ts';
import type { CivilDate, PlanPoint } from '../../plan/types.ts';
import type { Units } from '../../plan/units/units.ts';
import type { Weather } from '../../sun/weather/weather.ts';
import type { PlantLight } from '../compare/types.ts';
import type { Hardening } from './hardening.ts';
import type { Way } from './way.ts';

export interface PlaceRequest {
  /** Id of a container plant. */
  readonly plant: string;
  /** How many spots to name, "stay" besides. */
  readonly count?: number;
  /** Day of the move, for the dates of hardening. */
  readonly on?: CivilDate;
  readonly weather?: Weather;
  readonly units?: Units;
}

export interface PlaceSpot extends Way {
  /** 1 is the best. */
  readonly rank: number;
  /** Where it stands now. */
  readonly stay: boolean;
  readonly at: PlanPoint;
  /** By what stands there, inside a sentence: "beside the west wall". */
  readonly where: string;
  /** Mean scorch dose over the season's heat days, and by how much that is less than where it stands. [K·h/day] */
  readonly harm: number;
  readonly spared: number;
  /** On the heatwave day. */
  readonly scorchDose: number;
  /** [°C] */
  readonly peak: number;
  readonly verdict: Verdict;
  readonly light: PlantLight;
  readonly standing: LightStanding;
  /** More sun than the plant likes, where its range has an end. [h/day] 0 where not. */
  readonly overRange: number;
  /** Sun hours and hot hours on the pot's wall, season means, and its roots on the heatwave day. */
  readonly pot: PotLoad;
  /** Clear-sky sun at its top in the middle of winter, of what then wants sun; `null` of others. [h] */
  readonly winterSunHours: number | null;
  readonly hardening: Hardening | null;
  readonly sentence: string;
}

/** Two pots that change places, to the good of both together and with neither the darker for it. */
export interface PotSwap {
  readonly with: string;
  /** Σ worth × harm that both together are spared. [K·h/day] */
  readonly spared: number;
  readonly sentence: string;
}

export interface PlaceResult {
  readonly plant: string;
  /** The best first; "stay" is always among them. */
  readonly spots: readonly PlaceSpot[];
  readonly swaps: readonly PotSwap[];
  /** The day by which winter is judged. */
  readonly winterDay: string;
  /** The best allowed spot in winter of what then wants sun, where it is not a spot of the list's top. */
  readonly winterBest: {
    readonly at: PlanPoint;
    readonly where: string;
    readonly sunHours: number;
    /** Whether it is where the plant should spend the winter: an evergreen without sun at the best place. */
    readonly isWanted: boolean;
  } | null;
  readonly notes: readonly string[];
}
