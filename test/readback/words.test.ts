import { describe, expect, it } from 'vitest';
import { TEMPLATES } from '../reference/templates';
import { linesOfText } from './linesOfText';
import { makeTemplate } from './makeTemplate';
import { READERS } from './readers';

/** As they stand in the instruments' files: each name holds ⅜ ″ × ⌀ ±. */
const TITLES = {
  steel: 'Finch ⅜″ × ⌀± · right hand',
  classical: 'Siskin ⌀ ⅜″ ×± · left hand',
  ukulele: 'Wryneck ⅜″×⌀± · right hand',
};

describe.each(READERS)('$reader extracts', ({ read }) => {
  it.each(TEMPLATES)('the words of $instrument, $paper, $unit', async (template) => {
    const pages = await read(makeTemplate(template));
    const lines = pages.flatMap(({ texts }) => linesOfText(texts));
    const whole = lines.join('\n');
    for (const row of template.figures) expect(whole).toContain(row.join(' '));
    for (const words of template.squareLine) expect(lines).toContain(words);
    expect(whole).toContain(template.unit === 'mm' ? '100.0 × 100.0 mm' : '4 × 4 in');
    expect(whole).toContain('√(d² + r²)');
    for (const { texts } of pages) expect(linesOfText(texts).join('\n')).toContain(TITLES[template.instrument]);
    expect(whole).not.toMatch(/[\uFFFD\p{Co}]/u);
  });
});
