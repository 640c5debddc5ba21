/** Code of the workers as text, made by `web/build/worker-parts.ts`. */
declare module 'virtual:worker-part/*' {
  const code: string;
  export default code;
}
