import parts from 'virtual:worker/advice';
import { createBridge } from './bridge.ts';
import { workerStarter } from './start-worker.ts';

/** The worker of the later stages: long searches here never hold up the map. A module of its own, so that it is loaded when first asked. */
export const adviceBridge = createBridge(workerStarter(parts));
