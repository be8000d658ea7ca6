import { useState } from 'react';
import { centsPerMm } from '../../../core/intonation/centsPerMm';
import { parseLength } from '../../../core/units/parseLength';
import { takeTuned } from '../../../store/commands/place/takeTuned';
import { FieldGroup } from '../../fields/FieldGroup';
import { More } from '../../fields/More';
import { TextBox } from '../../fields/TextBox';
import { useServices } from '../../services';
import { useLengths } from '../../useLengths';
import type { Place } from './usePlace';

const SIDES = ['treble', 'bass'] as const;
const FARTHEST = 20;

/** Outer strings over a loose bridge, moved until each plays in tune: where they break gives placement and slant directly. */
export function Tuned({ place }: { readonly place: Place }) {
  return (
    <FieldGroup id="group-tuned" title="Outer strings over a loose bridge">
      <More summary="Found in tune before anything is taped">
        <TunedBoxes place={place} />
      </More>
    </FieldGroup>
  );
}

function TunedBoxes({ place: { read } }: { readonly place: Place }) {
  const { actions } = useServices().store;
  const { style, withUnit, signed } = useLengths();
  const [found, setFound] = useState<Readonly<Record<'treble' | 'bass', number | null>>>({ treble: null, bass: null });
  const { board, saddle, strings, scale } = read;
  const outer = { treble: strings[0], bass: strings.at(-1) };
  const planned = (side: 'treble' | 'bass'): number =>
    saddle.centre + saddle.slope * (outer[side]?.saddleX ?? 0) - board.twelfth;
  const box = (side: 'treble' | 'bass') => {
    const expected = planned(side);
    const value = found[side];
    const shown = value === null ? '' : withUnit(value).replace(/ mm$|″$/, '');
    return (
      <TextBox
        key={side}
        label={`12th fret to where string ${side === 'treble' ? 1 : strings.length} breaks, ${side}`}
        path={`place.tuned.${side}`}
        shown={shown}
        unit={style.unit}
        about="With the string at pitch over the loose bridge, moved until the fretted 12th is the open string’s octave."
        decimal
        note={`planned ${withUnit(expected)}`}
        take={(text) => {
          if (text === shown) return null;
          if (text.trim() === '') {
            setFound((before) => ({ ...before, [side]: null }));
            return null;
          }
          const length = parseLength(text, style.unit);
          if (!length.ok) return length.issues[0]?.message ?? null;
          if (Math.abs(length.value - expected) > FARTHEST) return `Expected about ${withUnit(expected)}.`;
          setFound((before) => ({ ...before, [side]: length.value }));
          return null;
        }}
      />
    );
  };
  const { treble, bass } = found;
  const [x1, xn] = [outer.treble?.saddleX ?? 0, outer.bass?.saddleX ?? 0];
  const slant = treble === null || bass === null ? null : (Math.atan((bass - treble) / (x1 - xn)) * 180) / Math.PI;
  return (
    <>
      <p className="hint">
        Tune, fret at the 12th, move the bridge until both are the octave. Then read where each string breaks. Light
        gauge or thread will not do: the strings that will be played.
      </p>
      {SIDES.map(box)}
      {treble !== null && bass !== null && slant !== null && (
        <>
          <p role="status" className="field-note">
            Against the plan: treble {signed(treble - planned('treble'))}, bass {signed(bass - planned('bass'))}{' '}
            {style.unit}, that is{' '}
            {(centsPerMm(scale.scaleLength, 12) * Math.abs(treble - planned('treble'))).toFixed(1)} and{' '}
            {(centsPerMm(scale.scaleLength, 12) * Math.abs(bass - planned('bass'))).toFixed(1)} cents. Slant{' '}
            {slant.toFixed(2)}°.
          </p>
          <div className="buttons">
            <button
              type="button"
              onClick={() => {
                const octave = board.octave - board.twelfth;
                const issues = actions.change('Compensation as found in tune', (project) =>
                  takeTuned(project, {
                    treble: treble - octave,
                    bass: bass - octave,
                    across: strings.map(({ saddleX }) => saddleX),
                  }),
                );
                if (issues.length > 0) actions.warn(issues.map(({ message }) => message).join(' '));
              }}
            >
              Place the saddle there
            </button>
          </div>
        </>
      )}
    </>
  );
}
