import parts from 'virtual:worker/survey';
import { createBridge } from './bridge.ts';
import { workerStarter } from './start-worker.ts';

/** The worker that finds things out. A module of its own, so that it is loaded when first asked. */
export const surveyBridge = createBridge(workerStarter(parts));
