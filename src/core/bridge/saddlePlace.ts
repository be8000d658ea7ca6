import type { Compensation, Slot } from '../document/types';
import type { Board, Scale, StringPlace } from '../instrument/types';
import { centsPerMm } from '../intonation/centsPerMm';
import { fitSaddleLine } from '../numeric/fitSaddleLine';
import { ok, type Result } from '../result';
import type { SaddlePlace } from './types';

/** How far behind the figure's own datum the break point lies, along the centreline, mm. */
const beyondReach = (compensation: Compensation, slot: Slot, slope: number): number => {
  const alongCentreline = slot.width * Math.hypot(1, slope);
  switch (compensation.rule.reach) {
    case 'break-point':
      return 0;
    case 'slot-front':
      return slot.crown * alongCentreline;
    case 'slot-centre':
      return (slot.crown - 0.5) * alongCentreline;
  }
};

/** The rule of thumb at a string: the straight line through its treble figure at string 1 and its bass figure at the last. */
const ruleLine = (
  compensation: Compensation,
  slot: Slot,
  places: readonly StringPlace[],
): Result<(x: number) => number> => {
  const { treble, bass } = compensation.rule;
  const line = fitSaddleLine(
    [
      { x: places[0]?.saddleX ?? Number.NaN, setback: treble },
      { x: places.at(-1)?.saddleX ?? Number.NaN, setback: bass },
    ],
    'outer',
  );
  if (!line.ok) return line;
  const { centre, slope } = line.value;
  const beyond = beyondReach(compensation, slot, slope);
  return ok((x) => centre + slope * x + beyond);
};

/**
 * Where the strings break over the saddle: a straight line, behind the octave line by the compensation. By own figures it
 * is the line of least squares through them; a string without a figure of its own takes the rule's.
 */
export const saddlePlace = (
  compensation: Compensation,
  slot: Slot,
  scale: Scale,
  board: Board,
  places: readonly StringPlace[],
): Result<SaddlePlace> => {
  const rule = ruleLine(compensation, slot, places);
  if (!rule.ok) return rule;
  const points = places.map(({ id, saddleX }) => ({
    x: saddleX,
    setback: (compensation.by === 'own' ? compensation.own[id] : undefined) ?? rule.value(saddleX),
  }));
  const line = fitSaddleLine(points, 'least-squares');
  if (!line.ok) return line;
  const { centre, slope, misses } = line.value;
  const sensitivity = centsPerMm(scale.scaleLength, 12);
  return ok({
    centre: board.octave + centre,
    slope,
    strings: places.map(({ id, name, saddleX }, index) => {
      const miss = misses[index] ?? 0;
      return {
        id,
        name,
        x: saddleX,
        wanted: points[index]?.setback ?? 0,
        line: centre + slope * saddleX,
        miss,
        cents: -miss * sensitivity,
      };
    }),
  });
};
