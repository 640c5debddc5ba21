import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import { bareData } from './build/bare-data.ts';
import { columnData } from './build/column-data.ts';
import { leanLeaflet } from './build/lean-leaflet.ts';
import { packedData } from './build/packed-data.ts';
import { plainCalls } from './build/plain-calls.ts';
import { servedPage } from './build/served-page.ts';
import { SINGLE_FILE_MODE, singleFile, thenSingleFile } from './build/single-file.ts';
import { treeshake } from './build/treeshake.ts';
import { workers } from './build/workers.ts';

/** Of the plan's geometry only what a yard without any check needs. */
const ofEveryPlan = (id: string): boolean =>
  id.includes('/engine/plan/') &&
  !/\/plan\/(check|numbers\/rounding|schema\/(?!say))/.test(id) &&
  !/\/plan\/geometry\/(?!angles|cloth-shapes|hull|shapes|stripes|trunk|vectors)/.test(id);

/**
 * What both the page and its workers need of the engine: one file, where by itself it would be twenty small ones. The
 * plan's check stays out, with the geometry that it is made of: the first picture is of a yard that needs none.
 */
const sharedEngine = {
  name: 'shared-engine',
  test: (id: string) => /\/suncalc\/|\/worker\/protocol|\/engine\/(?!plan\/)/.test(id) || ofEveryPlan(id),
  tags: ['$initial' as const],
  minShareCount: 4,
  includeDependenciesRecursively: false,
};

export default defineConfig(({ command, mode }) => {
  const single = mode === SINGLE_FILE_MODE;
  const common = [bareData(), columnData(), leanLeaflet(), plainCalls(), workers()];
  return {
    root: fileURLToPath(new URL('.', import.meta.url)),
    base: './',
    publicDir: false,
    define: { HAS_SERVICE_WORKER: JSON.stringify(command === 'build' && !single) },
    plugins: single
      ? [...common, singleFile()]
      : [...common, packedData(), servedPage(), thenSingleFile(fileURLToPath(import.meta.url))],
    preview: { host: 'localhost', port: 4173 },
    build: {
      outDir: fileURLToPath(new URL('../dist', import.meta.url)),
      emptyOutDir: !single,
      target: 'es2022',
      modulePreload: single ? false : { polyfill: false },
      assetsInlineLimit: single ? Infinity : 0,
      cssCodeSplit: false,
      chunkSizeWarningLimit: 1000,
      rolldownOptions: single
        ? { treeshake, checks: { emptyImportMeta: false }, output: { codeSplitting: false, format: 'iife' } }
        : { treeshake, output: { codeSplitting: { groups: [sharedEngine] } } },
    },
  };
});
