import { measureMe, sheetSections } from '../../../engine/index.ts';
import type { BuildSheet } from '../../../engine/index.ts';
import { units } from '../../state/yard.ts';
import { PaperHead } from '../parts/paper/PaperHead.tsx';
import { openStops } from './Cautions.tsx';
import { unknowns, unknownWords } from './chosen.ts';
import { Ink, Parts } from './Parts.tsx';

/** The sheet as it comes out of the printer: what is built by, and not how it is reckoned. */
export function Paper({ sheet }: { readonly sheet: BuildSheet }) {
  return (
    <article class="build-sheet">
      <PaperHead />
      <Ink svg={measureMe()} />
      {unknowns.value.length > 0 && <p class="anchors-open">{unknownWords()}</p>}
      {sheetSections(sheet, units.value).map(({ id, title, parts }) => (
        <section key={id} id={`sheet-${id}`}>
          <h2>{title}</h2>
          <Parts parts={parts} sheet={sheet} answered={openStops(sheet).length === 0} />
        </section>
      ))}
    </article>
  );
}
