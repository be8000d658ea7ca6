import type { SaddlePlace } from '../../bridge/types';
import type { Project } from '../../document/types';
import type { Point } from '../../geom/types';
import { heightLimitsInUse } from '../../height/limitsInUse';
import type { SideHeights } from '../../height/sole/sideHeights';
import type { DesignCheck } from '../types';
import { slotDepthMend } from './slotDepthMend';

/** Rounding, mm, degrees and shares. */
const SAME = 1e-9;

const percent = (share: number): string => `${Math.round(share * 100)} %`;

/**
 * Break angle of both outer strings, wood under the slot, and the share of the saddle that stands in it, against the limits
 * of the height chain: from bridge and action alone while the straightedge was not read, which is said.
 */
export const sideChecks = (
  { chain, airspace, read }: SideHeights,
  saddle: SaddlePlace,
  { bridge, height, limits: own }: Pick<Project, 'bridge' | 'height' | 'limits'>,
): readonly DesignCheck[] => {
  const limits = heightLimitsInUse(height.kind, own);
  const taken = read ? '' : ' Straightedge not read: {0} over the bridge is taken.';
  const breakPoint = ({ x }: { readonly x: number }): Point => ({ x, y: saddle.centre + saddle.slope * x });
  const needs = {
    thickness: bridge.thickness,
    pickup: height.pickup,
    proud: chain.proud.most,
    wood: limits.woodUnder.least,
    share: limits.share.least,
  };
  const breaks = (['treble', 'bass'] as const).flatMap((side): readonly DesignCheck[] => {
    const index = side === 'treble' ? 0 : chain.strings.length - 1;
    const string = saddle.strings[index];
    const angle = chain.strings[index]?.breakDeg ?? null;
    if (angle === null || string === undefined) return [];
    const { least, source } = limits.breakDeg;
    const flat = angle < least - SAME;
    const found = `Break angle of the ${side} ${string.name} string ${angle.toFixed(1)}°`;
    const message = flat
      ? `${found}; ${least.toFixed(1)}° is the least. Ramps behind the saddle add to it.`
      : `${found}.`;
    return [
      {
        id: `break-${side}`,
        verdict: flat ? 'look' : 'good',
        message: message + taken,
        lengths: [airspace],
        source,
        at: [breakPoint(string)],
        part: `check: break angle, ${side}`,
        limit: 'limits.breakDeg',
      },
    ];
  });
  const slotMiddle = [breakPoint({ x: 0 })];
  const thin = chain.woodUnder < limits.woodUnder.least - SAME;
  const share = Math.min(...chain.strings.map((string) => string.share));
  const leans = share < limits.share.least - SAME;
  return [
    ...breaks,
    {
      id: 'wood-under',
      verdict: thin ? 'wrong' : 'good',
      message: thin ? 'Wood under the slot {0}: less than {1} may split.' : 'Wood under the slot {0}.',
      lengths: [chain.woodUnder, limits.woodUnder.least],
      source: limits.woodUnder.source,
      at: slotMiddle,
      part: 'check: wood under the slot',
      limit: 'limits.woodUnder',
      mend: () => slotDepthMend(needs, 'wood'),
    },
    {
      id: 'saddle-share',
      verdict: leans ? 'look' : 'good',
      message: `${percent(share)} of the saddle stands in the slot${leans ? `; below ${percent(limits.share.least)} it leans` : ''}.${taken}`,
      lengths: [airspace],
      source: limits.share.source,
      at: slotMiddle,
      part: 'check: saddle in its slot',
      limit: 'limits.share',
      mend: () => slotDepthMend(needs, 'share'),
    },
  ];
};
