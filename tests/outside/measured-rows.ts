/** Published temperatures of leaves and fruit, each with its source, how far it was seen, and what was assumed. */

import type { Surface } from '../../engine/plan/types.ts';

/** Weather is stated where the source does; the rest of it is ours. [°C], [%], [m/s], [W/m²], [°], [m] */
export interface MeasuredMoment {
  readonly air: number;
  readonly humidity: number;
  readonly wind: number;
  readonly beam: number;
  readonly diffuse: number;
  readonly altitude: number;
  readonly elevation?: number;
}

export interface Measured {
  readonly what: string;
  /** Over the air; of a difference with against without. [K] */
  readonly measured: number;
  readonly kind: 'rise' | 'difference';
  readonly source: string;
  readonly stated: string;
  /** How the plants stood, where the source tells. */
  readonly water?: 'watered' | 'thirsty';
  readonly moment: MeasuredMoment;
  /** [m] */
  readonly leafWidth?: number;
  readonly bothSides?: boolean;
  readonly surface?: Surface;
  /** Of the beam and of the sky. */
  readonly share?: number;
  readonly sky?: number;
  /** A cloth sold as so dense lies over it. */
  readonly cloth?: number;
  /** Sprayed with a reflective clay. */
  readonly clay?: boolean;
  readonly fruit?: boolean;
  /** Its width, where it is no apple or pear; ours, from memory. [m] */
  readonly fruitWidth?: number;
}

