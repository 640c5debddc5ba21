import { signal } from '@preact/signals';
import { withPack, withoutUndefined } from '../../../engine/index.ts';
import type { PackChange, Plan } from '../../../engine/index.ts';
import { commitEdit } from '../../state/edit.ts';
import { say } from '../../state/speech.ts';
import { aside } from '../../state/view.ts';
import { plan } from '../../state/yard.ts';

const LARGEST_FILE_BYTES = 5e6;

/** An adviser's pack that waits to be taken, by its file. */
export const openPack = signal<{ readonly name: string; readonly bytes: Uint8Array } | null>(null);

/** Opens a pack to look at; nothing is changed yet. */
export async function readPack(file: File): Promise<void> {
  if (file.size > LARGEST_FILE_BYTES)
    return say(`${file.name} is too large for an adviser's pack (over 5 MB).`, 'problem');
  openPack.value = { name: file.name, bytes: new Uint8Array(await file.arrayBuffer()) };
  aside.value = 'files';
}

/** What the pack would change in the yard as it is now. */
export function packChange(of: Plan): PackChange | null {
  return openPack.value && withPack(of, openPack.value.bytes);
}

/** Lays the pack over the yard in one step. */
export function takePack(change: Extract<PackChange, { ok: true }>): void {
  const { climate, plants, stock, cautions } = change.plan;
  const next = withoutUndefined({ ...plan.value, climate, plants, stock, cautions });
  if (!commitEdit(`Take ${openPack.value?.name ?? 'a pack'}`, next)) return;
  openPack.value = null;
  say(
    `${change.changes.length} ${change.changes.length === 1 ? 'thing was' : 'things were'} taken from the pack. ` +
      `Undo takes all of it back.`,
  );
}
