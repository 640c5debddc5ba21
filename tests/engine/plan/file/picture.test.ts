import { describe, expect, test } from 'vitest';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import { startNextYear } from '../../../../engine/plan/edit/plan.ts';
import { parsePlan, salvagePlan } from '../../../../engine/plan/file/parse.ts';
import { barePicture } from '../../../../engine/plan/file/picture/bare-picture.ts';
import { planText } from '../../../../engine/plan/file/serialize.ts';
import type { Plan } from '../../../../engine/plan/types.ts';

const latin = (text: string): Buffer => Buffer.from(text, 'latin1');
const short = (value: number): Buffer => Buffer.from([value >> 8, value & 255]);
const long = (value: number): Buffer =>
  Buffer.from([value >>> 24, (value >> 16) & 255, (value >> 8) & 255, value & 255]);
const swapped = (bytes: Buffer): Buffer => Buffer.from(bytes).reverse();

const SECRET = 'Calle Zephyrine 7';
const MAKER = '\0Zephyrine cameras\0';
/** 37° 53′ N: three rationals as CIPA DC-008 has a latitude (from memory). */
const LATITUDE = Buffer.concat([37, 1, 53, 1, 0, 1].map(long));

/** An EXIF block, high byte first: a maker, an orientation, and a directory of GPS with a latitude. */
function exifWith(orientation: number): Buffer {
  const entry = (tag: number, type: number, count: number, value: Buffer): Buffer =>
    Buffer.concat([short(tag), short(type), long(count), value]);
  const [makerAt, gpsAt, latitudeAt] = [50, 50 + MAKER.length, 50 + MAKER.length + 30];
  return Buffer.concat([
    latin('MM\0*'),
    long(8),
    short(3),
    entry(0x010f, 2, MAKER.length, long(makerAt)),
    entry(0x0112, 3, 1, Buffer.concat([short(orientation), short(0)])),
    entry(0x8825, 4, 1, long(gpsAt)),
    long(0),
    latin(MAKER),
    short(2),
    entry(0x0001, 2, 2, latin('N\0\0\0')),
    entry(0x0002, 5, 3, long(latitudeAt)),
    long(0),
    LATITUDE,
  ]);
}

const segment = (marker: number, body: Buffer): Buffer =>
  Buffer.concat([Buffer.from([0xff, marker]), short(body.length + 2), body]);
const [SOI, EOI] = [Buffer.from([0xff, 0xd8]), Buffer.from([0xff, 0xd9])];
const JFIF = segment(0xe0, latin('JFIF\0\x01\x02\0\0\x01\0\x01\0\0'));
const COLOURS = segment(0xe2, latin('ICC_PROFILE\0\x01\x01profile'));
/** Two scans, as a progressive picture has them, with a stuffed byte, a restart and a table between. */
const PIXELS = Buffer.concat([
  segment(0xdb, latin('table')),
  segment(0xc2, latin('frame')),
  segment(0xda, latin('scan')),
  Buffer.from([1, 0xff, 0, 2, 0xff, 0xd3, 3]),
  segment(0xc4, latin('codes')),
  segment(0xda, latin('scan')),
  Buffer.from([4, 5, 0xff, 0]),
]);
const jpegWith = (orientation: number): Buffer =>
  Buffer.concat([
    SOI,
    JFIF,
    segment(0xe1, Buffer.concat([latin('Exif\0\0'), exifWith(orientation)])),
    segment(0xe1, latin(`http://ns.adobe.com/xap/1.0/\0<x>${SECRET}</x>`)),
    COLOURS,
    segment(0xe2, latin(`MPF\0${SECRET}`)),
    segment(0xed, latin(`Photoshop 3.0\0${SECRET}`)),
    segment(0xfe, latin(SECRET)),
    PIXELS,
    EOI,
    // A second picture behind the first, as telephones hang one on.
    SOI,
    segment(0xe1, latin(SECRET)),
  ]);

const chunk = (type: string, body: Buffer): Buffer =>
  Buffer.concat([long(body.length), latin(type), body, latin('crc!')]);
const pngWith = (orientation: number): Buffer =>
  Buffer.concat([
    latin('\x89PNG\r\n\x1a\n'),
    chunk('IHDR', latin('header')),
    chunk('eXIf', exifWith(orientation)),
    chunk('tEXt', latin(SECRET)),
    chunk('iTXt', latin(SECRET)),
    chunk('zTXt', latin(SECRET)),
    chunk('gAMA', latin('gama')),
    chunk('IDAT', latin('pixels')),
    chunk('IEND', latin('')),
    latin(SECRET),
  ]);

const riff = (type: string, body: Buffer): Buffer =>
  Buffer.concat([latin(type), swapped(long(body.length)), body, body.length % 2 ? latin('\0') : latin('')]);
const webpOf = (...chunks: Buffer[]): Buffer => riff('RIFF', Buffer.concat([latin('WEBP'), ...chunks]));
const vp8x = (flags: number): Buffer => Buffer.concat([Buffer.from([flags, 0, 0, 0]), latin('canvas')]);
const webpWith = (orientation: number): Buffer =>
  Buffer.concat([
    webpOf(
      riff('VP8X', vp8x(0x2c)),
      riff('ICCP', latin('odd')),
      riff('VP8 ', latin('pixels')),
      riff('EXIF', exifWith(orientation)),
      riff('XMP ', latin(SECRET)),
    ),
    latin(SECRET),
  ]);

