import type { TrebleBass } from '../document/types';
import { fretGrid } from '../intonation/fretGrid';
import { openLine } from '../intonation/openLine';
import { failed, type Issue, issue, ok, type Result } from '../result';
import { sagitta } from './sagitta';
import type { NeckFigures, StringHeight } from './types';

const HIGHEST_FRET = 48;

const problems = (neck: NeckFigures): readonly Issue[] => {
  const { scaleLength, nutHeight, action, relief, reliefFrets, boardRadius, strings } = neck;
  const found: Issue[] = [];
  const expect = (good: boolean, path: string, code: string, message: string): void => {
    if (!good) found.push(issue(path, code, message));
  };
  const from0 = (value: number): boolean => value >= 0 && Number.isFinite(value);
  expect(
    scaleLength > 0 && Number.isFinite(scaleLength),
    'scaleLength',
    'height.scale',
    'Expected a scale length above 0.',
  );
  for (const side of ['treble', 'bass'] as const) {
    expect(from0(nutHeight[side]), `nutHeight.${side}`, 'height.nutHeight', 'Expected a nut height of 0 or more.');
    expect(from0(action[side]), `action.${side}`, 'height.action', 'Expected an action of 0 or more.');
  }
  expect(Number.isFinite(relief), 'relief', 'height.relief', 'Expected a relief in mm.');
  const [first, last] = reliefFrets;
  const ordered = first >= 0 && last > first && last <= HIGHEST_FRET;
  expect(ordered, 'reliefFrets', 'height.reliefFrets', 'Expected two frets for the straightedge, the lower first.');
  const placed = strings.every(
    ({ nutX, saddleX, setback }) =>
      Number.isFinite(nutX) && Number.isFinite(saddleX) && Math.abs(setback) < scaleLength / 10,
  );
  const inOrder = (places: readonly number[]): boolean => places.every((x, i) => i === 0 || x < (places[i - 1] ?? x));
  expect(
    strings.length >= 2 &&
      placed &&
      inOrder(strings.map(({ nutX }) => nutX)) &&
      inOrder(strings.map(({ saddleX }) => saddleX)),
    'strings',
    'height.strings',
    'Expected at least two strings, from the treble to the bass, each with its place at the nut and at the saddle.',
  );
  const widest = Math.max(...strings.flatMap(({ nutX, saddleX }) => [Math.abs(nutX), Math.abs(saddleX)]));
  expect(
    boardRadius === null || (boardRadius > widest && Number.isFinite(boardRadius)),
    'boardRadius',
    'height.radius',
    'Expected a board radius larger than half the string spacing, or none for a flat board.',
  );
  return found;
};

/** A figure given for the outer strings, at x between them; `places` from the treble to the bass. */
const between = (sides: TrebleBass, x: number, places: readonly number[]): number => {
  const treble = places[0] ?? Number.NaN;
  const bass = places.at(-1) ?? Number.NaN;
  return sides.bass + ((sides.treble - sides.bass) * (x - bass)) / (treble - bass);
};

/**
 * Each string above the fret-top plane at the saddle, mm. The plane is that of a straightedge along the middle of the board.
 * A string runs straight from its height at the nut through its action at fret 12, where the fret lies below the plane by
 * its share of the relief (a parabola between the frets under the straightedge). On a radiused board the fret tops fall
 * away to both sides by R − √(R² − x²), nut and action are counted from the fret under the string, and so the middle
 * strings stand higher than the outer ones.
 *
 * Codes: height.scale, height.nutHeight, height.action, height.relief, height.reliefFrets, height.strings, height.radius.
 */
export const stringHeights = (neck: NeckFigures): Result<readonly StringHeight[]> => {
  const wrong = problems(neck);
  if (wrong.length > 0) return failed(wrong);
  const { scaleLength, relief, reliefFrets, boardRadius, strings } = neck;
  const { twelfthDip } = fretGrid(scaleLength, reliefFrets, []);
  const places = strings.map(({ nutX, saddleX, setback }) => {
    const share = scaleLength / 2 / (scaleLength + setback);
    return { nutX, saddleX, setback, twelfthX: nutX + (saddleX - nutX) * share };
  });
  const heights = places.map(({ nutX, twelfthX, setback }) => {
    const nutHeight =
      between(
        neck.nutHeight,
        nutX,
        places.map((place) => place.nutX),
      ) - sagitta(boardRadius, nutX);
    const action =
      between(
        neck.action,
        twelfthX,
        places.map((place) => place.twelfthX),
      ) - sagitta(boardRadius, twelfthX);
    const setup = { scaleLength, nutHeight, action, relief, reliefFrets, fingerDistance: 0 };
    return openLine(setup, twelfthDip, 'action', setback, 0).saddleHeight;
  });
  const ends = { treble: heights[0] ?? Number.NaN, bass: heights.at(-1) ?? Number.NaN };
  return ok(
    places.map(({ saddleX }, index) => {
      const height = heights[index] ?? Number.NaN;
      return {
        height,
        lift:
          height -
          between(
            ends,
            saddleX,
            places.map((place) => place.saddleX),
          ),
      };
    }),
  );
};
