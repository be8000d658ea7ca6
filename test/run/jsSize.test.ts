import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { pdfMark, reachedFiles } from './jsSize.mjs';

// The shape of the manifest: as Vite 8 writes it, shortened.
const manifest = {
  'index.html': {
    file: 'assets/index.js',
    isEntry: true,
    imports: ['_shared.js'],
    dynamicImports: ['src/canvas/index.ts', 'src/exporters/svg.ts'],
  },
  '_shared.js': { file: 'assets/shared.js' },
  'src/canvas/index.ts': { file: 'assets/canvas.js', imports: ['_shared.js', '_paper.js'] },
  '_paper.js': { file: 'assets/paper.js', imports: ['index.html'] },
  'src/exporters/svg.ts': { file: 'assets/svg.js', imports: ['_numbers.js'] },
  '_numbers.js': { file: 'assets/numbers.js' },
  'style.css': { file: 'assets/style.css', isEntry: true },
};

describe('reachedFiles', () => {
  it('takes the entry and its static imports for first paint', () => {
    expect(reachedFiles(manifest, false)).toEqual(['assets/index.js', 'assets/shared.js']);
  });

  it('adds the lazy chunks that the drawing needs, each once, and leaves out what a click loads', () => {
    expect(reachedFiles(manifest, true)).toEqual([
      'assets/index.js',
      'assets/shared.js',
      'assets/canvas.js',
      'assets/paper.js',
    ]);
  });
});

describe('pdfMark', () => {
  it('stands in the build of jsPDF that browsers get', () => {
    const file = createRequire(import.meta.url).resolve('jspdf/dist/jspdf.es.min.js');
    expect(readFileSync(file, 'utf8')).toContain(pdfMark);
  });
});
