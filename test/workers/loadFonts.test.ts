import { describe, expect, it } from 'vitest';
import { loadFonts } from '../../src/workers/loadFonts';

const ORIGIN = 'https://bench.example';
const BASE = `${ORIGIN}/saddlemark/fonts/`;

const answering = (status: number) => {
  const asked: string[] = [];
  const get = async (address: RequestInfo | URL) => {
    asked.push(String(address));
    return new Response(String(address), { status });
  };
  return { asked, get };
};

const codesOf = (result: Awaited<ReturnType<typeof loadFonts>>) =>
  result.ok ? [] : result.issues.map(({ code }) => code);

describe('loadFonts', () => {
  it('fetches both cuts from the folder', async () => {
    const { asked, get } = answering(200);
    const result = await loadFonts(BASE, ORIGIN, get);
    if (!result.ok) throw new Error('expected the fonts');
    expect(asked.sort()).toEqual([`${BASE}DejaVuSansCondensed-Bold.ttf`, `${BASE}DejaVuSansCondensed.ttf`]);
    expect(new TextDecoder().decode(result.value.regular)).toBe(`${BASE}DejaVuSansCondensed.ttf`);
    expect(new TextDecoder().decode(result.value.bold)).toBe(`${BASE}DejaVuSansCondensed-Bold.ttf`);
  });

  it('asks nobody else', async () => {
    const { asked, get } = answering(200);
    expect(codesOf(await loadFonts('https://elsewhere.example/fonts/', ORIGIN, get))).toEqual(['fonts.elsewhere']);
    expect(asked).toEqual([]);
  });

  it('says when a file is not there or the network is gone', async () => {
    expect(codesOf(await loadFonts(BASE, ORIGIN, answering(404).get))).toEqual(['fonts.missing']);
    const offline = async (): Promise<Response> => {
      throw new TypeError('Failed to fetch');
    };
    expect(codesOf(await loadFonts(BASE, ORIGIN, offline))).toEqual(['fonts.missing']);
  });
});
