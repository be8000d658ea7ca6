import { readFile } from 'node:fs/promises';
import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { tabTo, typeOver } from './keys';
import { openMore, openWorkbench, rowsOf, showHundredths, statusOf, type } from './workbench';

const NAMES = ['1 E4', '2 B3', '3 G3', '4 D3', '5 A2', '6 E2'];
const record = (page: Page) => page.getByRole('tab', { name: 'Record' });
const centsBox = (page: Page, string: number, fret = 12) =>
  page.getByRole('textbox', { name: `${NAMES[string - 1]}, cents at fret ${fret}`, exact: true });

/** Begins a string-up and types what the tuner said at the 12th fret, string 1 first. */
const stringUp = async (page: Page, cents: readonly string[]): Promise<void> => {
  await record(page).click();
  await page.getByRole('button', { name: 'New string-up' }).click();
  for (const [index, text] of cents.entries()) await type(page, `${NAMES[index]}, cents at fret 12`, text);
};

test('cents by the keyboard alone, and what they ask of the saddle', async ({ page }) => {
  await openWorkbench(page);
  await showHundredths(page);
  await page.getByRole('tab', { name: 'Measure' }).focus();
  for (let presses = 0; presses < 4; presses += 1) await page.keyboard.press('ArrowRight');
  await expect(record(page)).toBeFocused();
  await page.keyboard.press('Enter');
  await tabTo(page, 'New string-up');
  await page.keyboard.press('Enter');
  await expect(statusOf(page)).toHaveText('New string-up');

  await test.step('the travel of each break point', async () => {
    // At the demo's scale of 632 mm one mm is 1731.234/632 = 2.739 cents; ± 1 cent on either note is √2/2.739 = 0.52 mm.
    const typed = ['2.74', '-1.37', '1.37 sharp', '0', '−2.74', '+5.48'];
    for (const [index, text] of typed.entries()) await typeOver(page, `${NAMES[index]}, cents at fret 12`, text);
    const rows = await rowsOf(page, 'Saddle travel');
    expect(NAMES.map((name) => rows[name]?.slice(0, 2))).toEqual([
      ['+1.00', '0.52'],
      ['−0.50', '0.52'],
      ['+0.50', '0.52'],
      ['0.00', '0.52'],
      ['−1.00', '0.52'],
      ['+2.00', '0.52'],
    ]);
    await expect(page.getByRole('list', { name: 'What to file' })).toContainText(
      /String 2 \(B3\): 0\.50 mm to the front, to \d\.\d\d mm from the front face\. File the back of the crown\./,
    );
    // 1.2875 mm lie between the middle of a saddle of 1/8 in and its land of 0.3 mm, 1.2888 mm along the centreline at
    // the demo's slant; of 5.48/2.7393 mm 0.7118 mm or 1.9497 cents stay.
    expect(rows['6 E2']?.[4]).toBe('+1.9');
    await expect(page.getByText('File the crown: this saddle serves every string that was read.')).toBeVisible();
    await expect(page.getByRole('img', { name: /^What to file of the crown\./ })).toBeVisible();
  });

  await test.step('a wrong text says what was expected, and Escape brings the figure back', async () => {
    await typeOver(page, `${NAMES[2]}, cents at fret 12`, 'abc');
    await expect(page.getByText('“abc” is no cents: type a figure with its sign, such as +3 or −2.5.')).toBeVisible();
    await page.keyboard.press('Escape');
    await expect(centsBox(page, 3)).toHaveValue('+1.37');
  });

  await test.step('more frets, the tuner, and one undo', async () => {
    await typeOver(page, 'Frets read', '5 12');
    await expect(centsBox(page, 1, 5)).toHaveValue('');
    await typeOver(page, `${NAMES[0]}, cents at fret 5`, '9');
    expect((await rowsOf(page, 'Saddle travel'))['1 E4']?.[0]).not.toBe('+1.00');
    await page.keyboard.press('Control+Z');
    expect((await rowsOf(page, 'Saddle travel'))['1 E4']?.[0]).toBe('+1.00');
  });
});

