import { describe, expect, it } from 'vitest';
import { readOutlines } from '../../src/importers/readOutlines';
import { HOSTILE } from './hostile';

describe('hostile files', () => {
  it.each(HOSTILE)('$name gets a message', ({ make, code }) => {
    const file = Uint8Array.from(make(), (letter) => letter.charCodeAt(0));
    const result = readOutlines('drawing', file, { by: 'file' });
    expect(result.ok ? '' : result.issues[0]?.code).toBe(code);
    if (!result.ok) expect(result.issues[0]?.message).toMatch(/^.{20,}\.$/);
  });
});
