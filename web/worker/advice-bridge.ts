import AdviceWorker from './advice.worker.ts?worker&inline';
import { createBridge } from './bridge.ts';

/** The second worker: long searches here never hold up the map. A module of its own, so that it is loaded when first asked. */
export const adviceBridge = createBridge(() => new AdviceWorker());
