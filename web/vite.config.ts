import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import { servedPage } from './build/served-page.ts';
import { SINGLE_FILE_MODE, singleFile, thenSingleFile } from './build/single-file.ts';
import { treeshake } from './build/treeshake.ts';
import { workerParts } from './build/worker-parts.ts';

export default defineConfig(({ command, mode }) => {
  const single = mode === SINGLE_FILE_MODE;
  return {
    root: fileURLToPath(new URL('.', import.meta.url)),
    base: './',
    publicDir: false,
    define: { HAS_SERVICE_WORKER: JSON.stringify(command === 'build' && !single) },
    plugins: single ? [workerParts(), singleFile()] : [workerParts(), servedPage(), thenSingleFile(fileURLToPath(import.meta.url))],
    preview: { host: 'localhost', port: 4173 },
    build: {
      outDir: fileURLToPath(new URL('../dist', import.meta.url)),
      emptyOutDir: !single,
      target: 'es2022',
      modulePreload: { polyfill: false },
      assetsInlineLimit: single ? Infinity : 0,
      cssCodeSplit: !single,
      chunkSizeWarningLimit: 1000,
      rolldownOptions: single ? { treeshake, output: { codeSplitting: false } } : { treeshake },
    },
  };
});
