import { describe, expect, it } from 'vitest';
import { createDerive } from '../../src/core/derive/createDerive';
import { tapeDownTemplate } from '../../src/core/sheets/tapeDownTemplate';
import { shapedOutline } from '../core/document/shapedOutline';
import { instrumentNamed, layTemplate } from './makeTemplate';

const steel = instrumentNamed('steel');
const outline = shapedOutline(steel.bridge);
const wide = {
  ...steel,
  bridge: { ...steel.bridge, outline: { ...outline, parameters: { ...outline.parameters, length: 260 } } },
};

// 260 / 2 + 6 for the corner windows is 136, so the drawing is 272 wide. On their sides A4 leaves 297 − 30 = 267 and
// Letter 279.4 − 30 = 249.4; Legal (8.5 × 14 in) leaves 355.6 − 30 = 325.6, Tabloid (11 × 17 in) and A3 more.
describe('a bridge 260 long', () => {
  it.each(['a4', 'letter'])('is refused on %s, with the papers that would do', (paper) => {
    const laid = layTemplate(wide, paper, 'mm');
    if (laid.ok) throw new Error('expected a refusal');
    expect(laid.issues.map(({ code, path }) => [code, path])).toEqual([['sheet.large', 'paper']]);
    const message = laid.issues[0]?.message ?? '';
    expect(message).toContain('272.0 mm wide');
    expect(/would do: (.*)\.$/u.exec(message)?.[1]?.split(', ').sort()).toEqual(['A3', 'Legal', 'Tabloid']);
  });

  it.each([
    ['Legal', 215.9, 355.6],
    ['Tabloid', 279.4, 431.8],
    ['A3', 297, 420],
  ])('fits on %s as promised', (name, width, height) => {
    const paper = { id: name, name, width, height };
    const options = { paper, style: { unit: 'mm', decimals: 1 }, date: '2026-11-25' } as const;
    const laid = tapeDownTemplate(wide, createDerive()(wide), options);
    expect(laid.ok && laid.value.pages[0]?.width).toBe(height);
  });
});
