import { describe, expect, it } from 'vitest';
import { themeOf } from '../../src/canvas/theme';
import { LINE_STYLES } from '../../src/core/drawing/lineStyles';
import type { Role } from '../../src/core/drawing/types';

/** Relative luminance and contrast ratio by WCAG 2.2, definitions of those terms. */
const luminance = (colour: string): number => {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((from) => {
    const share = Number.parseInt(colour.slice(from, from + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};
const contrast = (one: string, other: string): number => {
  const [low = 0, high = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (high + 0.05) / (low + 0.05);
};

/** What the sheet behind the drawing is painted with, as in the style of the screen. */
const SHEET = { light: '#f6f2e8', dark: '#1c1916' } as const;
const TEXT: readonly Role[] = ['label', 'note', 'key', 'heading'];

describe.each(['light', 'dark'] as const)('the %s theme', (scheme) => {
  const theme = themeOf(scheme);
  const grounds = [SHEET[scheme], theme.fill('outline') ?? ''];

  it('keeps the formula honest: black on white is 21 to 1', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
  });

  it.each(Object.keys(LINE_STYLES) as Role[])('shows %s on the sheet and on the bridge', (role) => {
    // WCAG 2.2: 4.5 for words (1.4.3), 3 for lines (1.4.11).
    for (const ground of grounds)
      expect(contrast(theme.line(role), ground)).toBeGreaterThanOrEqual(TEXT.includes(role) ? 4.5 : 3);
  });

  it('shows a chosen part', () => {
    for (const ground of [...grounds, theme.chosenFill])
      expect(contrast(theme.chosen, ground)).toBeGreaterThanOrEqual(3);
  });
});
