import { expect, type Page, test } from '@playwright/test';
import { LEFT_645, READ_IN_64THS, SQUARE_632, TIE_BLOCK_650, ZERO_FRET_628 } from '../test/reference/bench';
import { begin, distancesFrom, figure, openWorkbench, showHundredths, type } from './workbench';

const station = (page: Page, name: string): Promise<void> => page.getByRole('tab', { name }).click();

test.beforeEach(async ({ page }) => {
  await openWorkbench(page);
  await showHundredths(page);
});

test('left hand, 645, 1/16 and 5/32: break points, slot front and slant', async ({ page }) => {
  await begin(page, 'Steel-string guitar');
  await page.getByRole('radio', { name: 'Left', exact: true }).check();
  await type(page, 'Scale length', '645');
  await type(page, 'Compensation, treble', '1/16 in');
  await type(page, 'Compensation, bass', '5/32 in');
  await type(page, 'String spacing at saddle, outer', '54');
  await station(page, 'Draw');
  await type(page, 'Slot width', '3.175');
  const { breakPoints, slotFront, slantDegrees } = LEFT_645;
  await expect(figure(page, 'Break point, treble E4')).toHaveText(breakPoints.treble.toFixed(2));
  await expect(figure(page, 'Break point, centre')).toHaveText(breakPoints.centre.toFixed(2));
  await expect(figure(page, 'Break point, bass E2')).toHaveText(breakPoints.bass.toFixed(2));
  await expect(figure(page, 'Slot front, centre')).toHaveText(slotFront.toFixed(2));
  // 2.525° lies on the edge between 2.52 and 2.53.
  const slant = Number.parseFloat((await figure(page, 'Slant').textContent()) ?? '');
  expect(Math.abs(slant - slantDegrees)).toBeLessThanOrEqual(0.006);

  await test.step('treble is on the left and words stand upright', async () => {
    await station(page, 'Print');
    const sheet = page.getByRole('region', { name: 'Pages' }).getByRole('img').first();
    const treble = await sheet
      .locator('text', { hasText: /^TREBLE$/ })
      .first()
      .boundingBox();
    const bass = await sheet
      .locator('text', { hasText: /^BASS$/ })
      .first()
      .boundingBox();
    expect(treble?.x).toBeLessThan(bass?.x ?? 0);
    const turns = await sheet
      .locator('text[transform]')
      .evaluateAll((texts) => texts.map((text) => text.getAttribute('transform')));
    expect(turns.length).toBeGreaterThan(0);
    for (const turn of turns) expect(turn).toMatch(/^rotate\(/);
  });
});

test('three readings in 64ths', async ({ page }) => {
  await begin(page, 'Steel-string guitar');
  await page.getByRole('radio', { name: 'in', exact: true }).check();
  for (const [name, text] of [
    ['1st', '12 45/64'],
    ['2nd', '12 11/16'],
    ['3rd', '12 45/64'],
  ] as const)
    await type(page, `Nut to 12th fret, ${name} reading`, text);
  const box = page.getByRole('textbox', { name: 'Scale length', exact: true });
  await expect(box).toHaveValue('25 25/64');
  // 25.39583 + 0.150 = 25.54583 in: 0.54583 × 64 = 34.9, so 35/64.
  await type(page, 'Compensation, treble', '0.150');
  await type(page, 'Compensation, bass', '0.150');
  await expect(figure(page, 'Break point, centre')).toHaveText('25 35/64');
  await page.getByRole('radio', { name: 'mm', exact: true }).check();
  await expect(box).toHaveValue(READ_IN_64THS.scale.toFixed(3));
});

test('tie-block, 12th fret to slot front 327.0 on 650', async ({ page }) => {
  await begin(page, 'Classical guitar');
  await type(page, 'Scale length', '650');
  await type(page, 'Compensation, treble', '2.0');
  await type(page, 'Compensation, bass', '2.0');
  await page.getByRole('combobox', { name: 'Figures reach to' }).selectOption({ label: 'slot front' });
  await station(page, 'Draw');
  await page.getByRole('combobox', { name: 'Bridge shape' }).selectOption({ label: 'Tie-block' });
  await type(page, 'Slot width', '2.5');
  await expect(figure(page, 'Slot front, centre', 0)).toHaveText(TIE_BLOCK_650.slotFront.toFixed(2));
  await expect(figure(page, 'Slot front, centre', 1)).toHaveText('327.00');
  await expect(figure(page, 'Slot centre')).toHaveText(TIE_BLOCK_650.slotCentre.toFixed(2));
});

test('zero fret: every figure from the zero fret, the 12th fret and the nut face', async ({ page }) => {
  await begin(page, 'Steel-string guitar');
  await type(page, 'Scale length', '628');
  await page.getByRole('combobox', { name: 'Measured from' }).selectOption({ label: 'crown of the zero fret' });
  await type(page, 'Nut face behind the zero fret', '4.5');
  await type(page, 'Compensation, treble', '3.5');
  await type(page, 'Compensation, bass', '3.5');
  const { twelfth, breakFromZeroFret, breakFromNutFace } = ZERO_FRET_628;
  const table = page.getByRole('table', { name: 'Placement numbers' });
  await expect(table.getByRole('columnheader')).toHaveText(['From', 'zero fret', '12th fret', 'nut face']);
  await expect(figure(page, 'Break point, centre', 0)).toHaveText(breakFromZeroFret.toFixed(2));
  await expect(figure(page, 'Break point, centre', 1)).toHaveText((breakFromZeroFret - twelfth).toFixed(2));
  await expect(figure(page, 'Break point, centre', 2)).toHaveText(breakFromNutFace.toFixed(2));
});

test('body join at 12, square-ended bridge: distances to square by', async ({ page }) => {
  await begin(page, 'Steel-string guitar');
  await type(page, 'Scale length', '632');
  await type(page, 'Nut width', '46');
  await type(page, 'Board width at 12th fret', '57');
  await type(page, 'Fret at the body join', '12');
  // Break point 632 + 2 = 634, slot front 634 − 1.5 = 632.5, bridge front 632.5 − 6.7 = 625.8.
  await type(page, 'Compensation, treble', '2');
  await type(page, 'Compensation, bass', '2');
  await station(page, 'Draw');
  await type(page, 'Bridge length', '152.4');
  await type(page, 'Corner radius', '0');
  await type(page, 'Slot width', '3');
  await type(page, 'Front edge to slot', '6.7');
  await expect(figure(page, 'Bridge front, centre')).toHaveText('625.80');
  const { fromTwelfth, fromNut } = SQUARE_632;
  for (const [start, figures] of [
    ['12th fret end', fromTwelfth],
    ['nut corner', fromNut],
  ] as const) {
    const treble = await distancesFrom(page, `${start}, treble`);
    const bass = await distancesFrom(page, `${start}, bass`);
    expect(treble['front corner, treble']).toBe(figures.sameSide.toFixed(2));
    expect(treble['front corner, bass']).toBe(figures.across.toFixed(2));
    expect(bass['front corner, bass']).toBe(figures.sameSide.toFixed(2));
    expect(bass['front corner, treble']).toBe(figures.across.toFixed(2));
  }
});
