import { offerFile } from '../../../state/files.ts';
import { say } from '../../../state/speech.ts';

/** Dots of a picture for each millimetre of its paper: 300 to the inch. */
const DOTS_PER_MM = 300 / 25.4;

/** Hands over a drawing of the engine's as SVG. */
export function saveSvg(name: string, svg: string): void {
  offerFile(`${name}.svg`, svg, 'image/svg+xml');
}

/** The same as a picture of dots, painted by the browser on white. */
export async function savePng(name: string, svg: string): Promise<void> {
  const [, width, height] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg) ?? [];
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  const picture = new Image();
  picture.src = address;
  try {
    await picture.decode();
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(Number(width) * DOTS_PER_MM);
    canvas.height = Math.round(Number(height) * DOTS_PER_MM);
    const brush = canvas.getContext('2d');
    if (!brush) throw new Error('no canvas');
    brush.fillStyle = '#fff';
    brush.fillRect(0, 0, canvas.width, canvas.height);
    brush.drawImage(picture, 0, 0, canvas.width, canvas.height);
    const dots = await new Promise<Blob | null>((take) => canvas.toBlob(take, 'image/png'));
    if (!dots) throw new Error('no picture');
    offerFile(`${name}.png`, dots, 'image/png');
  } catch {
    say('This browser could not make the picture: take the SVG.', 'problem');
  } finally {
    URL.revokeObjectURL(address);
  }
}

/** Hands over a drawing in metres for programs that draw. */
export function saveDxf(name: string, dxf: string): void {
  offerFile(`${name}.dxf`, dxf, 'application/dxf');
}
