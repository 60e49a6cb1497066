interface Props {
  name: string;
  on: boolean;
  onTurn(on: boolean): void;
}

/** One thing that is on a paper or not. */
export function Tick({ name, on, onTurn }: Props) {
  return (
    <label className="print-tick">
      <input type="checkbox" checked={on} onChange={(event) => onTurn(event.currentTarget.checked)} /> {name}
    </label>
  );
}
