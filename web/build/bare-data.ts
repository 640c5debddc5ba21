import type { Plugin } from 'vite';

/** Leaves out what data files say about themselves, under `about`: for whoever reads the file. */
export function bareData(): Plugin {
  return {
    name: 'bare-data',
    enforce: 'pre',
    transform(code, id) {
      if (!/\/(engine|web)\/.+\.json$/.test(id)) return undefined;
      return JSON.stringify({ ...(JSON.parse(code) as object), about: undefined });
    },
  };
}
