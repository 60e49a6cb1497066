import { useState } from 'react';
import { Fraction } from '../../design/index.ts';
import { Steps } from '../../design/Steps.tsx';
import { NewSetup } from '../frame/NewSetup.tsx';

/** One set-up only: what a second one would show here, in pencil, and the way to it. */
export function EmptyCompare({ name }: { name: string }) {
  const [adding, setAdding] = useState(false);
  return (
    <>
      <div className="head">
        <h1>
          <Fraction>{`“${name}” stands alone: a second set-up is needed`}</Fraction>
        </h1>
        <p>Two set-ups stand side by side here, with what is chance said to be chance.</p>
      </div>
      <div className="body">
        <svg
          className="in-pencil"
          width="600"
          height="146"
          role="img"
          aria-label="Two circles and a rising curve in pencil: the groups of two set-ups, and one arrow’s height over the other’s."
        >
          <circle cx="82" cy="76" r="58" />
          <circle className="dotted" cx="176" cy="64" r="40" />
          <path d="M82 71v10M77 76h10M176 59v10M171 64h10M0 140H250" />
          <path d="M330 128H520M330 140H520" />
          <path className="dotted" d="M330 126C400 120 460 80 520 30" />
          <text className="name" x="530" y="34">
            the second
          </text>
          <text className="name" x="530" y="132">
            the first
          </text>
        </svg>
        <Steps
          lines={[
            'Add a set-up: the same archer and bow with a copy of these arrows.',
            'Vary one thing: the point, the length, the brace height.',
            'Shoot a group with each at one distance; bare shafts tell most.',
          ]}
        />
        <div className="acts">
          <button type="button" className="btn go" data-field="compare.add" onClick={() => setAdding(true)}>
            Add a set-up
          </button>
        </div>
        {adding && <NewSetup onClose={() => setAdding(false)} />}
      </div>
    </>
  );
}
