import { measureText } from '../../text/measureText';
import { TEXT_HEIGHT } from '../textHeights';
import { shortenText } from './shortenText';

/** A string's name on a plot: where along it, in which row from 0, and the words. */
export interface StringLabel {
  readonly x: number;
  readonly row: number;
  readonly text: string;
}

const WIDEST = 14;
const BETWEEN = 1;

/** Width of a name as it is drawn, mm. */
export const labelWidth = (name: string): number => measureText(shortenText(name, WIDEST), TEXT_HEIGHT.note, 'regular');

/** Names centred at their places, each in the first row where it stands clear of its neighbour; in the order given. */
export const stringLabels = (
  strings: readonly { readonly name: string; readonly x: number }[],
): readonly StringLabel[] => {
  const ends: number[] = [];
  const labels = strings
    .map(({ name, x }, index) => ({ index, x, half: labelWidth(name) / 2, text: shortenText(name, WIDEST) }))
    .sort((a, b) => a.x - b.x)
    .map(({ index, x, half, text }) => {
      const clear = ends.findIndex((end) => end + BETWEEN <= x - half);
      const row = clear === -1 ? ends.length : clear;
      ends[row] = x + half;
      return { index, label: { x, row, text } };
    });
  return labels.sort((a, b) => a.index - b.index).map(({ label }) => label);
};
