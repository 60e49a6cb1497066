import { Fraction } from './Fraction.tsx';
import './putAway.css';

interface Props {
  items: readonly { readonly id: string; readonly name: string; readonly small: string }[];
  onTakeOut(id: string, name: string): void;
}

/** What was put away on this screen: out of the shelf and the drawing, never lost. */
export function PutAway({ items, onTakeOut }: Props) {
  if (items.length === 0) return null;
  return (
    <section className="put-away">
      <h2 className="plate">Put away</h2>
      <ul>
        {items.map(({ id, name, small }) => (
          <li key={id}>
            <span>
              <Fraction>{name}</Fraction>
            </span>
            <span className="faint">{small}</span>
            <button type="button" className="link" onClick={() => onTakeOut(id, name)}>
              Take out again
              <span className="heard">
                : {name}, {small}
              </span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
