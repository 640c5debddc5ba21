import { booleanPointInPolygon } from '@turf/boolean-point-in-polygon';
import { polygon } from '@turf/helpers';
import { kinks } from '@turf/kinks';
import { describe, expect, it } from 'vitest';
import { loadGeoJson } from '../../../../engine/output/map/geo-json.ts';
import { jsonPieces } from '../../../../engine/output/text/json-text.ts';
import { lonLatOf } from '../../../../engine/plan/geometry/lon-lat.ts';
import type { Plan } from '../../../../engine/plan/types.ts';
import { yardPlan } from '../../load/yard-plan.ts';
import { smallLoad } from '../small-load.ts';

const at = (latitude: number, upBearing = 0): Plan => {
  const base = yardPlan();
  return { ...base, site: { ...base.site, latitude, longitude: 20, upBearing } };
};

describe('longitude and latitude of a plan point', () => {
  it('the origin lies at the site', () => {
    expect(lonLatOf(at(37.5), [0, 0])).toEqual([20, 37.5]);
  });

  /**
   * Length of a degree on WGS 84: Snyder, J. P. (1987), Map Projections — A Working Manual, USGS Professional Paper
   * 1395 (formulas); the values from memory.
   */
  it.each([
    [0, 110_574, 111_320],
    [30, 110_852, 96_486],
    [45, 111_132, 78_847],
    [60, 111_412, 55_800],
  ])('at %d° a degree of latitude is %d m and one of longitude %d m', (latitude, north, east) => {
    const [, up] = lonLatOf(at(latitude), [0, 1000]);
    const [right] = lonLatOf(at(latitude), [1000, 0]);
    expect(Math.abs(1000 / (up - latitude) / north - 1)).toBeLessThan(2e-5);
    expect(Math.abs(1000 / (right - 20) / east - 1)).toBeLessThan(2e-5);
  });

  it('follows the plan’s bearing: with +y to the east, +x points south', () => {
    const [east] = lonLatOf(at(-34, 90), [0, 50]);
    const [, south] = lonLatOf(at(-34, 90), [50, 0]);
    expect(east).toBeGreaterThan(20.0005);
    expect(south).toBeLessThan(-34.0004);
  });
});

describe('a load as GeoJSON (RFC 7946)', () => {
  const plants = [{ id: 'p', kind: 'plant', at: [2.4, 1.3], height: 1.2, verdict: 'fine', sentence: 'Fine.' }] as const;
  const made = loadGeoJson(at(33, 25), smallLoad([10, null, 4], plants));
  const collection = { type: made.type, features: [...made.features] } as {
    type: string;
    features: {
      type: string;
      geometry: { type: string; coordinates: number[][][] };
      properties: Record<string, unknown>;
    }[];
  };

  it('is a collection of cells and plants', () => {
    expect(collection.type).toBe('FeatureCollection');
    expect(collection.features.map(({ properties }) => properties.what)).toEqual(['cell', 'cell', 'plant']);
    expect(collection.features[0].properties).toMatchObject({ plan: [2.25, 1.25], height: 0.5, hotLoad: 10, grade: 3 });
    expect(collection.features[2]).toMatchObject({
      geometry: { type: 'Point' },
      properties: { id: 'p', verdict: 'fine' },
    });
  });

  it('is read by Turf as it was meant: whole squares that hold their own middle and not each other’s', () => {
    const read = JSON.parse(JSON.stringify(collection)) as typeof collection;
    const cells = read.features
      .filter(({ properties }) => properties.what === 'cell')
      .map(({ geometry: { coordinates } }) => polygon(coordinates));
    const middle = ({ geometry: { coordinates } }: (typeof cells)[number]): [number, number] => {
      const corners = coordinates[0].slice(1);
      return [0, 1].map((k) => corners.reduce((sum, corner) => sum + corner[k], 0) / corners.length) as [
        number,
        number,
      ];
    };
    for (const cell of cells) {
      expect(kinks(cell).features).toEqual([]);
      for (const other of cells) expect(booleanPointInPolygon(middle(cell), other)).toBe(other === cell);
    }
    expect(cells).toHaveLength(2);
  });

  it('rings are closed and counter-clockwise, longitude first', () => {
    const [ring] = collection.features[0].geometry.coordinates;
    expect(ring).toHaveLength(5);
    expect(ring[4]).toEqual(ring[0]);
    let twice = 0;
    for (let k = 0; k < 4; k++)
      twice += (ring[k][0] - 20) * (ring[k + 1][1] - 33) - (ring[k + 1][0] - 20) * (ring[k][1] - 33);
    expect(twice).toBeGreaterThan(0);
    expect(Math.abs(ring[0][0] - 20)).toBeLessThan(0.001);
  });

  it('of four million cells no more are made than are read', () => {
    const few = smallLoad([10, 4, 7]);
    let read = 0;
    const counted = new Proxy(new Float64Array(4_000_000), {
      get: (values, key) => {
        if (typeof key === 'string' && /^\d+$/.test(key)) read++;
        return Reflect.get(values, key) as unknown;
      },
    });
    const many = {
      ...few,
      grid: { ...few.grid, columns: 2000, rows: 2000 },
      cells: Object.fromEntries(Object.keys(few.cells).map((name) => [name, counted])) as typeof few.cells,
    };
    const pieces = jsonPieces(loadGeoJson(at(33), many));
    for (let k = 0; k < 3; k++) expect(pieces.next().value?.length).toBeLessThan(100_000);
    expect(read).toBeGreaterThan(100);
    expect(read).toBeLessThan(10_000);
  });
});
