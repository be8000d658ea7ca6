import type { LimitRange } from './heightLimits';
import { SLACK } from './thicknessRange';
import type { HeightChainArguments, HeightReason, SaddleHeight } from './types';

type Named = 'airspace' | 'proud' | 'thickness';

/** Below or above a range, as a reason each. */
const outside = (name: Named, low: number, high: number, { least, most, source }: LimitRange): HeightReason[] => [
  ...(low < least - SLACK
    ? [{ code: `${name}-low` as const, weight: 'wrong' as const, value: low, limit: least, source }]
    : []),
  ...(high > most + SLACK
    ? [{ code: `${name}-high` as const, weight: 'wrong' as const, value: high, limit: most, source }]
    : []),
];

/** The share of the saddle in the slot: what must be is weighed first, then what is aimed at. */
const shareReasons = (args: HeightChainArguments, proud: number, share: number): HeightReason[] => {
  const { bridgeThickness, slotDepth, pickupThickness, limits } = args;
  const deepest = bridgeThickness - limits.woodUnder.least;
  /** Slot depth that holds this share of the highest saddle. */
  const depthFor = (wanted: number): number => pickupThickness + (proud * wanted) / (1 - wanted);
  for (const [limit, weight] of [
    [limits.share, 'wrong'],
    [limits.shareAim, 'look'],
  ] as const) {
    if (share >= limit.least - SLACK) continue;
    const depth = depthFor(limit.least);
    if (depth <= deepest + SLACK)
      // Cutting the slot deeper leaves the bridge fit for use: no verdict rests on it.
      return [{ code: 'slot-deeper', weight: 'look', value: slotDepth, limit: depth, source: limit.source }];
    return [{ code: 'share-low', weight, value: share, limit: limit.least, source: limit.source }];
  }
  return [];
};

/** Everything that stands against this bridge or asks for a look, the weighty first. */
export const heightReasons = (
  args: HeightChainArguments,
  strings: readonly SaddleHeight[],
  woodUnder: number,
): readonly HeightReason[] => {
  const { airspace, bridgeThickness, saddleBlank, limits } = args;
  const prouds = strings.map(({ proud }) => proud);
  const highest = Math.max(...prouds);
  const breaks = strings.flatMap(({ breakDeg }) => breakDeg ?? []);
  const flattest = Math.min(...breaks);
  const blank = Math.max(...strings.map(({ saddle }) => saddle));
  const reasons: HeightReason[] = [
    ...outside('airspace', airspace, airspace, limits.airspace),
    ...outside('proud', Math.min(...prouds), highest, limits.proud),
    ...outside('thickness', bridgeThickness, bridgeThickness, limits.thickness),
  ];
  if (woodUnder < limits.woodUnder.least - SLACK) {
    const { least, source } = limits.woodUnder;
    reasons.push({ code: 'wood-thin', weight: 'wrong', value: woodUnder, limit: least, source });
  }
  if (highest > 0) reasons.push(...shareReasons(args, highest, Math.min(...strings.map(({ share }) => share))));
  if (flattest < limits.breakDeg.least - SLACK) {
    const { least, source } = limits.breakDeg;
    reasons.push({ code: 'break-low', weight: 'look', value: flattest, limit: least, source });
  }
  if (saddleBlank !== null && saddleBlank < blank - SLACK)
    reasons.push({ code: 'blank-short', weight: 'look', value: saddleBlank, limit: blank, source: null });
  return reasons.sort((a, b) => Number(a.weight === 'look') - Number(b.weight === 'look'));
};
