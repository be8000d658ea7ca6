import type { Item } from '../drawing/types';
import type { Point } from '../geom/types';
import { sheetText } from './sheetItems';

const PITCH = 4;
const STEPS = [
  'print reads true, both ways',
  'neck angle and height pass',
  'sole fits the top, braces found',
  'square line reads alike at both ends',
  'string margins equal at the last fret',
  'read again with the bridge taped',
];

/** Height of the list, mm. */
export const BEFORE_GLUE_HEIGHT = (STEPS.length + 1) * PITCH + 1;

/** What has to be true before glue is spread, with boxes to tick. */
export const beforeGlue = (at: Point): readonly Item[] => [
  sheetText('glue-heading', 'heading', { x: at.x, y: at.y + 2 }, 'Before the glue'),
  ...STEPS.map((step, index) =>
    sheetText(`glue-${index}`, 'note', { x: at.x, y: at.y + 2 + (index + 1) * PITCH }, `□ ${step}`),
  ),
];
