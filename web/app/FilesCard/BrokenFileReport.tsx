import { brokenFile } from '../../state/files.ts';
import type { BrokenFile } from '../../state/files.ts';
import { addYard } from '../../state/shelf.ts';

const SHOWN = 12;

/** Why a file could not be opened, and the way to what is sound in it. */
export function BrokenFileReport() {
  const broken = brokenFile.value;
  if (!broken) return null;
  const { name, problems, sound } = broken;
  const aside = sound?.setAside?.length ?? 0;
  return (
    <section class="broken-file" role="alert">
      <h2>
        <bdi>{name}</bdi> could not be opened as it is
      </h2>
      <p>The yard that was open is untouched.</p>
      <ul>
        {problems.slice(0, SHOWN).map(({ pointer, message }) => (
          <li key={pointer + message}>
            {message}
            {pointer !== '' && <code> {pointer}</code>}
          </li>
        ))}
        {problems.length > SHOWN && <li>and {problems.length - SHOWN} more</li>}
      </ul>
      <div class="files-row">
        {sound && (
          <button type="button" class="main" onClick={() => openSound(broken)}>
            Open what is sound ({aside} {aside === 1 ? 'thing' : 'things'} set aside)
          </button>
        )}
        <button type="button" onClick={() => (brokenFile.value = null)}>
          Leave it
        </button>
      </div>
    </section>
  );
}

/** What is set aside stays in the yard's file, as it was. */
async function openSound({ name, sound }: BrokenFile): Promise<void> {
  if (!sound) return;
  if (await addYard(sound, `Open what is sound of ${name}`)) brokenFile.value = null;
}
