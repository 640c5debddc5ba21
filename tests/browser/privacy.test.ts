import { readFile, readdir } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { browserSession, openApp, saved } from './harness.ts';

const session = browserSession();

/** A second server that is not the page's own. Whatever reaches it has left. */
const hits: string[] = [];
const outside = createServer((request, response) => {
  hits.push(`${request.method} ${request.url}`);
  response.writeHead(200, { 'access-control-allow-origin': '*', 'content-type': 'text/javascript' }).end('');
});
let away = '';
beforeAll(async () => {
  await new Promise<void>((resolve) => outside.listen(0, '127.0.0.1', resolve));
  away = `http://127.0.0.1:${(outside.address() as AddressInfo).port}`;
});
afterAll(() => void outside.close());

/** Tries every way out of a page that we know of, and from workers made as the page makes its own. */
async function tryEveryWayOut(page: Page): Promise<void> {
  await page.evaluate(async (to) => {
    const settle = (work: Promise<unknown>): Promise<unknown> => work.catch(() => null);
    await settle(fetch(`${to}/fetch`, { mode: 'no-cors' }));
    await settle(Promise.resolve().then(() => navigator.sendBeacon(`${to}/beacon`, 'plan')));
    const request = new XMLHttpRequest();
    await settle(
      Promise.resolve().then(() => {
        request.open('POST', `${to}/xhr`);
        request.send('plan');
      }),
    );
    await settle(Promise.resolve().then(() => new WebSocket(to.replace('http', 'ws'))));
    await settle(Promise.resolve().then(() => new EventSource(`${to}/events`)));
    new Image().src = `${to}/image`;
    const add = (tag: string, attributes: Record<string, string>): void => {
      const element = document.createElement(tag);
      for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
      document.body.append(element);
    };
    add('script', { src: `${to}/script.js` });
    add('link', { rel: 'stylesheet', href: `${to}/style.css` });
    add('link', { rel: 'prefetch', href: `${to}/prefetch` });
    add('iframe', { src: `${to}/frame` });
    add('img', { srcset: `${to}/srcset 1x` });
    add('video', { src: `${to}/video` });
    add('object', { data: `${to}/object` });
    add('form', { action: `${to}/form`, method: 'post' });
    document.forms[document.forms.length - 1].submit();
    const code =
      `try { fetch('${to}/worker-fetch', { mode: 'no-cors' }).catch(() => {}) } catch {} try { ` +
      `importScripts('${to}/worker-script.js') } catch {} try { new ` +
      `WebSocket('${to.replace('http', 'ws')}/worker-ws') } catch {}`;
    const start = (text: string, type: WorkerType): Worker =>
      new Worker(URL.createObjectURL(new Blob([text], { type: 'text/javascript' })), { type });
    start(code, 'classic');
    start(`import '${to}/worker-import.js';`, 'module');
    start(`import('${to}/worker-import-later.js').catch(() => null); ${code}`, 'module');
  }, away);
  // As text: the test runner would rewrite an import of ours.
  await page.evaluate(`import('${away}/module.js').catch(() => null)`);
  await page.waitForTimeout(700);
}

test('the second server does count what reaches it', async () => {
  const context = await session.context({ bypassCSP: true, serviceWorkers: 'allow' });
  const page = await context.newPage();
  await page.goto(session.site.address);
  await page.evaluate((to) => fetch(`${to}/fetch`, { mode: 'no-cors' }).catch(() => null), away);
  expect(hits).toContain('GET /fetch');
  hits.length = 0;
  await context.close();
});

/** What the pages of a context ask for that neither stands at their own address nor was made by themselves. */
function askedElsewhere(context: BrowserContext, own: string): string[] {
  const asked: string[] = [];
  context.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(own) && !url.startsWith('blob:') && !url.startsWith('data:')) asked.push(url);
  });
  return asked;
}

test('the served page asks nothing of, and can reach nothing but, its own origin', async () => {
  const context = await session.context({ serviceWorkers: 'allow' });
  const asked = askedElsewhere(context, session.site.address);
  const { page } = await openApp(context, session.site.address);
  await page.waitForLoadState('networkidle');
  expect(asked).toEqual([]);
  const policy = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content');
  expect(policy).toContain("default-src 'none'");
  expect(policy).not.toContain("'unsafe-inline'");
  expect(policy).not.toMatch(/https?:/);
  await tryEveryWayOut(page);
  expect(hits).toEqual([]);
  await context.close();
});

test(
  'the page that is one file opens by itself, grades the yard, keeps it, asks nothing of anybody and can reach ' +
    'nothing at all',
  async () => {
    const context = await session.context({ serviceWorkers: 'allow' });
    const address = pathToFileURL(join(session.site.dist, 'shadewright.html')).href;
    const asked = askedElsewhere(context, address);
    const { page, complaints } = await openApp(context, address);
    expect(complaints).toEqual([]);
    expect(await page.locator('script[src], link[rel=stylesheet], link[rel=manifest]').count()).toBe(0);
    await page.getByRole('button', { name: /Units: m/ }).click();
    await saved(page);
    await page.reload();
    await page.getByRole('button', { name: /Units: ft/ }).waitFor();
    expect(asked).toEqual([]);
    await tryEveryWayOut(page);
    expect(hits).toEqual([]);
    await context.close();
  },
);

test(
  'no line of ours opens a window, goes to another address or makes a peer connection, which a policy ' +
    'would not stop',
  async () => {
    const folder = new URL('../../web/', import.meta.url);
    const names = (await readdir(folder, { recursive: true })).filter((name) => /\.tsx?$/.test(name));
    expect(names.length).toBeGreaterThan(50);
    for (const name of names) {
      const text = await readFile(new URL(name, folder), 'utf8');
      expect(text, name).not.toMatch(
        /RTCPeerConnection|window\.open\(|location\s*=|location\.(href|assign|replace)\s*[=(]|target="_blank"|dangerouslySetInnerHTML|innerHTML/,
      );
    }
  },
);
