import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import type { Plugin } from 'vite';
import { configDefaults, defineConfig } from 'vitest/config';

const absentPackage = fileURLToPath(new URL('./src/absentPackage.ts', import.meta.url));

/**
 * One file for the whole screen: every module of src that the workbench imports statically, whoever else shares it. Split by
 * sharers, they would come as a dozen files and 2 KB more after gzip.
 */
const screenInOneFile = (): Plugin => {
  const screen = new Set<string>();
  return {
    name: 'screen-in-one-file',
    apply: 'build',
    config: () => ({
      build: {
        rolldownOptions: {
          output: {
            codeSplitting: {
              includeDependenciesRecursively: false,
              groups: [{ name: 'screen', test: (id: string) => screen.has(id) }],
            },
          },
        },
      },
    }),
    buildEnd() {
      const graph = [...this.getModuleIds()];
      const reach = (from: string, into: Set<string>): void => {
        if (into.has(from)) return;
        into.add(from);
        for (const next of this.getModuleInfo(from)?.importedIds ?? []) reach(next, into);
      };
      const reachedFrom = (file: string): Set<string> => {
        const reached = new Set<string>();
        const start = graph.find((id) => id.endsWith(file));
        if (start !== undefined) reach(start, reached);
        return reached;
      };
      const first = reachedFrom('/src/main.tsx');
      for (const id of reachedFrom('/src/main/startWorkbench.ts'))
        if (!first.has(id) && id.includes('/src/') && !id.includes('node_modules')) screen.add(id);
    },
  };
};

/** `vitest run` takes the unit tests; `vitest run --mode readers` takes the tests that need Debian's readers. */
export default defineConfig(({ mode }) => ({
  base: './',
  plugins: [react(), screenInOneFile()],
  resolve: {
    alias: {
      html2canvas: absentPackage,
      dompurify: absentPackage,
      canvg: absentPackage,
      'fast-png': absentPackage,
    },
  },
  worker: { format: 'es' },
  // Every browser that has the rest of what is used here preloads modules by itself.
  build: { target: 'es2022', manifest: true, modulePreload: { polyfill: false } },
  test: {
    environment: 'node',
    // The tests share nothing that could change: one process reads each module once.
    isolate: false,
    include: mode === 'readers' ? ['test/readers/**/*.test.ts'] : ['test/**/*.test.ts'],
    exclude: [...configDefaults.exclude, ...(mode === 'readers' ? [] : ['test/readers/**'])],
    setupFiles: ['test/run/fixSeed.ts'],
    testTimeout: 30_000,
    hookTimeout: 30_000,
  },
}));
