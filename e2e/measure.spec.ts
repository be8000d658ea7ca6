import { expect, type Page, test } from '@playwright/test';
import { CENTS_PER_MM_645 } from '../test/reference/audit';
import { STEEL_645 } from '../test/reference/height';
import { WORKED, WORKED_SPREAD } from '../test/reference/intonation-worked';
import { FRET_SHARES } from '../test/reference/survey';
import { begin, figure, openMore, openWorkbench, rowsOf, showHundredths, type } from './workbench';

const STRINGS = ['1 E4', '2 B3', '3 G3', '4 D3', '5 A2', '6 E2'];
const FIT = 'Frets, saddle line, slotted bridge, finger';

const choose = (page: Page, select: string, label: string) =>
  page.getByRole('combobox', { name: select, exact: true }).selectOption({ label });

/** A column of the table "Compensation by string", string 1 first; the minus sign as a hyphen. */
const column = async (page: Page, nth: number): Promise<readonly string[]> => {
  const rows = await rowsOf(page, 'Compensation by string');
  return STRINGS.map((name) => (rows[name]?.[nth] ?? '').replace('−', '-'));
};

const signed = (value: number, decimals: number): string => `${value > 0 ? '+' : ''}${value.toFixed(decimals)}`;

test.beforeEach(async ({ page }) => {
  await openWorkbench(page);
  await showHundredths(page);
});

test('the worked example typed by hand: each string, the straight saddle, and what the crown leaves', async ({
  page,
}) => {
  await begin(page, 'Small-bodied steel-string');
  await type(page, 'Action at 12th fret, treble', '1.9');
  await type(page, 'Action at 12th fret, bass', '2.5');
  await type(page, 'Neck relief', '0.15');
  await openMore(page, 'Nut, radius, each string, limits');
  await type(page, 'String height at the nut, treble', '0.3');
  await type(page, 'String height at the nut, bass', '0.4');
  await type(page, 'Scale length', '645');
  await choose(page, 'String set', 'Steel, bronze-wound, 12-53');
  await type(page, 'String spacing at saddle, outer', String(WORKED_SPREAD));
  await choose(page, 'Strings spaced by', 'equal centres');
  await page.getByRole('radio', { name: 'Strings', exact: true }).check();

  await expect(figure(page, 'Break point, centre')).toHaveText((645 + WORKED.fitLine.centre).toFixed(2));
  await expect(figure(page, 'Slant', 0)).toContainText(`${WORKED.fitLine.angleDeg.toFixed(2)}°`);
  expect(await column(page, 0)).toEqual(WORKED.fit.map((mm) => mm.toFixed(2)));
  expect(await column(page, 3)).toEqual(WORKED.fitLine.misses.map((mm) => signed(mm, 2)));
  for (const [index, cents] of (await column(page, 4)).entries())
    expect(Math.abs(Number(cents) + (WORKED.fitLine.misses[index] ?? 0) * CENTS_PER_MM_645)).toBeLessThan(0.06);

  await test.step('the octave match', async () => {
    await openMore(page, FIT);
    await choose(page, 'In tune over', 'the 12th fret alone');
    expect(await column(page, 0)).toEqual(WORKED.octave.map((mm) => mm.toFixed(2)));
    await expect(figure(page, 'Break point, centre')).toHaveText((645 + WORKED.octaveLine.centre).toFixed(2));
    await choose(page, 'In tune over', 'a range of frets');
  });

  await test.step('a nut that may move', async () => {
    await choose(page, 'The nut', 'may move too');
    const rows = await rowsOf(page, 'Nut setback by string');
    expect(STRINGS.map((name) => rows[name]?.[0]?.replace('−', '-'))).toEqual(
      WORKED.freeNut.map((mm) => mm.toFixed(2)),
    );
    expect(await column(page, 0)).toEqual(WORKED.freeSaddle.map((mm) => mm.toFixed(2)));
    await choose(page, 'The nut', 'stays where it is');
  });

  await test.step('least worst miss: 3/32 in just fails, 1/8 in passes', async () => {
    await choose(page, 'Straight saddle by', 'least worst miss');
    await expect(figure(page, 'Slant')).toContainText(`${WORKED.minimax.fit.angleDeg.toFixed(2)}°`);
    const checks = page.getByRole('table', { name: 'Design checks' });
    await page.getByRole('tab', { name: 'Draw' }).click();
    // 2 × 0.908 and 0.3 of land on both sides: 2.42 mm is needed.
    await type(page, 'Slot width', '3/32 in');
    await expect(checks).toContainText('too thin to be shaped to the mark of');
    await type(page, 'Slot width', '1/8 in');
    await expect(checks).toContainText('can be shaped to every string’s mark');
    await page.getByRole('tab', { name: 'Measure' }).click();
  });

  await test.step('a bridge bought slotted at 3°', async () => {
    await openMore(page, FIT);
    await choose(page, 'Straight saddle by', 'least squares');
    await type(page, 'Slant of a slotted bridge', '3');
    await expect(figure(page, 'Break point, centre')).toHaveText((645 + WORKED.threeDegrees.centre).toFixed(2));
    expect(await column(page, 3)).toEqual(WORKED.threeDegrees.misses.map((mm) => signed(mm, 2)));
  });
});

