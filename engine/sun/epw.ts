import type { WeatherPlace } from './weather.ts';

const HOURS_PER_YEAR = 8760;
