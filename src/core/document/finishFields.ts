import { lengthField, orEmpty } from './fieldRows';
import type { LengthField } from './fieldTypes';
import type { Project } from './types';

const READ: readonly LengthField[] = [
  orEmpty(
    lengthField(
      'build.top',
      'Thickness of the top',
      0.5,
      10,
      'Where the bridge goes, as near as it can be read: at the edge of the soundhole.',
    ),
  ),
  orEmpty(
    lengthField(
      'build.film',
      'Thickness of the finish film',
      0,
      2,
      'With a depth gauge over the scored edge, film against bare wood.',
    ),
  ),
];

const REBATE: readonly LengthField[] = [
  lengthField(
    'build.rebate.width',
    'Rebate under the rim, width',
    0,
    10,
    'In from the edge of the bridge, all round.',
    'about 1/16 in: davidsguitar.blogspot.com, ready for neck and bridge glue-up',
  ),
  lengthField(
    'build.rebate.depth',
    'Rebate under the rim, depth',
    0,
    3,
    'Up from the sole: room for the film.',
    'under 1/64 in: davidsguitar.blogspot.com, ready for neck and bridge glue-up',
  ),
];

/** What is read of the top and its finish, and the rebate where the bridge has one. */
export const finishFields = ({ build }: Project): readonly LengthField[] =>
  build === null ? [] : build.rebate === null ? READ : [...READ, ...REBATE];

/** The same before an instrument was begun: typing one of them begins it. */
export const READ_OF_FINISH = READ;
