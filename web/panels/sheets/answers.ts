import { effect, signal } from '@preact/signals';
import { openYard } from '../../state/yard.ts';

const KEY = 'shadewright-field-sheet';

interface Written {
  /** The yard whose sheet it is. */
  readonly yard: string;
  readonly answers: Readonly<Record<string, string>>;
}

/** What is typed of the sheet so far: it outlives a locked phone. */
const written = signal<Written>(read());

effect(() => {
  try {
    localStorage.setItem(KEY, JSON.stringify(written.value));
  } catch {
    // A browser that keeps nothing keeps the answers for as long as the page is open.
  }
});

export function sheetAnswers(): Readonly<Record<string, string>> {
  return written.value.yard === openYard.value.id ? written.value.answers : {};
}

export function writeAnswers(answers: Readonly<Record<string, string>>): void {
  written.value = { yard: openYard.value.id, answers };
}

function read(): Written {
  try {
    const kept = JSON.parse(localStorage.getItem(KEY) ?? 'null') as Partial<Written> | null;
    const texts = Object.entries(kept?.answers ?? {}).filter(([, text]) => typeof text === 'string');
    return { yard: typeof kept?.yard === 'string' ? kept.yard : '', answers: Object.fromEntries(texts) };
  } catch {
    return { yard: '', answers: {} };
  }
}
