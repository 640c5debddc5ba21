import { createHash } from 'node:crypto';
import { runInNewContext } from 'node:vm';
import { expect, test } from 'vitest';
import { serviceWorkerText } from '../../../web/build/service-worker.ts';

const ADDRESS = 'https://yard.example/app/';
const PAGE = { name: './', type: 'text/html', content: '<!doctype html>new' };
const SCRIPT = { name: 'assets/a.js', type: 'text/javascript', content: 'go()' };
const STYLE = { name: 'assets/a.css', type: 'text/css; charset=utf-8', content: 'a{}' };
const NEW = [PAGE, SCRIPT, STYLE, { name: 'icon.svg', type: 'image/svg+xml', content: '<svg/>' }];
const TEXT = serviceWorkerText(
  'new',
  NEW.map(({ name, content }) => ({ name, sha256: createHash('sha256').update(content).digest('hex').slice(0, 24) })),
);

type Served = ReadonlyMap<string, Response | Error>;

/** Runs the worker against a server, with an older version kept. @returns whether it took the new one, what is kept */
async function installedFrom(
  served: Served,
  room = Infinity,
): Promise<{ taken: boolean; kept: Map<string, Map<string, string>> }> {
  const kept = new Map([['shadewright-old', new Map([[ADDRESS, 'old']])]]);
  const listeners = new Map<string, (event: { waitUntil(work: Promise<unknown>): void }) => void>();
  let left = room;
  runInNewContext(TEXT, {
    URL,
    Response,
    Uint8Array,
    crypto,
    self: {
      location: new URL('service-worker.js', ADDRESS),
      addEventListener: (name: string, listener: never) => listeners.set(name, listener),
    },
    fetch: (url: string) => {
      const answer = served.get(url.replace(ADDRESS, '') || './') ?? new Response('', { status: 404 });
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
      delete: (name: string) => Promise.resolve(kept.delete(name)),
    },
  });
  let work: Promise<unknown> = Promise.resolve();
  listeners.get('install')?.({ waitUntil: (all) => (work = all) });
  const taken = await work.then(
    () => true,
    () => false,
  );
  return { taken, kept };
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
