import type { SaddlePlace } from '../../../bridge/types';
import type { Hand } from '../../../document/types';
import { rectanglePath } from '../../../geom/rectanglePath';
import type { CrownMove } from '../../../learning/crownMoves';
import type { LengthStyle } from '../../../units/formatLength';
import { handedItem } from '../../handed';
import { moveItem } from '../../moveItem';
import type { Item } from '../../types';
import { plotCaption } from '../plotCaption';
import { plotLine, plotPath, plotText } from '../plotItems';
import { shortenText } from '../shortenText';
import type { PlotPicture } from '../types';
import { CROWN_SCALE, crownMarks } from './crownMarks';
import { COLUMN, columnsSpan, stringColumns } from './stringColumns';

const EDGE = 2;
const ABOVE = 4.5;
const TOP = 9;
const NAME_AT = 3.4;
const ROW = 4.2;
const TO_CAPTION = 3.4;

/** The strings of whole words of what is to be filed, for those who do not see it. */
const summaryOf = (moves: readonly CrownMove[]): string => {
  const back = moves.filter(({ from, to }) => to > from + 0.005).length;
  const front = moves.filter(({ from, to }) => to < from - 0.005).length;
  const short = moves.filter(({ reached }) => !reached).length;
  return `${back} strings move back and ${front} to the front; ${short === 0 ? 'the crown reaches every mark' : `the crown comes short of the mark of ${short}`}.`;
};

/**
 * The crown of the saddle seen from above with the nut up, ten times as thick as it is: for every string that was read a
 * ring where it broke and a dot where it is to be filed to, between dashes that leave the land. Strings stand evenly apart.
 *
 * @param land saddle kept at each face, mm
 */
export const plotCrown = (
  moves: readonly CrownMove[],
  strings: SaddlePlace['strings'],
  thickness: number,
  land: number,
  style: LengthStyle,
  hand: Hand,
): PlotPicture => {
  const columns = stringColumns(strings.length);
  const span = columnsSpan(strings.length);
  const depth = thickness * CROWN_SCALE;
  const kept = Math.min(land, thickness / 2) * CROWN_SCALE;
  const rows = moves.some(({ reached }) => !reached) ? 4 : 3;
  const across = (id: string, y: number): Item =>
    plotLine(id, 'saddle', 'plot-reach', { x: -span / 2, y }, { x: span / 2, y });
  const items: readonly Item[] = [
    plotPath('saddle', 'saddle', 'plot-line', rectanglePath(-span / 2, 0, span, depth)),
    across('land-front', kept),
    across('land-back', depth - kept),
    ...strings.flatMap(({ id, name }, index): readonly Item[] => {
      const x = columns[index] ?? 0;
      const move = moves.find((each) => each.id === id);
      return [
        plotText(
          `name-${index + 1}`,
          `string ${index + 1}`,
          'heading',
          { x, y: depth + NAME_AT },
          shortenText(`${index + 1} ${name}`, COLUMN - 1),
          'middle',
        ),
        ...(move === undefined ? [] : crownMarks(move, index, x, thickness, style)),
      ];
    }),
    plotText('bass', 'sides', 'heading', { x: -span / 2, y: -ABOVE }, 'BASS', 'start'),
    plotText('nut-side', 'sides', 'note', { x: 0, y: -ABOVE }, '↑ nut side', 'middle'),
    plotText('treble', 'sides', 'heading', { x: span / 2, y: -ABOVE }, 'TREBLE', 'end'),
  ];
  const width = span + 2 * EDGE;
  const captionTop = TOP + depth + NAME_AT + rows * ROW + TO_CAPTION;
  const unit = style.unit === 'mm' ? 'mm' : 'inches';
  const caption = plotCaption(
    `Ring: where it broke. Dot: where to file it to, ${unit}. Thickness drawn ${CROWN_SCALE}:1; dashes leave the land at each face.`,
    { x: EDGE, y: captionTop },
    span,
  );
  return {
    width,
    height: captionTop + caption.height,
    items: [...items.map((item) => moveItem(handedItem(hand, item), { x: width / 2, y: TOP })), ...caption.items],
    title: 'What to file of the crown',
    summary: summaryOf(moves),
  };
};
