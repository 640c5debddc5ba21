/**
 * The script of the page that is one file: the page and its workers in one text. A worker is started from that same
 * text with its name put before it, for on a page opened from a file a worker can fetch nothing, and no module worker
 * ever starts.
 */
const PARTS = {
  page: () => import('./main.tsx'),
  engine: () => import('./worker/engine.worker.ts'),
  survey: () => import('./worker/survey.worker.ts'),
  advice: () => import('./worker/advice.worker.ts'),
};

const { part = 'page' } = globalThis as { part?: keyof typeof PARTS };
void PARTS[part]();
