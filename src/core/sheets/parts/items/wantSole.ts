import { fail, type Result } from '../../../result';

/** Why a sheet that follows the sole cannot be made yet. */
export const wantSole = <Made>(): Result<Made> =>
  fail(
    'bridge.sole',
    'sheet.noSole',
    'Nothing is said of the sole and wings. Expected the thickness of the wings and where they begin, entered at Draw.',
  );
