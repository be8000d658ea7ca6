import { handedItem } from '../../drawing/handed';
import { polyline } from '../../drawing/polyline';
import type { Item } from '../../drawing/types';
import { boardWidthAt } from '../../instrument/boardOf';
import type { Board, StringPlace } from '../../instrument/types';
import { failed, ok, type Result } from '../../result';
import { showLength } from '../../units/showLength';
import { sheetPath, sheetText } from '../sheetItems';
import { gaugeNumbers } from './gauge/gaugeNumbers';
import { keyPieceHalf, saddleKeyEnd } from './gauge/saddleKeyEnd';
import { fineLength } from './items/fineLength';
import { noteLines } from './items/noteLines';
import { boundsOfItems, partOfItems } from './items/partOfItems';
import type { SheetContext, SheetKind, SheetPart } from './types';

/** Of the piece ahead of the 12th fret, for its name, mm. */
const AHEAD = 16;
/** Between a board edge and the side of the piece at the least, mm. */
const BESIDE_BOARD = 3;
/** How far behind the 12th fret the board's edges are drawn, mm: short of its end on any usual board. */
const ALONG_BOARD = 60;
/** Lines end this far ahead of the square line, for the words over it, mm. */
const CLEAR = 15;
/** From the 12th fret to the middle of the words along the piece, so that they stand ahead of any join, mm. */
const LENGTH_WORDS = 68;
/** Notes beside the piece: as wide as an A4 page leaves, but not so narrow that words are cut, mm. */
const NOTES = { all: 176, narrowest: 62, gap: 6 } as const;
const QUARTER_TURN = Math.PI / 2;

/** What lies at the 12th fret: its crown, the board's edges and the name of the piece; right hand, y from the nut datum. */
const fretEnd = (board: Board, half: number): readonly Item[] => {
  const { twelfth } = board;
  const edge = (y: number): number => boardWidthAt(board, y) / 2;
  return [
    sheetPath('twelfth', 'rule-line', polyline({ x: -half, y: twelfth }, { x: half, y: twelfth })),
    ...([1, -1] as const).map((side) =>
      sheetPath(
        side === 1 ? 'edge-treble' : 'edge-bass',
        'board-edge',
        polyline(
          { x: side * edge(twelfth), y: twelfth },
          { x: side * edge(twelfth + ALONG_BOARD), y: twelfth + ALONG_BOARD },
        ),
      ),
    ),
    sheetText('twelfth-name', 'heading', { x: 0, y: twelfth - 10 }, '↑ NUT SIDE · 12th FRET', 'middle'),
    sheetText('twelfth-use', 'note', { x: 0, y: twelfth - 4 }, 'this line on the crown of the 12th fret', 'middle'),
  ];
};

/** The outer strings between two places along the centreline; end: where they break. */
const outerStrings = (strings: readonly StringPlace[], from: number, to: number, end: number): readonly Item[] =>
  [strings[0], strings.at(-1)].flatMap((string, index) => {
    if (string === undefined) return [];
    const at = (y: number) => ({ x: string.nutX + ((string.saddleX - string.nutX) * y) / end, y });
    const id = index === 0 ? 'string-treble' : 'string-bass';
    return [sheetPath(id, 'string-line', polyline(at(from), at(to)))];
  });

/**
 * The gauge from the 12th fret to the saddle in one piece, which takes more than one page of a small paper. Its length is set
 * by steel rule when it is pasted up. Codes: those of the bridge.
 */
const make = ({ project, derived, style }: SheetContext): Result<readonly SheetPart[]> => {
  const { board, strings, saddle, slot, placement } = derived;
  if (!board.ok || !strings.ok || !saddle.ok || !slot.ok || !placement.ok) return failed(derived.issues);
  const { hand } = project.instrument;
  const { twelfth } = board.value;
  const show = (mm: number): string => showLength(mm, style);
  const numbers = gaugeNumbers(saddle.value, slot.value);
  const { fromNut, fromTwelfth } = placement.value.squareLine[style.unit];
  const front = twelfth - AHEAD;
  const half = Math.max(keyPieceHalf(slot.value), boardWidthAt(board.value, twelfth + ALONG_BOARD) / 2 + BESIDE_BOARD);
  const figure = `${show(fromTwelfth)} from 12th fret`;
  const sided: readonly Item[] = [
    ...saddleKeyEnd(slot.value, saddle.value, numbers, fromNut, figure, { front, half }),
    ...fretEnd(board.value, half),
    ...outerStrings(strings.value, twelfth, fromNut - CLEAR, saddle.value.centre),
    sheetPath('middle', 'centreline', polyline({ x: 0, y: twelfth }, { x: 0, y: fromNut - CLEAR })),
    sheetText(
      'length',
      'key',
      { x: 6, y: Math.min((twelfth + fromNut) / 2, twelfth + LENGTH_WORDS) },
      `12th fret to square line ${show(fromTwelfth)} by steel rule`,
      'middle',
      QUARTER_TURN,
    ),
  ];
  const piece = sided.map((item) => handedItem(hand, item));
  const { minY, maxX } = boundsOfItems(piece);
  const width = Math.max(NOTES.narrowest, NOTES.all - 2 * half - NOTES.gap);
  const told = numbers.map(({ id, slotFront }) => `${id} ${show(slotFront - twelfth)}`).join(', ');
  const notes = noteLines({ x: maxX + NOTES.gap, y: minY + 2 }, width, `LONG GAUGE · THIS SIDE UP · ${hand} hand`, [
    'Paper carries no length: both ends are true by themselves, the length between them is set by steel rule.',
    `1. Lay it dry on a straight, flat stick, pages joined mark on mark. Lay the rule from the 12th fret’s line to the square line: ${show(fromTwelfth)}. Cut across or shift the join until it reads so, then paste: marks are right only when the rule is.`,
    `2. Read the slot front at both ends too, from the 12th fret: ${told}.`,
    `3. Fit a key of hard wood, ${fineLength(project.bridge.slot.width, style.unit)} ${style.unit === 'mm' ? 'mm' : 'inches'} thick, under the slot’s outline.`,
    '4. Use: fine line on the fret’s crown, board edges and outer strings alike on both sides, key in the slot; tape the bridge, lift the gauge, read by rule again.',
    'From the 12th fret, half the length to go wrong; but read the scale first, a nut that was moved does not show here.',
    'Knife and saw: cut away from the holding hand, work clamped.',
  ]);
  return ok([partOfItems('long-gauge', 'Placing gauge, 12th fret to saddle', [...piece, ...notes], false)]);
};

/** The placing gauge in one piece. */
export const longGauge: SheetKind = {
  id: 'long-gauge',
  name: 'Placing gauge, 12th fret to saddle',
  about:
    'The gauge as one long strip at true size, over several pages joined by marks; its length is set by steel rule when it is pasted up.',
  make,
};
