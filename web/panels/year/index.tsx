import '../parts/feature/style.css';
import '../parts/paper/pages.css';
import './style.css';
import { useEffect } from 'preact/hooks';
import { dayWords, reviewHeadline, seasonHeadline, yearEntries } from '../../../engine/index.ts';
import { cardNext } from '../../state/next.ts';
import { shownOptions } from '../../state/view.ts';
import { plan } from '../../state/yard.ts';
import { StageAnswer } from '../parts/answer/StageAnswer.tsx';
import { ChoiceBox } from '../parts/boxes/ChoiceBox.tsx';
import { Dates } from './Dates.tsx';
import { Diary } from './diary/Diary.tsx';
import { NextYear } from './NextYear.tsx';
import { page, PAGES } from './page.ts';
import { Review } from './review/Review.tsx';
import { review, season, today } from './season.ts';
import { YearStrip } from './strip/YearStrip.tsx';
import { TomorrowPage } from './TomorrowPage.tsx';

/** The card of the last stage: the year at a glance, then its dates, tomorrow, the diary, and whether it worked. */
export function YearCard() {
  const { shown, working, problems } = season.value;
  const result = shown?.value;
  const { options = [] } = plan.value;
  const next = result ? (yearEntries(result).find(({ to }) => to >= today()) ?? null) : null;
  const words = next ? `${dayWords(next.from)}: ${next.title}.` : null;
  useEffect(() => {
    cardNext.value = words === null ? null : { text: words };
  }, [words]);
  const looked = review.value.shown?.value;
  const says =
    page.value === 'Did it work?' && looked
      ? reviewHeadline(plan.value, looked)
      : result
        ? seasonHeadline(result)
        : working && 'The year is being worked out.';
  return (
    <div class="year-card">
      <StageAnswer says={says} act={null} />
      {options.length > 0 && (
        <ChoiceBox
          label="The year of"
          value={shownOptions.value[0]}
          none="the yard as it stands"
          choices={Object.fromEntries(
            options.map(({ id, name }) => [id, `option ${id} as if built${name === undefined ? '' : `: ${name}`}`]),
          )}
          onChange={(id) => (shownOptions.value = id === undefined ? [] : [id])}
        />
      )}
      {problems.map(({ message }) => (
        <p key={message} class="box-said fault">
          {message}
        </p>
      ))}
      {result && <YearStrip season={result} />}
      <nav class="page-names" aria-label="Pages of the year">
        {PAGES.map((name) => (
          <button key={name} type="button" aria-pressed={name === page.value} onClick={() => (page.value = name)}>
            {name}
          </button>
        ))}
      </nav>
      {page.value === 'Dates' && result && <Dates season={result} />}
      {page.value === 'Tomorrow' && <TomorrowPage />}
      {page.value === 'Diary' && <Diary />}
      {page.value === 'Did it work?' && <Review />}
      {page.value === 'Next year' && <NextYear />}
    </div>
  );
}
