import { crownShapeOf, upBearingOf } from '../../plan/defaults.ts';
import { refuseOption } from '../../plan/problems.ts';
import { formatLength } from '../../plan/units/shown.ts';
import type { Estimate, Finding } from '../../survey/estimate.ts';
import {
  heightOfEdge,
  heightOfTop,
  heightOfTree,
  type Slope,
  slopeFromPole,
  slopeFromTime,
} from '../../survey/height/height.ts';
import { heightFromTilt } from '../../survey/height/tilt.ts';
import { heightByCourses } from '../../survey/height/wall-height.ts';
import { defaultPm } from '../../survey/known-by.ts';
import { PLACE_OPTIONS, placeGiven } from './survey-place.ts';
import { numberGiven, textGiven, type Verb, type VerbRequest, type VerbResult } from './verb.ts';

const SHAPES = ['post', 'edge', 'round', 'cone', 'column'] as const;

export const surveyHeight: Verb = {
  name: 'survey height',
  summary: 'a height from its shadow and the minute, from a pole beside it, by sighting it, or by courses',
  plan: 'optional',
  common: ['units'],
  options: [
    {
      name: 'distance',
      kind: 'length',
      placeholder: 'M',
      summary: "from its foot to the shadow's far tip; of an edge, at right angles",
      min: 0,
    },
    { name: 'when', kind: 'text', placeholder: 'YYYY-MM-DDTHH:MM', summary: "the minute, by the place's clocks" },
    {
      name: 'minutes',
      kind: 'number',
      placeholder: 'N',
      summary: 'how far the minute may be off',
      min: 0,
      minIncluded: true,
      max: 60,
    },
    { name: 'pole', kind: 'length', placeholder: 'M', summary: 'instead of the minute: a pole beside it', min: 0 },
    { name: 'pole-shadow', kind: 'length', placeholder: 'M', summary: "and the pole's shadow", min: 0 },
    {
      name: 'top-tilt',
      kind: 'number',
      placeholder: 'DEGREES',
      summary: 'instead of a shadow: its top sighted so high from --distance away',
      min: -90,
      max: 90,
    },
    { name: 'foot-tilt', kind: 'number', placeholder: 'DEGREES', summary: 'and its foot', min: -90, max: 90 },
    {
      name: 'shape',
      kind: 'text',
      placeholder: 'SHAPE',
      summary: `${SHAPES.join(', ')}; a crown's tip is not thrown by its top`,
      choices: SHAPES,
    },
    { name: 'crown-width', kind: 'length', placeholder: 'M', summary: "of a tree's crown", min: 0 },
    {
      name: 'crown-base',
      kind: 'length',
      placeholder: 'M',
      summary: 'where its crown begins',
      min: 0,
      minIncluded: true,
    },
    { name: 'tree', kind: 'text', placeholder: 'ID', summary: "a tree of the plan: its shape, crown's width and base" },
    {
      name: 'facing',
      kind: 'number',
      placeholder: 'DEGREES',
      summary: 'of an edge: true bearing from the wall towards its shadow',
      min: 0,
      minIncluded: true,
      max: 360,
    },
    {
      name: 'courses',
      kind: 'number',
      placeholder: 'N',
      summary: 'of a wall: rows of brick or block',
      min: 0,
      integer: true,
    },
    { name: 'course', kind: 'length', placeholder: 'M', summary: 'one row with its joint', min: 0 },
    { name: 'cap', kind: 'length', placeholder: 'M', summary: 'the coping on top', min: 0, minIncluded: true },
    ...PLACE_OPTIONS,
  ],
  examples: [
    'survey height demo --distance 5.2 --when 2026-05-02T10:00',
    'survey height demo:lane --tree gum --distance 17.95 --when 2027-01-10T09:00',
    'survey height --pole 1.5 --pole-shadow 2.4 --distance 9.6',
    'survey height --distance 8 --top-tilt 35 --foot-tilt -10',
    'survey height --courses 9 --course 0.2 --cap 0.05',
  ],
  run(request): VerbResult {
    const courses = numberGiven(request, 'courses');
    if (courses !== undefined) {
      const course = numberGiven(request, 'course');
      if (course === undefined) return refuseOption('course', 'Give the height of one course with --course.');
      return told(request, heightByCourses(courses, course, numberGiven(request, 'cap')), 'courses');
    }
    const distance = numberGiven(request, 'distance');
    if (distance === undefined)
      return refuseOption('distance', "Give the shadow's length with --distance, or count with --courses.");
    const [top, foot] = ['top-tilt', 'foot-tilt'].map((name) => numberGiven(request, name));
    if (top !== undefined && foot !== undefined)
      return told(request, heightFromTilt(taped(distance), top, foot), 'top-tilt');
    if (top !== undefined || foot !== undefined)
      return refuseOption('foot-tilt', 'Give both --top-tilt and --foot-tilt.');
    const slope = slopeOf(request);
    if ('problem' in slope) return slope.problem;
    if (!slope.ok) return refuseOption(textGiven(request, 'when') === undefined ? 'pole' : 'when', slope.reason);
    return shaped(request, slope.value, taped(distance));
  },
};

