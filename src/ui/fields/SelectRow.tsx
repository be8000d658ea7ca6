import { useId } from 'react';

interface SelectRowProps {
  readonly label: string;
  readonly path?: string;
  readonly about?: string;
  readonly value: string;
  readonly choices: readonly { readonly value: string; readonly label: string }[];
  readonly choose: (value: string) => void;
}

/** A labelled native select. */
export function SelectRow({ label, path, about, value, choices, choose }: SelectRowProps) {
  const id = useId();
  return (
    <div className="field field-wide">
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        value={value}
        title={about}
        data-path={path}
        aria-describedby={about === undefined ? undefined : `${id}-about`}
        onChange={(event) => choose(event.target.value)}
      >
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.label}
          </option>
        ))}
      </select>
      {about !== undefined && (
        <span id={`${id}-about`} hidden>
          {about}
        </span>
      )}
    </div>
  );
}
