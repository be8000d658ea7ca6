import type { BridgePlace, NamedPoint } from '../bridge/types';
import type { NutDatum } from '../document/types';
import { boardWidthAt } from '../instrument/boardOf';
import type { Board } from '../instrument/types';
import { ordinal } from '../units/ordinal';
import { DATUM_NAME } from './datumName';
import { ruleDistance } from './ruleDistance';
import type { MeasuredDistance } from './types';

/** Both ends of a line across the board, treble first. */
const across = (board: Board, y: number, id: string, label: string): readonly NamedPoint[] => {
  const half = boardWidthAt(board, y) / 2;
  return [
    { id: `${id}-treble`, label: `${label}, treble`, at: { x: half, y } },
    { id: `${id}-bass`, label: `${label}, bass`, at: { x: -half, y } },
  ];
};

/** Where a rule can start: ends of the datum, of the 12th fret, and of the fret at the body join when that is another. */
export const measuringBases = (board: Board, datum: NutDatum, joinFret: number): readonly NamedPoint[] => [
  ...across(board, 0, 'nut', DATUM_NAME[datum].end),
  ...across(board, board.twelfth, 'fret-12', '12th fret end'),
  ...(joinFret === 12 ? [] : across(board, board.bodyJoin, `fret-${joinFret}`, `${ordinal(joinFret)} fret end`)),
];

/** Points of the bridge that squaring is read to: the front corners or edge ends, and the locating pins. */
const READ_TO = ['front-treble', 'front-bass', 'locating-treble', 'locating-bass'];

/** Every distance from those bases to the front of the bridge and to its locating pins, in the plan, mm. */
export const measuredDistances = (bases: readonly NamedPoint[], bridge: BridgePlace): readonly MeasuredDistance[] =>
  bridge.points
    .filter(({ id }) => READ_TO.includes(id))
    .flatMap((to) =>
      bases.map((from) => ({
        id: `${from.id}-to-${to.id}`,
        fromId: from.id,
        toId: to.id,
        from: from.label,
        to: to.label,
        value: ruleDistance(from.at, to.at, 0),
      })),
    );
