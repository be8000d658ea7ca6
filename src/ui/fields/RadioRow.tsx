import { useId } from 'react';

interface RadioRowProps<Value extends string> {
  readonly label: string;
  readonly value: Value;
  readonly choices: readonly { readonly value: Value; readonly label: string }[];
  readonly choose: (value: Value) => void;
}

/** A row of native radio buttons that looks like one switch. */
export function RadioRow<Value extends string>({ label, value, choices, choose }: RadioRowProps<Value>) {
  const name = useId();
  return (
    <div role="radiogroup" aria-label={label} className="switch">
      {choices.map((choice) => (
        <label key={choice.value}>
          <input
            type="radio"
            name={name}
            value={choice.value}
            checked={choice.value === value}
            onChange={() => choose(choice.value)}
          />
          <span>{choice.label}</span>
        </label>
      ))}
    </div>
  );
}
