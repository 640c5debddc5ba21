/** A script that starts a worker, made by `web/build/workers.ts`. */
declare module 'virtual:worker/*' {
  const source: { readonly code: string; readonly type: WorkerType };
  export default source;
}
