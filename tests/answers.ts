import { mkdtempSync, rmSync, mkdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  interface ProvidedContext {
    /** A folder of this run alone, in which its workers share what command lines answered. */
    readonly answers: string;
  }
}

export default function setup(project: TestProject): () => void {
  const answers = mkdtempSync(join(tmpdir(), 'shadewright-answers-'));
  const forget = (): void => rmSync(answers, { recursive: true, force: true });
  project.provide('answers', answers);
  // While watched, the code has changed since.
  project.onTestsRerun(() => {
    forget();
    mkdirSync(answers);
  });
  return forget;
}
