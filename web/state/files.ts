import { signal } from '@preact/signals';
import { LIMITS, planText } from '../../engine/index.ts';
import type { Plan, Problem } from '../../engine/index.ts';
import { takeOpenBoxes } from './open-boxes.ts';
import { say } from './speech.ts';
import { openYard, plan } from './yard.ts';

/** A file that could not be opened as it is, and what of it could be. */
export interface BrokenFile {
  readonly name: string;
  readonly problems: readonly Problem[];
  /** The plan with its broken parts kept in `setAside`; `null` when more is broken than can be set aside. */
  readonly sound: Plan | null;
}

export const brokenFile = signal<BrokenFile | null>(null);

/** Who takes files that are not plans, by the name's ending in small letters ("epw"). */
export const fileTakers = new Map<string, (file: File) => void | Promise<void>>();

const PLAN_SUFFIX = '.plan.json';

const whenSaved = new Set<(at: number) => void>();

/** Told when the person has written the open yard to a file. */
export function onFileSaved(listener: (at: number) => void): void {
  whenSaved.add(listener);
}

/** Hands the person the open yard as a plan file. Works also when the browser keeps nothing. */
export function saveFile(): void {
  const [left] = takeOpenBoxes();
  offerFile(fileNameOf(plan.value), planText(plan.value), 'application/json');
  const at = Date.now();
  openYard.value = { ...openYard.value, fileCopyAt: at };
  for (const listener of whenSaved) listener(at);
  if (left === undefined) say('A copy of the yard was handed to your downloads.');
  else say(`A copy of the yard was handed to your downloads, without what is typed in one box. ${left}`, 'warning');
}

/** Puts a file into the person's downloads. */
export function offerFile(name: string, content: BlobPart, type: string): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

/** A file name any system takes, from the yard's own. */
export function fileNameOf(of: Plan, suffix = PLAN_SUFFIX): string {
  const base = (of.name ?? 'yard')
    .normalize('NFC')
    .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
    .replaceAll(/^-+|-+$/g, '')
    .slice(0, 60);
  return `${base || 'yard'}${suffix}`;
}

/**
 * Reads a plan file. A sound one is returned; a broken one is explained in `brokenFile`. The open yard is not touched.
 */
export async function readPlanFile(file: File): Promise<Plan | null> {
  brokenFile.value = null;
  if (file.size > LIMITS.fileBytes) {
    say(`${file.name} is too large for a plan (over ${LIMITS.fileBytes / 1e6} MB).`, 'problem');
    return null;
  }
  const { parsePlan, salvagePlan } = await import('./plan-reader.ts');
  const bytes = new Uint8Array(await file.arrayBuffer());
  const parsed = parsePlan(bytes);
  if (parsed.ok) return parsed.plan;
  const salvaged = salvagePlan(bytes);
  brokenFile.value = { name: file.name, problems: parsed.problems, sound: salvaged.ok ? salvaged.plan : null };
  return null;
}
