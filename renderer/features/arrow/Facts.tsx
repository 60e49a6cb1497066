import type { ReactNode } from 'react';
import { Fraction } from '../../design/index.ts';
import type { Fact } from './derive.ts';

/** Figures that follow from the ones entered, in a row that wraps: each with its name, none of them an input. */
export function Facts({ facts, children }: { facts: readonly Fact[]; children?: ReactNode }) {
  if (facts.length === 0 && children === undefined) return null;
  return (
    <div className="facts">
      {children}
      <dl>
        {facts.map((fact) => (
          <div key={fact.name}>
            <dt>{fact.name}</dt>
            <dd>
              <Fraction>{fact.text}</Fraction>
            </dd>
            {fact.note !== null && (
              <dd className="fact-note">
                <Fraction>{fact.note}</Fraction>
              </dd>
            )}
          </div>
        ))}
      </dl>
    </div>
  );
}
