import { createHash } from 'node:crypto';
import { runInNewContext } from 'node:vm';
import { expect, test } from 'vitest';
import { serviceWorkerText } from '../../../web/build/service-worker.ts';

const ADDRESS = 'https://yard.example/app/';
const PAGE = { name: './', type: 'text/html', content: '<!doctype html>new' };
const SCRIPT = { name: 'assets/a.js', type: 'text/javascript', content: 'go()' };
const STYLE = { name: 'assets/a.css', type: 'text/css; charset=utf-8', content: 'a{}' };
const PICTURE = { name: 'icon.svg', type: 'image/svg+xml', content: '<svg/>' };
const NEW = [PAGE, SCRIPT, STYLE, PICTURE];
const TEXT = serviceWorkerText(
  'new',
  NEW.map(({ name, content }) => ({ name, sha256: createHash('sha256').update(content).digest('hex').slice(0, 24) })),
);

type Served = ReadonlyMap<string, Response | Error>;
/** Its name, then each file's text by its address. */
type Caches = Map<string, Map<string, string>>;
const OLD = (): Caches => new Map([['shadewright-old', new Map([[ADDRESS, 'old']])]]);

interface Asked {
  readonly url: string;
  readonly method?: string;
  readonly mode?: string;
}

/** What a browser tells its service worker, each settled when the worker is done with it. */
interface Worker {
  /** @returns whether the new version was taken */
  install(): Promise<boolean>;
  activate(): Promise<void>;
  message(data: unknown): void;
  /** @returns the text of the answer; `null` where the worker leaves it to the browser */
  fetch(asked: Asked): Promise<string | null>;
  readonly did: { claimed: number; tookOver: number };
}

/**
 * Runs the worker against a server, or the text of an older file where the browser is not told to pass over its own
 * short-lived copies.
 */
function workerOn(kept: Caches, served: Served = new Map(), room = Infinity): Worker {
  const listeners = new Map<string, (event: object) => void>();
  const did = { claimed: 0, tookOver: 0 };
  let left = room;
  runInNewContext(TEXT, {
    URL,
    Response,
    Uint8Array,
    crypto,
    self: {
      location: new URL('service-worker.js', ADDRESS),
      addEventListener: (name: string, listener: never) => listeners.set(name, listener),
      clients: { claim: () => (did.claimed++, Promise.resolve()) },
      skipWaiting: () => did.tookOver++,
    },
    fetch: (asked: string | Asked, options?: { readonly cache?: string }) => {
      if (typeof asked !== 'string') return Promise.resolve(new Response(`from the server: ${asked.url}`));
      if (options?.cache !== 'reload') return Promise.resolve(new Response('an older copy'));
      const answer = served.get(asked.replace(ADDRESS, '') || './') ?? new Response('', { status: 404 });
      return answer instanceof Error ? Promise.reject(answer) : Promise.resolve(answer);
    },
    caches: {
      open: (name: string) => {
        const cache = kept.get(name) ?? new Map<string, string>();
        kept.set(name, cache);
        return Promise.resolve({
          put: async (url: string, response: Response) => {
            if (left-- <= 0) throw new DOMException('Full.', 'QuotaExceededError');
            cache.set(url, await response.text());
          },
        });
      },
      keys: () => Promise.resolve([...kept.keys()]),
      delete: (name: string) => Promise.resolve(kept.delete(name)),
      match: (wanted: URL, options: { readonly cacheName: string; readonly ignoreSearch?: boolean }) => {
        const [address] = options.ignoreSearch === true ? wanted.href.split('?') : [wanted.href];
        const text = kept.get(options.cacheName)?.get(address);
        return Promise.resolve(text === undefined ? undefined : new Response(text));
      },
    },
  });
  const tell = async (name: string, event: object = {}): Promise<unknown> => {
    let work: Promise<unknown> = Promise.resolve();
    const hear = (all: Promise<unknown>): void => void (work = all);
    listeners.get(name)?.({ ...event, waitUntil: hear, respondWith: hear });
    return await work;
  };
  return {
    did,
    install: () =>
      tell('install').then(
        () => true,
        () => false,
      ),
    activate: async () => void (await tell('activate')),
    message: (data) => void tell('message', { data }),
    fetch: async ({ url, method = 'GET', mode = 'no-cors' }) => {
      const answer = await tell('fetch', { request: { url, method, mode } });
      return answer instanceof Response ? await answer.text() : null;
    },
  };
}

/** With an older version kept. @returns whether the new one was taken, what is kept */
async function installedFrom(served: Served, room = Infinity): Promise<{ taken: boolean; kept: Caches }> {
  const kept = OLD();
  return { taken: await workerOn(kept, served, room).install(), kept };
}

function servedWith(change: Readonly<Record<string, Response | Error>> = {}): Served {
  const sound = NEW.map(({ name, type, content }): [string, Response | Error] => [
    name,
    change[name] ?? new Response(content, { headers: { 'content-type': type } }),
  ]);
  return new Map(sound);
}