test('the rule of thumb with the model beside it, and figures of the maker’s own', async ({ page }) => {
  await begin(page, 'Steel-string guitar');
  await expect(page.getByText('The string model says')).toBeVisible();
  await expect(page.getByText('Why is not known')).toBeVisible();
  await page.getByRole('radio', { name: 'Own figures', exact: true }).check();
  const box = page.getByRole('textbox', { name: 'Compensation, string 2 (B3)' });
  await type(page, 'Compensation, string 2 (B3)', '3.5');
  expect((await column(page, 0))[1]).toBe('3.50');
  await type(page, 'Compensation, string 2 (B3)', '');
  await expect(box).toHaveValue('');
  await expect(box).toHaveAttribute('aria-invalid', 'false');
  // The rule's 1.5875 to 3.96875 mm, a fifth of the way across and a little more for equal gaps.
  expect(Number((await column(page, 0))[1])).toBeGreaterThan(1.5875 + 2.38125 / 5 - 0.1);
  await page.getByRole('radio', { name: 'Rule of thumb', exact: true }).check();
  await type(page, 'Compensation, treble', '-1');
  await expect(page.getByRole('table', { name: 'Design checks' })).toContainText('negative compensation');
});

test('heights: over the fret tops, over the bridge, go and no go', async ({ page }) => {
  await begin(page, 'Steel-string guitar');
  await type(page, 'Compensation, treble', '0');
  await type(page, 'Compensation, bass', '0');
  await type(page, 'Action at 12th fret, treble', '2.2');
  await type(page, 'Action at 12th fret, bass', '2.2');
  await type(page, 'Neck relief', '0.15');
  await openMore(page, 'Nut, radius, each string, limits');
  await type(page, 'String height at the nut, treble', '0.5');
  await type(page, 'String height at the nut, bass', '0.5');
  await type(page, 'Fingerboard radius', '');
  await type(page, 'Straightedge to bridge top', '0.4');
  const heights = async () => (await rowsOf(page, 'Heights by string'))['3 G3'];
  await expect(page.getByText('Go: this bridge works at this neck angle.')).toBeVisible();
  expect((await heights())?.slice(0, 2)).toEqual([STEEL_645.height.toFixed(2), STEEL_645.proudAt04.toFixed(2)]);
  await type(page, 'Straightedge to bridge top', '1.6');
  expect((await heights())?.[1]).toBe(STEEL_645.proudAt16.toFixed(2));

  await test.step('a neck that points too low, and the thickness that would do', async () => {
    await type(page, 'Straightedge to bridge top', '-0.6');
    await expect(page.getByText('Change the bridge: one 8.00 mm to 8.53 mm thick at the slot would do.')).toBeVisible();
    await expect(page.getByText('lies 0.60 mm below the top of the bridge')).toBeVisible();
    await type(page, 'Straightedge to bridge top', '-4');
    await expect(page.getByText('Set the neck first:')).toBeVisible();
  });

  await test.step('a limit of the maker’s own, and the usual again', async () => {
    await type(page, 'Straightedge to bridge top', '0.2');
    await expect(page.getByText('Change the bridge:')).toBeVisible();
    await openMore(page, 'Limits');
    await type(page, 'Straightedge over the bridge, least', '0');
    await expect(page.getByText('Go: this bridge')).toBeVisible();
    await type(page, 'Straightedge over the bridge, least', '');
    await expect(page.getByText('Change the bridge:')).toBeVisible();
  });

  await test.step('a classical straightedge runs below its bridge top: no false alarm', async () => {
    await begin(page, 'Classical guitar');
    await type(page, 'Straightedge to bridge top', '-2');
    await expect(page.getByText('Go: this bridge works at this neck angle.')).toBeVisible();
  });
});

