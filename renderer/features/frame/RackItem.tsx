import { Fraction } from '../../design/index.ts';

interface Props {
  text: string;
  small?: string;
  on?: boolean;
  quiet?: boolean;
  onChoose(): void;
}

export function RackItem({ text, small, on = false, quiet = false, onChoose }: Props) {
  return (
    <button
      type="button"
      className={quiet ? 'rack-item quiet-item' : 'rack-item'}
      aria-current={on ? 'true' : undefined}
      onClick={onChoose}
    >
      <Fraction>{text}</Fraction>
      {small !== undefined && (
        <small>
          <Fraction>{small}</Fraction>
        </small>
      )}
    </button>
  );
}