test('a saddle that cannot take it, and what then', async ({ page }) => {
  await openWorkbench(page);
  await stringUp(page, ['+8', '+8', '+8', '+8', '+8', '+8']);
  await expect(page.getByText(/^The crown cannot take it all/)).toBeVisible();
  await expect(page.getByText(/^Another saddle: widen the slot by 1\.\d mm at its back/)).toBeVisible();
  await expect(
    page.getByText(/^Or fill the slot and cut it anew: its middle moves 2\.9 mm away from the nut/),
  ).toBeVisible();
});

test('a later reading beside the first', async ({ page }) => {
  await openWorkbench(page);
  await stringUp(page, ['0', '0', '0', '0', '0', '0']);
  await openMore(page, 'Action, relief, air and a note');
  await type(page, 'Humidity', '44');
  await type(page, 'Which meter', 'the dial in the case');
  await page.getByRole('button', { name: 'New string-up' }).click();
  await expect(page.getByRole('list', { name: 'String-ups' }).getByRole('listitem')).toHaveCount(2);
  await type(page, `${NAMES[0]}, cents at fret 12`, '-1.5');
  const rows = await rowsOf(page, 'Change since the first reading');
  const [changes] = Object.values(rows);
  expect(changes?.slice(0, 2)).toEqual(['−1.5', '–']);
  await openMore(page, 'Action, relief, air and a note');
  await expect(page.getByRole('textbox', { name: 'Which meter' })).toHaveValue('the dial in the case');
  await expect(page.getByRole('textbox', { name: 'Humidity' })).toHaveValue('');
});

test('what was typed is there again after the page was left', async ({ page }) => {
  await openWorkbench(page);
  await stringUp(page, ['+3', '-1.5']);
  await expect(page.getByRole('list', { name: 'Library' })).toContainText('Wren 14, no number yet');
  await page.reload();
  await expect(centsBox(page, 1)).toHaveValue('+3');
  await expect(centsBox(page, 2)).toHaveValue('−1.5');
  await expect(centsBox(page, 3)).toHaveValue('');
});

test('the picture of the crown lies the other way round for the left hand, its words upright', async ({ page }) => {
  await openWorkbench(page);
  await page.getByRole('radio', { name: 'Left' }).check({ force: true });
  await stringUp(page, ['+3']);
  const picture = page.getByRole('img', { name: /^What to file of the crown\./ });
  const along = async (words: string): Promise<number> =>
    Number(await picture.getByText(words, { exact: true }).getAttribute('x'));
  expect(await along('TREBLE')).toBeLessThan(await along('BASS'));
  expect(await along('1 E4')).toBeLessThan(await along('6 E2'));
});

for (const colorScheme of ['light', 'dark'] as const)
  test(`the string-up has no fault that axe finds, ${colorScheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    await openWorkbench(page);
    await stringUp(page, ['+8', '-3', 'abc']);
    await openMore(page, 'Action, relief, air and a note');
    await openMore(page, 'What counts as like kind');
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(
      violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 100)).join(' | ')}`),
    ).toEqual([]);
  });

/** What of a saved project this journey changes. */
interface SavedProject {
  readonly id: string;
  readonly about: { readonly name: string };
  readonly build: null | {
    readonly serial: string;
    readonly stringUps: readonly { readonly id: string; readonly cents: Readonly<Record<string, { '12': number }>> }[];
  };
}

const save = async (page: Page): Promise<SavedProject> => {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save', exact: true }).click(),
  ]);
  return JSON.parse(await readFile(await download.path(), 'utf8'));
};

const open = async (page: Page, project: SavedProject): Promise<void> => {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Open', exact: true }).click(),
  ]);
  const buffer = Buffer.from(JSON.stringify(project));
  await chooser.setFiles({ name: 'project.json', mimeType: 'application/json', buffer });
  await expect(statusOf(page)).toHaveText(`Opened ${project.about.name}`);
};

