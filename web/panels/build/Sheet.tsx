import { signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { frameDxf, planDrawing, sheetSections } from '../../../engine/index.ts';
import type { BuildSheet, SheetPart, Work } from '../../../engine/index.ts';
import { askEngine } from '../../state/ask.ts';
import { bareSite } from '../../state/bare-site.ts';
import { fileNameOf } from '../../state/files.ts';
import { say } from '../../state/speech.ts';
import { units } from '../../state/yard.ts';
import { Fold } from '../parts/answer/Fold.tsx';
import { printPaper } from '../parts/paper/print-paper.ts';
import { SaveDrawing } from '../parts/paper/SaveDrawing.tsx';
import { AsBuilt } from './AsBuilt.tsx';
import { MindAt, openStops, Stops, stopsAsked } from './Cautions.tsx';
import { builtPlan, chosen, unknowns, unknownWords } from './chosen.ts';
import { Letter } from './Letter.tsx';
import type { MindedWork } from './minded.ts';
import { Paper } from './Paper.tsx';
import { Parts } from './Parts.tsx';
import { SHEET_STYLE } from './sheet-style.ts';
import { Shopping } from './Shopping.tsx';

interface Block {
  readonly title: string;
  readonly content: ComponentChildren;
}

const STOPS = 'Stops';

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

function LetterButton({ sheet }: { readonly sheet: BuildSheet }) {
  return (
    <button type="button" onClick={() => void printLetter(sheet)}>
      Print a letter to ask leave
    </button>
  );
}

/** What stands on each page, in order. */
function blocksOf(sheet: BuildSheet): readonly Block[] {
  // On the screen a picture stands before what is said of it.
  const pictureFirst = (one: SheetPart, other: SheetPart): number =>
    Number(other.kind === 'drawing') - Number(one.kind === 'drawing');
  const sections = new Map(
    sheetSections(sheet, units.value).map(({ id, parts }) => [id, parts.toSorted(pictureFirst)]),
  );
  const parts = (...ids: readonly string[]): ComponentChildren =>
    ids.map((id) => <Parts key={id} parts={sections.get(id) ?? []} sheet={sheet} />);
  const steps = (work: Work): ComponentChildren => <Steps key="steps" sheet={sheet} work={work} />;
  const work = (title: MindedWork, ...content: readonly ComponentChildren[]): ComponentChildren => (
    <Fold key={title} name="work" title={title}>
      <MindAt sheet={sheet} work={title} />
      {content}
    </Fold>
  );
  return [
    { title: 'Drawing', content: parts('summary', 'notes') },
    { title: STOPS, content: <Stops sheet={sheet} letter={<LetterButton sheet={sheet} />} /> },
    { title: 'Shopping list', content: <Shopping sheet={sheet} /> },
    {
      title: 'Work',
      content: [
        work('Tools and time', parts('tools')),
        work('Cut list', parts('cuts', 'parts'), steps('tubes')),
        work('Set out the posts', parts('setting-out')),
        work('Ready the ground', steps('ground')),
        work('Put up the frame', steps('frame'), parts('strength')),
        work('Anchors', parts('anchors', 'wind')),
        work('Hang the cloth', steps('cloth'), parts('cloth')),
        work('Storm plan', parts('storm', 'winter')),
        work('As built', <AsBuilt key="form" sheet={sheet} />),
      ],
    },
  ];
}

/** The steps of one work, numbered as on paper. */
function Steps({ sheet, work }: { readonly sheet: BuildSheet; readonly work: Work }) {
  const first = sheet.steps.findIndex((step) => step.work === work);
  return (
    <ol start={first + 1}>
      {sheet.steps
        .filter((step) => step.work === work)
        .map(({ id, text }) => (
          <li key={id}>{text}</li>
        ))}
    </ol>
  );
}

/** The sheet as on paper, a page a block. */
export function Sheet({ sheet }: { readonly sheet: BuildSheet }) {
  const blocks = blocksOf(sheet);
  const current = Math.min(page.value, blocks.length - 1);

  function printSheet(): void {
    if (openStops(sheet).length === 0) return printPaper(<Paper sheet={sheet} />, SHEET_STYLE);
    page.value = blocks.findIndex(({ title }) => title === STOPS);
    stopsAsked.value = true;
  }

  return (
    <>
      <PageNames blocks={blocks} current={current} />
      <article
        class={unknowns.value.length > 0 ? 'sheet anchors-open screen-only' : 'sheet screen-only'}
        aria-label={`Build sheet: ${sheet.name}`}
      >
        <OpenWords />
        {blocks.map(({ title, content }, index) => (
          <section key={title} class={index === current ? 'sheet-block current' : 'sheet-block'} aria-label={title}>
            <h2 class="unseen">{title}</h2>
            {content}
          </section>
        ))}
      </article>
      <div class="print-row screen-only">
        <button type="button" class="main" onClick={printSheet}>
          Print the sheet
        </button>
        {current === 0 && (
          <>
            <span class="quiet">At 100 %, on A4 or Letter.</span>
            <LetterButton sheet={sheet} />
          </>
        )}
      </div>
      {current === 0 && (
        <details class="screen-only">
          <summary>Save the drawing of the frame</summary>
          <SaveDrawing
            name={fileNameOf({ ...builtPlan.value, name: sheet.name }, '')}
            svg={() => planDrawing(sheet, units.value)}
            dxf={() => frameDxf(sheet)}
          />
        </details>
      )}
    </>
  );
}

/** What the anchors wait for; on the other pages a press leads to where it is said. */
function OpenWords() {
  if (unknowns.value.length === 0) return null;
  return (
    <p class="open-words" role="status">
      {page.value === 0 ? (
        unknownWords()
      ) : (
        <button type="button" onClick={() => (page.value = 0)}>
          {unknownWords()}
        </button>
      )}
    </p>
  );
}

/** By name: what it is, what comes first, what to buy, what to do. */
function PageNames({ blocks, current }: { readonly blocks: readonly Block[]; readonly current: number }) {
  return (
    <nav class="page-names screen-only" aria-label="Pages of the sheet">
      {blocks.map(({ title }, index) => (
        <button key={title} type="button" aria-pressed={index === current} onClick={() => (page.value = index)}>
          {title}
        </button>
      ))}
    </nav>
  );
}
