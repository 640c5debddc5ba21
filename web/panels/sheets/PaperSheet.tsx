import { cautionsFor, formatLength, upBearingOf } from '../../../engine/index.ts';
import type { FieldSheet, SheetDay } from '../../../engine/index.ts';
import { shownClock } from '../../state/clock.ts';
import { plan, units } from '../../state/yard.ts';
import { stickOf } from '../parts/stick.ts';
import { StickDial } from '../parts/StickDial.tsx';
import { timesIn } from '../parts/times.ts';
import { RULING, SheetDrawing, windowOn } from './SheetDrawing.tsx';

/** The field sheet as it comes out of the printer, black only. */
export function PaperSheet({ sheet }: { readonly sheet: FieldSheet }) {
  const window = windowOn(plan.value);
  return (
    <div class="paper-only field-sheet">
      <h1>
        Field sheet: <bdi>{sheet.title}</bdi>
      </h1>
      <p>
        Made {sheet.days[0]?.date}
        {plan.value.climate.from === 'rough' ? ' · rough climate' : ''}. Write into the boxes; the numbers are those on
        the drawing and on the screen.
      </p>
      {cautionsFor(['heat'], plan.value).map(({ id, text }) => (
        <p key={id}>
          <strong>{text}</strong>
        </p>
      ))}
      <SheetDrawing plan={plan.value} blanks={sheet.blanks} window={window} units={units.value} />
      {sheet.pace && (
        <p>
          Steps: {sheet.pace.steps} of yours are {formatLength(sheet.pace.length, units.value)}.
        </p>
      )}
      <BlanksToFill blanks={sheet.blanks} />
      <div class="new-page">
        <h2>Shadows of a {stickOf(units.value).words} stick</h2>
        <p>
          Direction clockwise from the drawing's top, on level ground. Clocks of {plan.value.site.timeZone}. The dial is
          turned as the drawing is; a line each half hour, rings at {stickOf(units.value).rings.join(', ')}.
        </p>
        <div class="sheet-days">
          {sheet.days.map((day) => (
            <ShadowDay key={day.date} day={day} />
          ))}
        </div>
      </div>
      <RuledPaper scale={window.scale} />
    </div>
  );
}

function BlanksToFill({ blanks }: Pick<FieldSheet, 'blanks'>) {
  return (
    <table class="sheet-blanks">
      <caption>What is guessed or missing</caption>
      <thead>
        <tr>
          <th scope="col">No.</th>
          <th scope="col">What</th>
          <th scope="col">Until now</th>
          <th scope="col">Found</th>
          <th scope="col">Minute</th>
        </tr>
      </thead>
      <tbody>
        {blanks.map(({ id, number, label, now, ways }) => (
          <tr key={id}>
            <td>{number}</td>
            <td>
              <bdi>{label}</bdi>
              <small>{ways}</small>
            </td>
            <td>{now ?? 'nothing'}</td>
            <td class="sheet-box" />
            <td class="sheet-box" />
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** What A4 and Letter both leave for it. [mm] */
const RULED = { width: 180, height: 220 } as const;

/** As large as on the drawing, so that what is paced can be laid over it. */
function RuledPaper({ scale }: { readonly scale: number }) {
  const { square, squareWords } = RULING[units.value];
  const side = (square * 1000) / scale;
  const [columns, rows] = [Math.floor(RULED.width / side), Math.floor(RULED.height / side)];
  return (
    <div class="new-page">
      <h2>
        Ruled paper, a square {squareWords}, 1 : {scale}
      </h2>
      <svg width={`${columns * side}mm`} viewBox={`0 0 ${columns} ${rows}`} aria-hidden="true">
        {Array.from({ length: columns + 1 }, (_, k) => (
          <line key={`x${k}`} class="sheet-grid" x1={k} x2={k} y1="0" y2={rows} />
        ))}
        {Array.from({ length: rows + 1 }, (_, k) => (
          <line key={`y${k}`} class="sheet-grid" y1={k} y2={k} x1="0" x2={columns} />
        ))}
      </svg>
    </div>
  );
}

function ShadowDay({ day: { title, shadows, northTimes } }: { readonly day: SheetDay }) {
  const stick = stickOf(units.value);
  const marks = shadows.map(({ clock, bearing, length }) => ({
    clock: Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3)),
    bearing,
    length,
  }));
  return (
    <div>
      <StickDial
        marks={marks}
        now={null}
        up={upBearingOf(plan.value)}
        clock={shownClock.value}
        rings={stick.rings}
        finding={`Shadows of a ${stick.words} stick, ${title}`}
      />
      <table>
        <caption>
          {title}
          {northTimes.length > 0 &&
            `: north best ${northTimes.map(({ from, to }) => `${timesIn(`${from} to ${to}`)}`).join(', ')}`}
        </caption>
        <thead>
          <tr>
            <th scope="col">Time</th>
            <th scope="col">Direction</th>
            <th scope="col">Length</th>
          </tr>
        </thead>
        <tbody>
          {shadows.map(({ clock, direction, length }) => (
            <tr key={clock}>
              <th scope="row">{timesIn(clock)}</th>
              <td>{direction.toFixed(0)}°</td>
              <td>{formatLength(length * stick.length, units.value)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
