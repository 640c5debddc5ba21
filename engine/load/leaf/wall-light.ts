import { blackBody } from './leaf-balance.ts';

/** Half of the sky stands before a face. */
export const SKY_ON_FACE = 0.5;
/** Heat that a warm face gives the air (ASHRAE's sol-air temperature, from memory). [W/m²K] */
const FACE_COOLING = 17;

/** Longwave of a face of a wall or building. [W/m²] @param air [°C] @param on sunlight on it [W/m²] */
export function faceGlow(air: number, reflects: number, on: number): number {
  return blackBody(air + ((1 - reflects) * on) / FACE_COOLING);
}
