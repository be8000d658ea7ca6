import { describe, expect, it } from 'vitest';
import { chosenFor, createBench } from '../../../src/store/bench/createBench';
import { valueOf as answerOf, codesOf } from '../../core/document/valueOf';

const LASER = {
  id: 'a',
  printer: 'Bench laser',
  paper: 'a4',
  factorX: 1.0031,
  factorY: 0.9994,
  sigmaX: 0.0003,
  sigmaY: 0.0002,
  date: '2026-11-24',
};

const benchWith = (text: string | null = null) => {
  let kept = text;
  const bench = createBench({
    read: () => kept,
    write: (next) => {
      kept = next;
    },
  });
  return { bench, kept: () => kept };
};

describe('the bench of this device', () => {
  it('keeps profiles from one visit to the next', () => {
    const first = benchWith();
    answerOf(first.bench.keep(LASER));
    answerOf(first.bench.keep({ ...LASER, id: 'b', paper: 'letter' }));
    expect(benchWith(first.kept()).bench.getState().profiles).toEqual([LASER, { ...LASER, id: 'b', paper: 'letter' }]);
  });

  it('has one profile for a printer and a paper, the latest', () => {
    const { bench } = benchWith();
    bench.keep(LASER);
    const later = answerOf(
      bench.keep({ ...LASER, id: 'b', printer: ' bench LASER ', factorX: 1.002, date: '2026-11-25' }),
    );
    expect(later.id).toBe('a');
    expect(bench.getState().profiles).toEqual([later]);
    expect(later).toMatchObject({ factorX: 1.002, date: '2026-11-25', printer: 'bench LASER' });
  });

  it('renames and deletes, and asks for a name of its own', () => {
    const { bench, kept } = benchWith();
    bench.keep(LASER);
    bench.keep({ ...LASER, id: 'b', printer: 'Office' });
    expect(codesOf(bench.rename('b', 'bench laser'))).toEqual(['profile.name']);
    expect(codesOf(bench.rename('b', '  '))).toEqual(['profile.name']);
    expect(codesOf(bench.keep({ ...LASER, printer: 'x'.repeat(41) }))).toEqual(['profile.name']);
    answerOf(bench.rename('b', 'Copy shop'));
    expect(bench.getState().profiles.map(({ printer }) => printer)).toEqual(['Bench laser', 'Copy shop']);
    bench.setProof({ carried: 'a' });
    bench.remove('a');
    expect(bench.getState().profiles.map(({ id }) => id)).toEqual(['b']);
    expect(bench.getState().proof.carried).toBeNull();
    expect(kept()).not.toContain('Bench laser');
  });

  it('prints with none until one is chosen, and remembers that choice while the profile lasts', () => {
    const { bench, kept } = benchWith();
    bench.keep(LASER);
    expect(bench.getState().chosen).toBeNull();
    bench.choose('a');
    expect(benchWith(kept()).bench.getState().chosen).toBe('a');
    expect(chosenFor(bench.getState(), 'a4')).toEqual(LASER);
    expect(chosenFor(bench.getState(), 'letter')).toBeNull();
    bench.keep({ ...LASER, id: 'b', factorX: 1.001 });
    expect(bench.getState().chosen).toBe('a');
    bench.remove('a');
    expect(bench.getState().chosen).toBeNull();
    expect(benchWith(JSON.stringify({ profiles: [LASER], chosen: 'z' })).bench.getState().chosen).toBeNull();
  });

  it('keeps what was read on a print for this visit only', () => {
    const { bench, kept } = benchWith();
    const across = { text: '179.5', mm: 179.5, unit: 'mm' } as const;
    bench.setProof({ rule: 'calliper' });
    bench.setReading('across', across, 'a4');
    expect(bench.getState().proof).toMatchObject({ lengths: { across, along: null }, rule: 'calliper', paper: 'a4' });
    expect(kept()).toBeNull();
  });

  it('never mixes readings of prints on two papers', () => {
    const { bench } = benchWith();
    const length = { text: '180', mm: 180, unit: 'mm' } as const;
    bench.setReading('across', length, 'a4');
    bench.setReading('along', length, 'letter');
    expect(bench.getState().proof).toMatchObject({ lengths: { across: null, along: length }, paper: 'letter' });
    bench.setReading('along', null, 'letter');
    expect(bench.getState().proof.paper).toBeNull();
    bench.setReading('up', length, 'a4');
    bench.clearReadings();
    expect(bench.getState().proof).toMatchObject({ lengths: { up: null }, paper: null });
  });

  it('keeps that factors were kept against advice', () => {
    const first = benchWith();
    answerOf(first.bench.keep({ ...LASER, againstAdvice: true }));
    expect(benchWith(first.kept()).bench.getState().profiles).toEqual([{ ...LASER, againstAdvice: true }]);
    const wrong = JSON.stringify({ profiles: [{ ...LASER, againstAdvice: 'yes' }] });
    expect(benchWith(wrong).bench.getState().profiles).toEqual([]);
  });

  it.each([
    null,
    '',
    '{',
    'null',
    '[]',
    '{"profiles":{}}',
    JSON.stringify({ profiles: [{ ...LASER, factorX: 2 }] }),
    JSON.stringify({ profiles: [{ ...LASER, factorY: '1' }] }),
    JSON.stringify({ profiles: [{ ...LASER, printer: '' }] }),
    JSON.stringify({ profiles: [{ ...LASER, date: 'today' }] }),
    JSON.stringify({ profiles: [null, 3, 'x'] }),
  ])('begins with none when what was kept is none: %s', (text) => {
    expect(benchWith(text).bench.getState().profiles).toEqual([]);
  });

  it('takes the sound ones, without what does not belong to them, each id once', () => {
    const text = JSON.stringify({ profiles: [{ ...LASER, extra: 1 }, LASER, { ...LASER, id: 'b', sigmaX: -1 }] });
    expect(benchWith(text).bench.getState().profiles).toEqual([LASER]);
  });

  it('keeps at most forty', () => {
    const { bench } = benchWith();
    for (let count = 0; count < 40; count += 1)
      answerOf(bench.keep({ ...LASER, id: `${count}`, printer: `P ${count}` }));
    expect(codesOf(bench.keep({ ...LASER, id: 'z', printer: 'One more' }))).toEqual(['profile.many']);
    answerOf(bench.keep({ ...LASER, id: 'z', printer: 'P 7' }));
  });
});
