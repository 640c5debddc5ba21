import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';
import { SINGLE_FILE_MODE } from './single-file.ts';

const WORKER = 'virtual:worker/';
const WEB = fileURLToPath(new URL('..', import.meta.url));

/** What has no place in a worker, where there is no document. */
const PAGE_ONLY = /\/web\/(app|charts|map|panels|state)\/|\/web\/main\.tsx$|\/node_modules\/(@?preact|leaflet)\//;

/**
 * Gives what a worker is started with: `virtual:worker/engine` is the text of a script that runs
 * `web/worker/engine.worker.ts`. A worker is one more entry of the page's own graph of modules, so that what both need
 * is built, sent and kept once.
 */
export function workers(): Plugin {
  let dev = false;
  let single = false;
  return {
    name: 'workers',
    configResolved({ command, mode }) {
      dev = command === 'serve';
      single = mode === SINGLE_FILE_MODE;
    },
    resolveId: (id) => (id.startsWith(WORKER) ? `\0${id}` : undefined),
    load(id) {
      if (!id.startsWith(`\0${WORKER}`)) return undefined;
      const name = id.slice(WORKER.length + 1);
      const file = `worker/${name}.worker.ts`;
      if (single)
        return sourceOf(`\`self.part=${JSON.stringify(name)};\${document.querySelector('script').text}\``, 'classic');
      const address = dev
        ? `new URL('/${file}', location.origin).href`
        : `import.meta.ROLLUP_FILE_URL_${this.emitFile({ type: 'chunk', id: WEB + file, name: `${name}.worker` })}`;
      return sourceOf(`\`import \${JSON.stringify(${address})};\``, 'module');
    },
    generateBundle(_options, bundle) {
      const chunks = Object.values(bundle).filter((file) => file.type === 'chunk');
      const needed = new Set(chunks.filter(({ name }) => name.endsWith('.worker')).map(({ fileName }) => fileName));
      for (const name of needed)
        for (const { fileName, imports } of chunks) if (fileName === name) imports.forEach((next) => needed.add(next));
      const strangers = chunks
        .filter(({ fileName }) => needed.has(fileName))
        .flatMap(({ moduleIds }) => moduleIds.filter((id) => PAGE_ONLY.test(id)));
      if (strangers.length > 0) this.error(`Workers would load what needs a page: ${strangers.join(', ')}.`);
    },
  };
}

function sourceOf(code: string, type: WorkerType): { code: string; moduleSideEffects: false } {
  return { code: `export default { code: ${code}, type: '${type}' };`, moduleSideEffects: false };
}
