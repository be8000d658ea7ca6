import type { CrownPlace } from '../bridge/crownReach';
import type { SaddlePlace } from '../bridge/types';
import type { CompensationBy, Slot } from '../document/types';
import type { Finding } from './finding';
import type { Mend } from './types';
import { upward } from './upward';
import type { WallLimits } from './wallLimits';

interface Marked {
  readonly name: string;
  readonly x: number;
  readonly crown: CrownPlace;
}

const LIMIT = 'limits.land';

/** Farther out than this the break point is not proposed: the saddle would stand all on one side of it. */
const FARTHEST_OUT = 0.25;

const names = (strings: readonly Marked[]): string => strings.map(({ name }) => name).join(', ');

const worst = (strings: readonly Marked[]): number => Math.max(0, ...strings.map(({ crown }) => Math.abs(crown.left)));

/**
 * The break point moved across the slot so that every mark lies between the lands; where the saddle is too thin for that, a
 * wider one with the marks in its middle.
 */
const tries = (slot: Slot, strings: readonly Marked[], land: number): readonly Mend[] => {
  const off = strings.map(({ crown }) => crown.fromFace - slot.crown * slot.width);
  const [least, most] = [Math.min(...off), Math.max(...off)];
  const centred = (width: number): number => Math.round(((width - least - most) / 2 / width) * 1000) / 1000;
  const across = (crown: number) => ({ path: 'bridge.slot.crown', value: crown });
  const needed = upward(most - least + 2 * land);
  const moved = centred(slot.width);
  const sound = (crown: number): boolean => crown >= FARTHEST_OUT && crown <= 1 - FARTHEST_OUT;
  const proposed: readonly Mend[] = [
    { label: `Break point ${Number((moved * 100).toFixed(1))} % across the slot`, lengths: [], set: [across(moved)] },
    {
      label: 'Slot {0} wide, its marks in the middle',
      lengths: [needed],
      set: [{ path: 'bridge.slot.width', value: needed }, across(centred(needed))],
    },
  ];
  return proposed.filter((_, index) => sound(index === 0 ? moved : centred(needed)));
};

/**
 * Whether one straight saddle of this thickness can be shaped to every string's mark, and, while a rule of thumb or the
 * maker's own figures stand, to the model's mark as well.
 */
export const crownChecks = (
  by: CompensationBy,
  slot: Slot,
  saddle: SaddlePlace,
  { land }: WallLimits,
): readonly Finding[] => {
  const short = saddle.strings.filter(({ crown }) => !crown.reached);
  const own: Finding = {
    id: 'crown',
    source: land.source,
    limit: LIMIT,
    at: short.map(({ x }) => ({ x, y: saddle.centre + saddle.slope * x })),
    part: 'check: every string breaks on the saddle',
    ...(short.length === 0
      ? { verdict: 'good', message: 'The saddle can be shaped to every string’s mark.', lengths: [] }
      : {
          verdict: 'look',
          message: `The saddle is too thin to be shaped to the mark of ${names(short)}; {0} is left at the worst.`,
          lengths: [worst(short)],
          tries: tries(slot, saddle.strings, land.value),
        }),
  };
  if (by === 'strings') return [own];
  const modelled = saddle.strings.flatMap(({ name, x, model }) =>
    model === null ? [] : [{ name, x, crown: model.crown }],
  );
  if (modelled.length === 0) return [own];
  const beyond = modelled.filter(({ crown }) => !crown.reached);
  return [
    own,
    {
      id: 'crown-model',
      source: land.source,
      limit: LIMIT,
      ...(beyond.length === 0
        ? {
            verdict: 'good',
            message: 'The model’s mark for every string lies within the crown’s reach too.',
            lengths: [],
          }
        : {
            verdict: 'look',
            message: `One saddle cannot serve both: the model’s mark for ${names(beyond)} lies up to {0} beyond the crown’s reach.`,
            lengths: [worst(beyond)],
            tries: tries(slot, [...saddle.strings, ...modelled], land.value),
          }),
    },
  ];
};
