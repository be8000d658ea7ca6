import { describe, expect, it } from 'vitest';
import { createDerive } from '../../../../src/core/derive/createDerive';
import { proofLines } from '../../../../src/core/sheets/proof/proofLines';
import { proofPart } from '../../../../src/core/sheets/proof/proofPart';
import { provePrint } from '../../../../src/core/sheets/proof/provePrint';
import { PROOF_LINES, PROOF_PART } from '../../../reference/printProof';
import { steelProject } from '../../document/steelProject';
import { valueOf as answerOf, codesOf } from '../../document/valueOf';

const LINES = { across: 180, along: 240, diagonal: 141.42136 };
const TRUE = { lines: LINES, across: 180, along: 240, diagonals: null, sigma: 0.05, part: PROOF_PART };

describe('proofLines', () => {
  it.each(PROOF_LINES)('$page, $unit, $margin', ({ page: [width, height], unit, margin, across, along, diagonal }) => {
    const lines = proofLines({ width, height }, unit, margin);
    expect(lines.across).toBeCloseTo(across, 9);
    expect(lines.along).toBeCloseTo(along, 9);
    expect(lines.diagonal).toBeCloseTo(diagonal, 4);
  });
});

describe('proofPart', () => {
  it('is the width of the bridge, and what is set off from the square line', () => {
    const part = proofPart(createDerive()(steelProject), 'mm');
    if (part === null) throw new Error('There is a bridge.');
    expect(part.across).toBeCloseTo(PROOF_PART.across, 9);
    expect(part.along).toBeCloseTo(PROOF_PART.along, 5);
    expect(part.toBreak).toBeCloseTo(PROOF_PART.toBreak, 5);
    expect(part.centsPerMm).toBeCloseTo(PROOF_PART.centsPerMm, 3);
  });

  it('is none without a bridge', () => {
    const { bridge } = steelProject;
    const broken = { ...steelProject, bridge: { ...bridge, slot: { ...bridge.slot, length: 1 } } };
    expect(proofPart(createDerive()(broken), 'mm')).toBeNull();
  });
});

describe('provePrint', () => {
  // 1 % long over 27.778 mm sets the break point 0.27778 mm too far back: 0.7456 cents flat.
  it('tells the error at this bridge in mm and in cents', () => {
    const found = answerOf(provePrint({ ...TRUE, along: 242.4 }));
    expect(found.errorAtPart.y).toBeCloseTo(0.53714, 4);
    expect(found.cents).toBeCloseTo(-0.7456, 3);
    expect(found.verdict).toBe('correct');
    expect(answerOf(provePrint({ ...TRUE, along: 237.6 })).cents).toBeCloseTo(0.7456, 3);
    expect(answerOf(provePrint({ ...TRUE, part: null })).cents).toBeNull();
  });

  // 0.25 mm on 152.4 is 0.164 %, on a line of 180 0.295 mm: 2.24 sigmas of 0.1 fit into it, of 0.1984 (1/64 in) do not.
  it('says which rule would tell when this one does not', () => {
    const coarse = answerOf(provePrint({ ...TRUE, sigma: 0.25 }));
    expect(coarse).toMatchObject({ verdict: 'true', sure: false });
    expect(coarse.wouldTell.map(({ id }) => id)).toEqual(['glass', 'calliper']);
    expect(answerOf(provePrint(TRUE)).wouldTell).toEqual([]);
    // 0.290 mm long: 0.2455 mm at the bridge, nearer to the limit than any of them can tell.
    expect(answerOf(provePrint({ ...TRUE, across: 180.29, sigma: 0.25 })).wouldTell).toEqual([]);
  });

  it('takes both diagonals of the square, and refuses what is no length', () => {
    const askew = answerOf(provePrint({ ...TRUE, diagonals: { down: 141.791, up: 141.051 } }));
    expect(askew.skewDeg).toBeCloseTo(0.3, 3);
    expect(codesOf(provePrint({ ...TRUE, across: -1 }))).toEqual(['print.length']);
  });
});
