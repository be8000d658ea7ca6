import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { build, type Plugin } from 'vite';
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

/**
 * What the built page may load and do: its own files, and pictures made in it. A page cannot say for itself who may frame
 * it (frame-ancestors), nor speak for its workers: only the server's headers can.
 */
const CONTENT_SECURITY_POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/** Puts the policy at the head of the page. The dev server's page has none, since its styles stand in the page itself. */
const contentSecurity = (): Plugin => ({
  name: 'content-security',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: CONTENT_SECURITY_POLICY },
      injectTo: 'head-prepend',
    },
  ],
});

/**
 * Names the files of the screen in the page's head, so that they come along with the one that asks for them instead of after
 * it.
 */
const screenComesAlong = (): Plugin => ({
  name: 'screen-comes-along',
  apply: 'build',
  transformIndexHtml: {
    order: 'post',
    handler: (_page, { bundle = {} }) => {
      const files = new Set<string>();
      const styles = new Set<string>();
      const take = (file: string): void => {
        const chunk = bundle[file];
        if (chunk?.type !== 'chunk' || chunk.isEntry || files.has(file)) return;
        files.add(file);
        for (const style of chunk.viteMetadata?.importedCss ?? []) styles.add(style);
        for (const next of chunk.imports) take(next);
      };
      for (const chunk of Object.values(bundle))
        if (chunk.type === 'chunk' && chunk.facadeModuleId?.endsWith('/src/main/startWorkbench.ts'))
          take(chunk.fileName);
      const link = (rel: string, file: string) => ({
        tag: 'link',
        attrs: { rel, crossorigin: true, href: `./${file}` },
        injectTo: 'head' as const,
      });
      return [
        ...[...files].map((file) => link('modulepreload', file)),
        ...[...styles].map((file) => link('stylesheet', file)),
      ];
    },
  },
});

const sha256 = (bytes: Uint8Array | string): string => createHash('sha256').update(bytes).digest('base64');

/** Writes offline.js, the worker that keeps every file of the build on the maker's device. */
const offlineFiles = (): Plugin => {
  let folder = '';
  let wanted = false;
  return {
    name: 'offline-files',
    apply: 'build',
    configResolved({ root, build: { outDir, ssr } }) {
      folder = path.resolve(root, outDir);
      wanted = ssr === false;
    },
    async closeBundle(error) {
      if (!wanted || error !== undefined) return;
      const files = readdirSync(folder, { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile())
        .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)).replaceAll(path.sep, '/'))
        .filter((file) => !file.startsWith('.vite/') && file !== 'offline.js')
        .sort()
        .map((file) => ({
          address: file === 'index.html' ? '' : file,
          integrity: `sha256-${sha256(readFileSync(path.join(folder, file)))}`,
        }));
      const [made] = [
        await build({
          configFile: false,
          logLevel: 'warn',
          define: {
            KEPT_FILES: JSON.stringify(files),
            KEPT_VERSION: JSON.stringify(sha256(JSON.stringify(files)).slice(0, 12)),
          },
          build: {
            write: false,
            target: 'es2022',
            lib: { entry: 'src/main/offline/serviceWorker.ts', formats: ['iife'], name: 'offline' },
          },
        }),
      ].flat();
      if (made === undefined || !('output' in made)) throw new Error('The worker that keeps the files was not built.');
      writeFileSync(path.join(folder, 'offline.js'), made.output[0].code);
    },
  };
};

/** `vitest run` takes the unit tests; `vitest run --mode readers` takes the tests that need Debian's readers. */
export default defineConfig(({ mode }) => ({
  base: './',
  plugins: [react(), screenInOneFile(), contentSecurity(), screenComesAlong(), offlineFiles()],
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
