import type { LengthStyle } from '../core/units/formatLength';
import type { Device } from './types';

const DEFAULT_DEVICE: Device = {
  units: 'mm',
  millimetreDecimals: 1,
  inches: 64,
  station: 'measure',
  paper: 'a4',
  dotsPerMm: 0,
  begun: false,
  print: {},
};

const ALLOWED: { readonly [Key in keyof Device]: readonly unknown[] } = {
  units: ['mm', 'in'],
  millimetreDecimals: [1, 2],
  inches: [16, 32, 64, 'decimal'],
  station: ['measure', 'draw', 'print', 'place', 'record'],
  paper: [],
  dotsPerMm: [],
  begun: [true],
  print: [],
};

/** Device settings from kept text; whatever is missing or not allowed takes its default. */
export const readDevice = (text: string | null): Device => {
  let kept: unknown;
  try {
    kept = JSON.parse(text ?? '');
  } catch {
    return DEFAULT_DEVICE;
  }
  if (typeof kept !== 'object' || kept === null) return DEFAULT_DEVICE;
  const allowed = Object.entries(kept).filter(([key, value]) => {
    if (key === 'paper') return typeof value === 'string';
    if (key === 'print') return typeof value === 'object' && value !== null;
    if (key === 'dotsPerMm') return typeof value === 'number' && value > 1 && value < 60;
    const values = Object.hasOwn(ALLOWED, key) ? ALLOWED[key as keyof Device] : [];
    return values.includes(value);
  });
  return { ...DEFAULT_DEVICE, ...Object.fromEntries(allowed) };
};

/** How this device writes lengths. */
export const lengthStyle = ({
  units,
  millimetreDecimals,
  inches,
}: Pick<Device, 'units' | 'millimetreDecimals' | 'inches'>): LengthStyle => {
  if (units === 'mm') return { unit: 'mm', decimals: millimetreDecimals };
  return inches === 'decimal' ? { unit: 'in', decimals: 3 } : { unit: 'in', denominator: inches };
};
