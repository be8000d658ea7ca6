import type { Hand } from '../../../document/types';
import { circlePath } from '../../../geom/circlePath';
import type { ExpectedString } from '../../../learning/whatToExpect';
import { measureText } from '../../../text/measureText';
import { formatLength, type LengthStyle } from '../../../units/formatLength';
import { handedItem } from '../../handed';
import { moveItem } from '../../moveItem';
import { TEXT_HEIGHT } from '../../textHeights';
import type { Item } from '../../types';
import { plotCaption } from '../plotCaption';
import { plotLine, plotPath, plotText } from '../plotItems';
import { plotKey } from '../plotKey';
import { modelMark } from '../plotMarks';
import { roundTicks } from '../roundTicks';
import { shortenText } from '../shortenText';
import type { PlotPicture } from '../types';
import { foundKey, RING } from './foundKey';
import { COLUMN, columnsSpan, stringColumns } from './stringColumns';

const EDGE = 2;
const TITLE_AT = 3;
const TOP = 13;
const ABOVE = 4.5;
const NAME_AT = 3.6;
const TO_KEY = 5.6;
const TO_CAPTION = 0.4;
const TO_LINE = 1.2;
/** Paper that the range may take, mm, and scales to choose from, largest first. */
const MOST_HEIGHT = 60;
const SCALES = [20, 10, 5, 2, 1] as const;
/** Instruments of one string stand side by side within this, mm. */
const ABREAST = 5;

/** One string: what is to be expected of it, and how far each instrument came out from the model, mm. */
export interface FoundString extends ExpectedString {
  readonly errors: readonly number[];
}

/** Where the nth of so many stands beside the middle of its column: left of the estimate, which stands at the right. */
const beside = (index: number, count: number): number =>
  count < 2 ? -ABREAST / 2 : -ABREAST + (index * ABREAST) / (count - 1);

/**
 * What was found against what the model predicted, string by string: a ring for each instrument, a diamond with its ± for
 * what to expect of the next one, and the model as the line through 0. Down is farther from the nut.
 *
 * @throws RangeError without a string
 */
export const plotFound = (strings: readonly FoundString[], style: LengthStyle, hand: Hand): PlotPicture => {
  if (strings.length === 0) throw new RangeError('Expected at least one string to plot.');
  const shown = strings.flatMap(({ errors, next }) => [
    0,
    ...errors,
    ...(next === null ? [] : [next.estimate - next.doubt, next.estimate + next.doubt]),
  ]);
  const [low, high] = [Math.min(...shown), Math.max(...shown)];
  const scale = SCALES.find((each) => (high - low) * each <= MOST_HEIGHT) ?? 1;
  const ticks = roundTicks(low, high, scale, style);
  const first = ticks[0]?.mm ?? low;
  const depth = ((ticks.at(-1)?.mm ?? high) - first) * scale;
  const y = (mm: number): number => (mm - first) * scale;
  const columns = stringColumns(strings.length);
  const span = columnsSpan(strings.length);
  const figures = ticks.map(({ text }) => measureText(text, TEXT_HEIGHT.note, 'regular'));
  const left = EDGE + Math.max(...figures) + TO_LINE;
  const width = left + span + EDGE;
  const marks: readonly Item[] = strings.flatMap(({ name, errors, next }, index): readonly Item[] => {
    const part = `string ${index + 1}`;
    const x = columns[index] ?? 0;
    return [
      ...errors.map((error, nth) =>
        plotPath(
          `found-${index + 1}-${nth + 1}`,
          part,
          'plot-model',
          circlePath({ x: x + beside(nth, errors.length), y: y(error) }, RING),
        ),
      ),
      ...(next === null
        ? []
        : modelMark(`next-${index + 1}`, part, { x: x + ABREAST / 2 + 0.6, y: y(next.estimate) }, next.doubt * scale)),
      plotText(
        `name-${index + 1}`,
        part,
        'note',
        { x, y: depth + NAME_AT },
        shortenText(`${index + 1} ${name}`, COLUMN - 1),
        'middle',
      ),
    ];
  });
  const sides: readonly Item[] = [
    plotText('bass', 'sides', 'heading', { x: -span / 2, y: -ABOVE }, 'BASS', 'start'),
    plotText('treble', 'sides', 'heading', { x: span / 2, y: -ABOVE }, 'TREBLE', 'end'),
    plotLine('model', 'model', 'plot-line', { x: -span / 2, y: y(0) }, { x: span / 2, y: y(0) }),
  ];
  const room = width - 2 * EDGE;
  const key = plotKey(foundKey, { x: EDGE, y: TOP + depth + NAME_AT + TO_KEY }, room);
  const captionTop = TOP + depth + NAME_AT + TO_KEY + key.height + TO_CAPTION;
  const caption = plotCaption(
    `Down is farther from the nut than the model says. Drawn ${scale}:1.`,
    { x: EDGE, y: captionTop },
    room,
  );
  const most = Math.max(...strings.map(({ errors }) => errors.length));
  return {
    width,
    height: captionTop + caption.height,
    items: [
      plotText(
        'axis-title',
        'axis',
        'note',
        { x: EDGE, y: TITLE_AT },
        `found less predicted, ${style.unit === 'mm' ? 'mm' : 'inches'}`,
        'start',
      ),
      ...ticks.flatMap(({ mm, text }, index): readonly Item[] => [
        plotLine(
          `tick-${index + 1}`,
          'axis',
          'plot-axis',
          { x: left, y: TOP + y(mm) },
          { x: width - EDGE, y: TOP + y(mm) },
        ),
        plotText(`tick-${index + 1}-figure`, 'axis', 'note', { x: left - TO_LINE, y: TOP + y(mm) }, text, 'end'),
      ]),
      ...[...sides, ...marks].map((item) => moveItem(handedItem(hand, item), { x: left + span / 2, y: TOP })),
      ...key.items,
      ...caption.items,
    ],
    title: 'Found against predicted',
    summary: `Up to ${most} instruments a string lie between ${formatLength(low, style)} and ${formatLength(high, style)} ${style.unit} from the model.`,
  };
};