function slopeOf(request: VerbRequest): Finding<Slope> | { readonly problem: VerbResult } {
  const pole = numberGiven(request, 'pole');
  const poleShadow = numberGiven(request, 'pole-shadow');
  if (pole !== undefined && poleShadow !== undefined) return slopeFromPole(taped(pole), taped(poleShadow));
  if (pole !== undefined || poleShadow !== undefined)
    return { problem: refuseOption('pole-shadow', 'Give both --pole and --pole-shadow.') };
  const when = textGiven(request, 'when');
  if (when === undefined)
    return {
      problem: refuseOption(
        'when',
        'Give the minute with --when, as 2026-05-02T10:00, or a pole with --pole and --pole-shadow.',
      ),
    };
  const given = placeGiven(request);
  return given.ok ? slopeFromTime(given.place, when, numberGiven(request, 'minutes')) : { problem: given };
}

function shaped(request: VerbRequest, slope: Slope, distance: Estimate): VerbResult {
  const id = textGiven(request, 'tree');
  const tree = id === undefined ? undefined : request.plan?.features.find((feature) => feature.id === id);
  if (id !== undefined && tree?.kind !== 'tree') return refuseOption('tree', `The plan has no tree "${id}".`);
  const shape = textGiven(request, 'shape') ?? (tree?.kind === 'tree' ? crownShapeOf(tree) : 'post');
  if (shape === 'post') return told(request, heightOfTop(slope, distance), 'distance');
  if (shape === 'edge') {
    const facing = numberGiven(request, 'facing');
    if (facing === undefined) return refuseOption('facing', facingHelp(request));
    return told(request, heightOfEdge(slope, distance, facing), 'distance');
  }
  const width = numberGiven(request, 'crown-width') ?? (tree?.kind === 'tree' ? tree.crownWidth : undefined);
  const base = numberGiven(request, 'crown-base') ?? (tree?.kind === 'tree' ? tree.crownBase : undefined);
  if (width === undefined || base === undefined)
    return refuseOption(
      width === undefined ? 'crown-width' : 'crown-base',
      'A crown needs --crown-width and --crown-base, or --tree ID of a plan.',
    );
  // A crown's width and foot are told by eye from below, not taped.
  return told(
    request,
    heightOfTree(slope, distance, shape as 'round' | 'cone' | 'column', byEye(width), byEye(base)),
    'distance',
  );
}

function told(request: VerbRequest, finding: Finding<Estimate>, option: string): VerbResult {
  if (!finding.ok) return refuseOption(option, finding.reason);
  const { value, pm } = finding.value;
  return {
    ok: true,
    json: { height: value, pm, notes: finding.notes },
    text: `${formatLength(value, request.units)} high (± ${formatLength(pm, request.units)})\n`,
    notes: finding.notes,
  };
}

function facingHelp(request: VerbRequest): string {
  const drawn = request.plan === undefined ? '' : ` (the plan's top bears ${upBearingOf(request.plan)}°)`;
  return `Give the true bearing from the wall towards its shadow with --facing${drawn}.`;
}

function taped(value: number): Estimate {
  return { value, pm: defaultPm('tape', value) };
}

function byEye(value: number): Estimate {
  return { value, pm: defaultPm('paced', value) };
}