const as = (type: string, content: string, status = 200): Response =>
  new Response(content, { status, headers: { 'content-type': type } });

test('a version whose files are all what they were built as is kept whole, beside the old one', async () => {
  const { taken, kept } = await installedFrom(servedWith());
  expect(taken).toBe(true);
  const all = NEW.map(({ name, content }): [string, string] => [new URL(name, ADDRESS).href, content]);
  expect(kept.get('shadewright-new')).toEqual(new Map(all));
  expect(kept.has('shadewright-old')).toBe(true);
});

const WRONG: Readonly<Record<string, Readonly<Record<string, Response | Error>>>> = {
  'the page itself for a script': { [SCRIPT.name]: as('text/html', PAGE.content) },
  'a script called a page': { [SCRIPT.name]: as('text/html', SCRIPT.content) },
  'a picture called a page': { [PICTURE.name]: as('text/html', PICTURE.content) },
  'a script of another version': { [SCRIPT.name]: as('text/javascript', 'go(2)') },
  'a script cut short': { [SCRIPT.name]: as('text/javascript', 'go(') },
  'the sign-in page of a network': { [PAGE.name]: as('text/html', '<!doctype html>Pay here') },
  'styles without content': { [STYLE.name]: as('text/css', '') },
  'a fault of the server': { [STYLE.name]: as('text/css', STYLE.content, 500) },
  'no answer': { [SCRIPT.name]: new TypeError('Failed to fetch') },
};
for (const [what, change] of Object.entries(WRONG))
  test(`${what}: nothing of the version is kept, and the old one stays`, async () => {
    const { taken, kept } = await installedFrom(servedWith(change));
    expect(taken).toBe(false);
    expect(kept).toEqual(new Map([['shadewright-old', new Map([[ADDRESS, 'old']])]]));
  });

test('no room for all of it: nothing of it is kept, and the old one stays', async () => {
  const { taken, kept } = await installedFrom(servedWith(), 2);
  expect(taken).toBe(false);
  expect([...kept.keys()]).toEqual(['shadewright-old']);
});

test('the new version waits until somebody asks for it, and no other word moves it', async () => {
  const worker = workerOn(OLD(), servedWith());
  await worker.install();
  worker.message('hello');
  worker.message({ data: 'take over' });
  expect(worker.did).toEqual({ claimed: 0, tookOver: 0 });
  worker.message('take over');
  expect(worker.did).toEqual({ claimed: 0, tookOver: 1 });
});

test('once it works the older versions go, and nothing else that the browser keeps for this server', async () => {
  const kept = OLD().set('shadewright-new', new Map()).set('of-another-program', new Map());
  const worker = workerOn(kept);
  await worker.activate();
  expect([...kept.keys()]).toEqual(['shadewright-new', 'of-another-program']);
  expect(worker.did.claimed).toBe(1);
});

const [PAGE_URL, SCRIPT_URL, ONE_FILE_URL] = [ADDRESS, `${ADDRESS}${SCRIPT.name}`, `${ADDRESS}shadewright.html`];
const FULL = (): Caches =>
  OLD().set('shadewright-new', new Map(NEW.map((file) => [ADDRESS + file.name, file.content])));
const OPEN = { mode: 'navigate' };
const ANSWERS: Readonly<Record<string, readonly [Asked, string | null]>> = {
  'the page, opened, from what is kept': [{ url: PAGE_URL, ...OPEN }, PAGE.content],
  'the page, opened with something behind its address': [{ url: `${PAGE_URL}?from=mail`, ...OPEN }, PAGE.content],
  'an address inside the page, opened': [{ url: `${PAGE_URL}heat`, ...OPEN }, PAGE.content],
  'a script from what is kept': [{ url: SCRIPT_URL }, SCRIPT.content],
  'a script asked for with something behind its address': [{ url: `${SCRIPT_URL}?v=2` }, SCRIPT.content],
  'the page that is one file, opened, from the server': [
    { url: ONE_FILE_URL, ...OPEN },
    `from the server: ${ONE_FILE_URL}`,
  ],
  'what is not kept, from the server': [{ url: `${ADDRESS}notes.txt` }, `from the server: ${ADDRESS}notes.txt`],
  'what is sent, not at all': [{ url: PAGE_URL, method: 'POST' }, null],
  'what is another server’s, not at all': [{ url: 'https://else.example/app/' }, null],
};
for (const [what, [asked, answer]] of Object.entries(ANSWERS))
  test(`answers for ${what}`, async () => {
    const kept = FULL();
    // Kept as the page's own address, with nothing behind it.
    kept.get('shadewright-new')?.set(PAGE_URL, PAGE.content);
    expect(await workerOn(kept).fetch(asked)).toBe(answer);
  });

test('answers with its own version, whatever another one keeps', async () => {
  const kept: Caches = new Map([['shadewright-old', new Map([[ADDRESS, 'old']])]]);
  expect(await workerOn(kept).fetch({ url: ADDRESS, ...OPEN })).toBe(`from the server: ${ADDRESS}`);
});
