import { describe, expect, it } from 'vitest';
import { otherElastic } from '../../../src/core/intonation/otherElastic';
import { stringsOfSet } from '../../../src/core/kinds/stringsOfSet';

const [firstSteel] = stringsOfSet('steel-12-53');
if (firstSteel === undefined) throw new Error('There is no first string.');

describe('otherElastic', () => {
  // Worked example for .012 on 645 mm (independent evaluation): κ 141.7 and √(EI/T0) 0.907 mm, which over 645 is B0.
  it('tells a plain steel string by κ and B0', () => {
    const found = otherElastic(firstSteel, 645, 645);
    if (!found.ok || found.value.kind !== 'measured') throw new Error('There is no measured string.');
    expect(found.value.kappa).toBeCloseTo(141.7, 1);
    expect(found.value.b0 * 645).toBeCloseTo(0.907, 3);
    expect(found.value.at).toEqual({ scaleLength: 645, frequency: firstSteel.frequency });
  });

  it('comes back to the same core: 0.012 in of 200 GPa', () => {
    const there = otherElastic(firstSteel, 645, 645);
    if (!there.ok) throw new Error('There is no measured string.');
    const back = otherElastic({ ...firstSteel, elastic: there.value }, 645, 645);
    expect(back).toMatchObject({
      ok: true,
      value: {
        kind: 'core',
        coreShape: 'round',
        coreDiameter: expect.closeTo(0.3048, 9),
        modulus: expect.closeTo(200, 6),
      },
    });
  });

  // Anderson & Beausoleil, J. Acoust. Soc. Am. 156, 683 (2024), first nylon string: κ 48.2, B0 .00190, radius 0.356 mm on
  // 650. Solid and round, B0 = √κ·ρ/(2·L): ρ = 2 · 0.0019 · 650 / √48.2 = 0.35577 by hand.
  it('finds the radius of a plain nylon string', () => {
    const [nylon] = stringsOfSet('nylon-normal');
    if (nylon === undefined) throw new Error('There is no first string.');
    const found = otherElastic(nylon, 650, 650);
    if (!found.ok || found.value.kind !== 'core') throw new Error('There is no core.');
    expect(found.value.coreDiameter / 2).toBeCloseTo(0.35577, 4);
    expect(Math.abs(found.value.coreDiameter / 2 - 0.356)).toBeLessThan(0.001);
  });

  it('knows no core for a string that does not stretch', () => {
    const stiff = { ...firstSteel, elastic: { kind: 'measured', kappa: 0, b0: 0.001 } as const };
    expect(otherElastic(stiff, 645, 645)).toMatchObject({ ok: false, issues: [{ code: 'elastic.none' }] });
  });
});
