import type { LengthField } from './fieldTypes';

/** A dimension of a bridge shape with the figure it starts from. */
export interface ShapeParameter extends LengthField {
  readonly name: string;
  readonly usual: number;
}

/** A row for a dimension of a shape, limits in mm. */
export const shapeParameter = (
  name: string,
  label: string,
  usual: number,
  min: number,
  max: number,
  help: string,
  source: string,
): ShapeParameter => ({
  kind: 'length',
  path: `bridge.outline.parameters.${name}`,
  name,
  label,
  usual,
  min,
  max,
  help,
  source,
});

export const FROM_MEMORY = 'from memory';
export const COMMON = 'common practice, no source';
