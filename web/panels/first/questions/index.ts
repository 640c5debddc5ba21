import type { ComponentType } from 'preact';
import type { StepName } from '../answers.ts';
import { USUAL } from '../usual.ts';
import { inAsked } from './asked-units.ts';
import { DamageQuestion } from './DamageQuestion.tsx';
import { GroundQuestion } from './GroundQuestion.tsx';
import { NorthQuestion } from './NorthQuestion.tsx';
import { PlaceQuestion } from './PlaceQuestion.tsx';
import { PlantQuestion } from './PlantQuestion.tsx';
import { SummerQuestion } from './SummerQuestion.tsx';
import { WallsQuestion } from './WallsQuestion.tsx';

export interface Question {
  readonly title: string;
  /** What is used instead when it is passed over, in the units asked in. */
  readonly skip: () => string;
  readonly Body: ComponentType;
}

export const QUESTIONS: Readonly<Record<StepName, Question>> = {
  place: { title: 'Where is it?', skip: () => 'use the place of the open yard', Body: PlaceQuestion },
  summer: { title: 'How hot does it get?', skip: () => 'use rough numbers', Body: SummerQuestion },
  ground: {
    title: 'What shape is it?',
    skip: () => `use ${inAsked(USUAL.across)} by ${inAsked(USUAL.deep)}`,
    Body: GroundQuestion,
  },
  north: { title: 'Which way does it lie?', skip: () => 'find north later', Body: NorthQuestion },
  walls: {
    title: 'How high are the walls, fences and the house?',
    skip: () => `use ${inAsked(USUAL.wallHeight)}`,
    Body: WallsQuestion,
  },
  plant: { title: 'Which plant?', skip: () => `use ${inAsked(USUAL.plantHeight)}`, Body: PlantQuestion },
  damage: { title: 'What burnt, and when?', skip: () => 'say nothing of a burn', Body: DamageQuestion },
};
