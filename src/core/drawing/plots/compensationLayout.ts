import type { SaddlePlace } from '../../bridge/types';
import type { Point } from '../../geom/types';
import { measureText } from '../../text/measureText';
import type { LengthStyle } from '../../units/formatLength';
import { TEXT_HEIGHT } from '../textHeights';
import { type CompensationScale, compensationScale } from './compensationScale';
import { crownReachLines } from './crownReachLines';
import { roundTicks, type Tick } from './roundTicks';
import { labelWidth } from './stringLabels';

/** Paper kept free all round a plot, mm. */
export const EDGE = 2;
/** What a ± of one sigma is multiplied by for 95 %, normal distribution. */
const SIGMAS_AT_95 = 1.96;
/** How far the lines run beyond the outer strings, mm of the instrument. */
const BEYOND_STRINGS = 4;
/** Narrowest picture, wide enough for its key in two rows, mm. */
const NARROWEST = 84;
/** From the last letter of a division's figure to its line, and beside the outermost name or line, mm. */
const TO_LINE = 1.2;
const BESIDE = 1;

/** What the compensation plot is laid out by. Lengths of the instrument and of paper, mm. */
export interface CompensationLayout {
  readonly scale: CompensationScale;
  /** The straight line behind the octave line where it crosses the centreline, and how it runs. */
  readonly centre: number;
  readonly slope: number;
  /** x where the lines end, the bass end first. */
  readonly ends: readonly [number, number];
  readonly reach: { readonly ahead: number; readonly behind: number };
  /** ± of each string's model at 95 %; null without a model. */
  readonly doubts: readonly (number | null)[];
  readonly ticks: readonly Tick[];
  /** Paper from the left edge to the plot, half the plot, over all, and from the first division to the last. */
  readonly left: number;
  readonly half: number;
  readonly width: number;
  readonly depth: number;
  /** Place on paper of an x and a compensation, from the middle of the first division; right hand. */
  readonly at: (x: number, compensation: number) => Point;
}

/**
 * Scale, divisions and room for everything that a saddle's plot has to show.
 *
 * @throws RangeError without a string, or when a figure is not finite
 */
export const compensationLayout = (
  { strings, slope, centre: fromNut }: SaddlePlace,
  slot: { readonly width: number; readonly crown: number },
  land: number,
  octave: number,
  style: LengthStyle,
): CompensationLayout => {
  if (strings.length === 0) throw new RangeError('Expected at least one string to plot.');
  const centre = fromNut - octave;
  const reach = crownReachLines(slot, slope, land);
  const xs = strings.map(({ x }) => x);
  const ends = [Math.min(...xs) - BEYOND_STRINGS, Math.max(...xs) + BEYOND_STRINGS] as const;
  const doubts = strings.map(({ model }) => (model === null ? null : SIGMAS_AT_95 * model.sigma));
  const shown = [
    ...ends.flatMap((x) => [0, reach.ahead, reach.behind].map((beyond) => centre + slope * x + beyond)),
    ...strings.flatMap(({ wanted, model }, index) => {
      const doubt = doubts[index] ?? 0;
      return model === null ? [wanted] : [wanted, model.setback - doubt, model.setback + doubt];
    }),
  ];
  if (!shown.every(Number.isFinite)) throw new RangeError('Expected finite figures to plot.');
  const [low, high] = [Math.min(...shown), Math.max(...shown)];
  const scale = compensationScale(xs, high - low);
  const ticks = roundTicks(low, high, scale.along, style);
  const [first, last] = [ticks[0]?.mm ?? low, ticks.at(-1)?.mm ?? high];
  const figures = ticks.map(({ text }) => measureText(text, TEXT_HEIGHT.note, 'regular'));
  const left = EDGE + Math.max(...figures) + TO_LINE;
  const needed = Math.max(
    ...ends.map((x) => Math.abs(x) * scale.across),
    ...strings.map(({ x, name }) => Math.abs(x) * scale.across + labelWidth(name) / 2),
  );
  const half = Math.max(needed + BESIDE, (NARROWEST - left - EDGE) / 2);
  return {
    scale,
    centre,
    slope,
    ends,
    reach,
    doubts,
    ticks,
    left,
    half,
    width: left + 2 * half + EDGE,
    depth: (last - first) * scale.along,
    at: (x, compensation) => ({ x: x * scale.across, y: (compensation - first) * scale.along }),
  };
};
