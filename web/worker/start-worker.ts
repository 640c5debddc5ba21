/**
 * Gives what starts a worker, again and again, from its parts in the order in which they need each other. A blob of the
 * page's stands under the page's policy; a script loaded from an address would not.
 */
export function workerStarter(parts: readonly (readonly [name: string, code: string])[]): () => Worker {
  let address: string | null = null;
  return () => {
    address ??= URL.createObjectURL(new Blob(["'use strict';const parts={};const require=name=>parts[name];", ...parts.map(wrapped)], { type: 'text/javascript' }));
    return new Worker(address);
  };
}

function wrapped([name, code]: readonly [name: string, code: string]): string {
  return `(exports=>{${code}\n})(parts[${JSON.stringify(name)}]={});`;
}
