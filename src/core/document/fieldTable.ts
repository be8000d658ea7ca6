import { AUDIT_FIELDS } from './auditFields';
import { BODY_LIMIT_FIELDS } from './bodyFields';
import { DOUBT_FIELDS } from './doubtFields';
import { DRAW_FIELDS } from './drawFields';
import type { Field } from './fieldTypes';
import { FIRST_FIELDS } from './firstFields';
import { HEIGHT_FIELDS } from './heightFields';
import { LIMIT_FIELDS } from './limitFields';
import { PLACING_FIELDS } from './placingFields';
import { READ_FIELDS } from './readFields';
import { SOLE_LIMIT_FIELDS } from './soleFields';

/** Every field that a maker can edit and that every project has, by station. */
export const FIELDS: Readonly<Record<'measure' | 'draw' | 'place', readonly Field[]>> = {
  measure: [...FIRST_FIELDS, ...HEIGHT_FIELDS, ...AUDIT_FIELDS, ...DOUBT_FIELDS, ...LIMIT_FIELDS],
  draw: [...DRAW_FIELDS, ...SOLE_LIMIT_FIELDS, ...BODY_LIMIT_FIELDS],
  place: [...PLACING_FIELDS, ...READ_FIELDS],
};
