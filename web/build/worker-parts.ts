import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import type { Plugin, Rolldown } from 'vite';
import { treeshake } from './treeshake.ts';

const PREFIX = 'virtual:worker-part/';
const SHARED = 'shared';
const FOLDER = fileURLToPath(new URL('../worker/', import.meta.url));

/** The two workers, by the name of their part. */
const WORKERS = { engine: `${FOLDER}engine.worker.ts`, advice: `${FOLDER}advice.worker.ts` } as const;

/**
 * Gives the workers' code as text: `virtual:worker-part/shared` is what both need, `…/engine` and `…/advice` what each adds.
 * `web/worker/start-worker.ts` puts two of them together, so that the engine is carried once.
 */
export function workerParts(): Plugin {
  let made: Promise<readonly Rolldown.OutputChunk[]> | null = null;
  return {
    name: 'worker-parts',
    buildStart() {
      made = null;
    },
    resolveId: (id) => (id.startsWith(PREFIX) ? `\0${id}` : undefined),
    async load(id) {
      if (!id.startsWith(`\0${PREFIX}`)) return undefined;
      const chunks = await (made ??= buildParts());
      const name = id.slice(PREFIX.length + 1);
      const chunk = chunks.find((one) => one.name === name);
      if (!chunk) return this.error(`No worker part is called ${name}.`);
      for (const file of chunks.flatMap((one) => one.moduleIds)) if (file.startsWith('/')) this.addWatchFile(file.split('?')[0]);
      return { code: `export default ${JSON.stringify(chunk.code)};`, moduleSideEffects: false };
    },
    handleHotUpdate() {
      made = null;
    },
  };
}

/** Built as functions over `exports` and `require`: a module worker made from a blob never starts on a page opened from a file. */
async function buildParts(): Promise<readonly Rolldown.OutputChunk[]> {
  const built = await build({
    configFile: false,
    root: FOLDER,
    publicDir: false,
    logLevel: 'warn',
    build: {
      write: false,
      target: 'es2022',
      rolldownOptions: {
        input: { ...WORKERS },
        treeshake,
        output: { format: 'cjs', entryFileNames: '[name].js', chunkFileNames: `${SHARED}.js` },
      },
    },
  });
  const output = (Array.isArray(built) ? built[0] : built) as Rolldown.RolldownOutput;
  const chunks = output.output.filter((file) => file.type === 'chunk');
  const shared = chunks.filter(({ isEntry }) => !isEntry);
  if (shared.length !== 1 || chunks.length !== 3) throw new Error(`The workers must be two parts over a shared one, got ${chunks.map(({ fileName }) => fileName).join(', ')}. Nothing in them may be imported lazily.`);
  return chunks.map((chunk) => (chunk.isEntry ? chunk : { ...chunk, name: SHARED }));
}
