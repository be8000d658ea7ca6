import { describe, expect, it } from 'vitest';
import { keepLatest } from '../../src/store/keepLatest';

/** Work whose answers the test gives, in any order. */
const start = () => {
  const asked: { readonly what: string; answer(text: string): Promise<void> }[] = [];
  let arrivals = 0;
  const ask = keepLatest(
    (what: string) =>
      new Promise<string>((resolve) => {
        asked.push({ what, answer: async (text) => resolve(text) });
      }),
    () => {
      arrivals += 1;
    },
  );
  return { ask, asked, arrivals: () => arrivals };
};

describe('keepLatest', () => {
  it('asks once, and answers when the answer came', async () => {
    const { ask, asked, arrivals } = start();
    expect(ask('one')).toBeNull();
    expect(ask('one')).toBeNull();
    await asked[0]?.answer('1');
    expect(arrivals()).toBe(1);
    expect(ask('one')).toBe('1');
    expect(asked.map(({ what }) => what)).toEqual(['one']);
  });

  it('keeps the answer before while a new one is under way', async () => {
    const { ask, asked, arrivals } = start();
    ask('one');
    await asked[0]?.answer('1');
    expect(ask('two')).toBe('1');
    await asked[1]?.answer('2');
    expect(ask('two')).toBe('2');
    expect(arrivals()).toBe(2);
  });

  it('drops an answer that comes after a later one', async () => {
    const { ask, asked, arrivals } = start();
    ask('one');
    ask('two');
    await asked[1]?.answer('2');
    await asked[0]?.answer('1');
    expect(ask('two')).toBe('2');
    expect(arrivals()).toBe(1);
  });
});
