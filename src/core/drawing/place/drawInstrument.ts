import { boardWidthAt } from '../../instrument/boardOf';
import { DATUM_NAME } from '../../placement/datumName';
import { lastFret, type ReadCase } from '../../placement/reading/readCase';
import { ordinal } from '../../units/ordinal';
import type { Item } from '../types';
import { placePathItem, placeWords } from './placeItems';
import type { PlaceMap } from './placeMap';

/** From the end of a fret to its name, mm of the picture. */
const BESIDE = 10;

/** Nut, frets that matter here, edges of the board, centreline and the outer strings. */
export const drawInstrument = (read: ReadCase, map: PlaceMap): readonly Item[] => {
  const { board, bridge, strings, saddle, project } = read;
  const { nut, frets } = project.instrument;
  const last = lastFret(read);
  const end = Math.max(...bridge.points.map(({ at }) => at.y)) + 8;
  const outside = map.width / 2 + Math.abs(map.at({ x: last.width / 2, y: 0 }).x - map.width / 2) + BESIDE;
  const fret = (id: string, y: number, name: string, width = boardWidthAt(board, y)): readonly Item[] => {
    const level = map.at({ x: 0, y }).y;
    return [
      placePathItem(`fret-${id}`, 'slot', map.line({ x: -width / 2, y }, { x: width / 2, y })),
      placeWords(`fret-${id}-name`, 'note', { x: outside, y: level }, name, 'start'),
    ];
  };
  return [
    placePathItem('centreline', 'centreline', map.line({ x: 0, y: 0 }, { x: 0, y: end })),
    ...([1, -1] as const).map((side) =>
      placePathItem(
        `edge-${side}`,
        'board-edge',
        map.line({ x: (side * board.nutWidth) / 2, y: 0 }, { x: (side * boardWidthAt(board, end)) / 2, y: end }),
      ),
    ),
    ...fret('nut', 0, DATUM_NAME[nut.datum].short),
    ...fret('twelfth', board.twelfth, '12th'),
    ...(frets.bodyJoin === 12 ? [] : fret('join', board.bodyJoin, ordinal(frets.bodyJoin))),
    ...(frets.count === frets.bodyJoin || frets.count === 12
      ? []
      : fret('last', last.y, ordinal(frets.count), last.width)),
    ...[strings[0], strings.at(-1)].flatMap((string, index) =>
      string === undefined
        ? []
        : [
            placePathItem(
              `string-${index}`,
              'string-line',
              map.line(
                { x: string.nutX, y: 0 },
                { x: string.saddleX, y: saddle.centre + saddle.slope * string.saddleX },
              ),
            ),
          ],
    ),
  ];
};
