import { afterEach, describe, expect, it, vi } from 'vitest';
import { makePdf } from '../../../src/exporters/pdf/makePdf';
import { readWithPdfjs } from '../../readPdf/readWithPdfjs';
import { readWithPdfLib } from '../../readPdf/readWithPdfLib';
import { FONTS, handMadeSheet, lineThrough, pathItem, textItem } from './handMadeSheet';
import { unwrap } from './unwrap';

const sheet = handMadeSheet(
  210,
  297,
  [
    pathItem(
      lineThrough([
        { x: 10, y: 10 },
        { x: 90, y: 10 },
      ]),
    ),
    textItem('1/8″'),
    textItem('Key', { role: 'key' }),
  ],
  [textItem('2')],
);
const bytesOf = (changes: Partial<typeof sheet> = {}) => unwrap(makePdf({ ...sheet, ...changes }, FONTS)).bytes;
const same = (a: Uint8Array, b: Uint8Array) => Buffer.compare(a, b) === 0;

const zone = process.env.TZ;
afterEach(() => {
  vi.useRealTimers();
  if (zone === undefined) delete process.env.TZ;
  else process.env.TZ = zone;
});

describe('the same sheet makes the same bytes', () => {
  // Hours from UTC by the tz database: Newfoundland −3:30 in winter, Line Islands +14.
  it.each([
    { place: 'America/St_Johns', minutes: 210 },
    { place: 'Pacific/Kiritimati', minutes: -840 },
  ])('in $place as in UTC', ({ place, minutes }) => {
    process.env.TZ = 'UTC';
    const expected = bytesOf();
    process.env.TZ = place;
    expect(new Date('2024-01-15T12:00:00Z').getTimezoneOffset()).toBe(minutes);
    expect(same(bytesOf(), expected)).toBe(true);
  });

  it('on another day', () => {
    const expected = bytesOf();
    vi.useFakeTimers({ now: new Date('2031-05-06T07:08:09Z') });
    expect(same(bytesOf(), expected)).toBe(true);
  });

  it('and another revision another file identifier of 32 digits', () => {
    const identifier = (bytes: Uint8Array) =>
      /\/ID \[ <([0-9A-F]{32})> <\1> \]/u.exec(Buffer.from(bytes).toString('latin1'))?.[1];
    expect(identifier(bytesOf())).toMatch(/^[0-9A-F]{32}$/u);
    expect(identifier(bytesOf({ fileKey: 'hand-made:2' }))).not.toBe(identifier(bytesOf()));
  });
});

describe('what the file says of itself', () => {
  it('the day that the sheet was made, in UTC', async () => {
    expect((await readWithPdfjs(bytesOf())).creationDate).toBe("D:20240229000000+00'00'");
  });

  // č is 01 0D in UTF-16, and a bare 0D in a string of a PDF reads as 0A: ISO 32000-1 7.3.4.2.
  it.each(['Plain', 'Kytara č. 3 (č) \\ Ѝ', 'Überprüfung 1/8″ × 木'])('the title %s', async (title) => {
    expect((await readWithPdfjs(bytesOf({ title }))).title.normalize('NFC')).toBe(title);
  });

  it.each(['en', 'de-AT', 'pt-BR'])('the language %s', async (language) => {
    const bytes = bytesOf({ language });
    expect((await readWithPdfjs(bytes)).language).toBe(language);
    expect((await readWithPdfLib(bytes)).catalog.Lang).toBe(`(${language})`);
  });

  // Keys by ISO 32000-1 12.2; PrintScaling came with PDF 1.6, PickTrayByPDFSize with 1.7.
  it('that it wants to be printed at true size, on paper of its own size', async () => {
    const preferences = { PrintScaling: 'None', PickTrayByPDFSize: true, DisplayDocTitle: true };
    const read = await readWithPdfjs(bytesOf());
    expect(read.viewerPreferences).toEqual(preferences);
    expect(read.version).toBe('1.7');
    expect((await readWithPdfLib(bytesOf())).viewerPreferences).toEqual({
      PrintScaling: '/None',
      PickTrayByPDFSize: 'true',
      DisplayDocTitle: 'true',
    });
  });
});
