import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { createBridge, FOR_SHORT_JOBS } from '../../../web/worker/bridge.ts';
import type { Call, Reply } from '../../../web/worker/protocol.ts';

/** A worker that does what the test says, one call at a time. */
class FakeWorker {
  static readonly made: FakeWorker[] = [];
  readonly heard: Call[] = [];
  ended = false;
  onmessage: ((event: MessageEvent<Reply>) => void) | null = null;
  onerror: ((event: ErrorEvent) => void) | null = null;
  onmessageerror: (() => void) | null = null;
  constructor() {
    FakeWorker.made.push(this);
  }
  postMessage(call: Call): void {
    this.heard.push(call);
  }
  terminate(): void {
    this.ended = true;
  }
  answer(value: unknown): void {
    this.reply({ id: this.heard[this.heard.length - 1].id, answer: { ok: true, value } });
  }
  reply(reply: Reply): void {
    this.onmessage?.({ data: reply } as MessageEvent<Reply>);
  }
}

const bridgeOfFakes = () => createBridge(() => new FakeWorker() as unknown as Worker);

beforeEach(() => {
  FakeWorker.made.length = 0;
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

test('calls are answered one after the other by one worker, which is started by the first', async () => {
  const bridge = bridgeOfFakes();
  expect(FakeWorker.made).toHaveLength(0);
  const first = bridge.call('load', 1);
  const second = bridge.call('spot', 2);
  const [worker] = FakeWorker.made;
  expect(worker.heard.map(({ method }) => method)).toEqual(['load']);
  worker.answer('a');
  expect(worker.heard.map(({ method }) => method)).toEqual(['load', 'spot']);
  worker.answer('b');
  expect([await first, await second]).toEqual([
    { ok: true, value: 'a' },
    { ok: true, value: 'b' },
  ]);
  expect(FakeWorker.made).toHaveLength(1);
});

test('aborting the running call ends its worker, and the next call has a fresh one', async () => {
  const bridge = bridgeOfFakes();
  const controller = new AbortController();
  const slow = bridge.call('load', 1, { signal: controller.signal });
  const next = bridge.call('spot', 2);
  controller.abort();
  await expect(slow).rejects.toMatchObject({ name: 'AbortError' });
  expect(FakeWorker.made.map(({ ended }) => ended)).toEqual([true, false]);
  FakeWorker.made[1].answer('b');
  expect(await next).toEqual({ ok: true, value: 'b' });
});

test(
  'where jobs are short an aborted call may end by itself: its answer and its progress are dropped, and the ' +
    'next goes to the same worker',
  async () => {
    const bridge = createBridge(() => new FakeWorker() as unknown as Worker, FOR_SHORT_JOBS);
    const controller = new AbortController();
    const onProgress = vi.fn();
    const dropped = bridge.call('load', 1, { signal: controller.signal, onProgress });
    const next = bridge.call('load', 2);
    controller.abort();
    await expect(dropped).rejects.toMatchObject({ name: 'AbortError' });
    const [worker] = FakeWorker.made;
    expect(worker.heard).toHaveLength(1);
    worker.reply({ id: worker.heard[0].id, progress: { done: 0.5, what: 'plants' } });
    worker.answer('old');
    expect(worker.heard).toHaveLength(2);
    worker.answer('new');
    expect(await next).toEqual({ ok: true, value: 'new' });
    expect(onProgress).not.toHaveBeenCalled();
    vi.advanceTimersByTime(2_000);
    expect(FakeWorker.made.map(({ ended }) => ended)).toEqual([false]);
  },
);

test('one that does not end within a second takes its worker with it all the same', async () => {
  const bridge = createBridge(() => new FakeWorker() as unknown as Worker, FOR_SHORT_JOBS);
  const controller = new AbortController();
  const slow = bridge.call('load', 1, { signal: controller.signal });
  const next = bridge.call('load', 2);
  controller.abort();
  await expect(slow).rejects.toMatchObject({ name: 'AbortError' });
  vi.advanceTimersByTime(900);
  expect(FakeWorker.made[0].ended).toBe(false);
  vi.advanceTimersByTime(200);
  expect(FakeWorker.made.map(({ ended }) => ended)).toEqual([true, false]);
  FakeWorker.made[1].answer('b');
  expect(await next).toEqual({ ok: true, value: 'b' });
});

test('aborting a call that waits leaves the running one alone', async () => {
  const bridge = bridgeOfFakes();
  const controller = new AbortController();
  const running = bridge.call('load', 1);
  const waiting = bridge.call('spot', 2, { signal: controller.signal });
  controller.abort();
  await expect(waiting).rejects.toMatchObject({ name: 'AbortError' });
  FakeWorker.made[0].answer('a');
  expect(await running).toEqual({ ok: true, value: 'a' });
  expect(FakeWorker.made[0].heard).toHaveLength(1);
});

test('aborting one call that waits leaves the others that wait', async () => {
  const bridge = bridgeOfFakes();
  const controller = new AbortController();
  const running = bridge.call('load', 1);
  const dropped = bridge.call('spot', 2, { signal: controller.signal });
  const kept = bridge.call('day', 3);
  controller.abort();
  await expect(dropped).rejects.toMatchObject({ name: 'AbortError' });
  const [worker] = FakeWorker.made;
  worker.answer('a');
  expect(worker.heard.map(({ method }) => method)).toEqual(['load', 'day']);
  worker.answer('c');
  expect([await running, await kept]).toEqual([
    { ok: true, value: 'a' },
    { ok: true, value: 'c' },
  ]);
});

test('a worker that dies answers with a problem in words, and the calls behind it go on', async () => {
  const bridge = bridgeOfFakes();
  const first = bridge.call('load', 1);
  const second = bridge.call('spot', 2);
  FakeWorker.made[0].onerror?.({ message: 'out of memory' } as ErrorEvent);
  expect(await first).toEqual({
    ok: false,
    problems: [{ pointer: 'program', message: 'The reckoning broke off: out of memory.', severity: 'error' }],
  });
  FakeWorker.made[1].answer('b');
  expect(await second).toEqual({ ok: true, value: 'b' });
});

test('ten idle seconds end the worker; an answer of a call long gone is not taken for another’s', async () => {
  const bridge = bridgeOfFakes();
  const first = bridge.call('load', 1);
  FakeWorker.made[0].answer('a');
  await first;
  vi.advanceTimersByTime(9_900);
  expect(FakeWorker.made[0].ended).toBe(false);
  vi.advanceTimersByTime(200);
  expect(FakeWorker.made[0].ended).toBe(true);
  const second = bridge.call('load', 2);
  FakeWorker.made[1].reply({ id: 1, answer: { ok: true, value: 'late' } });
  FakeWorker.made[1].answer('b');
  expect(await second).toEqual({ ok: true, value: 'b' });
});

test('ending the bridge rejects every call, running and waiting', async () => {
  const bridge = bridgeOfFakes();
  const calls = [bridge.call('load', 1), bridge.call('spot', 2)];
  bridge.end();
  for (const call of calls) await expect(call).rejects.toMatchObject({ name: 'AbortError' });
  expect(FakeWorker.made[0].ended).toBe(true);
});

test('a worker whose file cannot load says so, and does not blame the plan', async () => {
  const bridge = bridgeOfFakes();
  const call = bridge.call('load', 1);
  FakeWorker.made[0].onerror?.({} as ErrorEvent);
  expect(await call).toEqual({
    ok: false,
    problems: [
      { pointer: 'program', message: 'A part of the page that reckons could not be loaded.', severity: 'error' },
    ],
  });
});

/** Addresses that answer until the test takes them away, as a browser takes a dead worker's. */
function addressesOfFakes(): Set<string> {
  const living = new Set(['a', 'b', 'c']);
  vi.stubGlobal('fetch', async (address: string) => {
    if (!living.has(address)) throw new TypeError('Failed to fetch');
    return { ok: true };
  });
  return living;
}

const secondsPass = (seconds: number) => vi.advanceTimersByTimeAsync(1000 * seconds);

test('a worker that dies without a word is noticed, and a fresh one does its job; a second death is a problem', async () => {
  const living = addressesOfFakes();
  const bridge = bridgeOfFakes();
  const first = bridge.call('load', 1);
  const second = bridge.call('spot', 2);
  FakeWorker.made[0].reply({ lives: 'a' });
  await secondsPass(100);
  living.delete('a');
  await secondsPass(2);
  expect(FakeWorker.made[1].heard.map(({ method }) => method)).toEqual(['load']);
  FakeWorker.made[1].reply({ lives: 'b' });
  await secondsPass(1);
  living.delete('b');
  await secondsPass(4);
  expect(await first).toMatchObject({ ok: false, problems: [{ pointer: 'program' }] });
  FakeWorker.made[2].answer('done');
  expect(await second).toEqual({ ok: true, value: 'done' });
});

test('what a worker is still asked when it is ended is called off: the browser would complain of it', () => {
  const asked: AbortSignal[] = [];
  vi.stubGlobal('fetch', (_address: string, { signal }: { signal: AbortSignal }) => {
    asked.push(signal);
    return new Promise(() => {});
  });
  const bridge = bridgeOfFakes();
  bridge.call('load', 1).catch(() => {});
  FakeWorker.made[0].reply({ lives: 'a' });
  expect(asked.map(({ aborted }) => aborted)).toEqual([false]);
  bridge.end();
  expect(asked.map(({ aborted }) => aborted)).toEqual([true]);
});

test('a worker that is busy for an hour, or whose address fails once, is not taken for dead', async () => {
  const living = addressesOfFakes();
  const bridge = bridgeOfFakes();
  const call = bridge.call('site', 1);
  FakeWorker.made[0].reply({ lives: 'a' });
  await secondsPass(3600);
  living.delete('a');
  await secondsPass(1);
  living.add('a');
  await secondsPass(60);
  living.delete('a');
  await secondsPass(1);
  FakeWorker.made[0].reply({ id: 1, progress: { done: 0.5, what: 'places' } });
  await secondsPass(3);
  living.add('a');
  await secondsPass(60);
  FakeWorker.made[0].answer('found');
  expect(await call).toEqual({ ok: true, value: 'found' });
  expect(FakeWorker.made).toHaveLength(1);
});

test.each([null, 'never answered'])(
  'where its address is no help (%s), five silent minutes are a death, and a word within them is none',
  async (lives) => {
    addressesOfFakes();
    const bridge = bridgeOfFakes();
    void bridge.call('site', 1);
    FakeWorker.made[0].reply({ lives });
    await secondsPass(299);
    FakeWorker.made[0].reply({ id: 1, progress: { done: 0.5, what: 'places' } });
    await secondsPass(299);
    expect(FakeWorker.made).toHaveLength(1);
    await secondsPass(2);
    expect(FakeWorker.made.map(({ ended }) => ended)).toEqual([true, false]);
  },
);

test('a worker that was ended on purpose is no death, and one that dies idle leaves the next call a fresh one', async () => {
  const living = addressesOfFakes();
  const bridge = bridgeOfFakes();
  const controller = new AbortController();
  const ended = bridge.call('load', 1, { signal: controller.signal });
  FakeWorker.made[0].reply({ lives: 'a' });
  await secondsPass(1);
  controller.abort();
  await expect(ended).rejects.toMatchObject({ name: 'AbortError' });
  living.delete('a');
  const call = bridge.call('load', 2);
  FakeWorker.made[1].reply({ lives: 'b' });
  await secondsPass(6);
  FakeWorker.made[1].answer('two');
  await call;
  living.delete('b');
  await secondsPass(6);
  expect(FakeWorker.made).toHaveLength(2);
  const next = bridge.call('load', 3);
  await secondsPass(6);
  FakeWorker.made[2].answer('three');
  expect(await next).toEqual({ ok: true, value: 'three' });
});
