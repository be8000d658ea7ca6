interface TickProps {
  readonly label: string;
  readonly on: boolean;
  readonly change: (on: boolean) => void;
}

/** Something that is there or not. */
export function Tick({ label, on, change }: TickProps) {
  return (
    <label className="check">
      <input type="checkbox" checked={on} onChange={({ target }) => change(target.checked)} />
      <span>{label}</span>
    </label>
  );
}
