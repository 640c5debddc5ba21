import { render } from 'preact';
import './styles/tokens.css';
import './styles/base.css';
import './styles/print.css';
import { App } from './app/App/index.tsx';
import { takeDroppedFiles } from './app/drop.ts';
import { fillSlots } from './app/fill-slots.ts';
import { keepFocus } from './app/keep-focus.ts';
import { listenForKeys } from './app/keys.ts';
import { keepOffline } from './app/offline.ts';
import { startPlaying } from './app/play.ts';
import { tellVerdicts } from './app/tell-verdicts.ts';
import { paintHeat } from './map/laid-on/heat-on-map.ts';
import { comeBack } from './state/come-back.ts';
import { loadPlanChecks } from './state/plan-checks.ts';
import { heat } from './state/results.ts';
import { startSaving } from './state/saving.ts';
import { wearSettings } from './state/settings.ts';
import { openLastYard, watchShelf } from './state/shelf.ts';
import { followHours } from './state/weather.ts';

void start();

async function start(): Promise<void> {
  wearSettings();
  await openLastYard();
  comeBack();
  startSaving();
  watchShelf();
  followHours();
  listenForKeys();
  takeDroppedFiles();
  startPlaying();
  paintHeat();
  tellVerdicts();
  fillSlots();
  const root = document.getElementById('app');
  if (root) {
    root.replaceChildren();
    render(<App />, root);
    keepFocus(root);
  }
  // What the first picture does not need comes after it has been drawn.
  const waiting = heat.subscribe(({ working }) => {
    if (working) return;
    queueMicrotask(() => waiting());
    setTimeout(() => {
      void loadPlanChecks();
      keepOffline();
    });
  });
}
