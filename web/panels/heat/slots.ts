import type { PlantLoad } from '../../../engine/index.ts';
import { slotFor } from '../../common/Lazy.tsx';

/** What the card of the heat shows beyond the first picture. */
export const mapChoice = slotFor<{ readonly plants: readonly PlantLoad[] }>('The map');
export const mapFindings = slotFor('What the map shows');
export const plantCard = slotFor<{ readonly plant: PlantLoad; readonly name: string }>('The plant');
export const spotCard = slotFor('The spot');
export const shadowClock = slotFor('The shadow of a stick');
export const sunEyePicture = slotFor('The yard as the sun sees it');
