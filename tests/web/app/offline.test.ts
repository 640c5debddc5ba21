import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { demoPlan } from '../../../engine/index.ts';
import { keepOffline } from '../../../web/app/offline.ts';
import { addYard } from '../../../web/state/shelf.ts';
import { notice } from '../../../web/state/speech.ts';
import { history, openYard } from '../../../web/state/yard.ts';
import { MemoryDatabase } from '../state/memory-database.ts';
import { turn } from '../turn.ts';

class FakeWorker extends EventTarget {
  state = 'installing';
  readonly postMessage = vi.fn();

  becomes(state: string): void {
    this.state = state;
    this.dispatchEvent(new Event('statechange'));
  }
}

class FakeRegistration extends EventTarget {
  waiting: FakeWorker | null = null;
  installing: FakeWorker | null = null;
}

const reload = vi.fn();
let container: EventTarget & { controller: object | null; register(): Promise<FakeRegistration> };
let registration: FakeRegistration;

/** Opens the page in a browser that has kept it before, or sees it for the first time. */
async function opened(isKept: boolean): Promise<void> {
  container = Object.assign(new EventTarget(), {
    controller: isKept ? {} : null,
    register: () => Promise.resolve(registration),
  });
  vi.stubGlobal('navigator', { serviceWorker: container });
  keepOffline();
  await turn();
}

const DEMO = demoPlan('courtyard');
let database: MemoryDatabase;

beforeEach(async () => {
  // A yard that is saved, whatever other files of this worker have left.
  database = new MemoryDatabase();
  database.enter();
  openYard.value = { id: '', fileCopyAt: null, readOnly: null };
  history.value = { steps: [{ label: 'Demo yard', plan: DEMO }], cursor: 0 };
  await addYard(DEMO, 'Opened');
  vi.stubGlobal('HAS_SERVICE_WORKER', true);
  vi.stubGlobal('location', { reload });
  reload.mockClear();
  notice.value = null;
  registration = new FakeRegistration();
});
afterEach(() => database.leave());

const offered = (): string | undefined => notice.value?.action?.label;
const OFFER = 'Use the new version';

test('a new version that was there when the page was opened is offered', async () => {
  registration.waiting = new FakeWorker();
  await opened(true);
  expect(offered()).toBe(OFFER);
});

test('one that the browser was fetching before it was asked is offered once it is whole, not before', async () => {
  const early = (registration.installing = new FakeWorker());
  await opened(true);
  expect(notice.value).toBeNull();
  early.becomes('installed');
  expect(offered()).toBe(OFFER);
});

test('one that is found while the page is open is offered once it is whole', async () => {
  await opened(true);
  const late = (registration.installing = new FakeWorker());
  registration.dispatchEvent(new Event('updatefound'));
  expect(notice.value).toBeNull();
  late.becomes('installed');
  expect(offered()).toBe(OFFER);
});

test('one that could not be fetched whole is offered by no way', async () => {
  const broken = (registration.installing = new FakeWorker());
  await opened(true);
  broken.becomes('redundant');
  expect(notice.value).toBeNull();
});

test('on the very first visit nothing is offered: there is no older version to leave', async () => {
  const first = (registration.installing = new FakeWorker());
  await opened(false);
  first.becomes('installed');
  first.becomes('activated');
  container.dispatchEvent(new Event('controllerchange'));
  expect(notice.value).toBeNull();
  expect(reload).not.toHaveBeenCalled();
});

test('the page is laid out anew by the new version when it was asked for, and by none that comes unasked', async () => {
  const waiting = (registration.waiting = new FakeWorker());
  await opened(true);
  // Another tab asked for it.
  container.dispatchEvent(new Event('controllerchange'));
  expect(reload).not.toHaveBeenCalled();
  notice.value?.action?.run();
  // It is saved first.
  await vi.waitFor(() => expect(waiting.postMessage.mock.calls).toEqual([['take over']]));
  container.dispatchEvent(new Event('controllerchange'));
  expect(reload).toHaveBeenCalledOnce();
});
