/** What is said while the browser's storage does not answer at all. */
export const SILENT_STORAGE =
  "This browser's storage does not answer, so this yard is not kept. It is kept as soon as the storage answers; " +
  'until then, save a file before you leave.';

/** Why the browser did not keep something, in one sentence that leads to "Save a file". */
export function storageTrouble(error: unknown): string {
  switch (error instanceof DOMException ? error.name : '') {
    case 'QuotaExceededError':
      return 'This browser has no room left for the yard. Save a file, then clear some space.';
    case 'BlockedError':
      return 'Another tab of Shadewright holds the storage. Close it, or save a file here.';
    case 'TimeoutError':
      return SILENT_STORAGE;
    case 'SecurityError':
    case 'UnknownError':
    case 'InvalidStateError':
      return (
        'This browser does not let Shadewright keep anything, perhaps because the window is private. Save a ' +
        'file before you leave.'
      );
  }
  const told = error instanceof Error || error instanceof DOMException ? error.message : '';
  return `The yard could not be kept in this browser${told === '' ? '' : ` (${told})`}. Save a file before you leave.`;
}
