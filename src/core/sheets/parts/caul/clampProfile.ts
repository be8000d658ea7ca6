import type { Sole } from '../../../document/soleTypes';
import { lengthProfile, topProfile } from '../../../drawing/sideView/lengthProfile';
import { at, sideLine, sideShape, sideText, steps } from '../../../drawing/sideView/sideItems';
import type { Item } from '../../../drawing/types';
import type { Point } from '../../../geom/types';
import { sagitta } from '../../../height/sagitta';
import type { SoleFit } from '../../../height/sole/soleTypes';
import { wingHeight } from '../../../height/sole/wingHeight';

/** Wood over the highest of the bridge, mm: common practice, no source. */
export const OVER_BRIDGE = 20;
/** Kept between the centre caul and those of the wings, so that each sits down by itself, mm: common practice, no source. */
export const BETWEEN_CAULS = 2;
/** How far the top is drawn beyond the tips, mm. */
const BEYOND_TIPS = 4;
const COUNT = 60;

interface Wing {
  readonly side: 'bass' | 'treble';
  /** x where the caul begins and ends, − toward the bass. */
  readonly begin: number;
  readonly end: number;
}

/** The wings of the bridge with the places of their cauls. */
const wingsOf = ({ wing, draft }: Sole, { places }: SoleFit): readonly Wing[] => {
  const lean = wing.tip * Math.tan(draft);
  const half = BETWEEN_CAULS / 2;
  return [
    { side: 'bass', begin: places.bassWing - half, end: places.bassTip + lean },
    { side: 'treble', begin: places.trebleWing + half, end: places.trebleTip - lean },
  ];
};

/** Underside of the centre caul, from the bass to the treble: the upper face of the bridge, an arc when it has a radius. */
const centreUnder = (sole: Sole, thickness: number): readonly Point[] => {
  const half = sole.wing.begin - BETWEEN_CAULS / 2;
  return steps(-half, half, sole.face === null ? 1 : COUNT).map((x) => at(x, thickness - sagitta(sole.face, x)));
};

/**
 * The three cauls on the bridge, seen along the strings from the tail, true size: level on top, so that every clamp stands
 * square, shaped beneath to the upper face and to the wings. x from the centreline, the sole at 0.
 */
export const clampProfile = (sole: Sole, fit: SoleFit, thickness: number): readonly Item[] => {
  const level = Math.max(thickness, sole.wing.inner) + OVER_BRIDGE;
  const under = centreUnder(sole, thickness);
  const [first, last] = [under[0] ?? at(0, thickness), under.at(-1) ?? at(0, thickness)];
  const wings = wingsOf(sole, fit).map(({ side, begin, end }) =>
    sideShape(
      `caul-${side}`,
      `caul, ${side} wing`,
      'outline',
      at(begin, level),
      at(end, level),
      at(end, wingHeight(sole, end, end)),
      at(begin, wingHeight(sole, end, begin)),
    ),
  );
  const words = wingsOf(sole, fit).map(({ side, begin, end }) =>
    sideText(`name-${side}`, 'cauls', 'heading', at((begin + end) / 2, level - 5), side.toUpperCase(), 'middle'),
  );
  return [
    sideShape('bridge', 'bridge', 'slot', ...lengthProfile(sole, fit, thickness)),
    sideLine('top', 'top', 'slot', ...topProfile(sole, fit, BEYOND_TIPS)),
    sideShape('caul-centre', 'caul, centre', 'outline', ...under, at(last.x, level), at(first.x, level)),
    ...wings,
    ...words,
    sideText('name-centre', 'cauls', 'heading', at(0, level - 5), 'CENTRE', 'middle'),
    sideText('clamp-face', 'cauls', 'note', at(0, level - 9.4), 'CLAMP FACE up', 'middle'),
  ];
};
