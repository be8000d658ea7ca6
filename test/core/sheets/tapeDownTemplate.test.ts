import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createDerive } from '../../../src/core/derive/createDerive';
import type { Project } from '../../../src/core/document/types';
import { LINE_STYLES } from '../../../src/core/drawing/lineStyles';
import { demoProject } from '../../../src/core/kinds/demo';
import { KINDS } from '../../../src/core/kinds/kinds';
import { usualBridge } from '../../../src/core/kinds/usualBridge';
import { tapeDownTemplate } from '../../../src/core/sheets/tapeDownTemplate';
import type { Page, Paper, SheetDocument } from '../../../src/core/sheets/types';
import type { LengthStyle } from '../../../src/core/units/formatLength';
import { anyProject } from '../derive/randomProject';
import { shapedOutline } from '../document/shapedOutline';
import { steelProject, steelWith } from '../document/steelProject';
import { valueOf as answerOf } from '../document/valueOf';
import { itemBox, overlap, textBox } from './itemBox';

const A4: Paper = { id: 'a4', name: 'A4', width: 210, height: 297 };
const LETTER: Paper = { id: 'letter', name: 'Letter', width: 215.9, height: 279.4 };
const MM: LengthStyle = { unit: 'mm', decimals: 1 };
const INCH: LengthStyle = { unit: 'in', denominator: 64 };

const lay = (project: Project, paper: Paper, style: LengthStyle) =>
  tapeDownTemplate(project, createDerive()(project), { paper, style, date: '2026-01-02' });
const sheet = (project: Project, paper: Paper = A4, style: LengthStyle = MM): SheetDocument =>
  answerOf(lay(project, paper, style));
const words = (page: Page | undefined): string =>
  (page?.items ?? []).flatMap((item) => (item.kind === 'text' ? [item.text] : [])).join('\n');

const nut = (datum: 'zero-fret' | 'board-end') => ({ datum, offset: 0, face: 4.5 });
const NOW = '2026-01-01T00:00:00Z';
const projects: readonly (readonly [string, Project])[] = [
  ...KINDS.map(({ name, make }) => [name, make('p', NOW)] as const),
  ['demo', demoProject('p', NOW)],
  ['zero fret', steelWith({ instrument: { nut: nut('zero-fret') } })],
  [
    'board end, outer pin holes',
    steelWith({
      instrument: { nut: nut('board-end'), hand: 'left' },
      bridge: { locating: { site: 'outer-pin-holes', drill: 3, points: null, clearance: 0.5 } },
    }),
  ],
  [
    'four square pins',
    {
      ...steelWith({
        bridge: {
          pins: {
            from: 8,
            spread: 42,
            row: 'square',
            hole: 4,
            stagger: 0,
            taper: 3,
            underHead: 5.4,
            rise: 0,
            ramp: null,
          },
        },
      }),
      strings: steelProject.strings.slice(1, 5),
    },
  ],
];
/** Every shape on a steel-string, for either hand. */
const shaped = (
  ['rectangular', 'belly', 'belly-nut', 'pyramid-tip', 'tie-block', 'small-ukulele', 'double-sided'] as const
).flatMap((shape) =>
  (['right', 'left'] as const).map((hand) => {
    const project = { ...steelWith({ instrument: { hand } }), bridge: usualBridge(shape) };
    return [`${shape}, ${hand} hand`, project] as const;
  }),
);
const cases = [...projects, ...shaped].flatMap(([name, project]) =>
  [A4, LETTER].flatMap((paper) =>
    [MM, INCH].map((style) => ({ name, paper, style, project, on: `${paper.name}, ${style.unit}` })),
  ),
);

/** Nearest to an edge of the paper that anything is printed: most printers leave up to 6.35 mm white (common practice). */
const PRINTABLE = 6.4;

const expectOnPaper = (page: Page): void => {
  for (const item of page.items) {
    const { minX, minY, maxX, maxY } = itemBox(item);
    expect(Math.min(minX, minY, page.width - maxX, page.height - maxY), item.id).toBeGreaterThan(PRINTABLE);
  }
};

/** Everything of the instrument lies above the line where the taped part is cut off, all of the reference part below. */
const expectPartsApart = (page: Page): void => {
  const cut = page.items.find(({ id }) => id === 'scissors-foot');
  if (cut === undefined) return;
  const y = itemBox(cut).minY;
  for (const item of page.items) {
    const box = itemBox(item);
    if (item.layer !== 'sheet' || /^(note|holes)-/.test(item.id)) expect(box.maxY, item.id).toBeLessThanOrEqual(y);
    if (/^(calibration|square-|squaring|place|glue|title)/.test(item.id) && item.layer === 'sheet')
      expect(box.minY, item.id).toBeGreaterThanOrEqual(y);
  }
};

