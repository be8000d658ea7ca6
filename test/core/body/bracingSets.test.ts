import { describe, expect, it } from 'vitest';
import { bodyFromSet } from '../../../src/core/body/bodyFromSet';
import { BRACING_SETS, type BracingSet } from '../../../src/core/body/bracingSets';
import { KINDS } from '../../../src/core/kinds/kinds';
import { takeBracing } from '../../../src/store/commands/body/takeBracing';
import { valueOf as answerOf } from '../document/valueOf';
import { bodied, stepOf } from './bodyCase';

const setOf = (id: string): BracingSet => {
  const found = BRACING_SETS.find((each) => each.id === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found;
};

const on = (kind: string, id: string) => {
  const made = KINDS.find((each) => each.id === kind)?.make('p', '2026-01-01T00:00:00Z');
  if (made === undefined) throw new Error(`no ${kind}`);
  return answerOf(takeBracing(bodied(made, {}), id));
};

describe('the bracings to start from', () => {
  it('say where they come from, and that nothing of them was found', () => {
    for (const { id, source, scaleLength } of BRACING_SETS) {
      expect(source).toContain('from memory');
      const { braces, plate } = bodyFromSet(setOf(id), scaleLength, scaleLength);
      expect(braces.length).toBeGreaterThan(1);
      expect(braces.every(({ read }) => !read)).toBe(true);
      expect(plate?.read ?? false).toBe(false);
      expect(new Set(braces.map((brace) => brace.id)).size).toBe(braces.length);
    }
  });

  it('stretch with the scale, from the octave line', () => {
    // X-legs cross 57 ahead of the octave line on 645; on 630: 57 · 630/645 = 55.7, to a tenth.
    const { braces, soundhole } = bodyFromSet(setOf('x-braced'), 630, 630);
    expect(braces[0]?.from).toEqual({ x: 0, y: 574.3 });
    // 148 · 630/645 = 144.6 and 101.6 · 630/645 = 99.2.
    expect(soundhole).toEqual({ centre: 485.4, across: 99.2, along: null });
  });

  it('has legs of an X that meet ahead of the bridge and pass beneath its wings, clear of the plate', () => {
    const { place, checks } = stepOf(on('steel-string', 'x-braced'));
    const [bass, treble] = place.braces;
    expect(bass?.from).toEqual(treble?.from);
    expect(checks.find(({ id }) => id === 'brace-pins')?.verdict).toBe('good');
    expect(checks.find(({ id }) => id === 'plate-pins')?.verdict).toBe('good');
  });

  // Whatever is drawn to start from must not alarm by itself: the only looks are that it was not found yet, and what
  // locating pins beyond the plate always ask.
  it.each([
    ['steel-string', 'x-braced'],
    ['small-bodied', 'x-braced'],
    ['classical', 'fan-braced'],
    ['tenor-ukulele', 'ladder-braced'],
    ['concert-ukulele', 'ladder-braced'],
    ['soprano-ukulele', 'ladder-braced'],
  ])('%s with %s finds nothing wrong but, maybe, a locating pin', (kind, id) => {
    const wrong = stepOf(on(kind, id)).checks.filter(({ verdict }) => verdict === 'wrong');
    expect(wrong.map((check) => check.id).filter((check) => check !== 'brace-locating')).toEqual([]);
  });
});
