import { useLayoutEffect } from 'preact/hooks';
import { SHEET_STYLE, measureMe, sheetSections } from '../../../engine/index.ts';
import type { BuildSheet } from '../../../engine/index.ts';
import { plan, units } from '../../state/yard.ts';
import { unknowns } from './chosen.ts';
import { Ink, Parts } from './Parts.tsx';

/** The sheet as it comes out of the printer; on the screen it is not shown. */
export function Paper({ sheet }: { readonly sheet: BuildSheet }) {
  useLayoutEffect(() => {
    // A style made by script, not by markup: the page's policy allows no other that is not in its files.
    const style = new CSSStyleSheet();
    style.replaceSync(`@media print {${SHEET_STYLE}}`);
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, style];
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((each) => each !== style);
    };
  }, []);
  const { name, climate } = plan.value;
  return (
    <div class="paper-only build-paper">
      <p>{name ?? 'Yard'} · made {new Date().toISOString().slice(0, 10)}{climate.from === 'rough' ? ' · rough climate' : ''}</p>
      {unknowns.value.length > 0 && <p class="anchors-open">Anchors not worked out: {unknowns.value.join(' ')}</p>}
      <article class="build-sheet">
        {sheetSections(sheet, units.value).map(({ id, title, parts }) => (
          <section key={id} id={`sheet-${id}`}>
            <h2>{title}</h2>
            <Parts parts={parts} sheet={sheet} />
            {id === 'summary' && <Ink svg={measureMe()} />}
          </section>
        ))}
      </article>
    </div>
  );
}
