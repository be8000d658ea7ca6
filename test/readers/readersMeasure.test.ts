import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runReader } from './runReader';

/**
 * The rule is checked before it measures: a page of A4 written by hand, with one square of 100 mm, must read back so.
 * 100 mm is 283.4646 pt and A4 is 595.2756 by 841.8898 pt: 72 pt to the inch and 25.4 mm to the inch, both exact
 * (ISO 32000-1, 8.3.2.3; international inch), worked by hand.
 */
const drawing = '0.5 w 100 200 283.4646 283.4646 re S';

const handWrittenPdf = () => {
  const objects = [
    '<< /Type /Catalog /Pages 2 0 R >>',
    '<< /Type /Pages /Kids [3 0 R] /Count 1 >>',
    '<< /Type /Page /Parent 2 0 R /MediaBox [0 0 595.2756 841.8898] /Resources << >> /Contents 4 0 R >>',
    `<< /Length ${drawing.length} >>\nstream\n${drawing}\nendstream`,
  ];
  let pdf = '%PDF-1.4\n';
  const offsets = objects.map((body, index) => {
    const offset = pdf.length;
    pdf += `${index + 1} 0 obj\n${body}\nendobj\n`;
    return offset;
  });
  const rows = offsets.map((offset) => `${String(offset).padStart(10, '0')} 00000 n \n`).join('');
  const table = `xref\n0 5\n0000000000 65535 f \n${rows}trailer\n<< /Size 5 /Root 1 0 R >>\n`;
  return `${pdf}${table}startxref\n${pdf.length}\n%%EOF\n`;
};

describe('the readers', () => {
  let folder = '';
  let file = '';
  beforeAll(() => {
    folder = mkdtempSync(path.join(tmpdir(), 'saddlemark-readers-'));
    file = path.join(folder, 'square.pdf');
    writeFileSync(file, handWrittenPdf());
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it('qpdf finds nothing to complain about', () => {
    expect(runReader('qpdf', ['--check', file])).toContain('No syntax or stream encoding errors');
  });

  it('qpdf gives back the square as it was written', () => {
    expect(runReader('qpdf', ['--qdf', file, '-'], 'latin1')).toContain(drawing);
  });

  it('poppler reads the paper', () => {
    const [, width, height] = /Page size:\s+([\d.]+) x ([\d.]+)/.exec(runReader('pdfinfo', [file])) ?? [];
    expect(Number(width)).toBeCloseTo(595.2756, 2);
    expect(Number(height)).toBeCloseTo(841.8898, 2);
  });

  it('poppler draws the square with sides of 283.4646 pt', () => {
    const svg = path.join(folder, 'square.svg');
    runReader('pdftocairo', ['-svg', '-noshrink', '-nocenter', '-paperw', '1000', '-paperh', '1000', file, svg]);
    const d = /<path[^>]*stroke-width[^>]* d="([^"]+)"/.exec(readFileSync(svg, 'utf8'))?.[1] ?? '';
    const numbers = [...d.matchAll(/-?[\d.]+/g)].map(Number);
    const xs = numbers.filter((_, index) => index % 2 === 0);
    const ys = numbers.filter((_, index) => index % 2 === 1);
    // 3 µm is 0.0085 pt.
    expect(Math.abs(Math.max(...xs) - Math.min(...xs) - 283.4646)).toBeLessThan(0.0085);
    expect(Math.abs(Math.max(...ys) - Math.min(...ys) - 283.4646)).toBeLessThan(0.0085);
  });
});
