import type { Plugin } from 'vite';

/** Leaves out what data files say about themselves and their rows, under `about`: for whoever reads the file. */
export function bareData(): Plugin {
  return {
    name: 'bare-data',
    enforce: 'pre',
    transform: (code, id) => (/\/(engine|web)\/.+\.json$/.test(id) ? bare(code) : undefined),
  };
}

export function bare(json: string): string {
  return JSON.stringify(JSON.parse(json), (key, value: unknown) => (key === 'about' ? undefined : value));
}
