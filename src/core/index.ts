/** The stable face of the core, for checks from outside. The app imports the modules themselves. */
export { mirrorPath } from './geom/mirrorPath';
export { offsetPath } from './geom/offset/offsetPath';
export { pathArea } from './geom/pathArea';
export { pathCentroid } from './geom/pathCentroid';
export { signedArea } from './geom/signedArea';
export type { Path, Point, Segment } from './geom/types';
export { fitScale } from './instrument/fitScale';
export { fretDistance } from './instrument/fretDistance';
export { stringPositions } from './instrument/stringPositions';
export { centsPerMm } from './intonation/centsPerMm';
export { fitSetback } from './intonation/fitSetback';
export { fretCents } from './intonation/fretCents';
export { saddleTravelFor } from './intonation/saddleTravelFor';
export type { Setback, SetbackFit, Setup, StringSpec } from './intonation/types';
export { fitSaddleLine } from './numeric/fitSaddleLine';
export type { Issue, Result } from './result';
export { formatLength, type LengthStyle } from './units/formatLength';
export { parseLength } from './units/parseLength';
