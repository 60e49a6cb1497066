interface Props {
  /** Where the point and the nock went through [px]. */
  from: { readonly x: number; readonly y: number };
  to: { readonly x: number; readonly y: number };
  /** Half the shaft's thickness [px]. */
  radius: number;
  bare: boolean;
  name: string;
}

/** Three slits, as the fletching leaves them: so far beyond the shaft [px]. */
const SLIT = 6;
/** However near it is drawn, a shaft's hole stays a mark [px]. */
const LARGEST = 6;
const slits = [-90, 30, 150].map((degrees) => (degrees * Math.PI) / 180);

/** A tear as it looks in the paper: the hole of the point, the slot the shaft tore, and where the fletching went through. */
export function TearShape({ from, to, radius, bare, name }: Props) {
  const hole = Math.max(2.5, Math.min(LARGEST, radius));
  const slit = hole + SLIT;
  return (
    <g className={bare ? 'tear bare' : 'tear'}>
      <title>{name}</title>
      <path className="slot" d={`M${from.x} ${from.y}L${to.x} ${to.y}`} />
      <circle className="hole" cx={from.x} cy={from.y} r={hole} />
      {!bare &&
        slits.map((angle) => (
          <path
            key={angle}
            className="slit"
            d={`M${to.x} ${to.y}L${to.x + slit * Math.cos(angle)} ${to.y + slit * Math.sin(angle)}`}
          />
        ))}
      <circle className="nock-end" cx={to.x} cy={to.y} r={hole} />
    </g>
  );
}
