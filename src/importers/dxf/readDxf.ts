import { fail, ok, type Result } from '../../core/result';
import { IMPORT_LIMITS } from '../importLimits';
import type { Drawing } from '../types';
import { dxfSize } from './dxfSize';
import { readDocument } from './readDocument';
import { readGroups } from './readGroups';
import { walkDxf } from './walkDxf';

/**
 * The paths of a text DXF, R12 to 2018, in its own units; y is turned down, so that what is seen stays as seen.
 *
 * Codes: dxf.damaged, import.tooMany, import.deep.
 */
export function readDxf(text: string): Result<Drawing> {
  const groups = readGroups(text);
  if (!groups.ok) return groups;
  const document = readDocument(groups.value);
  const { pieces, leftOut, excess } = walkDxf(document);
  if (excess === 'depth')
    return fail(
      '',
      'import.deep',
      `The file nests blocks more than ${IMPORT_LIMITS.depth} deep. Save the bridge's outline alone.`,
    );
  if (excess === 'elements')
    return fail('', 'import.tooMany', 'The file draws more than a bridge can need. Save its outline alone.');
  return ok({ kind: 'dxf', pieces, size: dxfSize(document.header), leftOut });
}
