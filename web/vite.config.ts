import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import { servedPage } from './build/served-page.ts';
import { SINGLE_FILE_MODE, singleFile, thenSingleFile } from './build/single-file.ts';

/** The engine is functions and tables: a file of it that nothing asks for may be left out. */
const treeshake = { moduleSideEffects: (id: string): boolean => !/\/engine\/[^?]*\.(ts|json)$/.test(id) };

export default defineConfig(({ command, mode }) => {
  const single = mode === SINGLE_FILE_MODE;
  return {
    root: fileURLToPath(new URL('.', import.meta.url)),
    base: './',
    publicDir: false,
    define: { HAS_SERVICE_WORKER: JSON.stringify(command === 'build' && !single) },
    plugins: single ? [singleFile()] : [servedPage(), thenSingleFile(fileURLToPath(import.meta.url))],
    // A module worker made from a blob never starts on a page opened from a file.
    worker: { format: 'iife', rolldownOptions: { treeshake } },
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
