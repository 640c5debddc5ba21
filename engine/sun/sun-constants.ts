/**
 * Solar constant: irradiance above the air at 1 au. [W/m²] Source: Gueymard (2018), Solar Energy 168:6–17. The only one
 * in the engine.
 */
export const SOLAR_CONSTANT = 1361.1;
