/** Code of a worker as text, a part at a time, made by `web/build/worker-parts.ts`. */
declare module 'virtual:worker/*' {
  const parts: readonly (readonly [name: string, code: string])[];
  export default parts;
}
