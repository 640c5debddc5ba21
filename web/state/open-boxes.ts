/** What boxes say whose text was typed but cannot be taken as it is, by box. */
const refused = new Map<string, string>();

/** @param why what the box says, one sentence; `null`: nothing typed is left in it */
export function noteOpenBox(box: string, why: string | null): void {
  if (why === null) refused.delete(box);
  else refused.set(box, why);
}

/**
 * Takes what is being typed, as leaving the box would: whatever saves the yard calls it first, so that no number on the
 * screen is missing from the file.
 * @returns what the boxes say that still hold something the plan does not
 */
export function takeOpenBoxes(): readonly string[] {
  const box = document.activeElement;
  if (box instanceof HTMLInputElement || box instanceof HTMLTextAreaElement) {
    box.blur();
    box.focus({ preventScroll: true });
  }
  return [...refused.values()];
}
