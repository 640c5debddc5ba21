import { useLayoutEffect } from 'preact/hooks';
import { SHEET_STYLE, sheetHtml } from '../../../engine/index.ts';
import type { BuildSheet } from '../../../engine/index.ts';
import { plan, units } from '../../state/yard.ts';
import { unknowns } from './chosen.ts';

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
      <div dangerouslySetInnerHTML={{ __html: sheetHtml(sheet, units.value) }} />
    </div>
  );
}
