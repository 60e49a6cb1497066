import { Fraction } from '../../design/index.ts';

/** A line under a plot. No line of it ends between a figure and its unit. */
export function Note({ children }: { children: string }) {
  return (
    <p className="note">
      <Fraction>{children.replace(/(\d) (?=[^\d\s])/g, '$1\u00a0')}</Fraction>
    </p>
  );
}
