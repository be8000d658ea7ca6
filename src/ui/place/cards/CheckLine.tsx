import { checkMessage } from '../../../core/checks/checkMessage';
import type { DesignCheck } from '../../../core/checks/types';
import { useLengths } from '../../useLengths';

const WORD = { good: 'Good', look: 'Look', wrong: 'Wrong' } as const;

/** A design check on a card. */
export function CheckLine({ check }: { readonly check: DesignCheck }) {
  const { withUnit } = useLengths();
  return (
    <li data-verdict={check.verdict}>
      <strong>{WORD[check.verdict]}.</strong> {checkMessage(check, withUnit)}
    </li>
  );
}
