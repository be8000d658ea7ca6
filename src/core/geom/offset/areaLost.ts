import { fail, ok, type Result } from '../../result';
import { pathArea } from '../pathArea';
import { signedArea } from '../signedArea';
import type { Path } from '../types';
import { offsetPath } from './offsetPath';

/** What a rim all round an outline takes from its area. */
export interface AreaLost {
  /** The area inside the outline, mm². */
  readonly whole: number;
  /** The area inside the rim, mm². */
  readonly left: number;
  /** The area of the rim, mm². */
  readonly lost: number;
  /** lost / whole, 0 to 1. */
  readonly share: number;
}

/**
 * The glue area of a footprint that finish left under its rim costs. `rim`: its width all round, mm, 0 or more.
 *
 * Codes: offset.rim (less than 0), and those of offsetPath.
 */
export async function areaLost(path: Path, rim: number): Promise<Result<AreaLost>> {
  if (rim < 0) return fail('rim', 'offset.rim', `Expected a rim of 0 mm or more, got ${rim}.`);
  const inner = await offsetPath(path, -rim);
  if (!inner.ok) return inner;
  const whole = pathArea(path);
  const left = inner.value.reduce((sum, part) => sum + signedArea(part), 0);
  return ok({ whole, left, lost: whole - left, share: (whole - left) / whole });
}
