import type { ComponentChildren } from 'preact';
import type { SeasonResult } from '../../../../engine/index.ts';
import { dayWords, MONTHS, monthOfDate } from '../../../../engine/index.ts';
import { isOn, piecesOn, placeOn, stripOf } from '../../../common/strip-days.ts';
import type { Strip } from '../../../common/strip-days.ts';
import { plan } from '../../../state/yard.ts';
import { today } from '../season.ts';
import { bandsOf, marksOn, notedBands } from './bands.ts';
import type { Band, Mark, Span } from './bands.ts';

/** A single day is drawn this wide, or nobody would see it. */
const NARROWEST = 0.009;
const WORDS: Readonly<Record<Band['look'], string>> = {
  heat: 'Heat may come',
  cloth: 'Cloth up',
  clay: 'Clay spray',
  frost: 'Frost possible',
};
const MARKS: Readonly<Record<Mark['look'], readonly [sign: string, words: string]>> = {
  damage: ['▼', 'damage'],
  reading: ['●', 'reading'],
};

/**
 * This year's twelve months with what fills them, last year's above it on the same scale; in words for who does not
 * see them.
 */
export function YearStrip({ season }: { readonly season: SeasonResult }) {
  const now = plan.value;
  const strip = stripOf(now.season, now.season.year);
  const before = stripOf(now.season, now.season.year - 1);
  const [marks, marksBefore] = [marksOn(strip, now), marksOn(before, now)];
  const [bands, bandsBefore] = [bandsOf(season), notedBands(before, now)];
  const noted = (Object.keys(MARKS) as Mark['look'][]).filter((look) =>
    [...marks, ...marksBefore].some((mark) => mark.look === look),
  );
  return (
    <figure class="year-strip">
      <figcaption class="unseen">The year in bands</figcaption>
      <Months strip={strip} />
      {bandsBefore.length + marksBefore.length > 0 && <Lines strip={before} bands={bandsBefore} marks={marksBefore} />}
      <Lines strip={strip} bands={bands} marks={marks} />
      {noted.length > 0 && <p class="year-key">{noted.map((look) => MARKS[look].join(' ')).join(', ')}</p>}
      <BandWords bands={bands} />
      {bandsBefore.length > 0 && <BandWords bands={bandsBefore} year={before.year} />}
    </figure>
  );
}

/** Every third month by its name, from the strip's first on. */
export function Months({ strip }: { readonly strip: Strip }) {
  const first = monthOfDate(strip.first) - 1;
  return (
    <p class="year-months" aria-hidden="true">
      {[0, 3, 6, 9].map((after) => (
        <span key={after}>{MONTHS[(first + after) % 12].slice(0, 3)}</span>
      ))}
    </p>
  );
}

function BandWords({ bands, year }: { readonly bands: readonly Band[]; readonly year?: number }) {
  return (
    <ul class="unseen">
      {bands.map(({ look, spans }) => (
        <li key={look}>
          {`${year === undefined ? '' : `${year} `}${WORDS[look]}: ${spans.map(spanWords).join(', ')}`}
        </li>
      ))}
    </ul>
  );
}

/**
 * A strip as a drawing: what was noted, then a line a band; each line is one row of the page, so that it grows with the
 * letters.
 */
export function Lines({
  strip,
  bands,
  marks,
}: {
  readonly strip: Strip;
  readonly bands: readonly Band[];
  readonly marks: readonly Mark[];
}) {
  return (
    <div class="year-lines" aria-hidden="true">
      <span class="year-of">{strip.year}</span>
      <Line strip={strip}>
        {marks.map(({ date, look }, index) => (
          <text key={index} class="year-mark" x={percent(placeOn(strip, date))} y="90%" text-anchor="middle">
            {MARKS[look][0]}
          </text>
        ))}
      </Line>
      {bands.map(({ name, look, spans }) => [
        <span key={name}>{name}</span>,
        <Line key={look} strip={strip}>
          {spans
            .flatMap(({ from, to }) => piecesOn(strip, from, to))
            .map(([at, width]) => (
              <rect
                key={at}
                class={`year-${look}`}
                x={percent(at)}
                width={percent(Math.max(width, NARROWEST))}
                y="0"
                height="100%"
              />
            ))}
        </Line>,
      ])}
    </div>
  );
}

function Line({ strip, children }: { readonly strip: Strip; readonly children: ComponentChildren }) {
  const now = isOn(strip, today()) ? percent(placeOn(strip, today())) : null;
  return (
    <svg>
      {Array.from({ length: 11 }, (_, k) => (
        <line key={k} class="year-month" x1={percent((k + 1) / 12)} x2={percent((k + 1) / 12)} y1="0" y2="100%" />
      ))}
      {children}
      {now !== null && <line class="year-today" x1={now} x2={now} y1="0" y2="100%" />}
    </svg>
  );
}

function percent(share: number): string {
  return `${(100 * share).toFixed(2)}%`;
}

export function spanWords({ from, to }: Span): string {
  return from === to ? dayWords(from) : `${dayWords(from)} to ${dayWords(to)}`;
}
