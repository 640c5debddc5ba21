import { drawingHands } from '../map/YardMap/slots.ts';
import { mapChoice, mapFindings, plantCard, shadowClock, spotCard, sunEyePicture } from '../panels/heat/slots.ts';

/** Says where the first picture's own parts are fetched that come after it. Once, at the start. */
export function fillSlots(): void {
  drawingHands.fill(() => import('./first-stages.ts').then((part) => part.DrawingHands));
  mapChoice.fill(() => import('./first-stages.ts').then((part) => part.MapChoice));
  mapFindings.fill(() => import('./first-stages.ts').then((part) => part.MapFindings));
  plantCard.fill(() => import('./first-stages.ts').then((part) => part.PlantCard));
  shadowClock.fill(() => import('./first-stages.ts').then((part) => part.ShadowClock));
  spotCard.fill(() => import('./first-stages.ts').then((part) => part.SpotCard));
  sunEyePicture.fill(() => import('./first-stages.ts').then((part) => part.SunEyePicture));
}
