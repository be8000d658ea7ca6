import { gapText } from './gapText';
import type { SoleFit } from './soleTypes';

/** Less than this is not worth sanding, mm. */
const NOTHING = 0.02;
/** Gaps this near together are told as one, mm: they read alike. */
const ALIKE = 0.005;

const restsWords = ({ rests, from, to, places }: SoleFit): string => {
  if (rests === 'all-over') return 'The sole lies on the top all over.';
  if (rests === 'rocks')
    return Math.abs(from + to) < (places.trebleTip - places.bassTip) / 8
      ? 'The sole rests on its centre and rocks: the wings stand off the top.'
      : `The sole rests on one place toward the ${from + to < 0 ? 'bass' : 'treble'} and rocks.`;
  return from <= places.bassWing && to >= places.trebleWing
    ? 'The sole stands on its wings, with a gap between them.'
    : 'The sole stands on two places, with a gap between them.';
};

const placeName = (fit: SoleFit, x: number): string => {
  const { bassWing, trebleWing } = fit.places;
  const [bass, treble] = [fit.points[0]?.gap ?? 0, fit.points.at(-1)?.gap ?? 0];
  if ((x < bassWing || x > trebleWing) && Math.abs(bass - treble) < ALIKE) return 'toward both tips';
  if (x < bassWing) return 'toward the bass tip';
  if (x > trebleWing) return 'toward the treble tip';
  return 'between the wings';
};

const adviceWords = (fit: SoleFit): readonly string[] => {
  const at = (name: string): number => fit.points.find((point) => point.name === name)?.fit ?? 0;
  const [bass, centre, treble] = [at('bassTip'), at('centre'), at('trebleTip')];
  if (Math.max(...fit.points.map((point) => point.fit)) < NOTHING) return [];
  const tips = Math.max(bass, treble);
  if (centre > tips)
    return [`To fit: sand ${gapText(centre)} off the sole at the centre, running out toward the tips.`];
  const uneven = Math.abs(bass - treble) >= NOTHING;
  const off = uneven
    ? `${gapText(bass)} at the bass tip and ${gapText(treble)} at the treble tip`
    : `${gapText(tips)} at the tips`;
  return [`To fit: sand ${off}, running out toward the centre.`];
};

/** What the sole does on the top and what to do about it, in plain sentences. */
export const soleWords = (fit: SoleFit): readonly string[] => [
  restsWords(fit),
  ...(fit.rests === 'all-over' ? [] : [`Widest gap ${gapText(fit.worst.gap)}, ${placeName(fit, fit.worst.x)}.`]),
  ...adviceWords(fit),
];
