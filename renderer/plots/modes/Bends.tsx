import { useMemo } from 'react';
import { bendMarks, bendsHeight, type AlongArrow, type Bend } from './marks.ts';
import './modes.css';

/** How the free arrow bends, over the arrow's own length: computed lines run, what stands still is an open dot. */
export function Bends({ bends, along }: { bends: readonly Bend[]; along: AlongArrow }) {
  const marks = useMemo(() => bendMarks(bends, along), [bends, along]);
  const said = bends.map((bend) => `${bend.name}, still at ${bend.nodeTexts.join(', ')} from the throat.`).join(' ');
  return (
    <svg className="bends" width={along.width} height={bendsHeight(bends.length)} role="img" aria-label={said}>
      {marks.map((mark) => (
        <g key={mark.y}>
          <path className="bend-wash" d={mark.wash} />
          <path className="construction" d={mark.mirror} />
          <path className="curve" d={mark.curve} />
        </g>
      ))}
      {marks.map((mark) => (
        <g key={mark.y}>
          {mark.nodes.map((node) => (
            <g key={node.x}>
              <circle className="bend-node" cx={node.x} cy={mark.y} r="3.5" />
              <text className="tick halo" x={node.label.x} y={node.label.y} textAnchor={node.label.anchor}>
                {node.label.text}
              </text>
            </g>
          ))}
          {mark.name !== null && (
            <text className="name halo" x={mark.name.x} y={mark.name.y} textAnchor={mark.name.anchor}>
              {mark.name.text}
            </text>
          )}
        </g>
      ))}
    </svg>
  );
}
