import type { Device } from '../../store/types';
import { useServices } from '../services';
import { useStore } from '../useStore';

const INCHES: readonly { readonly value: string; readonly label: string }[] = [
  { value: '64', label: '1/64 in' },
  { value: '32', label: '1/32 in' },
  { value: '16', label: '1/16 in' },
  { value: 'decimal', label: '0.001 in' },
];
const MILLIMETRES = [
  { value: '2', label: '0.01 mm' },
  { value: '1', label: '0.1 mm' },
];

/** How finely figures are written in the unit in use. */
export function FigureStyle() {
  const { actions } = useServices().store;
  const { units, inches, millimetreDecimals } = useStore((state) => state.device);
  const inMillimetres = units === 'mm';
  const choose = (value: string): void => {
    if (inMillimetres) actions.setDevice({ millimetreDecimals: value === '1' ? 1 : 2 });
    else actions.setDevice({ inches: (value === 'decimal' ? value : Number(value)) as Device['inches'] });
  };
  return (
    <label className="figure-style">
      <span>to</span>
      <select
        aria-label="Figures to"
        value={String(inMillimetres ? millimetreDecimals : inches)}
        onChange={(event) => choose(event.target.value)}
      >
        {(inMillimetres ? MILLIMETRES : INCHES).map(({ value, label }) => (
          <option key={value} value={value}>
            {label}
          </option>
        ))}
      </select>
    </label>
  );
}
