import type { Plan, PlanPoint, Problem } from '../../plan/types.ts';
import { unitsOf } from '../../plan/units/units.ts';
import { withOptionsLeft } from '../../plan/yards/options.ts';
import type { Period } from '../../sun/samples.ts';
import type { Weather } from '../../sun/weather/weather.ts';

/**
 * A verb of the command line: what it is called, which options it knows, and what it gives.
 * Pure: the caller has read the files, applied `--option` and parsed every value; a verb never touches
 * a file, a clock or a terminal.
 */
export interface Verb {
  /** One word, or two ('survey north'). */
  readonly name: string;
  /** One line for the list of verbs, no full stop. */
  readonly summary: string;
  /** Whether a PLAN stands after the verb. */
  readonly plan: 'required' | 'optional' | 'none';
  /** Which of the common options mean something here; the others are refused. `--json` and `--help` always work. */
  readonly common: readonly CommonOption[];
  /** Common options that one might expect, and why they mean nothing here: a sentence each. */
  readonly refused?: readonly { readonly name: CommonOption; readonly why: string }[];
  readonly options: readonly OptionSpec[];
  /** Argument lines as typed after `npm run --silent cli --`; a test runs every one, so they use `demo`. */
  readonly examples: readonly string[];
  run(request: VerbRequest): VerbResult | Promise<VerbResult>;
}

export type CommonOption = 'date' | 'heatwave' | 'option' | 'weather' | 'units' | 'sources';

/**
 * `flag` takes no value; `number` a finite number inside its bounds; `length` metres, or feet and inches as people
 * write them; `point` X,Y in metres (negative too), or X;Y with decimal commas; `share` 0 to 1, or per cent;
 * `day` a day of a year, "YYYY-MM-DD" or in words; `text` anything, checked by the verb.
 */
type OptionKind = 'flag' | 'number' | 'length' | 'point' | 'share' | 'day' | 'text';

export interface OptionSpec {
  /** Without the dashes. */
  readonly name: string;
  readonly kind: OptionKind;
  /** What stands for the value in the help: 'M', 'X,Y', 'ID'. */
  readonly placeholder?: string;
  readonly summary: string;
  readonly required?: boolean;
  /** Its value may stand alone behind the plan: why demo "Lemon pot". */
  readonly afterPlan?: boolean;
  readonly repeatable?: boolean;
  /** For `number` and `length`: smaller, or equal unless `minIncluded`, is refused. */
  readonly min?: number;
  readonly minIncluded?: boolean;
  /** For `number` and `length`: larger is refused. */
  readonly max?: number;
  readonly integer?: boolean;
  /** For `text`: the words allowed. */
  readonly choices?: readonly string[];
}

export type OptionValue = true | number | string | PlanPoint;

/** Parsed values by option name, in the order given; an option not given has no entry. */
export type OptionValues = Readonly<Record<string, readonly OptionValue[]>>;

export interface VerbRequest {
  /** With every `--option` applied. For a verb whose `plan` is 'none' it is absent. */
  readonly plan?: Plan;
  /** As it stands in the file, without them. */
  readonly drawn?: Plan;
  /** Ids given with `--option`, in order. */
  readonly optionIds: readonly string[];
  /** What `parsePlan` warned of. */
  readonly warnings: readonly Problem[];
  /** `--date`, `--heatwave`, else the season. */
  readonly period: Period;
  readonly weather?: Weather;
  /** Text of the drawing that `--drawing` names. */
  readonly drawing?: string;
  /** `--units`, else the plan's, else metric. */
  readonly units: 'metric' | 'imperial';
  readonly values: OptionValues;
  /** Whether text may carry colour codes, and how wide it may be. [characters] */
  readonly page: { readonly colour: boolean; readonly columns: number };
  /** Called now and then with how far a long job has come, 0 to 1. */
  progress(done: number, what: string): void;
}

export type VerbResult =
  | {
      readonly ok: true;
      /** Printed with `--json`; what `jsonPieces` can write. */
      readonly json: unknown;
      /** Printed without: for people. Lines longer than the page are broken by the caller. */
      readonly text: string;
      /** How it was reckoned and where its numbers come from, printed behind the text with `--sources`. */
      readonly sources?: string;
      /** Printed in its place, as it is and in pieces: another format (CSV, GeoJSON, iCalendar, HTML). */
      readonly file?: Iterable<string>;
      /** What of it says itself that the climate is rough; the command line says so beside the rest. */
      readonly tellsRough?: 'text' | 'text and json';
      /** Warnings and remarks for standard error, one line each. */
      readonly notes?: readonly string[];
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** The plan of a request of a verb that requires one, in the units that were asked for. */
export function planOf({ plan, units }: VerbRequest): Plan {
  if (!plan) throw new Error('This verb was run without its plan.');
  return unitsOf(plan) === units ? plan : { ...plan, units };
}

/**
 * For a verb that tries a plan's options one by one: the yard with those that `--option` took, the ones that can still
 * be tried, and what is to be said of the others.
 */
export function planWithOptionsLeft(request: VerbRequest): { readonly plan: Plan; readonly notes: readonly string[] } {
  const { optionIds } = request;
  const { plan, unfit } = withOptionsLeft(planOf(request), optionIds);
  return {
    plan,
    notes: [
      ...(optionIds.length === 0 ? [] : [`Here “today” is the yard with ${optionIds.join(' and ')}.`]),
      ...unfit.map((id) => `Option ${id} is left out: its changes do not fit a yard with ${optionIds.join(' and ')}.`),
    ],
  };
}

export function hasFlag(request: VerbRequest, name: string): boolean {
  return request.values[name] !== undefined;
}

/** The last value given for a `number`, `share` or `length` option. */
export function numberGiven(request: VerbRequest, name: string): number | undefined {
  const value = request.values[name]?.at(-1);
  return typeof value === 'number' ? value : undefined;
}

/** The last value given for a `text` or `day` option. */
export function textGiven(request: VerbRequest, name: string): string | undefined {
  return textsGiven(request, name).at(-1);
}

/** The id of the feature that a `text` option names, by its id or by its name; what names none is left as it is. */
export function featureGiven(request: VerbRequest, name: string): string | undefined {
  return featuresGiven(request, name).at(-1);
}

/** The same of every value of a repeatable option, in order. */
export function featuresGiven(request: VerbRequest, name: string): string[] {
  const { features } = planOf(request);
  return textsGiven(request, name).map((typed) => {
    const called = features.filter((feature) => feature.name?.toLowerCase() === typed.trim().toLowerCase());
    return features.some(({ id }) => id === typed) || called.length !== 1 ? typed : called[0].id;
  });
}

/** Every value given for a repeatable `text` option, in order. */
export function textsGiven(request: VerbRequest, name: string): string[] {
  return (request.values[name] ?? []).filter((value): value is string => typeof value === 'string');
}

/** The last value given for a `point` option. */
export function pointGiven(request: VerbRequest, name: string): PlanPoint | undefined {
  return pointsGiven(request, name).at(-1);
}

/** Every value given for a repeatable `point` option, in order. */
export function pointsGiven(request: VerbRequest, name: string): PlanPoint[] {
  return (request.values[name] ?? []).filter((value): value is PlanPoint => Array.isArray(value));
}
