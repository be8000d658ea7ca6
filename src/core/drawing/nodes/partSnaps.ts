import type { SnapLine } from '../../geom/snap/types';
import type { Point } from '../../geom/types';
import type { BridgeMarks } from './bridgeMarks';
import { eachOnce } from './nodeSnaps';

type Show = (mm: number) => string;

const equal = (margin: number, show: Show): string => `margins equal: ${show(margin)} both sides`;

/** Where the front edge may come to lie while the bridge is moved about its slot; footprint frame of the start. */
export const footprintSnaps = ({ slotFront, slotBack, back }: BridgeMarks, show: Show): readonly SnapLine[] => {
  const margin = (slotFront + back - slotBack) / 2;
  return [{ kind: 'y', value: slotFront - margin, reason: equal(margin, show) }];
};

/** Where a pin may come to lie while its row is moved; `behind` is how far it lies behind the middle of the row. */
export const pinSnaps = (marks: BridgeMarks, behind: number, show: Show): readonly SnapLine[] => {
  const { slotBack, back, strings, slotEnds } = marks;
  const margin = (back - slotBack) / 2;
  const across: readonly SnapLine[] =
    strings === null
      ? []
      : [
          { kind: 'x', value: strings.treble, reason: 'in line with the outer treble string' },
          { kind: 'x', value: strings.bass, reason: 'in line with the outer bass string' },
        ];
  return [
    { kind: 'y', value: slotBack + margin + behind, reason: equal(margin, show) },
    ...across,
    { kind: 'x', value: slotEnds.treble.x, reason: 'in line with the treble end of the slot' },
    { kind: 'x', value: slotEnds.bass.x, reason: 'in line with the bass end of the slot' },
  ];
};

/** Where a free locating pin may come to lie; `other` is its fellow. */
export const locatingSnaps = (marks: BridgeMarks, other: Point | null): readonly SnapLine[] => {
  const { slotEnds } = marks;
  const fellow: readonly SnapLine[] =
    other === null
      ? []
      : [
          { kind: 'x', value: 0 - other.x, reason: 'as far out as the other locating pin' },
          { kind: 'y', value: other.y, reason: 'level with the other locating pin' },
        ];
  return eachOnce([
    { kind: 'x', value: 0, reason: 'on the centreline' },
    ...fellow,
    { kind: 'y', value: slotEnds.treble.y, reason: 'level with the treble end of the slot' },
    { kind: 'y', value: slotEnds.bass.y, reason: 'level with the bass end of the slot' },
  ]);
};
