import { readFileSync } from 'node:fs';
import path from 'node:path';
import { KINDS } from '../../src/core/kinds/kinds';
import { makeSheets } from '../../src/core/sheets/makeSheets';
import { PAPERS } from '../../src/core/sheets/papers';
import { SHEET_KINDS, TAPE_DOWN } from '../../src/core/sheets/sheetKinds';
import { makePdf } from '../../src/exporters/pdf/makePdf';
import { contextOf } from '../core/sheets/parts/partCase';
import { wholeProject } from '../core/sheets/wholeProject';
import { FONTS } from '../exporters/pdf/handMadeSheet';
import { unwrap } from '../exporters/pdf/unwrap';
import type { Named } from './congruent';

/** Named points of each drawing for each kind of instrument: see sheet_points.py beside them. */
export const POINTS = JSON.parse(
  readFileSync(path.join(import.meta.dirname, '../reference/sheetPoints/points.json'), 'utf8'),
) as Readonly<Record<string, Readonly<Record<string, readonly Named[]>>>>;

/** Each kind of instrument, for each hand, on A4 and Letter. */
export const ALL_SHEETS = KINDS.flatMap(({ id, name, make }) =>
  (['right', 'left'] as const).flatMap((hand) =>
    PAPERS.filter((paper) => paper.id === 'a4' || paper.id === 'letter').map((paper) => ({
      id,
      name,
      make,
      hand,
      paper,
    })),
  ),
);

/** Drawings that are the same for either hand. */
const EITHER_HAND: readonly string[] = ['stick-far'];

/** Where the named points of a drawing lie for a hand. */
export const forHand = (sheet: string, points: readonly Named[], hand: 'right' | 'left'): readonly Named[] =>
  hand === 'right' || EITHER_HAND.includes(sheet)
    ? points
    : points.map(([x, y, ...radius]) => [0 - x, y, ...radius] as unknown as Named);

const CHOSEN = [TAPE_DOWN.id, ...SHEET_KINDS.map(({ id }) => id)];

/** All sheets of one of them in files, as few as will do: those that lie the other way come in a second. */
export const allSheetFiles = async ({
  make,
  hand,
  paper,
}: (typeof ALL_SHEETS)[number]): Promise<readonly Uint8Array[]> => {
  const made = wholeProject(make('k', '2026-01-01T00:00:00.000Z'));
  const context = await contextOf({ ...made, instrument: { ...made.instrument, hand } });
  const whole = makeSheets(CHOSEN, paper, context);
  const documents = whole.ok
    ? [whole.value]
    : CHOSEN.map((id) => makeSheets([id], paper, context)).flatMap((each) => (each.ok ? [each.value] : []));
  return documents.map(({ document }) => unwrap(makePdf(document, FONTS)).bytes);
};
