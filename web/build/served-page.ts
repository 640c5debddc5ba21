import { createHash } from 'node:crypto';
import type { Plugin } from 'vite';
import { SERVED_POLICY } from './policy.ts';
import { type KeptFile, serviceWorkerText } from './service-worker.ts';
import { WAY_OUT, WAY_OUT_FILE } from './way-out.ts';

/** Of a file's hash, that the service worker holds it against. */
const DIGITS = 24;

/**
 * Puts the policy into the built page, and a service worker beside it that keeps every built file for use without a
 * network.
 */
export function servedPage(): Plugin {
  return {
    name: 'served-page',
    apply: 'build',
    transformIndexHtml: () => [
      {
        tag: 'meta',
        attrs: { 'http-equiv': 'Content-Security-Policy', content: SERVED_POLICY },
        injectTo: 'head-prepend',
      },
      { tag: 'script', attrs: { src: `./${WAY_OUT_FILE}` }, injectTo: 'head' },
    ],
    generateBundle: {
      order: 'post',
      handler(_options, bundle) {
        this.emitFile({ type: 'asset', fileName: WAY_OUT_FILE, source: WAY_OUT });
        const files = Object.values(bundle)
          .map((file): KeptFile => {
            const content = file.type === 'chunk' ? file.code : file.source;
            return {
              name: file.fileName === 'index.html' ? './' : file.fileName,
              sha256: sha256(content).slice(0, DIGITS),
            };
          })
          // The bundle does not show what was emitted just now.
          .filter(({ name }) => name !== WAY_OUT_FILE)
          .concat({ name: WAY_OUT_FILE, sha256: sha256(WAY_OUT).slice(0, DIGITS) })
          .sort((a, b) => (a.name < b.name ? -1 : 1));
        const version = sha256(JSON.stringify(files)).slice(0, 12);
        this.emitFile({ type: 'asset', fileName: 'service-worker.js', source: serviceWorkerText(version, files) });
      },
    },
  };
}

function sha256(content: string | Uint8Array): string {
  return createHash('sha256').update(content).digest('hex');
}
