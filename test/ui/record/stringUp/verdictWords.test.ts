import { describe, expect, it } from 'vitest';
import { beyondWords, moveWords, saddleVerdictWords } from '../../../../src/ui/record/stringUp/verdictWords';

const show = (mm: number): string => `${mm.toFixed(1)} mm`;
const move = {
  id: 's6',
  name: 'E',
  x: -27,
  stood: 3,
  found: 4,
  travel: 1,
  doubt: 0.5,
  cents: 2.7,
  from: 1.6,
  wanted: 2.6,
  to: 2.6,
  reached: true,
  after: 4,
  leftCents: 0,
};

describe('moveWords', () => {
  it('says which way, what to file and how far', () => {
    expect(moveWords(move, 6, show)).toBe(
      'String 6 (E): 1.0 mm back, to 2.6 mm from the front face. File the front of the crown.',
    );
    expect(moveWords({ ...move, to: 1.2 }, 6, show)).toBe(
      'String 6 (E): 0.4 mm to the front, to 1.2 mm from the front face. File the back of the crown.',
    );
  });

  it('says what the crown cannot take', () => {
    expect(moveWords({ ...move, reached: false, leftCents: 1.94 }, 6, show)).toMatch(
      /File the front of the crown\. The saddle ends there: the string stays 1\.9 cents sharp\.$/,
    );
    expect(moveWords({ ...move, to: 1.62, reached: false, leftCents: -1.94 }, 6, show)).toBe(
      'String 6 (E) breaks as far out as the crown goes. The saddle ends there: the string stays 1.9 cents flat.',
    );
  });

  it('is silent where nothing moves', () => {
    expect(moveWords({ ...move, to: 1.62 }, 6, show)).toBeNull();
  });
});

describe('saddleVerdictWords and beyondWords', () => {
  const beyond = {
    widen: { ahead: 0.2, behind: 1.2, thickness: 4.6 },
    recut: { treble: -0.5, bass: 2.5, thickness: 2.2 },
  };

  it('say what then', () => {
    expect(beyondWords({ verdict: 'recut', beyond }, 6, show)).toEqual([
      'Another saddle: widen the slot by 0.2 mm at its front and 1.2 mm at its back for a saddle 4.6 mm thick.',
      'Or fill the slot and cut it anew: its middle moves 0.5 mm toward the nut at string 1 and 2.5 mm away from the nut at string 6; a saddle of 2.2 mm or more then serves every string.',
    ]);
    expect(beyondWords({ verdict: 'move', beyond }, 6, show)[1]).toMatch(/farther than is wise in this bridge\.$/);
    expect(beyondWords({ verdict: 'shape', beyond: null }, 6, show)).toEqual([]);
  });

  it('have words of their own for each', () => {
    const verdicts = ['leave', 'shape', 'recut', 'move'] as const;
    expect(new Set(verdicts.map((verdict) => saddleVerdictWords({ verdict }))).size).toBe(4);
  });
});
