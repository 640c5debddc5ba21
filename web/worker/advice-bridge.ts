import advicePart from 'virtual:worker-part/advice';
import { createBridge } from './bridge.ts';
import { workerStarter } from './start-worker.ts';

/** The second worker: long searches here never hold up the map. A module of its own, so that it is loaded when first asked. */
export const adviceBridge = createBridge(workerStarter(advicePart));
