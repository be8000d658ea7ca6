import { describe, expect, it } from 'vitest';
import { createDerive } from '../../../src/core/derive/createDerive';
import { newBuild } from '../../../src/core/document/newBuild';
import type { Project } from '../../../src/core/document/types';
import { demoProject } from '../../../src/core/kinds/demo';
import { copyOf, instrumentOf, modelOf } from '../../../src/core/library/copies';

const MORNING = '2026-03-01T09:00:00.000Z';
const NOON = '2026-03-01T12:00:00.000Z';
const fresh = { id: 'new', now: NOON };

const demo = demoProject('demo', MORNING);
const model: Project = {
  ...demo,
  revision: 7,
  about: { ...demo.about, notes: 'of the model', pictures: ['photo'] },
  height: { ...demo.height, straightedge: 0.8 },
  audit: { ...demo.audit, treble: 634 },
};
const instrument: Project = { ...instrumentOf(model, 'No. 12', fresh), id: 'no-12', revision: 3 };

describe('instrumentOf', () => {
  const made = instrumentOf(model, 'No. 12', fresh);

  it('is another project with a number, that says what it was made from as it stood', () => {
    expect(made).toMatchObject({ id: 'new', revision: 0, build: { ...newBuild(), serial: 'No. 12' } });
    expect(made.about).toEqual({
      name: 'Wren 14',
      notes: '',
      created: NOON,
      changed: NOON,
      parent: { id: 'demo', revision: 7 },
      pictures: [],
    });
  });

  it('takes no reading of another instrument for its own; the scale that they gave is where it starts', () => {
    expect(made.instrument.scale).toEqual({ from: 'entered', entered: 632, readings: [] });
    expect(made.height.straightedge).toBeNull();
    expect(made.audit.treble).toBeNull();
  });

  it('has its bridge where the model has it', () => {
    const derive = createDerive();
    const [one, other] = [derive(model).bridge, derive(made).bridge];
    expect(one.ok && other.ok ? other.value.front - one.value.front : 'not computed').toBeCloseTo(0, 3);
  });

  it('of an instrument is another one of the same model', () => {
    expect(instrumentOf(instrument, 'No. 13', fresh).about.parent).toEqual({ id: 'demo', revision: 7 });
  });

  it('leaves the model as it is', () => {
    expect(model.instrument.scale.readings).toHaveLength(3);
  });
});

describe('modelOf', () => {
  it('is the design of an instrument with nothing of what was done', () => {
    const made = modelOf({ ...instrument, about: { ...instrument.about, notes: 'thin top' } }, fresh);
    expect(made).toMatchObject({ id: 'new', build: null });
    expect(made.about).toMatchObject({ parent: { id: 'no-12', revision: 3 }, notes: 'thin top', pictures: [] });
  });
});

describe('copyOf', () => {
  it('is the same under another name, readings and photos too', () => {
    const { id, revision, about, ...rest } = copyOf(model, fresh);
    const { id: _, revision: __, about: ___, ...before } = model;
    expect(rest).toEqual(before);
    expect({ id, revision }).toEqual({ id: 'new', revision: 0 });
    expect(about).toMatchObject({ name: 'Wren 14 copy', parent: { id: 'demo', revision: 7 }, pictures: ['photo'] });
  });

  it('of an instrument is of the same model, and its name stays within 80 characters', () => {
    const long: Project = { ...instrument, about: { ...instrument.about, name: 'x'.repeat(80) } };
    const { about } = copyOf(long, fresh);
    expect(about.parent).toEqual({ id: 'demo', revision: 7 });
    expect(about.name).toHaveLength(80);
    expect(about.name.endsWith('x copy')).toBe(true);
  });
});
