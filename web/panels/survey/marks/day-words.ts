/** "2 Jul, 10:00" of a clock time "2026-07-02T10:00". */
export function formatDay(when: string): string {
  const [date, time] = when.split('T');
  return `${new Date(`${date}T00:00Z`).toLocaleDateString(undefined, { day: 'numeric', month: 'short', timeZone: 'UTC' })}, ${time}`;
}
