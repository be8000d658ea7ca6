import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));

const KINDS: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ttf': 'font/ttf',
  '.webmanifest': 'application/manifest+json',
};

/** A host of plain files under a folder of its own, as a maker may have one. */
export interface Host {
  /** The app's address. */
  readonly address: string;
  /** Puts another build in place of the one before, which is gone from then on. */
  deploy(folder: string): void;
  /** The network is gone: nothing answers any more, and nothing that is open stays open. */
  stop(): Promise<void>;
}

export const hostOf = async (first: string, under = '/bench/saddlemark/'): Promise<Host> => {
  let folder = first;
  const server = createServer(({ url = '' }, response) => {
    const asked = decodeURIComponent(url.split('?')[0] ?? '');
    const file = path.join(folder, asked.slice(under.length) || 'index.html');
    if (!asked.startsWith(under) || !file.startsWith(folder) || !existsSync(file) || !statSync(file).isFile()) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, {
      'content-type': KINDS[path.extname(file)] ?? 'text/plain',
      // Asked again each time, so that it is the app that keeps its files and not the browser by itself.
      'cache-control': 'no-cache',
    });
    createReadStream(file).pipe(response);
  });
  await new Promise<void>((resolve) => {
    server.listen(0, '127.0.0.1', resolve);
  });
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}${under}`,
    deploy: (next) => {
      folder = next;
    },
    stop: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
};

/**
 * Builds the app with a word in the name of each of its files, as if all of them had changed since another word; answers
 * with its folder.
 */
export const buildVersion = async (word: string): Promise<string> => {
  const { build } = await import('vite');
  const outDir = path.join(root, 'reports/versions', word);
  const output = {
    entryFileNames: `assets/${word}-[name]-[hash].js`,
    chunkFileNames: `assets/${word}-[name]-[hash].js`,
    assetFileNames: `assets/${word}-[name]-[hash][extname]`,
  };
  await build({
    root,
    logLevel: 'error',
    build: { outDir, emptyOutDir: true, rolldownOptions: { output } },
    worker: { rolldownOptions: { output } },
  });
  return outDir;
};
