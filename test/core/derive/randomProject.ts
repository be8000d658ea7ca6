import fc from 'fast-check';
import { allFields } from '../../../src/core/document/fieldAt';
import type { Field } from '../../../src/core/document/fieldTypes';
import { type FieldValue, withFieldValue } from '../../../src/core/document/fieldValue';
import type { Project, ShapeName } from '../../../src/core/document/types';
import { KINDS } from '../../../src/core/kinds/kinds';
import { usualBridge, usualPins } from '../../../src/core/kinds/usualBridge';
import { plainStrings } from '../document/steelProject';

/** Any value that the field's own row allows, its limits and whole millimetres more often than chance would have them. */
export const valueFor = (field: Field): fc.Arbitrary<FieldValue> => {
  switch (field.kind) {
    case 'length': {
      const { min, max } = field;
      const whole = fc.integer({ min: Math.ceil(min), max: Math.floor(max) });
      const any: fc.Arbitrary<FieldValue> = fc.oneof(
        fc.double({ min, max, noNaN: true }),
        whole,
        fc.constantFrom(min, max),
      );
      return field.optional === true ? fc.oneof(any, fc.constant(null)) : any;
    }
    case 'number': {
      const { min, max } = field;
      const any: fc.Arbitrary<FieldValue> = field.whole
        ? fc.integer({ min, max })
        : fc.oneof(fc.double({ min, max, noNaN: true }), fc.constantFrom(min, max));
      return field.optional === true ? fc.oneof(any, fc.constant(null)) : any;
    }
    case 'choice':
      return fc.constantFrom(...field.choices.map(({ value }) => value));
    case 'text':
      return fc.string({ maxLength: field.maxLength });
  }
};

const strings = fc.array(fc.double({ min: 0.1, max: 3, noNaN: true }), { maxLength: 12 });

/** A project whose every field holds a value that its own row allows; two fields may well disagree. */
export const anyProject: fc.Arbitrary<Project> = fc
  .record({
    kind: fc.constantFrom(...KINDS),
    shape: fc.constantFrom<ShapeName>(
      'rectangular',
      'belly',
      'belly-nut',
      'pyramid-tip',
      'tie-block',
      'small-ukulele',
      'double-sided',
    ),
    pins: fc.boolean(),
    usual: fc.boolean(),
    diameters: fc.oneof(strings, fc.constant(null)),
  })
  .chain(({ kind, shape, pins, usual, diameters }) => {
    const made = kind.make('p', '2026-01-01T00:00:00Z');
    const start: Project = {
      ...made,
      strings: diameters === null ? made.strings : plainStrings(diameters),
      bridge: { ...usualBridge(shape), pins: pins ? usualPins(50) : null },
    };
    const fields = allFields(start).filter(({ path }) => path !== 'bridge.outline.shape');
    // A project of usual figures with a few of them changed gets farther than one with every figure at random.
    return fc.tuple(...fields.map((field) => fc.tuple(fc.integer({ min: 0, max: 9 }), valueFor(field)))).map((values) =>
      values.reduce((project, [chance, value], index) => {
        const field = fields[index];
        return field === undefined || (usual && chance > 0) ? project : withFieldValue(project, field.path, value);
      }, start),
    );
  });
