import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { installPackages } from './installPackages.mjs';

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');

try {
  installPackages(root);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exit(1);
}

const { createServer } = await import('vite');
const server = await createServer({ root, clearScreen: false, logLevel: 'warn' });
await server.listen();

const close = async () => {
  await server.close();
  process.exit(0);
};
process.once('SIGINT', close);
process.once('SIGTERM', close);

console.log(`Saddlemark is at ${server.resolvedUrls?.local[0]}\nCtrl-C ends it.`);
