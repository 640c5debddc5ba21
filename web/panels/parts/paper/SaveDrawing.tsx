import { saveDxf, savePng, saveSvg } from './save-drawing.ts';

interface Props {
  /** Of the file, without its ending. */
  readonly name: string;
  /** Made when asked for. */
  readonly svg: () => string;
  readonly dxf: () => string;
}

/** A drawing to take away, in each form. */
export function SaveDrawing({ name, svg, dxf }: Props) {
  return (
    <div class="files-row">
      <button type="button" onClick={() => saveSvg(name, svg())}>
        SVG, to scale
      </button>
      <button type="button" onClick={() => void savePng(name, svg())}>
        PNG
      </button>
      <button type="button" onClick={() => saveDxf(name, dxf())}>
        DXF, in metres
      </button>
    </div>
  );
}
