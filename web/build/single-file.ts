import { build } from 'vite';
import type { Plugin } from 'vite';
import { singleFilePolicy } from './policy.ts';

/** Name of the page that is one file. */
const SINGLE_FILE = 'shadewright.html';

/** The build mode that makes it. */
export const SINGLE_FILE_MODE = 'single-file';

/** After the served page is built, builds the one-file page beside it. */
export function thenSingleFile(configFile: string): Plugin {
  let outDir = '';
  return {
    name: 'then-single-file',
    apply: 'build',
    configResolved(config) {
      ({ outDir } = config.build);
    },
    closeBundle: {
      sequential: true,
      order: 'post',
      async handler(error?: Error) {
        if (error) return;
        await build({ configFile, mode: SINGLE_FILE_MODE, logLevel: 'warn', build: { outDir } });
      },
    },
  };
}

/** Folds script and style into the page, with their hashes in its policy, and leaves no other file. */
export function singleFile(): Plugin {
  return {
    name: 'single-file',
    apply: 'build',
    transformIndexHtml: { order: 'pre', handler: (page) => page.replace('./main.tsx', './one-file.ts') },
    generateBundle: {
      order: 'post',
      handler(_options, bundle) {
        const scripts: string[] = [];
        const styles: string[] = [];
        let page = '';
        for (const [name, file] of Object.entries(bundle)) {
          if (file.type === 'chunk') scripts.push(safeInline(file.code, 'script'));
          else if (name.endsWith('.css')) styles.push(safeInline(String(file.source), 'style'));
          else if (name.endsWith('.html')) page = String(file.source);
          delete bundle[name];
        }
        if (scripts.length !== 1) this.error(`The one-file page must be one script, got ${scripts.length}.`);
        const policy = `<meta http-equiv="Content-Security-Policy" content="${singleFilePolicy(scripts, styles)}">`;
        const source = page
          .replace(/<script type="module"[^>]*><\/script>/g, '')
          .replace(/<link rel="(?:stylesheet|modulepreload|manifest)"[^>]*>/g, '')
          .replace('<head>', () => `<head>${policy}`)
          .replace('</head>', () => `${styles.map((style) => `<style>${style}</style>`).join('')}</head>`)
          .replace('</body>', () => `${scripts.map((script) => `<script>${script}</script>`).join('')}</body>`);
        this.emitFile({ type: 'asset', fileName: SINGLE_FILE, source });
      },
    },
  };
}

/** No text of ours may end the element it stands in. */
function safeInline(text: string, tag: 'script' | 'style'): string {
  return text.replaceAll(new RegExp(`</(?=${tag})`, 'gi'), '<\\/').replaceAll('<!--', '<\\!--');
}
