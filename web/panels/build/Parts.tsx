import { useLayoutEffect, useRef } from 'preact/hooks';
import { cutDrawing, planDrawing, settingOutDrawing, sideDrawing } from '../../../engine/index.ts';
import type { BuildSheet, SheetPart } from '../../../engine/index.ts';
import { units } from '../../state/yard.ts';

interface PartsProps {
  readonly parts: readonly SheetPart[];
  readonly sheet: BuildSheet;
  /** Whether every stop has been answered, so that they are ticked. */
  readonly answered?: boolean;
}

/** A section of the sheet as the engine words it. */
export function Parts({ parts, sheet, answered = false }: PartsProps) {
  return (
    <>
      {parts.map((part, index) => (
        <Part key={index} part={part} sheet={sheet} answered={answered} />
      ))}
    </>
  );
}

interface PartProps {
  readonly part: SheetPart;
  readonly sheet: BuildSheet;
  readonly answered: boolean;
}

function Part({ part, sheet, answered }: PartProps) {
  switch (part.kind) {
    case 'sentence':
      return <p>{part.text}</p>;
    case 'list': {
      const style = part.boxes === null ? undefined : part.boxes === 'stops' && answered ? 'boxes ticked' : 'boxes';
      const items = part.items.map((item) => <li key={item}>{item}</li>);
      return part.numbered ? <ol class={style}>{items}</ol> : <ul class={style}>{items}</ul>;
    }
    case 'table':
      return <Table {...part} />;
    case 'cuts':
      return <Ink svg={cutDrawing(sheet.cuts, units.value)} />;
    case 'drawing':
      return part.of === 'setting out' ? (
        <Ink svg={settingOutDrawing(sheet, units.value)} />
      ) : (
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
