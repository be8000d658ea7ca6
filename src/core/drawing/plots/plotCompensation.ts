import type { SaddlePlace } from '../../bridge/types';
import type { Hand } from '../../document/types';
import { formatLength, type LengthStyle } from '../../units/formatLength';
import { handedItem } from '../handed';
import { moveItem } from '../moveItem';
import type { Item } from '../types';
import { compensationKey } from './compensationKey';
import { compensationLayout, EDGE } from './compensationLayout';
import { compensationMarks } from './compensationMarks';
import { compensationSummary } from './compensationSummary';
import { compensationWords, WORD_ROW } from './compensationWords';
import { plotCaption } from './plotCaption';
import { plotLine, plotText } from './plotItems';
import { plotKey } from './plotKey';
import type { PlotPicture } from './types';

/** From the top edge to the title of the axis and to the first division, and from the names to the key, mm. */
const TITLE_AT = 3;
const PLOT_TOP = 12.5;
const TO_KEY = 5.4;
const TO_CAPTION = 0.6;
const TO_FIGURE = 1.2;

const landIn = (unit: LengthStyle['unit'], land: number): string =>
  `${formatLength(land, unit === 'mm' ? { unit, decimals: 2 } : { unit, decimals: 3 }).replace(/0$/u, '')} ${unit}`;

/**
 * Compensation by string, to scale, seen from the front with the nut up and the bass to the left on a right-handed
 * instrument: dots where the strings want to break, diamonds where the model wants them with their ± at 95 %, the straight
 * saddle line, and between dashes what its crown can be shaped to. The scale of either direction is written on it.
 *
 * @param slot thickness of the saddle, mm, and where in it the straight line lies, 0 front face to 1 back face
 * @param land saddle kept at each face, mm
 * @param octave y of the octave line, the scale without compensation, mm
 * @throws RangeError without a string, or when a figure is not finite
 */
export const plotCompensation = (
  saddle: SaddlePlace,
  slot: { readonly width: number; readonly crown: number },
  land: number,
  octave: number,
  style: LengthStyle,
  hand: Hand,
): PlotPicture => {
  const { strings } = saddle;
  const layout = compensationLayout(saddle, slot, land, octave, style);
  const { left, half, width, depth, scale, at, ticks } = layout;
  const words = compensationWords(strings, layout);
  const room = width - 2 * EDGE;
  const keyTop = PLOT_TOP + depth + words.rows * WORD_ROW + TO_KEY;
  const key = plotKey(compensationKey(strings.some(({ model }) => model !== null)), { x: EDGE, y: keyTop }, room);
  const captionTop = keyTop + key.height + TO_CAPTION;
  const caption = plotCaption(
    `The dashes leave ${landIn(style.unit, land)} of saddle at each face. Drawn ${scale.across}:1 across, ${scale.along}:1 along the neck.`,
    { x: EDGE, y: captionTop },
    room,
  );
  const unit = style.unit === 'mm' ? 'mm' : 'inches';
  return {
    width,
    height: captionTop + caption.height,
    items: [
      plotText('axis-title', 'axis', 'note', { x: EDGE, y: TITLE_AT }, `behind the octave line, ${unit}`, 'start'),
      ...ticks.flatMap(({ mm, text }, index): readonly Item[] => {
        const y = PLOT_TOP + at(0, mm).y;
        return [
          plotLine(`tick-${index + 1}`, 'axis', 'plot-axis', { x: left, y }, { x: width - EDGE, y }),
          plotText(`tick-${index + 1}-figure`, 'axis', 'note', { x: left - TO_FIGURE, y }, text, 'end'),
        ];
      }),
      ...[...compensationMarks(strings, layout), ...words.items].map((item) =>
        moveItem(handedItem(hand, item), { x: left + half, y: PLOT_TOP }),
      ),
      ...key.items,
      ...caption.items,
    ],
    title: 'Compensation by string',
    summary: compensationSummary(strings, style),
  };
};
