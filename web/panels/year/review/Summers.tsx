import {
  formatTemperature,
  monthWord,
  parseTemperature,
  seasonMonths,
  setSummerMonth,
} from '../../../../engine/index.ts';
import { commitEdit } from '../../../state/edit.ts';
import { plan, units } from '../../../state/yard.ts';
import { Fold } from '../../parts/answer/Fold.tsx';
import { TextBox } from '../../parts/boxes/TextBox.tsx';

/** Mean highs that are believed. [°C] */
const BELIEVED = [5, 55] as const;

interface Props {
  /** Whether plants were scored in both, so that the weather between them counts. */
  readonly compared: boolean;
}

/** How warm this summer and the last really were: beside the climate, which stays what is usual here. */
export function Summers({ compared }: Props) {
  const { season } = plan.value;
  const months = seasonMonths(plan.value);
  const years = [season.year - 1, season.year];
  const known = years.every((year) => plan.value.summers?.some((summer) => summer.year === year));
  return (
    <Fold title="How warm were the two summers?" open={compared && !known}>
      <p>
        Mean daily high of the month, from your weather service. One month of each is enough. The climate and the map
        stay as they are.
      </p>
      {(months.ok ? months.value : []).map(({ month, year: ends }) => (
        <div key={month} class="field-row">
          {years.map((year) => (
            <TextBox
              key={year}
              label={`${monthWord(month)} ${ends - season.year + year}`}
              value={shown(year, month)}
              placeholder="as usual"
              onChange={(text) => take(year, month, text)}
            />
          ))}
        </div>
      ))}
    </Fold>
  );
}

function shown(year: number, month: number): string {
  const was = plan.value.summers?.find((summer) => summer.year === year)?.months.find((row) => row.month === month);
  return was === undefined ? '' : formatTemperature(was.high, units.value, 1);
}

function take(year: number, month: number, text: string): string | null {
  const high = text === '' ? undefined : parseTemperature(text, units.value);
  if (high === null || (high !== undefined && (high < BELIEVED[0] || high > BELIEVED[1])))
    return `"${text}" is no mean high such as ${formatTemperature(36, units.value)}.`;
  const was = high === undefined ? undefined : { high };
  commitEdit(`Say how warm ${monthWord(month)} was`, setSummerMonth(plan.value, year, month, was));
  return null;
}