test('fret survey: a shortened nut end shows as an offset, and a badly placed fret is named', async ({ page }) => {
  await begin(page, 'Steel-string guitar');
  // 645 mm laid out, the nut end 1.0 short, the 7th fret 1.5 too far from the nut.
  const reading = (fret: number): string => (645 * (FRET_SHARES[fret] ?? 0) - 1 + (fret === 7 ? 1.5 : 0)).toFixed(1);
  await type(page, 'Nut to 12th fret, 1st reading', reading(12));
  await type(page, 'Nut to 12th fret, 2nd reading', reading(12));
  await openMore(page, 'Other frets');
  for (const [fret, name] of [
    [5, '5th'],
    [7, '7th'],
    [14, '14th'],
    [17, '17th'],
  ] as const) {
    await choose(page, 'Another fret', `${name} fret`);
    await type(page, `Nut to ${name} fret, 1st reading`, reading(fret));
    await type(page, `Nut to ${name} fret, 2nd reading`, reading(fret));
  }
  const scale = page.locator('section', { has: page.getByRole('heading', { name: 'Scale', exact: true }) });
  await expect(scale.getByText(/The 7th fret sits 1\.[45]\d mm too far from the nut/)).toContainText(
    '2 readings agree, so the fret is badly placed',
  );
  const cleared = await scale.getByText('Left out, the scale would read').textContent();
  expect(Math.abs(Number(/read ([\d.]+)/.exec(cleared ?? '')?.[1]) - 645)).toBeLessThan(0.2);

  await test.step('without it the offset is the whole millimetre', async () => {
    for (const nth of ['2nd', '1st']) await type(page, `Nut to 7th fret, ${nth} reading`, '');
    await expect(scale.getByText('Left out,')).toHaveCount(0);
    await expect(scale.getByText('Nut offset').locator('strong')).toHaveText(/^−(1\.0\d|0\.9\d) ± /);
  });
});

test('a bridge that is there: leave, shape, recut, move', async ({ page }) => {
  await begin(page, 'Steel-string guitar');
  await openMore(page, 'Read a bridge that is there');
  // 645 + 1.5875 and 645 + 3.96875 are the rule's own marks.
  await type(page, 'To the break point, treble', '646.6');
  await type(page, 'To the break point, bass', '649.0');
  await expect(page.getByText('Leave it:')).toBeVisible();
  await type(page, 'To the break point, treble', '645.5');
  await type(page, 'To the break point, bass', '646.0');
  await expect(page.getByText('Recut the slot:')).toBeVisible();
  const bass = (await rowsOf(page, 'Present against wanted'))['6 E2'];
  expect(bass?.slice(0, 3)).toEqual(['1.00', '3.97', signed((3.96875 - 1) * CENTS_PER_MM_645, 1)]);
  await type(page, 'Slot as it is, width', '6.35');
  await type(page, 'Saddle as it is, thickness', '6.35');
  await expect(page.getByText('Shape the saddle:')).toBeVisible();
  await type(page, 'To the break point, treble', '640');
  await type(page, 'To the break point, bass', '641');
  await expect(page.getByText('Move the bridge:')).toBeVisible();
  await type(page, 'Cents at the 12th fret, bass', '-10');
  await expect(page.getByText('the tuner reads')).toBeVisible();
});

