/** What a section of the build sheet is made of. */

/** A table's `numbers` are the columns set flush right. */
export type SheetPart =
  | { readonly kind: 'sentence'; readonly text: string }
  | {
      readonly kind: 'list';
      readonly items: readonly string[];
      readonly numbered: boolean;
      /** Whether each is ticked off: what is to be done, or a stop to be answered first. */
      readonly boxes: 'to do' | 'stops' | null;
    }
  | {
      readonly kind: 'table';
      readonly head: readonly string[];
      readonly rows: readonly (readonly string[])[];
      readonly numbers: readonly number[];
    }
  | { readonly kind: 'cuts' }
  | { readonly kind: 'drawing'; readonly of: 'frame' | 'setting out' };

export interface SheetSection {
  readonly id: string;
  readonly title: string;
  readonly parts: readonly SheetPart[];
}

/** Empty sentences and lists are left out, so that a section with nothing to say has no parts. */
export function section(id: string, title: string, parts: readonly SheetPart[]): SheetSection {
  return {
    id,
    title,
    parts: parts.filter((part) =>
      part.kind === 'sentence' ? part.text !== '' : part.kind === 'list' ? part.items.length > 0 : true,
    ),
  };
}

export function sentence(text: string): SheetPart {
  return { kind: 'sentence', text };
}

export function list(items: readonly string[], numbered = false): SheetPart {
  return { kind: 'list', items, numbered, boxes: null };
}

/** A list to tick off. */
export function checklist(items: readonly string[], boxes: 'to do' | 'stops' = 'to do', numbered = false): SheetPart {
  return { kind: 'list', items, numbered, boxes };
}

export function table(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  numbers: readonly number[],
): SheetPart {
  return { kind: 'table', head, rows, numbers };
}
