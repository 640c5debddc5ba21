import type { ComponentType } from 'preact';

/** The map's own folder fills these two places. */
export const loadYardMap = (): Promise<ComponentType> => import('../first-picture.ts').then((part) => part.YardMap);
export const loadToolRow = (): Promise<ComponentType> => import('../first-stages.ts').then((part) => part.ToolRow);
