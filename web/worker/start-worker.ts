/**
 * Gives what starts a worker, again and again. A blob of the page's stands under the page's policy, and so does what it
 * imports; a script loaded from an address would not.
 */
export function workerStarter({ code, type }: { readonly code: string; readonly type: WorkerType }): () => Worker {
  let address: string | null = null;
  return () => {
    address ??= URL.createObjectURL(new Blob([code], { type: 'text/javascript' }));
    return new Worker(address, { type });
  };
}