describe.each(cases)('the template of $name on $on', ({ project, paper, style }) => {
  const { pages } = sheet(project, paper, style);

  it('is one paper, all pages alike', () => {
    const sizes = [[paper.width, paper.height].join(), [paper.height, paper.width].join()];
    for (const { width, height } of pages) expect(sizes).toContain([width, height].join());
    expect(new Set(pages.map(({ width }) => width)).size).toBe(1);
  });

  it('keeps everything where a printer prints', () => {
    for (const page of pages) expectOnPaper(page);
  });

  it('keeps taped and cut-away part apart', () => {
    for (const page of pages) expectPartsApart(page);
  });

  it('has each id once, no words under 2.9 mm, key figures at 4.6, no line under 0.18 mm', () => {
    for (const { items } of pages) {
      expect(new Set(items.map(({ id }) => id)).size).toBe(items.length);
      for (const item of items)
        if (item.kind === 'text') expect(item.height).toBeGreaterThanOrEqual(item.role === 'key' ? 4.6 : 2.9);
        else expect(LINE_STYLES[item.role].width).toBeGreaterThanOrEqual(0.18);
    }
  });

  it('prints no words over others, and none across the edge of the square', () => {
    for (const { items } of pages) {
      const texts = items.flatMap((item) => (item.kind === 'text' && item.text !== '' ? [item] : []));
      const boxes = texts.map((text) => ({ id: text.id, box: textBox(text, false) }));
      for (const [index, a] of boxes.entries())
        for (const b of boxes.slice(index + 1)) expect(overlap(a.box, b.box), `${a.id}, ${b.id}`).toBeLessThan(0.05);
      const square = items.find(({ id }) => id === 'calibration-square');
      if (square === undefined) continue;
      const edge = itemBox(square);
      for (const { id, box } of boxes)
        if (overlap(box, edge) > 0) expect(box.maxX < edge.maxX && box.minX > edge.minX, id).toBe(true);
    }
  });

  it('has one square of the right side, and a long line each way on every page', () => {
    const squares = pages.flatMap(({ items }) => items.filter(({ id }) => id === 'calibration-square'));
    expect(squares).toHaveLength(1);
    for (const square of squares) {
      const { minX, maxX, minY, maxY } = itemBox(square);
      expect(maxX - minX).toBeCloseTo(style.unit === 'mm' ? 100 : 101.6, 9);
      expect(maxY - minY).toBeCloseTo(style.unit === 'mm' ? 100 : 101.6, 9);
    }
    for (const { items } of pages)
      for (const line of ['long-across', 'long-along']) expect(items.some(({ id }) => id === line)).toBe(true);
  });

  it('is true size: slot and bridge keep their lengths on the page', () => {
    const outline = pages[0]?.items.find(({ id }) => id === 'footprint');
    if (outline === undefined) throw new Error('There is no footprint.');
    const { minX, maxX } = itemBox(outline);
    expect(maxX - minX).toBeCloseTo(shapedOutline(project.bridge).parameters.length ?? 0, 9);
  });
});

