/** Projects to and from the text of a file, in one piece that is loaded when it is first asked for. */
export { decodeProject as decode } from './decodeProject';
export { encodeProject as encode } from './encodeProject';
