/** Safari's own bearing, beside the standard's angles. */
interface Turned extends DeviceOrientationEvent {
  readonly webkitCompassHeading?: number;
}

interface AsksFirst {
  readonly requestPermission?: () => Promise<'granted' | 'denied'>;
}

/** Where the top edge of the phone points. */
export interface Aim {
  /** Clockwise from the needle's north; `null` where there is no compass. [°] */
  readonly bearing: number | null;
  /** Above the level. [°] */
  readonly altitude: number;
}

/** Longer than that, and there is nothing to come. [ms] */
const PATIENCE_MS = 3000;
/** A compass may answer a little after the level has. [ms] */
const COMPASS_MS = 500;
const EVENTS = ['deviceorientationabsolute', 'deviceorientation'] as const;

/** Whether this browser may know how it is held at all. */
export function canAim(): boolean {
  return typeof DeviceOrientationEvent !== 'undefined' && window.isSecureContext;
}

/**
 * Where the phone points, once, by the browser's own orientation events (W3C, Device Orientation: the top edge's
 * direction is (−sin α cos β, cos α cos β, sin β) east, north and up); asked for where the browser wants to be asked.
 * @returns `null`: the phone does not say, or may not.
 */
export async function aimOfPhone(): Promise<Aim | null> {
  const events: typeof DeviceOrientationEvent & AsksFirst = DeviceOrientationEvent;
  if (events.requestPermission && (await events.requestPermission().catch(() => 'denied')) !== 'granted') return null;
  return new Promise((settle) => {
    let level: Aim | null = null;
    let timer = setTimeout(() => done(level), PATIENCE_MS);
    const done = (aim: Aim | null): void => {
      clearTimeout(timer);
      for (const name of EVENTS) window.removeEventListener(name, turned);
      settle(aim);
    };
    const turned = (event: Event): void => {
      const aim = aimOf(event as Turned);
      if (aim === null) return;
      if (aim.bearing !== null) return done(aim);
      if (level === null) {
        clearTimeout(timer);
        timer = setTimeout(() => done(level), COMPASS_MS);
      }
      level = aim;
    };
    for (const name of EVENTS) window.addEventListener(name, turned);
  });
}

function aimOf({ absolute, alpha, beta, webkitCompassHeading }: Turned): Aim | null {
  if (beta === null) return null;
  // Tipped over its back the top edge comes down again, and points the other way.
  const altitude = Math.abs(beta) <= 90 ? beta : Math.sign(beta) * 180 - beta;
  const bearing = webkitCompassHeading ?? (absolute && alpha !== null ? 360 - alpha : null);
  return { bearing: bearing === null ? null : (bearing + (Math.abs(beta) <= 90 ? 0 : 180)) % 360, altitude };
}
