import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { formatShare } from '../../../engine/index.ts';
import { askEngine } from '../../state/ask.ts';
import { fileNameOf, offerFile } from '../../state/files.ts';
import { reckonedPlan } from '../../state/reckoned.ts';
import { period } from '../../state/results.ts';
import { say } from '../../state/speech.ts';
import { shownOptions } from '../../state/view.ts';
import { weatherInUse } from '../../state/weather.ts';
import { plan } from '../../state/yard.ts';
import { printPaper } from '../parts/paper/print-paper.ts';
import { siteNow } from '../parts/typed.ts';

type Wish = 'save' | 'print' | 'handout';

/** The report: one page that needs nothing else, to save, to print, or on two pages to hand out. */
export function Report() {
  const [withPlace, setWithPlace] = useState(false);
  const [working, setWorking] = useState<string | null>(null);
  const made = useRef<{ readonly from: readonly unknown[]; readonly html: string } | null>(null);

  async function make(wish: Wish): Promise<void> {
    const html = await htmlNow();
    if (html === null) return;
    if (wish === 'save') return offerFile(fileNameOf(plan.value, '-report.html'), html, 'text/html');
    print(html, wish);
  }

  /** The report of the yard as it is now, made once for saving and printing; `null` where it cannot be made. */
  async function htmlNow(): Promise<string | null> {
    const from = [plan.value, period.value, shownOptions.value, weatherInUse.value, siteNow().date, withPlace];
    if (made.current && from.every((part, k) => part === made.current?.from[k])) return made.current.html;
    setWorking('Working out the report…');
    const { name, journal, stock } = plan.value;
    const asked = {
      plan: { ...reckonedPlan.value, name, journal, stock },
      period: period.value,
      options: shownOptions.value,
      made: siteNow().date,
      withPlace,
    };
    const answer = await askEngine('report', asked, {
      onProgress: ({ done }) => setWorking(`Working out the report: ${formatShare(done)}`),
    });
    setWorking(null);
    if (!answer.ok) {
      say(answer.problems[0]?.message ?? 'The report could not be made.', 'problem');
      return null;
    }
    made.current = { from, html: answer.value };
    return answer.value;
  }

  return (
    <>
      <h2>Report</h2>
      <p>
        The plan and its heat as the map shows them now, how each plant stands it, what was tried, dates and cautions
        {shownOptions.value.length > 0 ? ', with the options that are shown as if they were built' : ''}.
      </p>
      <label class="tick">
        <input type="checkbox" checked={withPlace} onChange={(event) => setWithPlace(event.currentTarget.checked)} />
        Say where the yard is
      </label>
      <div class="files-row">
        <button type="button" disabled={working !== null} onClick={() => void make('save')}>
          Save the report
        </button>
        <button type="button" disabled={working !== null} onClick={() => void make('handout')}>
          Print two pages to hand out
        </button>
        <button type="button" disabled={working !== null} onClick={() => void make('print')}>
          Print it in full
        </button>
      </div>
      <p role="status">{working}</p>
    </>
  );
}

function print(html: string, wish: 'print' | 'handout'): void {
  // Its style goes another way than its markup: the page's policy refuses a style that stands in markup.
  const style = /<style>([^<]*)<\/style>/.exec(html);
  const page = new DOMParser().parseFromString(html.replace(style?.[0] ?? '', ''), 'text/html');
  printPaper(<Pages page={page} class={wish === 'handout' ? 'handout' : 'in-full'} />, style?.[1] ?? '');
}

/** The report's own page, taken in as nodes: no markup of a person's can be in it, and no script would run. */
function Pages({ page, class: kind }: { readonly page: Document; readonly class: string }) {
  const paper = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const main = page.querySelector('main');
    if (main) paper.current?.replaceChildren(document.importNode(main, true));
  }, [page]);
  return <div ref={paper} class={kind} />;
}
