import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import { servedPage } from './build/served-page.ts';
import { SINGLE_FILE_MODE, singleFile, thenSingleFile } from './build/single-file.ts';

export default defineConfig(({ mode }) => {
  const single = mode === SINGLE_FILE_MODE;
  return {
    root: fileURLToPath(new URL('.', import.meta.url)),
    base: './',
    publicDir: false,
    define: { SINGLE_FILE: JSON.stringify(single) },
    plugins: single ? [singleFile()] : [servedPage(), thenSingleFile(fileURLToPath(import.meta.url))],
    // A module worker made from a blob never starts on a page opened from a file.
    worker: { format: 'iife' },
    preview: { host: 'localhost', port: 4173 },
    build: {
      outDir: fileURLToPath(new URL('../dist', import.meta.url)),
      emptyOutDir: !single,
      target: 'es2022',
      modulePreload: { polyfill: false },
      assetsInlineLimit: single ? Infinity : 0,
      cssCodeSplit: !single,
      chunkSizeWarningLimit: 1000,
      rolldownOptions: single ? { output: { codeSplitting: false } } : {},
    },
  };
});
