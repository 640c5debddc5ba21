import { signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { frameDxf, planDrawing, SHEET_STYLE, sheetSections } from '../../../engine/index.ts';
import type { BuildSheet, RiskyTask, SheetPart } from '../../../engine/index.ts';
import { askEngine } from '../../state/ask.ts';
import { bareSite } from '../../state/bare-site.ts';
import { fileNameOf } from '../../state/files.ts';
import { say } from '../../state/speech.ts';
import { units } from '../../state/yard.ts';
import { printPaper } from '../parts/paper/print-paper.ts';
import { SaveDrawing } from '../parts/paper/SaveDrawing.tsx';
import { AsBuilt } from './AsBuilt.tsx';
import { Cautions, MindAt, openStops } from './Cautions.tsx';
import { builtPlan, chosen, unknowns, unknownWords } from './chosen.ts';
import { Letter } from './Letter.tsx';
import { Paper } from './Paper.tsx';
import { Parts } from './Parts.tsx';
import { Shopping } from './Shopping.tsx';

interface Block {
  readonly title: string;
  readonly content: ComponentChildren;
}

const CAUTIONS = 'Cautions';

/** Which block is open; kept while one goes to another stage and back. */
export const page = signal(0);

/** The page for whoever has to allow the frame. */
async function printLetter(sheet: BuildSheet): Promise<void> {
  const thing = chosen.value?.thing;
  const built = builtPlan.value;
  const site = bareSite(built.site);
  const answer = await askEngine('letter', {
    plan: { ...built, site, past: undefined, journal: undefined },
    id: sheet.id,
  });
  if (!answer.ok || !thing) return say('The letter could not be made.', 'problem');
  printPaper(<Letter thing={thing} sheet={sheet} built={built} pictures={answer.value} />);
}

/** What stands on each page, in order. */
function blocksOf(sheet: BuildSheet): readonly Block[] {
  // On the screen a picture stands before what is said of it.
  const pictureFirst = (one: SheetPart, other: SheetPart): number =>
    Number(other.kind === 'drawing') - Number(one.kind === 'drawing');
  const sections = new Map(
    sheetSections(sheet, units.value).map(({ id, parts }) => [id, parts.toSorted(pictureFirst)]),
  );
  const parts = (ids: readonly string[]): ComponentChildren =>
    ids.map((id) => <Parts key={id} parts={sections.get(id) ?? []} sheet={sheet} />);
  const mind = (...tasks: RiskyTask[]): ComponentChildren => <MindAt sheet={sheet} tasks={tasks} />;
  return [
    { title: 'Drawing', content: parts(['summary', 'notes']) },
    { title: 'Shopping list', content: <Shopping sheet={sheet} /> },
    { title: 'Cuts', content: [mind('cut'), parts(['cuts', 'parts'])] },
    { title: 'Posts', content: [mind('dig', 'climb'), parts(['setting-out'])] },
    {
      title: 'Steps',
      content: [mind('dig', 'concrete', 'climb', 'cut', 'cloth'), parts(['tools', 'steps', 'cloth'])],
    },
    {
      title: 'Storm and anchors',
      content: [mind('wind', 'climb', 'winter'), parts(['storm', 'anchors', 'wind', 'strength', 'winter'])],
    },
    { title: CAUTIONS, content: <Cautions sheet={sheet} /> },
    { title: 'As built', content: [mind('climb'), <AsBuilt key="form" sheet={sheet} />] },
  ];
}

/** The sheet as on paper, a page a block. */
export function Sheet({ sheet }: { readonly sheet: BuildSheet }) {
  const blocks = blocksOf(sheet);
  const current = Math.min(page.value, blocks.length - 1);
  const left = openStops(sheet).length;
  const toCautions = (): void => void (page.value = blocks.findIndex(({ title }) => title === CAUTIONS));

  function printSheet(): void {
    if (left === 0) return printPaper(<Paper sheet={sheet} />, SHEET_STYLE);
    toCautions();
    say(`Answer the stops first: ${left} left. Then the sheet prints.`, 'warning');
  }

  return (
    <>
      <PageTurning blocks={blocks} current={current} />
      <article
        class={unknowns.value.length > 0 ? 'sheet anchors-open screen-only' : 'sheet screen-only'}
        aria-label={`Build sheet: ${sheet.name}`}
      >
        {unknowns.value.length > 0 && (
          <p class="open-words" role="status">
            {unknownWords()}
          </p>
        )}
        {left > 0 && blocks[current].title !== CAUTIONS && (
          <p class="stops-left">
            {left} {left === 1 ? 'stop' : 'stops'} to answer first.{' '}
            <button type="button" onClick={toCautions}>
              Read {left === 1 ? 'it' : 'them'}
            </button>
          </p>
        )}
        {blocks.map(({ title, content }, index) => (
          <section
            key={title}
            id={`build-${title.toLowerCase().replaceAll(' ', '-')}`}
            class={index === current ? 'sheet-block current' : 'sheet-block'}
            aria-label={title}
          >
            <h2 class="unseen">{title}</h2>
            {content}
          </section>
        ))}
      </article>
      <PrintRow printSheet={printSheet} printLetter={() => void printLetter(sheet)} />
      <details class="screen-only">
        <summary>Save the drawing of the frame</summary>
        <SaveDrawing
          name={fileNameOf({ ...builtPlan.value, name: sheet.name }, '')}
          svg={() => planDrawing(sheet, units.value)}
          dxf={() => frameDxf(sheet)}
        />
      </details>
    </>
  );
}

/** By name, and one after the other. */
function PageTurning({ blocks, current }: { readonly blocks: readonly Block[]; readonly current: number }) {
  return (
    <>
      <nav class="page-names screen-only" aria-label="Blocks of the sheet">
        {blocks.map(({ title }, index) => (
          <button key={title} type="button" aria-pressed={index === current} onClick={() => (page.value = index)}>
            {title}
          </button>
        ))}
      </nav>
      <nav class="sheet-pages" aria-label="Pages of the sheet">
        <button type="button" disabled={current === 0} onClick={() => (page.value = current - 1)}>
          ◂ Back
        </button>
        <span aria-live="polite">
          {current + 1} of {blocks.length}: {blocks[current].title}
        </span>
        <button type="button" disabled={current === blocks.length - 1} onClick={() => (page.value = current + 1)}>
          Next ▸
        </button>
      </nav>
    </>
  );
}

interface PrintRowProps {
  readonly printSheet: () => void;
  readonly printLetter: () => void;
}

function PrintRow(props: PrintRowProps) {
  return (
    <div class="print-row screen-only">
      <button type="button" class="main" onClick={props.printSheet}>
        Print the sheet
      </button>
      <button type="button" onClick={props.printLetter}>
        Print a letter to ask leave
      </button>
      <span class="quiet">
        A4 or Letter, at 100 %: the bar “measure me” tells. The letter shows whether the frame is seen over the wall.
      </span>
    </div>
  );
}
