/**
 * Takes every way out of the worker before it hears its first call; the modules it imports only define things. The
 * page's policy already forbids the network, `import()` included; this holds even where a browser would not apply it.
 */
for (const name of ['fetch', 'XMLHttpRequest', 'WebSocket', 'WebTransport', 'EventSource', 'importScripts', 'Worker']) {
  Object.defineProperty(self, name, { value: undefined, configurable: false, writable: false });
}
export {};
