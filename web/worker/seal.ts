/**
 * Takes every way out of the worker before anything else runs in it. The page's policy already forbids the network;
 * this holds even where a browser would not apply it.
 */
for (const name of ['fetch', 'XMLHttpRequest', 'WebSocket', 'WebTransport', 'EventSource', 'importScripts', 'Worker']) {
  Object.defineProperty(self, name, { value: undefined, configurable: false, writable: false });
}
export {};
