import type { Feature, FeatureChanges } from '../../../engine/index.ts';

/** What a number is made of: how it is typed and shown. Shares are stored 0 to 1 and typed in percent. */
export type FieldUnit = 'length' | 'percent' | 'degrees' | 'temperature' | 'lux' | 'count';

/**
 * One number of a feature: its words, where it stands, what is suggested, what is odd. The drawing bar and the list
 * share these.
 */
export interface NumberField {
  /** Key of the plan file, and of `how`. */
  readonly key: string;
  readonly label: string;
  readonly unit: FieldUnit;
  /** Asked before a newly drawn feature enters the plan. */
  readonly asked: boolean;
  /** May stay empty. */
  readonly optional?: boolean;
  readonly least: number;
  readonly most: number;
  /** Put into the box when the thing is drawn; left untouched it is marked as guessed. */
  readonly suggested?: number;
  /** Beyond these a person is asked whether it is meant. [same unit] */
  readonly unusualAbove?: number;
  readonly unusualBelow?: number;
  /** `undefined` where the plan says nothing and nothing holds instead. */
  read(feature: Feature): number | undefined;
  /** The keys of the feature that change. */
  write(value: number | undefined, feature: Feature): FeatureChanges;
}
