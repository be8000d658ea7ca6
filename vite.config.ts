import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { configDefaults, defineConfig } from 'vitest/config';

const absentPackage = fileURLToPath(new URL('./src/absentPackage.ts', import.meta.url));

/** `vitest run` takes the unit tests; `vitest run --mode readers` takes the tests that need Debian's readers. */
export default defineConfig(({ mode }) => ({
  base: './',
  plugins: [react()],
  resolve: {
    alias: {
      html2canvas: absentPackage,
      dompurify: absentPackage,
      canvg: absentPackage,
      'fast-png': absentPackage,
    },
  },
  worker: { format: 'es' },
  build: { target: 'es2022', manifest: true },
  test: {
    environment: 'node',
    include: mode === 'readers' ? ['test/readers/**/*.test.ts'] : ['test/**/*.test.ts'],
    exclude: [...configDefaults.exclude, ...(mode === 'readers' ? [] : ['test/readers/**'])],
    testTimeout: 30_000,
    hookTimeout: 30_000,
  },
}));