export const MEASURED: readonly Measured[] = [
  {
    what: 'coffee leaf, sunlit',
    measured: 12.5,
    kind: 'rise',
    source:
      'Butler, D. R. (1977). Coffee leaf temperatures in a tropical environment. Acta Bot. Neerl. 26: ' +
      '(pages not noted) (abstract seen)',
    stated: 'Kenya, air about 29 °C, midday, sun',
    moment: { air: 29, humidity: 50, wind: 2, beam: 850, diffuse: 130, altitude: 70, elevation: 1600 },
    leafWidth: 0.06,
    surface: 'soil',
  },
  {
    what: 'coffee leaf, in the crown’s shade',
    measured: -1.5,
    kind: 'rise',
    source:
      'Butler, D. R. (1977). Coffee leaf temperatures in a tropical environment. Acta Bot. Neerl. 26: ' +
      '(pages not noted) (abstract seen)',
    stated: 'same air; self-shaded leaves',
    moment: { air: 29, humidity: 50, wind: 2, beam: 850, diffuse: 130, altitude: 70, elevation: 1600 },
    leafWidth: 0.06,
    surface: 'soil',
    share: 0,
    sky: 0.25,
  },
  {
    what: 'pomelo leaf (Citrus grandis), midday closure',
    measured: 11,
    kind: 'rise',
    source: 'Veste, M., Ben-Gal, A., Shani, U. (2000). Acta Hortic. 531: 143–150 (abstract seen)',
    stated: 'southern Arava, summer, well watered, stomata close at midday: “up to” 11 K over air',
    water: 'thirsty',
    moment: { air: 40, humidity: 18, wind: 2, beam: 850, diffuse: 130, altitude: 75 },
    leafWidth: 0.05,
    surface: 'soil',
  },
  {
    what: 'vine leaves',
    measured: 0,
    kind: 'rise',
    source: 'Millar, A. A. (1972). Am. J. Enol. Vitic. 23: 173 (abstract seen)',
    stated:
      'irrigated vineyard, 8 to 18 h, leaves “very close” to air; 0 ± is ours; leaves at every angle: half ' +
      'of the beam (mean projection ½)',
    water: 'watered',
    moment: { air: 32, humidity: 35, wind: 2, beam: 850, diffuse: 120, altitude: 65 },
    leafWidth: 0.1,
    surface: 'soil',
    share: 0.5,
  },
  {
    what: 'small desert leaves',
    measured: 1.5,
    kind: 'rise',
    source: 'Leaf temperatures of desert plants, Science 159: 994 (1968; authors not seen) (abstract seen)',
    stated: 'desert summer, leaves within 3 K of air',
    moment: { air: 35, humidity: 15, wind: 2, beam: 900, diffuse: 90, altitude: 65, elevation: 1500 },
    leafWidth: 0.008,
    surface: 'soil',
  },
  {
    what: 'Opuntia joint',
    measured: 13,
    kind: 'rise',
    source: 'Leaf temperatures of desert plants, Science 159: 994 (1968; authors not seen) (abstract seen)',
    stated: '10 to 16 K over air',
    water: 'thirsty',
    moment: { air: 35, humidity: 15, wind: 2, beam: 900, diffuse: 90, altitude: 65, elevation: 1500 },
    leafWidth: 0.12,
    surface: 'soil',
  },
  {
    what: 'city tree crowns, ten kinds',
    measured: 3.8,
    kind: 'rise',
    source: 'Meier, F., Scherer, D. (2012). Theor. Appl. Climatol. 110: 373–384 (abstract seen)',
    stated:
      'Berlin, summer noon, crown mean; greatest hourly means 1.9 (poplar) to 5.6 K (field maple); crown ' +
      'mean: half of the beam',
    moment: { air: 31, humidity: 40, wind: 2, beam: 800, diffuse: 120, altitude: 58 },
    leafWidth: 0.08,
    surface: 'paving',
    share: 0.5,
  },
  {
    what: 'upper leaves outdoors',
    measured: 11,
    kind: 'rise',
    source:
      'Trade article “Reducing temperatures with shading” (2011), horticultural screens; 10–30 °F over air ' +
      '(text excerpt seen)',
    stated: 'outdoors, sunny summer days',
    moment: { air: 31, humidity: 50, wind: 2, beam: 850, diffuse: 120, altitude: 65 },
    leafWidth: 0.07,
    surface: 'soil',
  },
  {
    what: 'blackbrush leaves (Coleogyne)',
    measured: 0.5,
    kind: 'rise',
    source: 'Lei, S. A., Mojave desert (journal not seen) (abstract seen)',
    stated: 'at or near air; 0.5 is ours',
    moment: { air: 36, humidity: 15, wind: 2, beam: 900, diffuse: 90, altitude: 65, elevation: 1300 },
    leafWidth: 0.003,
    surface: 'soil',
  },
  {
    what: 'crop leaves, unstressed, clear-sky sun in the field',
    measured: 0,
    kind: 'rise',
    source: 'Nelson, J. A., Bugbee, B. (2015). PLoS ONE 10(10): e0138930 (abstract seen)',
    stated: '“typically within 2 °C of air”; measured radiation, modelled leaf',
    water: 'watered',
    moment: { air: 25, humidity: 45, wind: 2, beam: 850, diffuse: 100, altitude: 65 },
    leafWidth: 0.05,
    bothSides: true,
    surface: 'lawn',
  },
  {
    what: '‘Bacon’ avocado leaf, clear winter night',
    measured: -2.1,
    kind: 'rise',
    source: 'Kisaki, K., Yoshimatsu, T., Uchino, K., Sugiura, T. (2024). Res. Trop. Agric. 17: 12–17 (abstract seen)',
    stated:
      'three clear nights, air −3.1 to −5.1 °C, leaf 1.8, 2.2, 2.4 K under the lowest air; gentle wind ' +
      'assumed; the season’s 2 m/s gives less',
    water: 'thirsty',
    moment: { air: -4, humidity: 85, wind: 0.7, beam: 0, diffuse: 0, altitude: 30 },
    leafWidth: 0.06,
    surface: 'lawn',
  },
  {
    what: 'subtropical fruit trees under nets',
    measured: -4.5,
    kind: 'difference',
    source:
      'Shade netting on subtropical fruit: a review. Sci. Hortic. 256 (2019): 108556 (Mditshwa, Magwaza, ' +
      'Tesfay: from memory) (abstract seen)',
    stated: 'light −9 to −46 %, canopy temperature −1.3 to −7.6 K',
    moment: { air: 34, humidity: 40, wind: 2, beam: 850, diffuse: 120, altitude: 65 },
    leafWidth: 0.06,
    surface: 'soil',
    cloth: 0.3,
  },
  {
    what: 'grapefruit leaf, kaolin',
    measured: -3,
    kind: 'difference',
    source:
      'Jifon, J. L., Syvertsen, J. P. (2003). Kaolin particle film … ‘Ruby Red’ grapefruit. J. Am. Soc. ' +
      'Hortic. Sci. 128: 107–112 (abstract seen)',
    stated: 'Florida, midday, 60 g/L',
    moment: { air: 33, humidity: 58, wind: 2, beam: 780, diffuse: 180, altitude: 75 },
    leafWidth: 0.06,
    surface: 'lawn',
    clay: true,
  },
  {
    what: 'coffee leaf, kaolin',
    measured: -5.6,
    kind: 'difference',
    source: 'Abreu, D. P. et al. (2022). Front. Plant Sci. 12: 784482 (abstract seen)',
    stated: 'Brazil, midday, “up to”',
    moment: { air: 31, humidity: 55, wind: 2, beam: 800, diffuse: 150, altitude: 75 },
    leafWidth: 0.06,
    surface: 'soil',
    clay: true,
  },
  {
    what: 'coffee leaf, kaolin, the other cultivar or season',
    measured: -6.7,
    kind: 'difference',
    source: 'Abreu, D. P. et al. (2022). Front. Plant Sci. 12: 784482 (abstract seen)',
    stated: '“up to”',
    moment: { air: 31, humidity: 55, wind: 2, beam: 800, diffuse: 150, altitude: 75 },
    leafWidth: 0.06,
    surface: 'soil',
    clay: true,
  },
  {
    what: 'canopy under a clay film',
    measured: -5,
    kind: 'difference',
    source: 'Glenn, D. M. (2012). HortScience 47: 710–711 (from the project’s own list (checks/plants.md), seen there)',
    stated: '“up to 5 K”',
    moment: { air: 34, humidity: 35, wind: 2, beam: 850, diffuse: 120, altitude: 65 },
    leafWidth: 0.05,
    surface: 'soil',
    clay: true,
  },
  {
    what: 'apple, sunlit',
    measured: 16,
    kind: 'rise',
    source: 'Brink, Kotze, Steyn: trade review, South Africa (text excerpt seen)',
    stated: 'up to 16 K over air',
    moment: { air: 36, humidity: 35, wind: 2, beam: 850, diffuse: 120, altitude: 65 },
    fruit: true,
  },
  {
    what: 'apple, sunlit',
    measured: 12.5,
    kind: 'rise',
    source: 'van den Dool (2006), thesis (title not noted) (abstract seen)',
    stated: '10 to 15 K over air',
    moment: { air: 34, humidity: 35, wind: 2, beam: 850, diffuse: 120, altitude: 65 },
    fruit: true,
  },
  {
    what: 'apple, sunlit',
    measured: 10,
    kind: 'rise',
    source: 'Saudreau, M. et al. (2011), PMC3189830 (abstract seen)',
    stated: 'up to 10 K over air, France',
    moment: { air: 30, humidity: 35, wind: 2, beam: 850, diffuse: 120, altitude: 65 },
    fruit: true,
  },
  {
    what: 'pear, sunlit',
    measured: 11.7,
    kind: 'rise',
    source: 'Goodwin, I. et al. (2018). N. Z. J. Crop Hortic. Sci. 46: 334–345 (abstract seen)',
    stated: 'surface 50.3 °C, air up to 38.6 °C',
    moment: { air: 38.6, humidity: 35, wind: 2, beam: 850, diffuse: 120, altitude: 65 },
    fruit: true,
  },
  {
    what: 'pear under netting',
    measured: -5,
    kind: 'difference',
    source: 'Goodwin, I. et al. (2018). N. Z. J. Crop Hortic. Sci. 46: 334–345 (abstract seen)',
    stated: 'greatest surface temperature −10 %, below 47 °C; net’s density not seen',
    moment: { air: 38.6, humidity: 35, wind: 2, beam: 850, diffuse: 120, altitude: 65 },
    fruit: true,
    cloth: 0.25,
  },
  {
    what: 'apple under 20 % net',
    measured: -7.5,
    kind: 'difference',
    source: 'Gindaba, J., Wand, S. J. E. (2005). HortScience 40: 592–596 (abstract seen)',
    stated: 'days of 34 to 37 °C; −5.4 to −9.7 K',
    moment: { air: 36, humidity: 35, wind: 2, beam: 850, diffuse: 120, altitude: 65 },
    fruit: true,
    cloth: 0.2,
  },
  {
    what: 'blueberry, sunlit',
    measured: 9,
    kind: 'rise',
    source: 'Yang, F.-H., Bryla, D. R., Strik, B. C. (2019). HortScience 54: 2231–2239 (abstract seen)',
    stated: '7 to 11 K over air on days above 35 °C',
    moment: { air: 36, humidity: 35, wind: 2, beam: 850, diffuse: 120, altitude: 65 },
    fruit: true,
    fruitWidth: 0.015,
  },
  {
    what: 'grape, exposed',
    measured: 7.3,
    kind: 'rise',
    source: 'Millar, A. A. (1972). Am. J. Enol. Vitic. 23: 173 (abstract seen)',
    stated: '1.4 to 7.3 K over air, 8 to 18 h; the day’s greatest taken',
    moment: { air: 32, humidity: 35, wind: 2, beam: 850, diffuse: 120, altitude: 65 },
    fruit: true,
    fruitWidth: 0.018,
  },
  {
    what: 'grape, sunlit',
    measured: 7.5,
    kind: 'rise',
    source: 'Phytoma archive VI1662119723 (French growers’ journal) (abstract seen)',
    stated: '5 to 10 K over the cluster’s surroundings',
    moment: { air: 33, humidity: 35, wind: 2, beam: 850, diffuse: 120, altitude: 65 },
    fruit: true,
    fruitWidth: 0.018,
  },
  {
    what: 'grape, exposed',
    measured: 8.3,
    kind: 'rise',
    source: 'Lyttle, L., Greenspan, M., Advanced Viticulture, Sonoma (text excerpt seen)',
    stated: 'up to 15 °F over air; air 40.6 °C (105 °F) and more',
    moment: { air: 40.6, humidity: 35, wind: 2, beam: 850, diffuse: 120, altitude: 65 },
    fruit: true,
    fruitWidth: 0.018,
  },
  {
    what: 'grape cluster behind partial fruit-zone shading',
    measured: -3.9,
    kind: 'difference',
    source: 'Martínez-Lüscher, J. et al. (2020). Front. Plant Sci. 11: 579192 (abstract seen)',
    stated: 'greatest cluster temperature 3.9 K lower; 40 % net from memory',
    moment: { air: 37, humidity: 35, wind: 2, beam: 850, diffuse: 120, altitude: 65 },
    fruit: true,
    fruitWidth: 0.018,
    cloth: 0.4,
  },
  {
    what: 'grape, net in the fruit zone',
    measured: -7,
    kind: 'difference',
    source: 'OENO One, Cabernet Sauvignon, article 86 (authors not seen) (abstract seen)',
    stated: 'about −7 K; net’s density not seen',
    moment: { air: 36, humidity: 35, wind: 2, beam: 850, diffuse: 120, altitude: 65 },
    fruit: true,
    fruitWidth: 0.018,
    cloth: 0.5,
  },
  {
    what: 'blackberry, sunlit side, 9:30',
    measured: 6.5,
    kind: 'rise',
    source:
      'Temperatures differ between fronts and backs of shaded and sunlit berries (HortScience; authors not ' +
      'seen) (abstract seen)',
    stated: 'east-facing 5 to 8 K over air in the morning',
    moment: { air: 27, humidity: 35, wind: 2, beam: 850, diffuse: 120, altitude: 65 },
    fruit: true,
    fruitWidth: 0.02,
  },
  {
    what: 'small tomato, exposed',
    measured: 8,
    kind: 'rise',
    source: 'Tucson trial (authors not seen) (abstract seen)',
    stated: 'small fruit 3 to 13 K over air',
    moment: { air: 36, humidity: 35, wind: 2, beam: 850, diffuse: 120, altitude: 65 },
    fruit: true,
    fruitWidth: 0.025,
  },
  {
    what: 'pomegranate, sunlit',
    measured: 11,
    kind: 'rise',
    source: 'Yazici, K., Kaynak, L. (2009). Acta Hortic. 818: 181–186 (abstract seen)',
    stated: 'surface of 41 °C never reached on days below 30 °C: at 30 °C the rise is at most 11',
    moment: { air: 30, humidity: 35, wind: 2, beam: 850, diffuse: 120, altitude: 65 },
    fruit: true,
    fruitWidth: 0.09,
  },
  {
    what: 'walnut hull, sunlit',
    measured: 6,
    kind: 'rise',
    source: 'Lampinen, B., West Coast Nut, March 2023 (from the project’s own list (checks/plants.md), seen there)',
    stated: 'about 50 °C at air 44 °C',
    moment: { air: 44, humidity: 35, wind: 2, beam: 850, diffuse: 120, altitude: 65 },
    fruit: true,
    fruitWidth: 0.045,
  },
];
