import { monthWord } from '../../plan/dates/dates.ts';
import type { Climate, ClimateMonth } from '../../plan/types.ts';
import { type Finding, found, refused } from '../estimate.ts';
import { CLIMATE_TYPES, type ClimateType } from './climate-types.ts';
import { askedMonth, type KnownTemperatures } from './known-temperatures.ts';

/** Air from which an hour of sun counts as hot where nothing else is said. [°C] Our choice. */
export const HOT_AIR = 35;

export function climateTypeOf(id: string): ClimateType | undefined {
  return CLIMATE_TYPES.find((type) => type.id === id);
}

/** What a climate type is guessed by. */
export interface TypeGuessedBy {
  /** [°] */
  readonly latitude: number;
  /** Where it is left out, no rule that asks for it holds. [°] */
  readonly longitude?: number;
  /** IANA name. */
  readonly timeZone: string;
  /** Within some 20 km of the open sea, where that is known. */
  readonly bySea?: boolean;
}

/** The type that a place most likely has, by its zone and whereabouts: a first guess to be corrected by the person. */
export function likelyClimate({ latitude, longitude = -180, timeZone, bySea = false }: TypeGuessedBy): ClimateType {
  const lat = Math.abs(latitude);
  const rule = ZONE_RULES.find(
    ({ zones, from = 0, to = 90, eastOf = -180 }) =>
      lat >= from && lat < to && longitude >= eastOf && zones.test(timeZone),
  );
  const inland =
    rule?.type ??
    (lat < 10
      ? 'wet-tropical'
      : lat < 19
        ? 'tropical-wet-dry'
        : lat < 31
          ? 'humid-subtropical'
          : lat < 41
            ? 'mediterranean-inland'
            : 'warm-temperate');
  const id = (bySea && BY_THE_SEA[inland]) || inland;
  return CLIMATE_TYPES.find((type) => type.id === id) ?? CLIMATE_TYPES[0];
}

/** What a type of the inland is within some 20 km of the sea. */
const BY_THE_SEA: Readonly<Record<string, string>> = {
  'low-desert': 'coastal-desert',
  'mediterranean-inland': 'mediterranean-coast',
};

/**
 * A rough climate for a plan: the type's twelve months, turned by half a year south of the equator, shifted to the
 * person's own three numbers where they are given. Marked rough, with its source in words.
 */
export function roughClimate(type: ClimateType, latitude: number, known?: KnownTemperatures): Finding<Climate> {
  const refusal = known === undefined ? null : refusalOf(known, latitude);
  if (refusal !== null) return refused(refusal);
  const months = monthsOf(type, latitude);
  const asked = months[askedMonth(latitude) - 1];
  const up = known === undefined ? 0 : known.high - asked.high;
  const upLow = known === undefined ? 0 : known.low - asked.low;
  const shifted = months.map((month) => shift(month, up, upLow));
  const hottestMonth = Math.max(...shifted.map(({ high }) => high));
  const own = known === undefined ? '' : `, shifted to ${shiftWords(known, latitude)}`;
  const notes = [
    `Rough: the climate type "${type.name}", from memory${own}. Twelve highs and lows from your weather service ` +
      `make it yours.`,
  ];
  const heatwaveHigh = known === undefined ? type.hottest : Math.max(known.hottest, hottestMonth);
  if (known !== undefined && known.hottest < hottestMonth) {
    notes.push(
      `Your hottest day of ${known.hottest} °C is under this type's usual high of ${hottestMonth} °C in its ` +
        `hottest month: ${hottestMonth} °C is taken.`,
    );
  }
  return found({ from: 'rough', source: notes[0], hotAir: HOT_AIR, heatwaveHigh, months: shifted }, notes);
}

/** "your July high of 36 °C, low of 18 °C and hottest day of 43 °C" */
export function shiftWords({ high, low, hottest }: KnownTemperatures, latitude: number): string {
  const month = monthWord(askedMonth(latitude));
  return `your ${month} high of ${high} °C, low of ${low} °C and hottest day of ${hottest} °C`;
}

