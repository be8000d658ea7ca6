import type { Bridge, Hand, HeightGate } from '../../document/types';
import type { Point } from '../../geom/types';
import { sagitta } from '../../height/sagitta';
import type { SaddleBlank } from '../../height/sole/saddleBlank';
import type { SoleFit } from '../../height/sole/soleTypes';
import { soleWords } from '../../height/sole/soleWords';
import { formatLength, type LengthStyle } from '../../units/formatLength';
import { linearDimension } from '../dimensions/linearDimension';
import { handedItem } from '../handed';
import type { PlotPicture } from '../plots/types';
import type { Item } from '../types';
import { fineText } from './fineText';
import { lengthProfile, topProfile } from './lengthProfile';
import { gapStrip, magnifiedBy, thicknessRow } from './lengthRows';
import { saddleProfile } from './saddleProfile';
import { at, sideLine, sideShape, sideText } from './sideItems';
import { sidePicture } from './sidePicture';

const BEYOND_TIPS = 8;
/** Rows below the top, mm. */
const THICK_ROW = 9;
const STRIP = 20;
const TO_WORDS = 5;
const ABOVE_SADDLE = 6;
const SIDES_ABOVE = 13;

/** What the bridge is drawn from, seen along the strings. slope: dy/dx of the slot. */
export interface LengthNeeds {
  readonly bridge: Bridge;
  readonly height: Pick<HeightGate, 'pickup'>;
  readonly fit: SoleFit;
  readonly blank: SaddleBlank | null;
  readonly slope: number;
  readonly hand: Hand;
}

/** The saddle in its slot; what wood stands before is dashed. */
const saddleItems = ({ bridge, height, blank, slope }: LengthNeeds): readonly Item[] => {
  if (blank === null) return [];
  const stretch = Math.hypot(1, slope);
  const foot = bridge.thickness - bridge.slot.depth + height.pickup;
  const lift = ({ x, y }: Point): Point => ({ x: x / stretch, y: y - foot });
  const profile = saddleProfile(blank).map(lift);
  const over = profile.map(({ x, y }) => at(x, Math.max(0 - y, bridge.thickness)));
  const [first, last] = [profile[0], profile.at(-1)];
  const under = [over[0], first, last, over.at(-1)].flatMap((point) => point ?? []);
  return [
    sideLine('saddle', 'saddle', 'slot', ...over),
    sideLine('saddle-in-slot', 'saddle', 'beneath', ...under),
    ...blank.strings.map(({ at: along, height: top }, index) =>
      sideLine(
        `string-${index + 1}`,
        `string ${index + 1}`,
        'mark',
        at(along / stretch, foot + top),
        at(along / stretch, foot + top + 1.2),
      ),
    ),
  ];
};

/**
 * The bridge seen along the strings from the tail, true to scale: the sole on the top, wings, saddle, thickness at the named
 * points, and beneath it the gap between sole and top magnified, with its figures. The part of a figure is the path of its
 * field. Null while nothing was said of the sole.
 */
export const sideLength = (needs: LengthNeeds, style: LengthStyle): PlotPicture | null => {
  const { bridge, fit, blank, hand } = needs;
  const { sole, thickness } = bridge;
  if (sole === null) return null;
  const show = (mm: number): string => formatLength(mm, style);
  const times = magnifiedBy(fit.worst.gap);
  const ends = Math.min(...topProfile(sole, fit, BEYOND_TIPS).map(({ y }) => 0 - y));
  const row = ends - THICK_ROW;
  const line = row - STRIP + 6;
  const strip = gapStrip(sole, fit, line, times, (mm) => fineText(mm, style.unit));
  const highest = Math.max(
    thickness,
    blank === null ? 0 : thickness - bridge.slot.depth + needs.height.pickup + blank.highest,
  );
  const { bassTip, trebleTip, trebleWing } = fit.places;
  const items: readonly Item[] = [
    sideLine('top', 'top', 'outline', ...topProfile(sole, fit, BEYOND_TIPS)),
    sideShape('bridge', 'bridge', 'outline', ...lengthProfile(sole, fit, thickness)),
    ...saddleItems(needs),
    ...thicknessRow(sole, fit, thickness - sagitta(sole.face, sole.wing.begin), row, show),
    ...linearDimension(at(0, thickness), at(trebleWing, sole.wing.inner), {
      id: 'begin',
      part: 'bridge.sole.wing.begin',
      layer: 'sheet',
      text: `${show(trebleWing)} to the wing`,
      direction: 'across',
      offset: -(highest - thickness + ABOVE_SADDLE),
    }),
    ...strip.items,
    sideText('bass', 'sides', 'heading', at(bassTip, highest + SIDES_ABOVE), 'BASS', 'start'),
    sideText('treble', 'sides', 'heading', at(trebleTip, highest + SIDES_ABOVE), 'TREBLE', 'end'),
  ];
  const left = Math.min(bassTip, -trebleTip);
  const words = soleWords(fit);
  return sidePicture(
    [
      ...items.map((item) => handedItem(hand, item)),
      sideText('gap-words', 'gap', 'note', at(left, line + TO_WORDS), `Gap, drawn ${times} times as high`, 'start'),
      sideText(
        'unit',
        'gap',
        'note',
        at(left, strip.bottom - TO_WORDS),
        style.unit === 'mm' ? 'mm' : 'inches',
        'start',
      ),
    ],
    {
      title: 'Sole and top, seen from the tail',
      summary: words.join(' '),
      caption: 'True scale above; the strip beneath shows the gap alone. Pressed lightly at its centre.',
    },
  );
};
