import { AUDIT_FIELDS } from './auditFields';
import { COMPENSATION_FIELDS } from './compensationFields';
import { DOUBT_FIELDS } from './doubtFields';
import { DRAW_FIELDS } from './drawFields';
import type { Field } from './fieldTypes';
import { HEIGHT_FIELDS } from './heightFields';
import { INSTRUMENT_FIELDS } from './instrumentFields';
import { LIMIT_FIELDS } from './limitFields';
import { SETUP_FIELDS } from './setupFields';

/** Every field that a maker can edit and that every project has, by station. */
export const FIELDS: Readonly<Record<'measure' | 'draw', readonly Field[]>> = {
  measure: [
    ...INSTRUMENT_FIELDS,
    ...SETUP_FIELDS,
    ...COMPENSATION_FIELDS,
    ...HEIGHT_FIELDS,
    ...AUDIT_FIELDS,
    ...DOUBT_FIELDS,
    ...LIMIT_FIELDS,
  ],
  draw: DRAW_FIELDS,
};
