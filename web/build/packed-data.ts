import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';
import { bare } from './bare-data.ts';
import { pack } from './pack.ts';

/** Long tables that are read once somebody asks for what they hold. What the first picture reads is not among them. */
const TABLES = /\/(places|zones|normals|land)\.json$/;
const PACKED = '\0packed:';
const UNPACK = fileURLToPath(new URL('../common/packing/unpack.ts', import.meta.url));

/**
 * Sends long tables as an arithmetic code that is by a fifth shorter than what gzip makes of them. They are unpacked
 * when one of their keys is first read.
 */
export function packedData(): Plugin {
  return {
    name: 'packed-data',
    apply: 'build',
    enforce: 'pre',
    async resolveId(source, importer) {
      if (!TABLES.test(source)) return undefined;
      const found = await this.resolve(source, importer, { skipSelf: true });
      return found && PACKED + found.id.replace(/\.json$/, '');
    },
    async load(id) {
      if (!id.startsWith(PACKED)) return undefined;
      const text = bare(await readFile(`${id.slice(PACKED.length)}.json`, 'utf8'));
      const { packed, length } = pack(text);
      const keys = Object.keys(JSON.parse(text) as object).map((key) => `get ${key}(){return table().${key}}`);
      return {
        code: `import { unpack } from ${JSON.stringify(UNPACK)};
          let open;
          const table = () => (open ??= JSON.parse(unpack('${packed}', ${length})));
          export default {${keys.join()}};`,
        moduleSideEffects: false,
      };
    },
  };
}
