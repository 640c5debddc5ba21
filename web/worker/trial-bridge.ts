import adviceWorker from 'virtual:worker/advice';
import { createBridge } from './bridge.ts';
import { workerStarter } from './start-worker.ts';

/**
 * A worker of its own for what is moved about by hand: neither a search nor a comparison stands before it, and what it
 * has laid out stays.
 */
export const trialBridge = createBridge(workerStarter(adviceWorker));
