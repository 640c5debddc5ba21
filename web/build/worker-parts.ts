import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import type { Plugin, Rolldown } from 'vite';
import { treeshake } from './treeshake.ts';

const WORKER = 'virtual:worker/';
const PART = 'virtual:worker-part/';
const FOLDER = fileURLToPath(new URL('../worker/', import.meta.url));

/** The workers, by name. */
const WORKERS = { engine: `${FOLDER}engine.worker.ts`, survey: `${FOLDER}survey.worker.ts`, advice: `${FOLDER}advice.worker.ts` } as const;

/**
 * Gives the workers' code as text: `virtual:worker/engine` is the list of that worker's parts, those it needs first. What
 * several workers need is one part, carried once. `web/worker/start-worker.ts` puts the parts together.
 */
export function workerParts(): Plugin {
  let made: Promise<ReadonlyMap<string, Rolldown.OutputChunk>> | null = null;
  return {
    name: 'worker-parts',
    buildStart() {
      made = null;
    },
    handleHotUpdate() {
      made = null;
    },
    resolveId: (id) => (id.startsWith(WORKER) || id.startsWith(PART) ? `\0${id}` : undefined),
    async load(id) {
      const worker = id.startsWith(`\0${WORKER}`) ? id.slice(WORKER.length + 1) : null;
      const part = id.startsWith(`\0${PART}`) ? id.slice(PART.length + 1) : null;
      if (worker === null && part === null) return undefined;
      const chunks = await (made ??= buildParts());
      const chunk = chunks.get(part ?? `${worker}.js`);
      if (!chunk) return this.error(`No worker is called ${worker ?? part}.`);
      for (const file of chunk.moduleIds) if (file.startsWith('/')) this.addWatchFile(file.split('?')[0]);
      if (part !== null) return { code: `export default ${JSON.stringify(chunk.code)};`, moduleSideEffects: false };
      const names = inOrder(chunk, chunks);
      const imports = names.map((name, index) => `import part${index} from ${JSON.stringify(PART + name)};`);
      return { code: `${imports.join('')}export default [${names.map((name, index) => `[${JSON.stringify(`./${name}`)}, part${index}]`).join()}];`, moduleSideEffects: false };
    },
  };
}

/** Names of a part and of all that it needs, each after what it needs. */
function inOrder(chunk: Rolldown.OutputChunk, chunks: ReadonlyMap<string, Rolldown.OutputChunk>): string[] {
  const needed = chunk.imports.flatMap((name) => inOrder(chunks.get(name)!, chunks));
  return [...new Set([...needed, chunk.fileName])];
}

/** Built as functions over `exports` and `require`: a module worker made from a blob never starts on a page opened from a file. */
async function buildParts(): Promise<ReadonlyMap<string, Rolldown.OutputChunk>> {
  const built = await build({
    configFile: false,
    root: FOLDER,
    publicDir: false,
    logLevel: 'warn',
    build: {
      write: false,
      target: 'es2022',
      rolldownOptions: { input: { ...WORKERS }, treeshake, output: { format: 'cjs', entryFileNames: '[name].js', chunkFileNames: '[name]-part.js' } },
    },
  });
  const { output } = (Array.isArray(built) ? built[0] : built) as Rolldown.RolldownOutput;
  const chunks = output.filter((file) => file.type === 'chunk');
  const lazy = chunks.find((chunk) => chunk.dynamicImports.length > 0);
  if (lazy) throw new Error(`A worker cannot import lazily, as ${lazy.fileName} does.`);
  return new Map(chunks.map((chunk) => [chunk.fileName, chunk]));
}
