import { refuseOption } from '../../plan/problems.ts';
import { formatLength } from '../../plan/units/shown.ts';
import { checkPace, pacedLength } from '../../survey/pace.ts';
import { pictureScale } from '../../survey/picture-scale.ts';
import { placeFromTapes } from '../../survey/tape.ts';
import { closeWalk, parseWalk } from '../../survey/walk.ts';
import {
  numberGiven,
  pointGiven,
  pointsGiven,
  textGiven,
  type Verb,
  type VerbRequest,
  type VerbResult,
} from './verb.ts';

export const surveyTape: Verb = {
  name: 'survey tape',
  summary: 'where a thing stands, from tape lengths to two drawn points',
  plan: 'none',
  common: ['units'],
  options: [
    {
      name: 'from',
      kind: 'point',
      placeholder: 'X,Y',
      summary: 'a point measured from; give it twice',
      repeatable: true,
      required: true,
    },
    {
      name: 'length',
      kind: 'length',
      placeholder: 'M',
      summary: 'the length to each, in the same order; give it twice',
      repeatable: true,
      required: true,
      min: 0,
    },
  ],
  examples: ['survey tape --from 0,0 --from 5,0 --length 3 --length 4'],
  run(request): VerbResult {
    const points = pointsGiven(request, 'from');
    const lengths = (request.values.length ?? []).filter((value): value is number => typeof value === 'number');
    if (points.length !== 2) return refuseOption('from', `Two points are needed, and ${points.length} given.`);
    if (lengths.length !== 2) return refuseOption('length', `Two lengths are needed, and ${lengths.length} given.`);
    const finding = placeFromTapes(points[0], lengths[0], points[1], lengths[1]);
    if (!finding.ok) return refuseOption('length', finding.reason);
    const rows = finding.value.map(
      ({ at: [x, y], pm }) =>
        `x ${formatLength(x, request.units)}, y ${formatLength(y, request.units)} (± ` +
        `${formatLength(pm, request.units)})`,
    );
    const head =
      rows.length === 2 ? ['Two places fit; the first lies left of the line from the first point to the second:'] : [];
    return {
      ok: true,
      json: { solutions: finding.value, notes: finding.notes },
      text: [...head, ...rows, ''].join('\n'),
      notes: finding.notes,
    };
  },
};

export const surveyWalk: Verb = {
  name: 'survey walk',
  summary: 'a walk round the fence: how far it is from closing, and its corners',
  plan: 'none',
  common: ['units'],
  options: [
    {
      name: 'legs',
      kind: 'text',
      placeholder: 'LEGS',
      summary: '"12.4 right 6.1 left 30° 4": lengths with turns between',
      required: true,
    },
    { name: 'start', kind: 'point', placeholder: 'X,Y', summary: 'where it begins; 0,0' },
    {
      name: 'direction',
      kind: 'number',
      placeholder: 'DEGREES',
      summary: "of the first leg, clockwise from the plan's top; 0",
      min: -360,
      max: 360,
    },
  ],
  examples: [
    'survey walk --legs "12.4 right 6.1 right 12.6 right 6.1"',
    'survey walk --legs "10 right 8 right 10 right 8.2" --start 2,3 --json',
  ],
  run(request): VerbResult {
    const legs = parseWalk(textGiven(request, 'legs') ?? '', request.units);
    if (!legs.ok) return refuseOption('legs', legs.reason);
    const finding = closeWalk(
      legs.value,
      pointGiven(request, 'start'),
      numberGiven(request, 'direction'),
      request.units,
    );
    if (!finding.ok) return refuseOption('legs', finding.reason);
    const corners = finding.value.corrected ?? finding.value.walked;
    const rows = corners.map(
      ([x, y], index) =>
        `  ${String(index + 1).padStart(2)}  x ${formatLength(x, request.units)}, y ${formatLength(y, request.units)}`,
    );
    const head = finding.value.corrected === null ? 'As walked, not closed:' : 'Corners, the gap shared out:';
    return {
      ok: true,
      json: { ...finding.value, notes: finding.notes },
      text: [...finding.notes, head, ...rows, ''].join('\n'),
    };
  },
};

export const surveyPace: Verb = {
  name: 'survey pace',
  summary: 'a length in steps, from steps that were measured once',
  plan: 'optional',
  common: ['units'],
  options: [
    { name: 'steps', kind: 'number', placeholder: 'N', summary: "steps measured once; else the plan's pace", min: 0 },
    { name: 'length', kind: 'length', placeholder: 'M', summary: 'that they cover', min: 0 },
    { name: 'count', kind: 'number', placeholder: 'N', summary: 'steps to turn into a length', required: true, min: 0 },
  ],
  examples: ['survey pace --steps 20 --length 14.6 --count 33'],
  run(request): VerbResult {
    const steps = numberGiven(request, 'steps') ?? request.plan?.site.pace?.steps;
    const length = numberGiven(request, 'length') ?? request.plan?.site.pace?.length;
    if (steps === undefined || length === undefined)
      return refuseOption('steps', 'Say how long your steps are with --steps and --length.');
    const pace = checkPace({ steps, length });
    if (!pace.ok) return refuseOption('steps', pace.reason);
    const paced = pacedLength(numberGiven(request, 'count') ?? 0, pace.value);
    return {
      ok: true,
      json: { length: paced.value, pm: paced.pm },
      text: `${formatLength(paced.value, request.units)} (± ${formatLength(paced.pm, request.units)}, paced)\n`,
      notes: pace.notes,
    };
  },
};

export const surveyScale: Verb = {
  name: 'survey scale',
  summary: 'the scale of a picture from one known length in it, checked by a second',
  plan: 'none',
  common: ['units'],
  options: [
    {
      name: 'pixels',
      kind: 'number',
      placeholder: 'N',
      summary: 'between two points of the picture',
      required: true,
      min: 0,
    },
    { name: 'length', kind: 'length', placeholder: 'M', summary: 'between them on the ground', required: true, min: 0 },
    { name: 'width', kind: 'number', placeholder: 'N', summary: 'of the picture, in pixels', min: 0 },
    { name: 'check-pixels', kind: 'number', placeholder: 'N', summary: 'between two other points', min: 0 },
    { name: 'check-length', kind: 'length', placeholder: 'M', summary: 'between those on the ground', min: 0 },
  ],
  examples: ['survey scale --pixels 692 --length 12.4 --width 1600 --check-pixels 301 --check-length 5'],
  run(request): VerbResult {
    const known = pictureLength(request, 'pixels', 'length');
    const check = pictureLength(request, 'check-pixels', 'check-length');
    if (known === null) return refuseOption('pixels', 'Give --pixels and --length.');
    const width = numberGiven(request, 'width');
    const finding = pictureScale(known, width ?? 0, check ?? undefined);
    if (!finding.ok) return refuseOption('pixels', finding.reason);
    const { metresPerPixel } = finding.value;
    const whole =
      width === undefined ? '' : `; the picture is ${formatLength(finding.value.width, request.units)} wide`;
    return {
      ok: true,
      json: { ...finding.value, width: width === undefined ? null : finding.value.width, notes: finding.notes },
      text: `${(metresPerPixel * 1000).toFixed(1)} mm a pixel${whole}\n`,
      notes: finding.notes,
    };
  },
};

function pictureLength(request: VerbRequest, pixelsOption: string, lengthOption: string) {
  const pixels = numberGiven(request, pixelsOption);
  const length = numberGiven(request, lengthOption);
  return pixels === undefined || length === undefined ? null : ({ fromPx: [0, 0], toPx: [pixels, 0], length } as const);
}
