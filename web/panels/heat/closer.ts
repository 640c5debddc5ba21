/** What the card of the heat shows once the map is reckoned, in one part. */
export { MapFindings } from './MapFindings.tsx';
export { PlantCard } from './PlantCard.tsx';
export { ShadowClock } from './ShadowClock.tsx';
export { SpotCard } from './SpotCard.tsx';
export { SunEyePicture } from './SunEyePicture.tsx';
