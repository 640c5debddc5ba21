import { createHash } from 'node:crypto';
import type { Plugin } from 'vite';
import { SERVED_POLICY } from './policy.ts';

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
    ],
    generateBundle: {
      order: 'post',
      handler(_options, bundle) {
        const files = Object.values(bundle).map((file) => ({
          name: file.fileName,
          content: file.type === 'chunk' ? file.code : file.source,
        }));
        const version = createHash('sha256');
        for (const { name, content } of files) version.update(name).update(content);
        const names = ['./', ...files.map(({ name }) => name).filter((name) => name !== 'index.html')].sort();
        this.emitFile({
          type: 'asset',
          fileName: 'service-worker.js',
          source: serviceWorkerText(version.digest('hex').slice(0, 12), names),
        });
      },
    },
  };
}

/**
 * Answers from the cache of this version, and for anything else of this origin from the server; stores nothing later.
 */
function serviceWorkerText(version: string, files: readonly string[]): string {
  return (
    `const CACHE = 'shadewright-${version}';
const FILES = ${JSON.stringify(files)};
const here = new URL('./', self.location.href);
self.addEventListener('install', (event) => {
  event.waitUntil(caches.open(CACHE).then((cache) => cache.addAll(FILES.map((file) => new Request(new URL(file, ` +
    `here), { cache: 'reload' })))));
});
self.addEventListener('activate', (event) => {
  event.waitUntil(caches.keys()
    .then((names) => Promise.all(names.filter((name) => name.startsWith('shadewright-') && name !== ` +
    `CACHE).map((name) => caches.delete(name))))
    .then(() => self.clients.claim()));
});
self.addEventListener('message', (event) => {
  if (event.data === 'take over') self.skipWaiting();
});
self.addEventListener('fetch', (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== 'GET' || url.origin !== here.origin) return;
  const wanted = event.request.mode === 'navigate' && !url.pathname.endsWith('.html') ? here : url;
  event.respondWith(caches.match(wanted, { cacheName: CACHE, ignoreVary: true, ignoreSearch: true }).then((kept) => ` +
    `kept ?? fetch(event.request)));
});
`
  );
}
