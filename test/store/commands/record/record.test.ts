import { describe, expect, it } from 'vitest';
import { fieldAt } from '../../../../src/core/document/fieldAt';
import type { Project } from '../../../../src/core/document/types';
import { demoProject } from '../../../../src/core/kinds/demo';
import type { Result } from '../../../../src/core/result';
import { addPicture } from '../../../../src/store/commands/record/addPicture';
import { addWood } from '../../../../src/store/commands/record/addWood';
import { beginInstrument } from '../../../../src/store/commands/record/beginInstrument';
import { movePicture } from '../../../../src/store/commands/record/movePicture';
import { removePicture } from '../../../../src/store/commands/record/removePicture';
import { removeWood } from '../../../../src/store/commands/record/removeWood';
import { restoreVersion } from '../../../../src/store/commands/record/restoreVersion';
import { setField } from '../../../../src/store/commands/setField';
import { expectReversible } from '../../expectReversible';
import { MORNING, NOON } from '../../startStore';

const demo = demoProject('test', MORNING);

const codes = (result: Result<Project>): readonly string[] => (result.ok ? [] : result.issues.map(({ code }) => code));

const must = (result: Result<Project>): Project => {
  if (!result.ok) throw new Error(codes(result).join());
  return result.value;
};
const withPictures = (...ids: readonly string[]): Project => ({ ...demo, about: { ...demo.about, pictures: ids } });

describe('beginInstrument', () => {
  it('makes one instrument of a model, once', () => {
    const made = expectReversible('Begun', ({ change }) => change('Begun', beginInstrument), demo);
    expect(made.build).toMatchObject({ serial: '', woods: [], rounds: [] });
    expect(codes(beginInstrument(made))).toEqual(['build.there']);
  });
});

describe('woods', () => {
  const instrument = must(beginInstrument(demo));

  it('are added by their part, told by fields, and taken away', () => {
    const one = expectReversible('Wood', ({ change }) => change('Wood', (now) => addWood(now, 'top')), instrument);
    const two = must(addWood(one, 'bridge'));
    expect(two.build?.woods).toEqual([
      { id: 'w1', part: 'top', species: '', origin: '' },
      { id: 'w2', part: 'bridge', species: '', origin: '' },
    ]);
    const path = 'build.woods.1.species';
    const told = must(setField(two, { field: fieldAt(two, path), value: 'Dalbergia latifolia' }));
    expect(told.build?.woods[1]?.species).toBe('Dalbergia latifolia');
    const left = must(removeWood(told, 'w1'));
    expect(left.build?.woods.map(({ id }) => id)).toEqual(['w2']);
    // A new one never takes the name of one that is there.
    expect(must(addWood(left, 'top')).build?.woods.map(({ id }) => id)).toEqual(['w2', 'w3']);
  });

  it('belong to one instrument, and there is room for 20', () => {
    expect(codes(addWood(demo, 'top'))).toEqual(['build.none']);
    expect(codes(removeWood(instrument, 'w1'))).toEqual(['woods.unknown']);
    let full = instrument;
    for (let count = 0; count < 20; count += 1) full = must(addWood(full, 'top'));
    expect(codes(addWood(full, 'top'))).toEqual(['woods.full']);
  });
});

describe('photos', () => {
  it('are added after the others, each once, up to 24', () => {
    const added = expectReversible(
      'Photo',
      ({ change }) => change('Photo', (now) => addPicture(now, 'b')),
      withPictures('a'),
    );
    expect(added.about.pictures).toEqual(['a', 'b']);
    expect(codes(addPicture(added, 'a'))).toEqual(['pictures.there']);
    const full = withPictures(...Array.from({ length: 24 }, (_, index) => `p${index}`));
    expect(codes(addPicture(full, 'more'))).toEqual(['pictures.full']);
  });

  it('change their order, and go', () => {
    const three = withPictures('a', 'b', 'c');
    expect(must(movePicture(three, 'c', -1)).about.pictures).toEqual(['a', 'c', 'b']);
    expect(must(movePicture(three, 'a', 1)).about.pictures).toEqual(['b', 'a', 'c']);
    expect(codes(movePicture(three, 'a', -1))).toEqual(['pictures.end']);
    expect(codes(movePicture(three, 'x', 1))).toEqual(['pictures.unknown']);
    expect(must(removePicture(three, 'b')).about.pictures).toEqual(['a', 'c']);
    expect(codes(removePicture(three, 'x'))).toEqual(['pictures.unknown']);
  });
});

describe('restoreVersion', () => {
  it('brings an earlier state back as one step of the present project', () => {
    const now: Project = {
      ...demo,
      revision: 9,
      about: { ...demo.about, name: 'Later', parent: { id: 'm', revision: 1 } },
    };
    const restored = expectReversible(
      'As it was',
      ({ change }) => change('As it was', (before) => restoreVersion(before, demo)),
      now,
    );
    expect(restored.about).toEqual({ ...demo.about, parent: { id: 'm', revision: 1 }, changed: NOON });
    expect(restored.revision).toBe(10);
  });

  it('refuses a state of another project', () => {
    expect(codes(restoreVersion(demo, { ...demo, id: 'other' }))).toEqual(['version.other']);
  });
});
