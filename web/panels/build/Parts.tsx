import { useLayoutEffect, useRef } from 'preact/hooks';
import { cutDrawing, planDrawing, sideDrawing } from '../../../engine/index.ts';
import type { BuildSheet, SheetPart } from '../../../engine/index.ts';
import { units } from '../../state/yard.ts';

/** A section of the sheet as the engine words it. */
export function Parts({ parts, sheet }: { readonly parts: readonly SheetPart[]; readonly sheet: BuildSheet }) {
  return (
    <>
      {parts.map((part, index) => (
        <Part key={index} part={part} sheet={sheet} />
      ))}
    </>
  );
}

function Part({ part, sheet }: { readonly part: SheetPart; readonly sheet: BuildSheet }) {
  switch (part.kind) {
    case 'sentence':
      return <p>{part.text}</p>;
    case 'list':
      return part.numbered ? (
        <ol>
          {part.items.map((item) => (
            <li key={item}>{item}</li>
          ))}
        </ol>
      ) : (
        <ul>
          {part.items.map((item) => (
            <li key={item}>{item}</li>
          ))}
        </ul>
      );
    case 'table':
      return <Table {...part} />;
    case 'cuts':
      return <Ink svg={cutDrawing(sheet.cuts, units.value)} />;
    case 'drawing':
      return (
        <>
          <Ink svg={planDrawing(sheet, units.value)} />
          <Ink svg={sideDrawing(sheet, units.value)} />
        </>
      );
  }
}

function Table({ head, rows, numbers }: Extract<SheetPart, { kind: 'table' }>) {
  const flush = (column: number): string | undefined => (numbers.includes(column) ? 'number' : undefined);
  return (
    <div class="sheet-table" tabIndex={0} role="group" aria-label={head.join(', ')}>
      <table>
        <thead>
          <tr>
            {head.map((text, column) => (
              <th key={text} scope="col" class={flush(column)}>
                {text}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((cells, row) => (
            <tr key={row}>
              {cells.map((text, column) => (
                <td key={column} class={flush(column)}>
                  {text}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** A drawing of the engine's: black on its own white paper. Read as a picture, never as the page's own markup. */
export function Ink({ svg }: { readonly svg: string }) {
  const paper = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const picture = new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement;
    paper.current?.replaceChildren(document.importNode(picture, true));
  }, [svg]);
  return <div ref={paper} class="sheet-ink" />;
}
