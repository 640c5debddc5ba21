import { monthClimate } from '../../../engine/index.ts';
import type { CivilDate, SeasonResult } from '../../../engine/index.ts';
import { DAYS, placeOf, stripStart } from '../../app/SunBar/year-days.ts';
import { plan } from '../../state/yard.ts';
import { dayWords } from './lists.ts';
import { today } from './season.ts';

interface Band {
  readonly name: string;
  readonly look: string;
  readonly spans: readonly { readonly from: CivilDate; readonly to: CivilDate }[];
}

const MONTHS = ['J', 'F', 'M', 'A', 'M', 'J', 'J', 'A', 'S', 'O', 'N', 'D'] as const;

/** Twelve months with what fills them; every band says its dates in words too. */
export function YearStrip({ season }: { readonly season: SeasonResult }) {
  const start = stripStart(plan.value.season);
  const first = Number(start.slice(0, 2)) - 1;
  return (
    <figure class="year-strip">
      <figcaption class="unseen">The year in bands</figcaption>
      <p class="year-months" aria-hidden="true">{MONTHS.map((_, index) => <span key={index}>{MONTHS[(index + first) % 12]}</span>)}</p>
      {bandsOf(season).map(({ name, look, spans }) => (
        <div key={name} class="year-band">
          <svg viewBox={`0 0 ${DAYS} 10`} preserveAspectRatio="none" aria-hidden="true">
            <rect class="year-ground" width={DAYS} height="10" />
            {spans.flatMap((span) => pieces(placeOf(span.from.slice(5), start), placeOf(span.to.slice(5), start))).map(([x, width]) => <rect key={x} class={look} x={x} width={width} height="10" />)}
            <rect class="year-today" x={placeOf(today().slice(5), start)} width="2" height="10" />
          </svg>
          <p><strong>{name}</strong> {spans.length === 0 ? 'none this year' : spans.map(({ from, to }) => (from === to ? dayWords(from) : `${dayWords(from)} to ${dayWords(to)}`)).join(', ')}</p>
        </div>
      ))}
    </figure>
  );
}

function bandsOf({ cloth, clay, frost, events }: SeasonResult): readonly Band[] {
  const ofKind = (kind: string): Band['spans'] => events.filter((event) => event.kind === kind);
  const { climate, season } = plan.value;
  const hot = climate.months.flatMap(({ month }) => {
    const usual = monthClimate(plan.value, month);
    return usual !== null && usual.high >= climate.hotAir ? [monthSpan(season.year, month)] : [];
  });
  return [
    { name: 'Most days reach the hot limit:', look: 'year-heat', spans: joined(hot) },
    { name: 'Cloth up:', look: 'year-cloth', spans: cloth.flatMap(({ up, down }) => (up !== null && down !== null ? [{ from: up, to: down }] : [])) },
    { name: 'Clay spray:', look: 'year-clay', spans: clay ? ofKind('clay') : [] },
    { name: 'Frost possible:', look: 'year-frost', spans: frost.window ? [{ from: frost.window.first, to: frost.window.last }] : [] },
  ];
}

/** Months that follow each other as one span. */
function joined(spans: Band['spans']): Band['spans'] {
  return spans.toSorted((a, b) => a.from.localeCompare(b.from)).reduce<{ from: CivilDate; to: CivilDate }[]>((all, span) => {
    const last = all.at(-1);
    return last && Number(span.from.slice(5, 7)) === Number(last.to.slice(5, 7)) + 1 ? [...all.slice(0, -1), { from: last.from, to: span.to }] : [...all, span];
  }, []);
}

function monthSpan(year: number, month: number): { readonly from: CivilDate; readonly to: CivilDate } {
  const day = (ms: number): CivilDate => new Date(ms).toISOString().slice(0, 10);
  return { from: day(Date.UTC(year, month - 1, 1)), to: day(Date.UTC(year, month, 0)) };
}

/** A span as x and width; in two where it runs over the strip's end. */
function pieces(from: number, to: number): readonly (readonly [x: number, width: number])[] {
  return to >= from ? [[from, Math.max(3, to - from + 1)]] : [[from, DAYS - from], [0, to + 1]];
}