/**
 * The month of a climate that the known numbers belong to: July or January, or its hottest month where that one is not
 * in it.
 */
export function knownMonthOf(climate: Climate, latitude: number): ClimateMonth {
  const asked = climate.months.find(({ month }) => month === askedMonth(latitude));
  return asked ?? climate.months.reduce((hottest, month) => (month.high > hottest.high ? month : hottest));
}

/**
 * A climate with some of the three numbers known better: every month's highs and lows move with those of the month
 * asked for.
 */
export function withKnownTemperatures(climate: Climate, latitude: number, known: Partial<KnownTemperatures>): Climate {
  if (climate.months.length === 0) return climate;
  const asked = knownMonthOf(climate, latitude);
  const up = (known.high ?? asked.high) - asked.high;
  const upLow = (known.low ?? asked.low) - asked.low;
  const months = up === 0 && upLow === 0 ? climate.months : climate.months.map((month) => shift(month, up, upLow));
  return { ...climate, months, heatwaveHigh: known.hottest ?? climate.heatwaveHigh };
}

/** The twelve months of a type, turned by half a year south of the equator. */
export function monthsOf(type: ClimateType, latitude: number): ClimateMonth[] {
  return Array.from({ length: 12 }, (_, index) => {
    const k = latitude < 0 ? (index + 6) % 12 : index;
    return {
      month: index + 1,
      high: type.high[k],
      low: type.low[k],
      humidity: type.humidity[k],
      wind: type.wind,
      sunshine: type.sunshine[k],
      turbidity: type.turbidity[k],
    };
  });
}

/** A wide day of the asked month must not turn another month's low above its high. */
function shift(month: ClimateMonth, up: number, upLow: number): ClimateMonth {
  const high = month.high + up;
  return { ...month, high, low: Math.min(month.low + upLow, high - 2) };
}

/** Why the three numbers cannot be taken; `null` where they can. */
export function refusalOf({ high, low, hottest }: KnownTemperatures, latitude: number): string | null {
  const month = monthWord(askedMonth(latitude));
  if (![high, low, hottest].every((value) => value >= -20 && value <= 58))
    return `Temperatures of ${low}, ${high} and ${hottest} °C: each must lie between −20 and 58 °C.`;
  if (low >= high) return `A ${month} low of ${low} °C is not below the high of ${high} °C.`;
  if (hottest < high)
    return `The hottest day cannot be cooler (${hottest} °C) than the usual ${month} high (${high} °C).`;
  return null;
}

