import { centsPerMm } from '../intonation/centsPerMm';
import { saddleTravelFor } from '../intonation/saddleTravelFor';
import type { BridgeAuditArguments, StringAudit } from './types';

/** A straight line over x. */
export interface LineOverX {
  readonly at: (x: number) => number;
  readonly slope: number;
}

const throughTwo = (a: { x: number; y: number }, b: { x: number; y: number }): LineOverX => {
  const slope = (b.y - a.y) / (b.x - a.x);
  return { slope, at: (x) => a.y + slope * (x - a.x) };
};

/** The bridge's own lines, mm behind the octave line: where the outer strings break, and the saddle's front face. */
export interface PresentLines {
  readonly breaks: LineOverX;
  readonly face: LineOverX;
}

/** A reading to the break point, less the way to the octave line. */
const setbackOf = ({ scaleLength, nutOffset, from }: BridgeAuditArguments, distance: number): number =>
  distance - (from === 'nut' ? scaleLength + nutOffset : scaleLength / 2);

export const presentLines = (args: BridgeAuditArguments): PresentLines => {
  const [first, last] = [args.strings[0], args.strings.at(-1)];
  const treble = { x: first?.x ?? Number.NaN, y: setbackOf(args, first?.distance ?? Number.NaN) };
  const bass = { x: last?.x ?? Number.NaN, y: setbackOf(args, last?.distance ?? Number.NaN) };
  const breaks = throughTwo(treble, bass);
  const { crown } = args.saddle;
  const along = Math.hypot(1, breaks.slope);
  return {
    breaks,
    face: throughTwo({ ...treble, y: treble.y - crown.treble * along }, { ...bass, y: bass.y - crown.bass * along }),
  };
};

/**
 * Each string's compensation as it is against what is wanted. The saddle's thickness is taken along the centreline, so a
 * slanted one reaches a little farther; `land` is kept ahead of and behind every break point.
 */
export const stringAudits = (args: BridgeAuditArguments, { breaks, face }: PresentLines): readonly StringAudit[] => {
  const { scaleLength, saddle, limits } = args;
  const perMm = centsPerMm(scaleLength, 12);
  const along = Math.hypot(1, face.slope);
  const land = limits.land.value * along;
  return args.strings.map(({ x, wanted, distance, cents: read }) => {
    const present = distance === null ? breaks.at(x) : setbackOf(args, distance);
    const travel = wanted - present;
    const cents = travel * perMm;
    const reach = { front: face.at(x) + land, back: face.at(x) + saddle.thickness * along - land };
    const nearest = Math.min(Math.max(wanted, reach.front), reach.back);
    return {
      x,
      present,
      wanted,
      travel,
      cents,
      reach,
      leftCents: (wanted - nearest) * perMm,
      reading:
        read === null
          ? null
          : {
              difference: read - cents,
              agrees: Math.abs(read - cents) <= limits.centsAgree.value,
              travel: saddleTravelFor(read, scaleLength, 12),
            },
    };
  });
};
