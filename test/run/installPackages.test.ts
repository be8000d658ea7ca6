import { describe, expect, it } from 'vitest';
import { stalePackages } from './installPackages.mjs';

describe('stalePackages', () => {
  const locked = {
    '': { version: '0.1.0' },
    'node_modules/plain': { version: '1.2.3' },
    'node_modules/other-system': { version: '1.0.0', optional: true },
  };

  it('is empty when all stand there, whatever the project itself says and other systems need', () => {
    expect(stalePackages(locked, { 'node_modules/plain': { version: '1.2.3' } })).toEqual([]);
  });

  it('names a missing package', () => {
    expect(stalePackages(locked, {})).toEqual(['node_modules/plain']);
  });

  it('names a package of another version, optional or not', () => {
    const installed = {
      'node_modules/plain': { version: '1.2.2' },
      'node_modules/other-system': { version: '0.9.0', optional: true },
    };
    expect(stalePackages(locked, installed)).toEqual(['node_modules/plain', 'node_modules/other-system']);
  });
});
