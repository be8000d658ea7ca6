import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { pngPixels } from '../exporters/png/pngPixels';
import { iconPictures } from './iconPictures.mjs';

const folder = new URL('../../public/', import.meta.url);
const manifest = JSON.parse(readFileSync(new URL('manifest.webmanifest', folder), 'utf8'));

/** Width and height of a PNG (W3C, PNG, 11.2.2: big-endian at bytes 16 and 20). */
const sizeOf = (png: Buffer): string => `${png.readUInt32BE(16)}x${png.readUInt32BE(20)}`;

describe('what the app installs with', () => {
  // Web Application Manifest (W3C); 192 and 512 pixels are what Chromium asks of an app that can be installed.
  it('opens from any folder, in a window of its own', () => {
    expect(manifest).toMatchObject({ name: 'Saddlemark', start_url: './', scope: './', display: 'standalone' });
    const sizes = manifest.icons.map(({ sizes, purpose = 'any' }: Record<string, string>) => `${sizes} ${purpose}`);
    expect(sizes).toEqual(['any any', '192x192 any', '512x512 any', '192x192 maskable', '512x512 maskable']);
  });

  it('has icons of the sizes that it names, by addresses within the app', () => {
    for (const { src, type, sizes } of manifest.icons) {
      expect(src).toMatch(/^icons\//);
      const bytes = readFileSync(new URL(src, folder));
      if (type === 'image/png') expect(sizeOf(bytes), src).toBe(sizes);
      else
        expect(bytes.toString('utf8')).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" viewBox="0 0 96 96">/);
    }
  });

  it('has pictures that were drawn from its one drawing', () => {
    for (const [name, bytes] of Object.entries(iconPictures())) {
      const drawn = pngPixels(bytes);
      const kept = pngPixels(readFileSync(new URL(`icons/${name}`, folder)));
      expect([kept.width, kept.height], name).toEqual([drawn.width, drawn.height]);
      let most = 0;
      for (const [at, value] of drawn.rgba.entries()) most = Math.max(most, Math.abs(value - (kept.rgba[at] ?? 999)));
      // Another processor may round the edge of a line otherwise.
      expect(most, name).toBeLessThan(16);
    }
  });
});
