import '../draw/style.css';
import './style.css';
import { useEffect } from 'preact/hooks';
import { cardNext } from '../../state/next.ts';
import { Dates } from './Dates.tsx';
import { Diary } from './Diary.tsx';
import { dayWords } from './lists.ts';
import { NextYear } from './NextYear.tsx';
import { Review } from './Review.tsx';
import { season, today } from './season.ts';
import { YearStrip } from './YearStrip.tsx';

/** The card of the last stage: the year's dates, its diary, and whether it worked. */
export function YearCard() {
  const { shown, working, problems } = season.value;
  const result = shown?.value;
  const next = result?.events.find(({ to }) => to >= today()) ?? null;
  const words = next ? `${dayWords(next.from)}: ${next.title}.` : null;
  useEffect(() => {
    cardNext.value = words === null ? null : { text: words };
  }, [words]);
  return (
    <div class="year-card">
      {problems.map(({ message }) => <p key={message} class="box-said fault">{message}</p>)}
      {result ? <YearStrip season={result} /> : working && <p aria-live="polite">Working out the year…</p>}
      <Diary />
      <Review />
      {result && <Dates season={result} />}
      <NextYear />
    </div>
  );
}
