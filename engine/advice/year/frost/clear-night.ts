/**
 * A leaf under a clear calm sky is 1 to 3 K colder than the air (Leuning & Cremer 1988, Agric. For. Meteorol.
 * 42:121–133). [K]
 */
export const CLEAR_NIGHT = 2;
