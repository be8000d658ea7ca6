import type { Compensation, Slot } from '../document/types';
import type { Board, Scale, StringPlace } from '../instrument/types';
import { centsPerMm } from '../intonation/centsPerMm';
import type { StringModel } from '../intonation/stringModels';
import { fitSaddleLine, type SaddleLine } from '../numeric/fitSaddleLine';
import { fail, ok, type Result } from '../result';
import { crownPlace } from './crownReach';
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

/** dy/dx of a slot that is cut already; undefined when the slant follows from the strings. */
const cutSlope = (slot: Slot): number | undefined => (slot.slant === null ? undefined : Math.tan(-slot.slant));

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
  const beyond = beyondReach(compensation, slot, cutSlope(slot) ?? slope);
  return ok((x) => centre + slope * x + beyond);
};

/** What each string asks for, mm behind the octave line to its break point. */
const wantedBy = (
  compensation: Compensation,
  places: readonly StringPlace[],
  rule: (x: number) => number,
  models: Result<readonly StringModel[]>,
): Result<readonly number[]> => {
  if (compensation.by === 'strings') {
    const { learned } = compensation;
    return models.ok ? ok(models.value.map(({ id, saddle }) => saddle + (learned?.byString[id] ?? 0))) : models;
  }
  return ok(
    places.map(({ id, saddleX }) => (compensation.by === 'own' ? compensation.own[id] : undefined) ?? rule(saddleX)),
  );
};

/** One straight saddle through them: a rule is straight itself; other figures by the way the maker chose. */
const straightLine = (
  compensation: Compensation,
  slot: Slot,
  points: readonly { readonly x: number; readonly setback: number }[],
): Result<SaddleLine> =>
  fitSaddleLine(points, compensation.by === 'rule' ? 'least-squares' : compensation.fit.line, cutSlope(slot));

/**
 * Where the strings break over the saddle: a straight line, behind the octave line by the compensation, and how far each
 * string is from its mark. A string without a figure of its own takes the rule's. land: saddle kept beside a break point, mm.
 */
export const saddlePlace = (
  compensation: Compensation,
  slot: Slot,
  scale: Scale,
  board: Board,
  places: readonly StringPlace[],
  models: Result<readonly StringModel[]>,
  land: number,
): Result<SaddlePlace> => {
  const rule = ruleLine(compensation, slot, places);
  if (!rule.ok) return rule;
  const wanted = wantedBy(compensation, places, rule.value, models);
  if (!wanted.ok) return wanted;
  if (wanted.value.length !== places.length) return fail('strings', 'saddle.strings', 'Every string has its place.');
  const points = places.map(({ saddleX }, index) => ({ x: saddleX, setback: wanted.value[index] ?? 0 }));
  const line = straightLine(compensation, slot, points);
  if (!line.ok) return line;
  const { centre, slope, misses } = line.value;
  const sensitivity = centsPerMm(scale.scaleLength, 12);
  const beyondFace = slot.crown * slot.width * Math.hypot(1, slope);
  return ok({
    centre: board.octave + centre,
    slope,
    strings: places.map(({ id, name, saddleX }, index) => {
      const miss = misses[index] ?? 0;
      const lineHere = centre + slope * saddleX;
      const crown = (setback: number) => crownPlace(setback, lineHere - beyondFace, slot.width, slope, land);
      const here = crown(points[index]?.setback ?? 0);
      const model = models.ok ? models.value[index] : undefined;
      return {
        id,
        name,
        x: saddleX,
        wanted: points[index]?.setback ?? 0,
        line: lineHere,
        miss,
        cents: 0 - miss * sensitivity,
        crown: here,
        centsLeft: 0 - here.left * sensitivity,
        model: model === undefined ? null : { setback: model.saddle, sigma: model.sigma, crown: crown(model.saddle) },
      };
    }),
  });
};