test('what it is worth: doubts, and the same by sampling with progress and cancel', async ({ page }) => {
  await begin(page, 'Steel-string guitar');
  await expect(page.getByText('Measure the core of the 6th string again: that would help most.')).toBeVisible();
  await openMore(page, 'Each string, doubts, sampling');
  const start = page.getByRole('button', { name: 'Sample the doubts' });
  await start.click();
  await expect(page.getByRole('progressbar', { name: 'Sampling' })).toBeVisible();
  await page.getByRole('button', { name: 'Cancel' }).click();
  await expect(page.getByRole('status')).toHaveText('Sampling cancelled.');
  await expect(page.getByRole('table', { name: 'Sampled setbacks' })).toHaveCount(0);
  await start.click();
  const sampled = await rowsOf(page, 'Sampled setbacks');
  const marks = await rowsOf(page, 'Compensation by string');
  for (const name of STRINGS) {
    const [mean = 0, low = 0, high = 0] = (sampled[name] ?? []).map(Number);
    const mark = Number.parseFloat(marks[name]?.[1] ?? '');
    expect(low).toBeLessThan(mean);
    expect(mean).toBeLessThan(high);
    expect(low).toBeLessThan(mark);
    expect(mark).toBeLessThan(high);
  }
});

test('every string’s figures can be changed, and pull and marks follow', async ({ page }) => {
  await begin(page, 'Twelve-string guitar');
  await openMore(page, 'Each string: pitch, gauge, pull, core');
  const table = await rowsOf(page, 'Strings by course');
  expect(Object.keys(table)).toHaveLength(13);
  expect(table['2 E4 twin']?.[0]).toBe('1');
  await begin(page, 'Steel-string guitar');
  await openMore(page, 'Each string: pitch, gauge, pull, core');
  await openMore(page, '6 E2: figures and sources');
  const before = Number((await column(page, 1))[5]?.split(' ')[0]);
  await type(page, 'Core, string 6', '0.6');
  expect(Number((await column(page, 1))[5]?.split(' ')[0])).toBeGreaterThan(before + 1);
  await expect(page.getByRole('combobox', { name: 'String set' })).toHaveValue('');
});

test('wrong text outlives a change of station', async ({ page }) => {
  const box = page.getByRole('textbox', { name: 'Nut width', exact: true });
  await type(page, 'Nut width', 'abc');
  await page.getByRole('tab', { name: 'Draw' }).click();
  await page.getByRole('tab', { name: 'Measure' }).click();
  await expect(box).toHaveValue('abc');
  await expect(box).toHaveAttribute('aria-invalid', 'true');
  await box.press('Escape');
  await expect(box).toHaveValue('46.0');
});

test('New names nine kinds, all glued, and says that a floating bridge is outside', async ({ page }) => {
  await page.getByRole('button', { name: 'New', exact: true }).click();
  const dialog = page.getByRole('dialog');
  await expect(dialog.locator('.kinds').getByRole('button')).toHaveCount(10);
  await expect(dialog).toContainText('A floating bridge, held by the strings alone, is outside this tool.');
  await dialog.getByRole('button', { name: 'Cancel' }).click();
  await expect(dialog).toHaveCount(0);
});

test('strings come and go: an eight-string ukulele of the four, and a string told by its measurement', async ({
  page,
}) => {
  await begin(page, 'Tenor ukulele');
  await openMore(page, 'Each string: pitch, gauge, pull, core');
  for (const number of [1, 3, 5, 7]) {
    await page
      .locator('summary')
      .filter({ hasText: new RegExp(`^${number} .*figures and sources$`) })
      .click();
    await page.getByRole('button', { name: `Pair string ${number}`, exact: true }).click();
  }
  const eight = await rowsOf(page, 'Strings by course');
  expect(
    Object.values(eight)
      .map(([course]) => course)
      .slice(0, 8),
  ).toEqual(['1', '1', '2', '2', '3', '3', '4', '4']);
  // Figures stand for themselves: each pair pulls alike, so the pulls of 1 and 2 are the same.
  const pulls = Object.values(eight).map((cells) => cells[4]);
  expect(pulls[0]).toBe(pulls[1]);
  await page.getByRole('button', { name: 'Remove string 1', exact: true }).click();
  expect(Object.keys(await rowsOf(page, 'Strings by course'))).toHaveLength(8);
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  expect(Object.keys(await rowsOf(page, 'Strings by course'))).toHaveLength(9);

  const from = page.getByRole('combobox', { name: 'Stretch and bending, string 3, from', exact: true });
  await expect(from).toHaveValue('measured');
  await from.selectOption({ label: 'the core' });
  await expect(page.getByRole('textbox', { name: 'Core, string 3', exact: true })).not.toHaveValue('');
  await expect(page.getByRole('status')).toContainText('Stretch and bending, string 3: by the core');
});
