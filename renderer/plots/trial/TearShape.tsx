interface Props {
  /** Where the point and the nock went through [px]. */
  from: { readonly x: number; readonly y: number };
  to: { readonly x: number; readonly y: number };
  /** Half the shaft's thickness [px]. */
  radius: number;
  bare: boolean;
  name: string;
}

/** Three slits a vane long, as the fletching leaves them [px]. */
const SLIT = 9;
const slits = [-90, 30, 150].map((degrees) => (degrees * Math.PI) / 180);

/** A tear as it looks in the paper: the hole of the point, the slot the shaft tore, and where the fletching went through. */
export function TearShape({ from, to, radius, bare, name }: Props) {
  return (
    <g className={bare ? 'tear bare' : 'tear'}>
      <title>{name}</title>
      <path className="slot" d={`M${from.x} ${from.y}L${to.x} ${to.y}`} strokeWidth={Math.max(2, radius)} />
      <circle className="hole" cx={from.x} cy={from.y} r={Math.max(2.5, radius)} />
      {!bare &&
        slits.map((angle) => (
          <path
            key={angle}
            className="slit"
            d={`M${to.x} ${to.y}L${to.x + SLIT * Math.cos(angle)} ${to.y + SLIT * Math.sin(angle)}`}
          />
        ))}
      <circle className="nock-end" cx={to.x} cy={to.y} r={Math.max(2.5, radius)} />
    </g>
  );
}
