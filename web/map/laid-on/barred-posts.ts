import { signal } from '@preact/signals';
import type { PlanPoint } from '../../../engine/index.ts';

/** Posts of cloth under trial that cannot stand where they are: drawn hollow. Whoever says why sets them. */
export const barredPosts = signal<readonly PlanPoint[]>([]);
