import type { Hand } from '../../document/types';
import type { SaddleBlank } from '../../height/sole/saddleBlank';
import { formatLength, type LengthStyle } from '../../units/formatLength';
import { linearDimension } from '../dimensions/linearDimension';
import { handedItem } from '../handed';
import type { PlotPicture } from '../plots/types';
import type { Item } from '../types';
import { fineText } from './fineText';
import { rowsApart } from './rowsApart';
import { saddleProfile } from './saddleProfile';
import { at, sideLine, sideShape, sideText } from './sideItems';
import { sidePicture } from './sidePicture';

const BEYOND_ENDS = 4;
const ABOVE = 3.6;
const BELOW = 4;

/** The radius of the top in words: "straight", or its length. */
const topWords = ({ top }: SaddleBlank, show: (mm: number) => string): string =>
  top.radius === null ? 'straight' : `radius ${show(top.radius)}`;

/**
 * The saddle to cut, from the front or the tail alike, true to scale: flat foot, one arc on top, the face of the bridge
 * across it, and at every string the height above its own foot. The bass lies on the side where it does seen from the tail.
 */
export const drawSaddleBlank = (blank: SaddleBlank, style: LengthStyle, hand: Hand): PlotPicture => {
  const show = (mm: number): string => formatLength(mm, style);
  const { length, thickness, strings, face, top, highest } = blank;
  const thick = fineText(thickness, style.unit);
  const half = length / 2;
  const rows = rowsApart(strings.map(({ at: along, height, name }) => ({ x: along, lines: [show(height), name] })));
  const rowOf = (index: number): number => highest + ABOVE + (rows[index] ?? 0) * 2 * ABOVE;
  const above = highest + ABOVE + (Math.max(...rows) + 1) * 2 * ABOVE;
  const items: readonly Item[] = [
    sideShape('blank', 'saddle', 'outline', ...saddleProfile(blank)),
    sideLine('face', 'bridge', 'beneath', at(-half - BEYOND_ENDS, face), at(half + BEYOND_ENDS, face)),
    ...strings.flatMap(({ at: along, height, name }, index): readonly Item[] => [
      sideLine(`string-${index + 1}`, `string ${index + 1}`, 'dimension', at(along, 0), at(along, height + 1.2)),
      sideText(`height-${index + 1}`, `string ${index + 1}`, 'label', at(along, rowOf(index)), show(height), 'middle'),
      sideText(`name-${index + 1}`, `string ${index + 1}`, 'note', at(along, rowOf(index) + ABOVE), name, 'middle'),
    ]),
    ...linearDimension(at(-half, 0), at(half, 0), {
      id: 'length',
      part: 'bridge.slot.length',
      layer: 'sheet',
      text: `${show(length)} long, ${thick} thick`,
      direction: 'across',
      offset: BELOW + 2,
    }),
    sideText('bass', 'sides', 'heading', at(-half, above), 'BASS', 'start'),
    sideText('treble', 'sides', 'heading', at(half, above), 'TREBLE', 'end'),
  ];
  const unit = style.unit === 'mm' ? 'mm' : 'inches';
  const off = top.radius === null ? '' : `, which leaves no string farther off than ${top.deviation.toFixed(2)} mm`;
  return sidePicture(
    items.map((item) => handedItem(hand, item)),
    {
      title: 'Saddle blank',
      summary: `${show(length)} ${unit} long, ${thick} thick, ${show(highest)} high at the most; its top ${topWords(blank, show)}${off}.`,
      caption: `True scale, seen from the tail. Heights over the foot, ${unit}; dashed: the face of the bridge. Top ${topWords(blank, show)}.`,
    },
  );
};
