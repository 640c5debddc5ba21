import { rm } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { TestProject } from 'vitest/node';
import { startSite } from './site.ts';
import type { Site } from './site.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** Address that answers, once, when the page is built, served and the browser is up. */
    readonly siteDoor: string;
  }
}

/**
 * Builds the page and starts the one shared browser when the first browser test asks, and never for a run without
 * browser tests.
 */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  let site: Promise<Site> | null = null;
  const door = createServer((_request, response) => {
    site ??= startSite();
    site.then(
      (ready) => response.end(JSON.stringify(ready)),
      (error: unknown) => response.writeHead(500).end(String(error instanceof Error ? error.stack : error)),
    );
  });
  await new Promise<void>((resolve) => door.listen(0, '127.0.0.1', resolve));
  project.provide('siteDoor', `http://127.0.0.1:${(door.address() as AddressInfo).port}/`);

  return async () => {
    const started = await site?.catch(() => null);
    await started?.stop();
    if (started) await rm(started.dist, { recursive: true, force: true });
    door.closeAllConnections();
    door.close();
  };
}