const GIF_HEAD = latin('GIF89a\x01\0\x01\0\x80\0\0colour');
const GIF_LOOP = latin('\x21\xff\x0bNETSCAPE2.0\x03\x01\0\0\0');
const GIF_IMAGE = latin('\x21\xf9\x04\0\0\0\0\0\x2c\0\0\0\0\x01\0\x01\0\0\x02\x02\x44\x01\0');
const GIF = Buffer.concat([
  GIF_HEAD,
  GIF_LOOP,
  latin(`\x21\xfe${String.fromCharCode(SECRET.length)}${SECRET}\0`),
  latin(`\x21\xff\x0bXMP DataXMP${String.fromCharCode(SECRET.length)}${SECRET}\0`),
  GIF_IMAGE,
  latin(`;${SECRET}`),
]);

const addressOf = (kind: string, bytes: Buffer): string => `data:image/${kind};base64,${bytes.toString('base64')}`;
const bare = (bytes: Buffer): Buffer => Buffer.from(barePicture(addressOf('jpeg', bytes)).split(',')[1], 'base64');

/** The least EXIF with one entry, an orientation: TIFF 6.0, section 2 (from memory). */
const turnOnly = (orientation: number): Buffer =>
  Buffer.concat([
    latin('MM\0*\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0'),
    Buffer.from([orientation]),
    latin('\0\0\0\0\0\0'),
  ]);

describe('a picture loses what its camera noted, and nothing that it shows', () => {
  test.each([1, 3, 6, 8])('JPEG, to be turned as %i says', (orientation) => {
    const turn = segment(0xe1, Buffer.concat([latin('Exif\0\0'), turnOnly(orientation)]));
    const kept = orientation === 1 ? [JFIF, COLOURS] : [JFIF, turn, COLOURS];
    expect(bare(jpegWith(orientation))).toEqual(Buffer.concat([SOI, ...kept, PIXELS, EOI]));
  });

  test('PNG', () => {
    const pixels = [chunk('gAMA', latin('gama')), chunk('IDAT', latin('pixels')), chunk('IEND', latin(''))];
    const head = [latin('\x89PNG\r\n\x1a\n'), chunk('IHDR', latin('header'))];
    expect(bare(pngWith(1))).toEqual(Buffer.concat([...head, ...pixels]));
    const turned = bare(pngWith(6));
    expect(turned.includes(turnOnly(6))).toBe(true);
    expect(turned.length).toBe(bare(pngWith(1)).length + 12 + turnOnly(6).length);
  });

  test('WebP, whose head says which notes follow', () => {
    const pixels = [riff('ICCP', latin('odd')), riff('VP8 ', latin('pixels'))];
    expect(bare(webpWith(1))).toEqual(webpOf(riff('VP8X', vp8x(0x20)), ...pixels));
    expect(bare(webpWith(8))).toEqual(webpOf(riff('VP8X', vp8x(0x28)), ...pixels, riff('EXIF', turnOnly(8))));
  });

  test('GIF, which still runs on', () => {
    expect(bare(GIF)).toEqual(Buffer.concat([GIF_HEAD, GIF_LOOP, GIF_IMAGE, latin(';')]));
  });

  test.each([
    ['JPEG', jpegWith(6)],
    ['PNG', pngWith(6)],
    ['WebP', webpWith(6)],
    ['GIF', GIF],
  ])('%s cut off anywhere is read without harm, and what is bare stays as it is', (_, bytes) => {
    for (let length = 0; length <= bytes.length; length++) {
      const once = bare(bytes.subarray(0, length));
      expect(bare(once)).toEqual(once);
      expect(once.includes(SECRET)).toBe(false);
      expect(once.includes(LATITUDE)).toBe(false);
    }
  });
});

describe('opening a plan file', () => {
  const traced = (address: string): Plan => {
    const plan = demoPlan('courtyard');
    return { ...plan, site: { ...plan.site, underlay: { image: address, at: [0, 0], width: 9 } } };
  };
  const imagesOf = (plan: Plan): (string | undefined)[] => [
    plan.site.underlay?.image,
    ...(plan.past ?? []).flatMap((year) => imagesOf(year.plan)),
  ];

  test.each([
    ['read', parsePlan],
    ['salvaged', salvagePlan],
  ])('leaves the place of a picture behind, in earlier years too: %s', (_, open) => {
    const opened = open(planText(startNextYear(traced(addressOf('jpeg', jpegWith(6))))));
    const images = opened.ok ? imagesOf(opened.plan) : [];
    expect(images.length).toBeGreaterThan(0);
    for (const image of images.filter((each) => each !== undefined)) {
      const bytes = Buffer.from(image.split(',')[1], 'base64');
      expect([bytes.includes(LATITUDE), bytes.includes('Zephyrine')]).toEqual([false, false]);
    }
  });

  test('changes nothing of a bare picture', () => {
    const plan = traced(addressOf('jpeg', Buffer.concat([SOI, JFIF, PIXELS, EOI])));
    const opened = parsePlan(planText(plan));
    expect(opened.ok && opened.plan.site.underlay).toEqual(plan.site.underlay);
  });
});
