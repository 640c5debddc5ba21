/** A built file as the server must give it, to the byte. */
export interface KeptFile {
  /** Beside the service worker: `./` is the page itself. */
  readonly name: string;
  /** SHA-256 of its content, in hexadecimal digits; its beginning is enough against what goes wrong by itself. */
  readonly sha256: string;
}

/** What a server calls a file of each kind, at least in part. What is not listed may be called anything but a page. */
const TYPES = { js: 'javascript', css: 'text/css', html: 'text/html' };

/**
 * The service worker. It keeps all files of one version or none: in the middle of a deployment, or behind a page of
 * somebody's network, a server answers 200 with something else. Answers from what it keeps, and for anything else of
 * this origin from the server; stores nothing later.
 */
export function serviceWorkerText(version: string, files: readonly KeptFile[]): string {
  return `const CACHE = 'shadewright-${version}';
const FILES = ${JSON.stringify(files)};
const TYPES = ${JSON.stringify(TYPES)};
const here = new URL('./', self.location.href);
self.addEventListener('install', (event) => event.waitUntil(keepAll()));
async function keepAll() {
  const fetched = await Promise.all(FILES.map(fetchSound));
  const cache = await caches.open(CACHE);
  try {
    await Promise.all(fetched.map(([url, response]) => cache.put(url, response)));
  } catch (error) {
    await caches.delete(CACHE);
    throw error;
  }
}
async function fetchSound({ name, sha256 }) {
  const url = new URL(name, here).href;
  const response = await fetch(url, { cache: 'reload' });
  const type = response.headers.get('content-type') ?? '';
  const ending = name === './' ? 'html' : name.slice(name.lastIndexOf('.') + 1);
  const right = ending in TYPES ? type.includes(TYPES[ending]) : !type.includes(TYPES.html);
  if (response.status !== 200 || !right) throw new Error(name + ': status ' + response.status + ', type ' + type);
  const content = await response.arrayBuffer();
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', content));
  if (!Array.from(digest, (byte) => byte.toString(16).padStart(2, '0')).join('').startsWith(sha256))
    throw new Error(name + ' is not the file of this version');
  return [url, new Response(content, { headers: { 'content-type': type } })];
}
self.addEventListener('activate', (event) => {
  event.waitUntil(caches.keys()
    .then((names) => Promise.all(names
      .filter((name) => name.startsWith('shadewright-') && name !== CACHE)
      .map((name) => caches.delete(name))))
    .then(() => self.clients.claim()));
});
self.addEventListener('message', (event) => {
  if (event.data === 'take over') self.skipWaiting();
});
self.addEventListener('fetch', (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== 'GET' || url.origin !== here.origin) return;
  const wanted = event.request.mode === 'navigate' && !url.pathname.endsWith('.html') ? here : url;
  event.respondWith(caches.match(wanted, { cacheName: CACHE, ignoreVary: true, ignoreSearch: true })
    .then((kept) => kept ?? fetch(event.request)));
});
`;
}
