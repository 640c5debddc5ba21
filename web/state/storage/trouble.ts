/** Why the browser did not keep something, in one sentence that leads to "Save a file". */
export function storageTrouble(error: unknown): string {
  const name = error instanceof DOMException ? error.name : '';
  if (name === 'QuotaExceededError')
    return 'This browser has no room left for the yard. Save a file, then clear some space.';
  if (name === 'BlockedError') return 'Another tab of Shadewright holds the storage. Close it, or save a file here.';
  if (
    typeof indexedDB === 'undefined' ||
    name === 'SecurityError' ||
    name === 'UnknownError' ||
    name === 'InvalidStateError'
  )
    return (
      'This browser does not let Shadewright keep anything, perhaps because the window is private. Save a ' +
      'file before you leave.'
    );
  return (
    `The yard could not be kept in this browser (${error instanceof Error ? error.message : String(error)}). ` +
    `Save a file before you leave.`
  );
}
