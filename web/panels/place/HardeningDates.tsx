import { MS_PER_DAY } from '../../../engine/index.ts';
import type { CivilDate, Hardening } from '../../../engine/index.ts';

interface Props {
  readonly hardening: Hardening;
  /** Day of the move. */
  readonly from: CivilDate;
  readonly title: string;
}

/** How a plant is led into more sun, day by day. */
export function HardeningDates({ hardening: { days, notes }, from, title }: Props) {
  const start = Date.parse(from);
  const date = (day: number): string =>
    new Date(start + (day - 1) * MS_PER_DAY).toLocaleDateString(undefined, {
      day: 'numeric',
      month: 'short',
      timeZone: 'UTC',
    });
  return (
    <section aria-label={title}>
      <h3>{title}</h3>
      <table class="hardening">
        <caption class="unseen">Sun and cloth day by day</caption>
        <thead>
          <tr>
            <th scope="col">Day</th>
            <th scope="col">Sun, the morning’s first</th>
            <th scope="col">Or cloth all day</th>
          </tr>
        </thead>
        <tbody>
          {days.map(({ day, sunHours, cloth }) => (
            <tr key={day}>
              <th scope="row">
                {day}, {date(day)}
              </th>
              <td>{sunHours.toFixed(1)} h</td>
              <td>{cloth === 0 ? 'none' : `stops ${cloth} %`}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <ul>
        {notes.map((note) => (
          <li key={note}>{note}</li>
        ))}
      </ul>
    </section>
  );
}