/** The first line that fits wins. Latitudes without sign; east of a longitude. */
const ZONE_RULES: readonly { zones: RegExp; type: string; from?: number; to?: number; eastOf?: number }[] = [
  { zones: /^America\/(Phoenix|Hermosillo|Tijuana|Mexicali|Ojinaga)$/, type: 'low-desert' },
  // The Mojave and Colorado deserts, from Barstow and Palm Springs on; north of them the Great Basin.
  { zones: /^America\/Los_Angeles$/, type: 'low-desert', to: 33.4, eastOf: -116.7 },
  { zones: /^America\/Los_Angeles$/, type: 'low-desert', from: 33.4, to: 37, eastOf: -117.1 },
  { zones: /^America\/Los_Angeles$/, type: 'high-desert', from: 37, to: 42, eastOf: -119.9 },
  { zones: /^America\/Los_Angeles$/, type: 'mediterranean-inland', to: 42 },
  { zones: /^America\/(Denver|Boise|Chihuahua|Ciudad_Juarez)$/, type: 'high-desert' },
  { zones: /^America\/(Mexico_City|Monterrey|Mazatlan|Bahia_Banderas)$/, type: 'high-desert', from: 23 },
  { zones: /^America\/(Chicago|New_York|Indiana|Kentucky|Detroit|Matamoros)/, type: 'humid-subtropical', to: 37 },
  {
    zones: /^America\/(Argentina\/(Mendoza|San_Juan|La_Rioja|Catamarca)|Santiago)/,
    type: 'mediterranean-inland',
    from: 29,
  },
  { zones: /^America\/(Argentina|Montevideo|Asuncion|Sao_Paulo|Buenos_Aires)/, type: 'humid-subtropical', from: 19 },
  { zones: /^America\/(Fortaleza|Recife|Bahia|Maceio)/, type: 'tropical-wet-dry' },
  { zones: /^America\/Lima$/, type: 'coastal-desert' },
  {
    zones: /^Europe\/(Madrid|Lisbon|Athens|Istanbul|Nicosia|Rome|Malta)|^Asia\/(Nicosia|Famagusta)/,
    type: 'mediterranean-inland',
    to: 42,
  },
  { zones: /^Europe\/(Paris|Rome|Madrid|Monaco|Tirane|Podgorica|Zagreb)/, type: 'mediterranean-coast', to: 44 },
  { zones: /^Africa\/(Casablanca|Algiers|Tunis|Tripoli|Ceuta|El_Aaiun)/, type: 'mediterranean-inland', from: 33 },
  { zones: /^Africa\/(Casablanca|Algiers|Tunis|Tripoli|Cairo|El_Aaiun)/, type: 'low-desert' },
  { zones: /^Africa\/(Windhoek|Gaborone|Johannesburg|Harare|Lusaka|Maseru|Mbabane)/, type: 'high-desert' },
  { zones: /^Africa\/(Khartoum|Niamey|Bamako|Ouagadougou|Ndjamena|Dakar|Nouakchott|Banjul|Asmara)/, type: 'savanna' },
  { zones: /^Africa\/Lagos$/, type: 'savanna', from: 9 },
  { zones: /^Africa\/(Addis_Ababa|Nairobi)/, type: 'high-desert' },
  { zones: /^(Africa\/Djibouti|Asia\/(Dubai|Qatar|Bahrain|Muscat|Aden))/, type: 'coastal-desert' },
  { zones: /^Asia\/(Riyadh|Kuwait|Baghdad)/, type: 'low-desert' },
  { zones: /^Asia\/(Jerusalem|Amman|Beirut|Damascus|Gaza|Hebron)/, type: 'mediterranean-inland' },
  {
    zones: /^Asia\/(Tehran|Kabul|Tashkent|Samarkand|Ashgabat|Dushanbe|Baku|Yerevan|Bishkek|Almaty|Urumqi|Kashgar)/,
    type: 'dry-continental',
  },
  { zones: /^Asia\/(Kolkata|Karachi|Kathmandu)/, type: 'monsoon', from: 20 },
  {
    zones: /^Asia\/(Kolkata|Colombo|Dhaka|Bangkok|Rangoon|Yangon|Ho_Chi_Minh|Phnom_Penh|Vientiane|Manila)/,
    type: 'tropical-wet-dry',
  },
  { zones: /^Asia\/(Shanghai|Chongqing|Tokyo|Seoul|Taipei|Hong_Kong)/, type: 'humid-subtropical', to: 36 },
  { zones: /^Australia\/(Perth|Adelaide|Melbourne|Broken_Hill)/, type: 'mediterranean-inland', from: 29 },
  { zones: /^Australia\/Darwin/, type: 'tropical-wet-dry', to: 18 },
  { zones: /^Australia\/(Darwin|Perth|Adelaide)/, type: 'low-desert' },
  { zones: /^Australia\/(Brisbane|Lindeman)/, type: 'tropical-wet-dry', to: 20 },
  { zones: /^Australia\/(Sydney|Brisbane|Lindeman)/, type: 'humid-subtropical', to: 34.5 },
  { zones: /^Australia\//, type: 'warm-temperate' },
];
