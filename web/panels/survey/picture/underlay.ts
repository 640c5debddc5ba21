import { setSite } from '../../../../engine/index.ts';
import type { Underlay } from '../../../../engine/index.ts';
import { commitBeside } from '../../../state/edit.ts';

/** No step of the history: what was drawn over the picture is undone without it. */
export function setUnderlay(underlay: Underlay | undefined): void {
  commitBeside((then) => setSite(then, { underlay }));
}
