import shared from 'virtual:worker-part/shared';

/**
 * Gives what starts a worker, again and again, from the code that all workers share and the part that is its own. A blob of
 * the page's stands under the page's policy; a script loaded from an address would not.
 */
export function workerStarter(own: string): () => Worker {
  let address: string | null = null;
  return () => {
    address ??= URL.createObjectURL(new Blob([`'use strict';const parts={};const require=()=>parts;(exports=>{${shared}\n})(parts);(exports=>{${own}\n})({});`], { type: 'text/javascript' }));
    return new Worker(address);
  };
}