describe('the template', () => {
  // The usual steel bridge with its windows is 164.4 wide and fits into the 180 of A4; the classical one is 202 and does not.
  it('of a steel-string is one page upright, of a classical two on their side', () => {
    expect(sheet(steelProject).pages.map(({ width }) => width)).toEqual([210]);
    const classical = KINDS.find(({ id }) => id === 'classical')?.make('p', NOW) ?? steelProject;
    const { pages } = sheet(classical);
    expect(pages.map(({ width }) => width)).toEqual([297, 297]);
    expect(pages[0]?.items.some(({ id }) => id === 'calibration-square')).toBe(false);
    expect(pages[1]?.items.some(({ id }) => id === 'footprint')).toBe(false);
    expect(words(pages[0])).toContain('sheet 1 of 2');
    expect(words(pages[1])).toContain('sheet 2 of 2');
  });

  it('says what a maker needs', () => {
    const text = words(sheet(steelProject).pages[0]);
    for (const said of [
      'NUT SIDE',
      'BASS',
      'TREBLE',
      'THIS SIDE UP',
      'SQUARE LINE',
      'from the nut',
      'from the 12th fret',
      'octave line 645.0 mm',
      'board edge',
      'string 1',
      'string 6',
      'Plain steel · right hand',
      'scale 645.0 mm as entered',
      'measured from the front face of the nut',
      'strings .012 to .053 in, action 1.9 / 2.5 mm wanted',
      'tape-down template, sheet 1 of 1, 1:1',
      'no print correction (1.000 × 1.000)',
      '2026-01-02, revision 3',
      'Before the glue',
      'Square by these',
      'Place by these',
      '2 locating-pin holes 1.6 mm in the slot ends',
      '6 pins, pilot 4.8 mm, ream to the pin',
      'Blades, drills, dust',
      // Bench figures of the left-hand case, to a tenth; 1731.234 / 645 = 2.68.
      '647.8',
      '646.6',
      '649.0',
      '646.2',
      '1 mm = 2.7 cents',
    ])
      expect(text).toContain(said);
    // 76.2 · sin 2.5249° = 3.357
    expect(text).toMatch(/Slant 3\.4 .*76\.2 mm \(2\.52°\)/);
  });

  it('says it in inches', () => {
    const text = words(sheet(steelProject, LETTER, INCH).pages[0]);
    // 76.2 is 3 in, 3.357 is 0.1322 in (17/128, nearest 64th 1/8); 2.684 cents per mm · 25.4 / 32 = 2.13.
    for (const said of ['4 × 4 in', '1/32″ = 2.1 cents', 'pilot 3/16″', '1/16″ in the slot ends'])
      expect(text).toContain(said);
    expect(text).toMatch(/Slant 1\/8.* 3″ \(2\.52°\)/);
  });

  it('tells all three datums when there is a zero fret', () => {
    const { scale } = { scale: { from: 'entered' as const, entered: 628, readings: [] } };
    const rule = { treble: 3.5, bass: 3.5, reach: 'break-point' as const, source: '' };
    const text = words(
      sheet(steelWith({ instrument: { nut: nut('zero-fret'), scale }, compensation: { rule } })).pages[0],
    );
    // Bench case: 631.5 from the zero fret, 636.0 from the nut face, 317.5 from the 12th.
    for (const said of ['zero fret', 'nut face', '631.5', '636.0', '317.5', 'from the nut face'])
      expect(text).toContain(said);
    expect(text).not.toContain('nut corner');
  });

  it('has the same words for both hands', () => {
    const left = words(sheet(steelWith({ instrument: { hand: 'left' } })).pages[0]);
    expect(left).toBe(words(sheet(steelProject).pages[0]).replace('right hand', 'left hand'));
  });

  it('cuts a name that is too long with an ellipsis, hand kept', () => {
    const about = { ...steelProject.about, name: 'W'.repeat(80) };
    expect(words(sheet({ ...steelProject, about }).pages[0])).toMatch(/W… · right hand/);
  });

  it('is named after project, revision, paper, unit and date, so that one drawing is one file', () => {
    const { fileKey, title, date, language } = sheet(steelProject, LETTER, INCH);
    for (const part of ['p1', '3', 'letter', 'in', '2026-01-02']) expect(fileKey.split(' ')).toContain(part);
    expect([title, date, language]).toEqual(['Plain steel: tape-down template', '2026-01-02', 'en']);
    expect(sheet(steelProject)).toEqual(sheet(steelProject));
  });
});

describe('the template is refused', () => {
  const wide = (length: number) =>
    steelWith({ bridge: { outline: { shape: 'tie-block', parameters: { length, full: 28, block: 80, corner: 0 } } } });

  // 290 and two windows' overhang of 6 are 302: more than A4's 267 and Letter's 249.4 on their side; Legal leaves 325.6.
  it.each([A4, LETTER])('on $name for a bridge too wide, with the papers that would do', (paper) => {
    const result = lay(wide(290), paper, MM);
    if (result.ok) throw new Error('Expected a refusal.');
    expect(result.issues.map(({ code, path }) => [code, path])).toEqual([['sheet.large', 'paper']]);
    expect(result.issues[0]?.message).toContain('302.0 mm wide');
    expect(result.issues[0]?.message).toContain(`too much for ${paper.name} by its width.`);
    expect(result.issues[0]?.message).toContain('These papers would do: Legal, Tabloid, A3.');
  });

  it('not at 255, which A4 on its side just takes, and Letter does not', () => {
    expect(lay(wide(255), A4, MM).ok).toBe(true);
    const letter = lay(wide(255), LETTER, MM);
    expect(letter.ok).toBe(false);
    if (!letter.ok) expect(letter.issues[0]?.message).toContain('These papers would do: A4,');
  });

  // 190 and two windows are 202, which A4 takes on its side; a bridge 80 deep then leaves no room for the tables below it.
  it('for a bridge too deep, and says that it is the length', () => {
    const parameters = { length: 190, full: 80, block: 80, corner: 0 };
    const result = lay(steelWith({ bridge: { outline: { shape: 'tie-block', parameters } } }), A4, MM);
    if (result.ok) throw new Error('Expected a refusal.');
    expect(result.issues.map(({ code }) => code)).toEqual(['sheet.large']);
    expect(result.issues[0]?.message).toContain('202.0 mm wide');
    expect(result.issues[0]?.message).toContain('too much for A4 by its length.');
  });

  it('with the reasons of the parts that failed', () => {
    const result = lay(steelWith({ bridge: { slot: { ...steelProject.bridge.slot, length: 3 } } }), A4, MM);
    expect(result.ok ? [] : result.issues.map(({ code }) => code)).toEqual(['slot.short']);
  });
});

it('whatever the figures, a sheet that is not refused stays on the paper with its parts apart', () => {
  let laid = 0;
  fc.assert(
    fc.property(anyProject, (project) => {
      const result = lay(project, A4, MM);
      if (!result.ok) return;
      laid += 1;
      for (const page of result.value.pages) {
        expectOnPaper(page);
        expectPartsApart(page);
      }
    }),
    { seed: 5, numRuns: 150 },
  );
  expect(laid).toBeGreaterThan(20);
});
