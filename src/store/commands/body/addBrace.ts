import { createDerive } from '../../../core/derive/createDerive';
import type { Project } from '../../../core/document/types';
import type { Result } from '../../../core/result';
import { MM_PER_INCH } from '../../../core/units/mmPerInch';
import { roundDecimal } from '../../../core/units/roundDecimal';
import { withBrace } from './braceList';
import { withBody } from './withBody';

/** Where a new brace waits for its figures, x and y behind the bridge's front edge, mm: across the bass wing, in sight. */
const FROM = { x: -40, y: -25 } as const;
const TO = { x: -85, y: 45 } as const;
const WIDTH = (5 / 16) * MM_PER_INCH;

/**
 * One more brace, not found yet. Codes: body.none, body.bracesFull, and those of the bridge in place when it could not be
 * computed.
 */
export const addBrace = (project: Project): Result<Project> =>
  withBody(project, (body) => {
    const { bridge } = createDerive()(project);
    if (!bridge.ok) return bridge;
    const at = ({ x, y }: { readonly x: number; readonly y: number }) => ({
      x,
      y: roundDecimal(bridge.value.front + y, 1),
    });
    return withBrace(body, {
      name: `brace ${body.braces.length + 1}`,
      kind: 'x-leg',
      from: at(FROM),
      to: at(TO),
      width: WIDTH,
      height: null,
      read: false,
    });
  });
