import { useState } from 'react';
import { sourceWords } from '../../core/findings/parts.ts';
import type { Why } from '../../core/findings/finding.ts';
import { Dialog } from './Dialog.tsx';
import { Fraction } from './Fraction.tsx';

/** The word "Why", and the page that opens behind it: rule, symbols with today's values, source. */
export function WhyLink({ why, about }: { why: Why; about: string }) {
  const [open, setOpen] = useState(false);
  return (
    <>
      <button type="button" className="link" onClick={() => setOpen(true)}>
        Why<span className="heard">: {about}</span>
      </button>
      {open && (
        <Dialog title={why.title} onClose={() => setOpen(false)}>
          {why.text.split('\n').map((line) => (
            <p key={line}>
              <Fraction>{line}</Fraction>
            </p>
          ))}
          {why.equation !== null && <p className="equation">{why.equation}</p>}
          {why.symbols.length > 0 && (
            <table className="symbols">
              <tbody>
                {why.symbols.map(({ symbol, name, value }) => (
                  <tr key={symbol + name}>
                    {symbol === '' ? <td /> : <th scope="row">{symbol}</th>}
                    <td>{name}</td>
                    <td className="value">
                      <Fraction>{value}</Fraction>
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          )}
          <p className="source">Source: {sourceWords(why.source)}</p>
        </Dialog>
      )}
    </>
  );
}
