import './steps.css';

/** Numbered blanks of an empty screen: what to do first, then, and last. One line each. */
export function Steps({ lines }: { lines: readonly string[] }) {
  return (
    <ol className="steps">
      {lines.map((line, index) => (
        <li key={line}>
          <span className="steps-number" aria-hidden="true">
            {index + 1}
          </span>
          <span>{line}</span>
        </li>
      ))}
    </ol>
  );
}
