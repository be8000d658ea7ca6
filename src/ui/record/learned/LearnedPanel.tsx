import { useMemo, useState } from 'react';
import { lengthField } from '../../../core/document/fieldRows';
import { plotFound } from '../../../core/drawing/plots/record/plotFound';
import { type Likeness, USUAL_LIKENESS } from '../../../core/learning/likeness';
import { shopOf } from '../../../core/learning/shopOf';
import { USUAL_SPREAD } from '../../../core/learning/usualSpread';
import { whatToExpect } from '../../../core/learning/whatToExpect';
import { signedFine } from '../../draw/repair/fineLengths';
import { FieldGroup } from '../../fields/FieldGroup';
import { More } from '../../fields/More';
import { Picture } from '../../measure/Picture';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { ValueBox } from '../stringUp/ValueBox';
import { AcceptLearned } from './AcceptLearned';
import { ExpectedTable, FoundTable } from './FoundTables';
import { InstrumentTicks } from './InstrumentTicks';
import { LikenessFields } from './LikenessFields';
import { shopWords, strayWords, withoutWords } from './learnedWords';
import { rememberedOutcome } from './rememberedOutcome';
import { useShop } from './useShop';
import './learned.css';

/** What this maker's instruments of like kind say of the next one. Nothing of it is taken into a plan by itself. */
export function LearnedPanel() {
  const shop = useShop();
  return (
    <FieldGroup
      id="what-to-expect"
      title="What to expect next time"
      hint="How your instruments of like kind came out at their first setting, against what the stiff-string model said."
    >
      {shop.kind === 'reading' && <p className="quiet">Reading the library …</p>}
      {shop.kind === 'problem' && <p className="field-caution">The library cannot be read: {shop.words}</p>}
      {shop.kind === 'read' && <Learned projects={shop.projects} unread={shop.unread} />}
    </FieldGroup>
  );
}

type Read = Extract<ReturnType<typeof useShop>, { readonly kind: 'read' }>;

function Learned({ projects, unread }: Omit<Read, 'kind'>) {
  const { id, about, build, height, strings, instrument } = useStore(({ project }) => project);
  const { scale, models } = useStore(({ derived }) => derived);
  const { style } = useLengths();
  const [likeness, setLikeness] = useState<Likeness>(USUAL_LIKENESS);
  const [spread, setSpread] = useState<number>(USUAL_SPREAD.value);
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const model = build === null ? id : (about.parent?.id ?? id);
  const found = useMemo(
    () =>
      scale.ok
        ? shopOf(
            projects,
            { kind: height.kind, scaleLength: scale.value.scaleLength, strings, model },
            likeness,
            rememberedOutcome,
          )
        : null,
    [projects, scale, height.kind, strings, model, likeness],
  );
  const counted = useMemo(() => (found?.outcomes ?? []).filter((each) => !left.has(each.id)), [found, left]);
  const expected = useMemo(
    () => (models.ok ? whatToExpect(models.value, counted, spread) : null),
    [models, counted, spread],
  );
  if (found === null || expected === null)
    return <p className="not-yet">The model has no answer for this instrument yet: see Measure.</p>;
  const names = strings.map(({ name }) => name);
  const strays = expected.without.filter(({ stray }) => stray.length > 0);
  const byWeight = [...expected.without].sort((one, other) => Math.abs(other.most.change) - Math.abs(one.most.change));
  const plotted = expected.strings.map((string, index) => ({
    ...string,
    errors: counted.flatMap((outcome) => outcome.strings[index]?.error ?? []),
  }));
  return (
    <>
      <p>{shopWords(found)}</p>
      {unread > 0 && <p className="field-caution">{unread} in the library could not be read.</p>}
      <More summary="What counts as like kind">
        <LikenessFields likeness={likeness} change={setLikeness} />
      </More>
      {found.outcomes.length > 0 && (
        <>
          <FoundTable strings={expected.strings} />
          {strays.map((each) => (
            <p key={each.outcome.id} className="field-caution">
              {strayWords(each, names)}
            </p>
          ))}
          <ExpectedTable strings={expected.strings} />
        </>
      )}
      <AcceptLearned expected={expected} />
      {found.outcomes.length > 0 && (
        <>
          <Picture plot={plotFound(plotted, style, instrument.hand)} />
          <More summary="Each instrument, and which count">
            <InstrumentTicks
              outcomes={found.outcomes}
              names={names}
              left={left}
              leave={(gone, out) =>
                setLeft((before) => new Set(out ? [...before, gone] : [...before].filter((each) => each !== gone)))
              }
            />
          </More>
          <More summary="What hangs on one instrument">
            <ul className="plain" aria-label="Leaving one out">
              {byWeight.map((each) => (
                <li key={each.outcome.id}>{withoutWords(each, names, (mm) => signedFine(mm, style.unit))}</li>
              ))}
            </ul>
          </More>
          <More summary="How the figures are made">
            <ValueBox
              field={lengthField(
                'learned.spread',
                'Usual spread',
                USUAL_SPREAD.least,
                USUAL_SPREAD.most,
                'How much one instrument differs from the next, one sigma, as it is believed before many were read. It counts for three of them.',
                USUAL_SPREAD.source,
              )}
              value={spread}
              take={(value) => {
                setSpread(Number(value));
                return [];
              }}
            />
            <p className="hint">
              A mean of few instruments is drawn toward the model by as much as it is less sure than the model: Gelman
              and others, Bayesian Data Analysis, 2013, 2.5 and 5.4; Efron and Morris, Scientific American, May 1977. It
              takes the instruments to differ by chance alone, one first reading each, none kept back because of how it
              came out, and the model to be off by no more than its own ±. Spread: {USUAL_SPREAD.source}.
            </p>
          </More>
        </>
      )}
    </>
  );
}
