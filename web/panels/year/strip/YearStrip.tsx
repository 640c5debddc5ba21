import type { ComponentChildren } from 'preact';
import type { SeasonResult } from '../../../../engine/index.ts';
import { plan } from '../../../state/yard.ts';
import { bandsOf, marksOn, notedBands } from './bands.ts';
import type { Band, Mark, Span } from './bands.ts';
import { dayWords } from '../../../../engine/index.ts';
import { Fold } from '../../parts/answer/Fold.tsx';
import { today } from '../season.ts';
import { isOn, piecesOn, placeOn, stripOf } from '../../../common/strip-days.ts';
import type { Strip } from '../../../common/strip-days.ts';

export const MONTH_INITIALS = ['J', 'F', 'M', 'A', 'M', 'J', 'J', 'A', 'S', 'O', 'N', 'D'] as const;
/** A single day is drawn this wide, or nobody would see it. */
const NARROWEST = 0.009;
const WORDS: Readonly<Record<Band['look'], string>> = {
  heat: 'Most days reach the hot limit',
  cloth: 'Cloth up',
  clay: 'Clay spray',
  frost: 'Frost possible',
};

/** This year's twelve months with what fills them, last year's above it on the same scale, and both in words. */
export function YearStrip({ season }: { readonly season: SeasonResult }) {
  const now = plan.value;
  const strip = stripOf(now.season, now.season.year);
  const before = stripOf(now.season, now.season.year - 1);
  const earlier = now.past?.find(({ year }) => year === before.year)?.plan ?? null;
  const marksBefore = marksOn(before, now);
  const bandsBefore = earlier === null ? [] : notedBands(earlier, before, now);
  return (
    <figure class="year-strip">
      <figcaption class="unseen">The year in bands</figcaption>
      <p class="year-months" aria-hidden="true">
        {MONTH_INITIALS.map((_, index) => (
          <span key={index}>{MONTH_INITIALS[(index + Number(strip.first.slice(5, 7)) - 1) % 12]}</span>
        ))}
      </p>
      {(earlier !== null || marksBefore.length > 0) && <Lines strip={before} bands={bandsBefore} marks={marksBefore} />}
      <Lines strip={strip} bands={bandsOf(now, season)} marks={marksOn(strip, now)} />
      <Fold title="In words">
        <ul class="year-words">
          {bandsOf(now, season).map(({ look, spans }) => (
            <li key={look}>
              <strong>{WORDS[look]}:</strong> {bandWords(look, spans)}
            </li>
          ))}
          {marksBefore.length + marksOn(strip, now).length > 0 && (
            <li>
              <strong>Noted:</strong> ▼ damage, ● a reading; each stands in the diary.
            </li>
          )}
        </ul>
      </Fold>
      {earlier !== null && (
        <details>
          <summary>{before.year} in words</summary>
          <ul class="year-words">
            {bandsBefore.map(({ look, spans }) => (
              <li key={look}>
                <strong>{WORDS[look]}:</strong> {spans.length === 0 ? 'nothing noted' : spans.map(spanWords).join(', ')}
              </li>
            ))}
          </ul>
        </details>
      )}
    </figure>
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
            {look === 'damage' ? '▼' : '●'}
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

function bandWords(look: Band['look'], spans: readonly Span[]): string {
  if (spans.length === 0) return look === 'clay' ? 'not chosen' : 'none this year';
  return spans.map(spanWords).join(', ');
}

export function spanWords({ from, to }: Span): string {
  return from === to ? dayWords(from) : `${dayWords(from)} to ${dayWords(to)}`;
}
