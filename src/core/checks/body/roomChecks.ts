import { caulPasses } from '../../body/caulPasses';
import { pathBounds } from '../../geom/pathBounds';
import type { DesignCheck } from '../types';
import type { Bodied } from './bodied';
import { bodyLimit } from './bodyLimits';

const caulCheck = ({ body: { plate, soundhole }, limits }: Bodied): readonly DesignCheck[] => {
  if (plate === null || soundhole === null) return [];
  const thickness = bodyLimit('caulThickness', limits);
  const across = Math.max(plate.acrossFront, plate.acrossBack);
  const narrow = Math.min(plate.along, across);
  const passes = caulPasses(soundhole, narrow, thickness.value);
  const caul = 'A caul as large as the plate, {0} × {1} and {2} thick,';
  return [
    {
      id: 'caul-passes',
      verdict: passes ? 'good' : 'look',
      message: passes
        ? `${caul} goes through the soundhole end first.`
        : `${caul} does not go through the soundhole: make it in two pieces, or narrower.`,
      lengths: [Math.max(plate.along, across), narrow, thickness.value],
      source: thickness.source,
      limit: 'limits.caulThickness',
    },
  ];
};

const cutawayCheck = ({ place: { cutaway }, bridge }: Bodied): readonly DesignCheck[] => {
  if (cutaway === null) return [];
  const { minX, maxX, minY } = pathBounds(bridge.footprint.outline);
  const reach = cutaway.side === 'treble' ? maxX : -minX;
  const [ahead, beside] = [minY - cutaway.end, cutaway.aside - reach];
  const about = { id: 'cutaway', source: null };
  if (ahead < 0 && beside < 0)
    return [
      {
        ...about,
        verdict: 'wrong',
        message: 'The bridge runs into the cutaway: {0} along and {1} across.',
        lengths: [0 - ahead, 0 - beside],
      },
    ];
  return [
    {
      ...about,
      verdict: 'good',
      message:
        ahead >= 0 ? 'The cutaway ends {0} ahead of the bridge.' : 'The cutaway passes the bridge {0} to the side.',
      lengths: [ahead >= 0 ? ahead : beside],
    },
  ];
};

/** Room for a caul, and beside a cutaway. */
export const roomChecks = (bodied: Bodied): readonly DesignCheck[] => [...caulCheck(bodied), ...cutawayCheck(bodied)];
