import type { ReactNode } from 'react';

export interface Fact {
  readonly name: string;
  readonly value: ReactNode;
  /** The band, in small. */
  readonly band?: string;
  readonly strong?: boolean;
}

/** A few answers under one another: name, figure, and its band under it. */
export function Facts({ facts }: { facts: readonly Fact[] }) {
  return (
    <dl className="cond-facts">
      {facts.map(({ name, value, band = '', strong = false }) => (
        <div key={name} className={strong ? 'answer' : undefined}>
          <dt>{name}</dt>
          <dd>
            {value}
            {band !== '' && <span className="cond-band">{band}</span>}
          </dd>
        </div>
      ))}
    </dl>
  );
}
