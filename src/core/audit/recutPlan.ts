import type { TrebleBass } from '../document/types';
import { fitSaddleLine } from '../numeric/fitSaddleLine';
import { ok, type Result } from '../result';
import type { PresentLines } from './stringAudits';
import type { BridgeAuditArguments, RecutPlan } from './types';

const NO_SHIFT: TrebleBass = { treble: 0, bass: 0 };

/** The least of both sides once the slot has moved by `shift` against it. */
const left = (room: TrebleBass, shift: TrebleBass, sign: 1 | -1): number =>
  Math.min(room.treble + sign * shift.treble, room.bass + sign * shift.bass);

const pinsAfter = (
  args: BridgeAuditArguments,
  shift: TrebleBass,
): Pick<RecutPlan, 'pins' | 'pinMove' | 'wallBehind'> => {
  const { pins, behind, limits } = args;
  if (!pins) return { pins: null, pinMove: 0, wallBehind: behind && left(behind, shift, -1) };
  const wallBehind = left(pins.fromSlot, shift, -1) - pins.hole / 2;
  // A bridge that has less wood than the limit already is not held against a slot that leaves it that.
  const wanted = Math.min(limits.wallAroundPins.value, left(pins.fromSlot, NO_SHIFT, -1) - pins.hole / 2);
  const pinMove = Math.max(0, wanted - wallBehind);
  const wallBack = pins.toBack - pins.hole / 2 - pinMove;
  if (pinMove === 0) return { pins: 'stay', pinMove, wallBehind };
  return { pins: wallBack >= limits.wallAroundPins.value ? 'redrill' : 'no-room', pinMove, wallBehind };
};

/**
 * A new slot of the same width, its middle on the straight line with the least worst miss of what the strings want, and
 * what that leaves around it. Codes: as fitSaddleLine.
 */
export const recutPlan = (args: BridgeAuditArguments, { face }: PresentLines): Result<RecutPlan> => {
  const { strings, slotWidth, ahead, limits } = args;
  const points = strings.map(({ x, wanted }) => ({ x, setback: wanted }));
  const line = fitSaddleLine(points, 'minimax');
  if (!line.ok) return line;
  const { centre, slope, misses } = line.value;
  const half = (slotWidth / 2) * Math.hypot(1, face.slope);
  const shiftAt = (x: number): number => centre + slope * x - (face.at(x) + half);
  const shift = {
    treble: shiftAt(strings[0]?.x ?? 0),
    centre: shiftAt(0),
    bass: shiftAt(strings.at(-1)?.x ?? 0),
  };
  const worst = Math.max(...misses.map(Math.abs));
  return ok({
    line: { centre, slope },
    shift,
    turn: Math.atan(slope) - Math.atan(face.slope),
    thicknessNeeded: (2 * worst) / Math.hypot(1, slope) + 2 * limits.land.value,
    wallAhead: ahead && left(ahead, shift, 1),
    ...pinsAfter(args, shift),
  });
};
