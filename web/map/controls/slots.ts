import { slotFor } from '../../common/Lazy.tsx';
import type { Draft } from '../drawing/draft.ts';

/** The form at the end of a drawing: it comes with the drawing tools, after the first picture. */
export const askedNumbers = slotFor<{ readonly under: Draft }>('The form');
