import { shownName } from '../../engine/index.ts';
import { brokenFile, fileTakers, readPlanFile } from '../state/files.ts';
import { takeOpenBoxes } from '../state/open-boxes.ts';
import { addYard } from '../state/shelf.ts';
import { say } from '../state/speech.ts';
import { aside } from '../state/view.ts';

/** How an adviser's pack begins. */
const PACK = /"format"\s*:\s*"shadewright-pack"/;

/** Opens a file that was dropped or chosen: a plan as a yard of its own, anything else by whoever takes its kind. */
export async function openAnyFile(file: File): Promise<void> {
  const ending = file.name.slice(file.name.lastIndexOf('.') + 1).toLowerCase();
  const take = fileTakers.get(ending);
  if (take) return take(file);
  if (PACK.test(await file.slice(0, 2000).text())) return (await import('./later-stages.ts')).readPack(file);
  const plan = await readPlanFile(file);
  if (plan) {
    if (await addYard(plan, `Open ${file.name}`, Date.now()))
      say(`${shownName(plan.name ?? file.name)} is open. The yard before it is still on the shelf.`);
  } else if (brokenFile.value) aside.value = 'files';
}

export function takeDroppedFiles(): void {
  fileTakers.set('epw', async (file) => (await import('../panels/survey/weather-file.ts')).takeWeatherFile(file));
  addEventListener('dragover', (event) => {
    if (event.dataTransfer?.types.includes('Files')) event.preventDefault();
  });
  addEventListener('drop', (event) => {
    const file = event.dataTransfer?.files[0];
    if (!file) return;
    event.preventDefault();
    takeOpenBoxes();
    void openAnyFile(file);
  });
}
