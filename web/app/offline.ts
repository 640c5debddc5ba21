import { mayLeave } from '../state/saving.ts';
import { say } from '../state/speech.ts';

/** Has the service worker keep the page for use without a network, and offers a newer version when there is one. */
export function keepOffline(): void {
  if (!HAS_SERVICE_WORKER || !('serviceWorker' in navigator)) return;
  let takingOver = false;
  navigator.serviceWorker.addEventListener('controllerchange', () => takingOver && location.reload());

  const offer = (waiting: ServiceWorker): void =>
    say('A new version of Shadewright is here.', 'done', {
      label: 'Use the new version',
      run: async () => {
        if (!(await mayLeave())) return;
        takingOver = true;
        waiting.postMessage('take over');
      },
    });

  const offerWhenInstalled = (installing: ServiceWorker | null): void =>
    installing?.addEventListener('statechange', () => {
      if (installing.state === 'installed' && navigator.serviceWorker.controller) offer(installing);
    });

  navigator.serviceWorker.register('./service-worker.js').then(
    (registration) => {
      if (registration.waiting && navigator.serviceWorker.controller) offer(registration.waiting);
      // The browser may have found it before it was asked, as the page was opened.
      offerWhenInstalled(registration.installing);
      registration.addEventListener('updatefound', () => offerWhenInstalled(registration.installing));
    },
    () => {
      // Without it the page works as long as its server is there.
    },
  );
}
