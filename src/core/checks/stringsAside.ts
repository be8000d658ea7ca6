import type { Hole } from '../bridge/types';
import type { WholeDesign } from './designed';
import { type Finding, setOne } from './finding';
import { checkPart } from './wallCheck';

const WORDS = {
  'bridge.pins.spread': {
    id: 'pins-strings',
    name: 'Pins stand behind their strings',
    one: 'pin',
    label: 'Pin spacing, outer {0}',
  },
  'bridge.ties.spread': {
    id: 'ties-strings',
    name: 'String holes lie behind their strings',
    one: 'string hole',
    label: 'String hole spacing, outer {0}',
  },
} as const;

const GOLDEN = (Math.sqrt(5) - 1) / 2;
const SECTIONS = 40;

/** The outer spacing at which evenly spaced holes come nearest to where the strings are: the least worst miss. */
const bestSpread = (wanted: readonly number[]): number => {
  const count = wanted.length;
  const worst = (spread: number): number =>
    Math.max(...wanted.map((x, index) => Math.abs(spread / 2 - (index * spread) / (count - 1) - x)));
  let [low, high] = [0, 2 * ((wanted[0] ?? 0) - (wanted.at(-1) ?? 0))];
  for (let section = 0; section < SECTIONS; section += 1) {
    const span = (high - low) * GOLDEN;
    if (worst(high - span) < worst(low + span)) high = low + span;
    else low = high - span;
  }
  return Math.round(low * 10) / 10;
};

/**
 * Whether each string runs on straight to the hole that holds it. holes: string 1 first; `path`: the field of their outer
 * spacing. The strings are carried on beyond the saddle in their own direction.
 */
export const stringsAside = (
  { project, strings, saddle, limits }: WholeDesign,
  holes: readonly Hole[],
  path: keyof typeof WORDS,
): readonly Finding[] => {
  const { id, name, one, label } = WORDS[path];
  const xAt = ({ nutX, saddleX }: { readonly nutX: number; readonly saddleX: number }, y: number): number => {
    const broken = saddle.centre + saddle.slope * saddleX;
    return saddleX + ((saddleX - nutX) * (y - broken)) / broken;
  };
  const asides = holes.flatMap((hole, index) => {
    const string = strings[index];
    return string === undefined ? [] : [{ hole, name: string.name, number: index + 1, x: xAt(string, hole.centre.y) }];
  });
  const asideOf = ({ hole, x }: (typeof asides)[number]): number => Math.abs(hole.centre.x - x);
  const worst = asides.reduce<(typeof asides)[number] | null>(
    (most, each) => (most === null || asideOf(each) > asideOf(most) ? each : most),
    null,
  );
  if (worst === null) return [];
  const aside = asideOf(worst);
  const limitName = (project.bridge.pins?.stagger ?? 0) > 0 ? 'pinAsideTwoRows' : 'pinAside';
  const limit = limits[limitName];
  const about = {
    id,
    lengths: [aside, limit.value],
    source: limit.source,
    at: [worst.hole.centre],
    part: checkPart(name),
    limit: `limits.${limitName}`,
  };
  if (aside <= limit.value + 1e-6) return [{ ...about, verdict: 'good', message: `${name}: {0} aside at most.` }];
  return [
    {
      ...about,
      verdict: 'look',
      message: `${one.charAt(0).toUpperCase()}${one.slice(1)} ${worst.number} stands {0} aside of its string ${worst.name}; {1} at most is usual.`,
      tries: [setOne(path, bestSpread(asides.map(({ x }) => x)), label)],
    },
  ];
};
