/** Safari's own bearing, beside the standard's angles. */
interface Turned extends DeviceOrientationEvent {
  readonly webkitCompassHeading?: number;
}

interface AsksFirst {
  readonly requestPermission?: () => Promise<'granted' | 'denied'>;
}

/** Longer than that, and there is no compass. [ms] */
const PATIENCE_MS = 3000;

/** Whether this browser may have a compass at all. */
export function hasCompass(): boolean {
  return typeof DeviceOrientationEvent !== 'undefined' && window.isSecureContext;
}

/**
 * Which way the top of the phone points, once, by the browser's own orientation events; asked for where the browser
 * wants to be asked. [° from the needle's north, clockwise]; `null`: there is no compass, or it may not be read.
 */
export async function compassHeading(): Promise<number | null> {
  const events: typeof DeviceOrientationEvent & AsksFirst = DeviceOrientationEvent;
  if (events.requestPermission && (await events.requestPermission().catch(() => 'denied')) !== 'granted') return null;
  return new Promise((settle) => {
    const names = ['deviceorientationabsolute', 'deviceorientation'] as const;
    const done = (heading: number | null): void => {
      clearTimeout(timer);
      for (const name of names) window.removeEventListener(name, turned);
      settle(heading);
    };
    const turned = (event: Event): void => {
      const { absolute, alpha, webkitCompassHeading } = event as Turned;
      // Alpha turns against the clock.
      if (webkitCompassHeading !== undefined) done(webkitCompassHeading);
      else if (absolute && alpha !== null) done((360 - alpha) % 360);
    };
    const timer = setTimeout(() => done(null), PATIENCE_MS);
    for (const name of names) window.addEventListener(name, turned);
  });
}
