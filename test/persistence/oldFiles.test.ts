import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { decodeProject } from '../../src/persistence/decodeProject';
import { encodeProject } from '../../src/persistence/encodeProject';
import { valueOf as answerOf } from '../core/document/valueOf';

/** As it was written before bodies, old bridges, soles, sheets and builds were spoken of; it has none of their groups. */
const OLD = readFileSync(path.join(import.meta.dirname, 'fixtures/before-groups.json'), 'utf8');

describe('a file of an older Saddlemark', () => {
  it('opens with every figure that it holds, what it lacks at its default', () => {
    const project = answerOf(decodeProject(OLD));
    const old = JSON.parse(OLD) as typeof project;
    expect(project.instrument.scale).toEqual(old.instrument.scale);
    expect(project.bridge.outline).toEqual(old.bridge.outline);
    expect(project).toMatchObject({ body: null, repair: null, build: null, dimensions: [] });
    expect(project.about).toMatchObject({ parent: null, pictures: [] });
    expect(project.compensation.learned).toBeNull();
  });

  it('is written anew in full, and then again with the same bytes', () => {
    const text = encodeProject(answerOf(decodeProject(OLD)));
    expect(encodeProject(answerOf(decodeProject(text)))).toBe(text);
  });
});
