/**
 * Hears how far a long work has come, 0 to 1, and what it is at. Cheap to call often: whoever listens may drop some.
 */
export type Progress = (done: number, what: string) => void;

/** Tells a part of a work as a stretch of the whole. */
export function stretch(progress: Progress, from: number, to: number): Progress {
  return (done, what) => progress(from + (to - from) * done, what);
}