/** The instrument once more under a number of its own, every string read this many cents sharper. */
const another = (saved: SavedProject, number: number, sharper: number): SavedProject => ({
  ...saved,
  id: `instrument-${number}`,
  build: saved.build && {
    ...saved.build,
    serial: `No. ${number}`,
    stringUps: saved.build.stringUps.map((each) => ({
      ...each,
      id: `string-up-${number}`,
      cents: Object.fromEntries(Object.entries(each.cents).map(([id, read]) => [id, { '12': read['12'] + sharper }])),
    })),
  },
});

/** "+0.40" as a number. */
const figureOf = (text: string | undefined): number => Number((text ?? '').split(' ')[0]?.replace('−', '-'));

test('what three instruments taught is offered, taken, seen in the plan and taken back', async ({ page }) => {
  await openWorkbench(page);
  await showHundredths(page);
  const model = await save(page);
  await stringUp(page, ['2', '2', '2', '2', '2', '2']);
  await expect(page.getByRole('list', { name: 'Library' })).toContainText('Wren 14, no number yet');
  // Leaving the page keeps what was typed last.
  await page.reload();
  await expect(centsBox(page, 6)).toHaveValue('+2');
  const strung = await save(page);
  // At 632 mm, 2.739 cents are one mm: the three lie 1 mm apart.
  for (const [number, sharper] of [
    [1, 0],
    [2, 2.7393],
    [3, -2.7393],
  ] as const) {
    await open(page, another(strung, number, sharper));
    await expect(page.getByRole('list', { name: 'Library' })).toContainText(`No. ${number}`);
  }
  await open(page, { ...model, id: 'the-model' });
  await expect(page.getByText(/^4 instruments of like kind were read at their first setting\./)).toBeVisible();
  await openMore(page, 'Each instrument, and which count');
  // The one that was strung by hand, without a number.
  await page.getByRole('checkbox', { name: /^Wren 14, / }).uncheck();

  const found = await rowsOf(page, 'Found against the model');
  const expected = await rowsOf(page, 'What to expect of the next one');
  for (const name of NAMES) {
    const [mean, range, count] = found[name] ?? [];
    const [low, high] = (range ?? '').split(' to ').map(figureOf);
    expect(count).toBe('3');
    expect((high ?? 0) - (low ?? 0)).toBeCloseTo(2, 1);
    // Drawn toward the model, never away from it, and the sum is what the next one wants.
    const [from, learned, wants] = expected[name] ?? [];
    expect(Math.abs(figureOf(learned))).toBeLessThan(Math.abs(figureOf(mean)));
    expect(figureOf(wants)).toBeCloseTo(figureOf(from) + figureOf(learned), 1);
  }
  await openMore(page, 'What hangs on one instrument');
  await expect(page.getByRole('list', { name: 'Leaving one out' }).getByRole('listitem')).toHaveCount(3);
  await expect(page.getByRole('list', { name: 'Leaving one out' })).toContainText(
    'Without No. 2 the figure for string',
  );

  const plan = page.getByRole('table', { name: 'Compensation by string' });
  await expect(plan).not.toContainText('Learned');
  await page.getByRole('button', { name: 'Take these into this plan' }).click();
  await expect(plan).toContainText('Learned from 3 instruments, set aside');
  await page.getByRole('tab', { name: 'Measure' }).click();
  await page.getByRole('radio', { name: 'Strings', exact: true }).check({ force: true });
  await expect(plan).toContainText('Learned from 3 instruments, in “wanted”');
  const wanted = await rowsOf(page, 'Compensation by string');
  for (const name of NAMES) expect(figureOf(wanted[name]?.[0])).toBeCloseTo(figureOf(expected[name]?.[2]), 1);

  await plan.getByRole('button', { name: 'Take out' }).click();
  await expect(plan).not.toContainText('Learned');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(plan).toContainText('Learned from 3 instruments');
});
