import { elevationOf, offsetOf } from '../../plan/defaults.ts';
import { radiansOf } from '../../plan/geometry/angles.ts';
import { dayOfYear } from '../days/calendar.ts';
import type { PeriodDay } from '../days/period-days.ts';
import type { SunPosition } from '../position.ts';
import type { Setting } from '../setting.ts';
import { SOLAR_CONSTANT } from '../sun-constants.ts';
import { hourFinder, weatherExtremes, type Weather } from '../weather/weather.ts';
import { airSunrise, airTemperature } from './air.ts';
import { clearSky } from './clear-sky.ts';

/** The sky and air of samples, one value a sample in each. */
export interface SkyAndAirColumns {
  /**
   * Under a clear sky; with a weather file the file's (then `sunshine` is 1 and `global` is beam·sin(altitude) +
   * diffuse). [W/m²]
   */
  readonly beam: Float64Array;
  readonly diffuse: Float64Array;
  readonly global: Float64Array;
  /**
   * Share of the diffuse that comes from beside the sun and is stopped with the beam: beam over what is above the air
   * (Hay & Davies 1980; equation from memory), at most 1.
   */
  readonly glow: Float64Array;
  /** Share of the time with the sun's disc out. */
  readonly sunshine: Float64Array;
  /** Mean air temperature of such days at this time. [°C] */
  readonly air: Float64Array;
  /** Standard deviation of the air about `air`. [K] */
  readonly spread: Float64Array;
  /**
   * Humidity, the air temperature that it belongs to, and wind above the yard: the month's, its mean air, the month's;
   * with a weather file the hour's three. [%], [°C], [m/s]
   */
  readonly humidity: Float64Array;
  readonly humidityAir: Float64Array;
  readonly wind: Float64Array;
}

/** A day's sky and air. */
export interface DaySky {
  /** Of the day, `climate.offset` included. [°C] */
  readonly high: number;
  readonly low: number;
  /** [K] */
  readonly spread: number;
  /** Writes the sky and air of one sample into place `index` of the columns. */
  readonly write: (columns: SkyAndAirColumns, index: number, whenMs: number, sun: SunPosition) => void;
}

/**
 * Clear sky by the month's turbidity, sun by its sunshine, air by its high and low; on a heat day raised, always sunny
 * and without spread.
 */
export function skyOfClimate(plan: Setting, { date, climate, raise }: PeriodDay): DaySky {
  const elevation = elevationOf(plan.site);
  const high = climate.high + (raise ?? 0);
  const low = climate.low + (raise ?? 0);
  const spread = raise === null ? climate.spread : 0;
  const morning = raise === null ? climate.sunshineMorning : 1;
  const afternoon = raise === null ? climate.sunshineAfternoon : 1;
  const monthMean = (climate.high + climate.low) / 2;
  const sunrise = airSunrise(plan.site.latitude, dayOfYear(date));
  return {
    high,
    low,
    spread,
    write: (columns, index, _whenMs, sun) => {
      const sky = clearSky({
        altitude: sun.altitude,
        elevation,
        turbidity: climate.turbidity,
        distanceAu: sun.distanceAu,
      });
      columns.beam[index] = sky.beam;
      columns.diffuse[index] = sky.diffuse;
      columns.global[index] = sky.global;
      columns.glow[index] = glowOf(sky.beam, sun);
      columns.sunshine[index] = sun.azimuth < 180 ? morning : afternoon;
      columns.air[index] = airTemperature(sun.solarHour, high, low, sunrise);
      columns.spread[index] = spread;
      columns.humidity[index] = climate.humidity;
      columns.humidityAir[index] = monthMean;
      columns.wind[index] = climate.wind;
    },
  };
}

/** Sky and air of the hour of the weather file; humidity and wind of the month where the file has none. */
export function skyOfWeather(plan: Setting, { date, climate }: PeriodDay, weather: Weather): DaySky {
  const offset = offsetOf(plan.climate);
  const { high, low } = weatherExtremes(weather, date);
  const hourOf = hourFinder(weather, date);
  const monthMean = (climate.high + climate.low) / 2;
  return {
    high: high + offset,
    low: low + offset,
    spread: 0,
    write: (columns, index, whenMs, sun) => {
      const hour = hourOf(whenMs);
      const air = weather.air[hour] + offset;
      const hasHumidity = !Number.isNaN(weather.humidity[hour]);
      columns.beam[index] = weather.beam[hour];
      columns.diffuse[index] = weather.diffuse[hour];
      columns.global[index] = weather.beam[hour] * Math.sin(radiansOf(sun.altitude)) + weather.diffuse[hour];
      columns.glow[index] = glowOf(weather.beam[hour], sun);
      columns.sunshine[index] = 1;
      columns.air[index] = air;
      columns.spread[index] = 0;
      columns.humidity[index] = hasHumidity ? weather.humidity[hour] : climate.humidity;
      columns.humidityAir[index] = hasHumidity ? air : monthMean;
      columns.wind[index] = Number.isNaN(weather.wind[hour]) ? climate.wind : weather.wind[hour];
    },
  };
}

/** @param beam on a surface that faces the sun [W/m²] */
function glowOf(beam: number, { distanceAu }: SunPosition): number {
  return Math.min(1, (beam * distanceAu * distanceAu) / SOLAR_CONSTANT);
}
