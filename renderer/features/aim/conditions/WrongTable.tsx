import { useMemo } from 'react';
import { factorOf, unitOf } from '../../../../core/units/index.ts';
import { useUnits } from '../../../state/useBench.ts';
import type { Given } from './given.ts';
import { offOf, wrongRows } from './lands.ts';
import { bandText, far, heightFigure, points } from './words.ts';

const usual = [20, 30, 40, 50, 60, 70];

/** What a distance that is out by so much costs, at the distances that are shot: who knows it, who guesses it. */
export function WrongTable({ given }: { given: Given }) {
  const units = useUnits();
  const per = factorOf('distance', units);
  const distances = useMemo(() => {
    const all = usual.map((figure) => figure * per);
    const there = all.some((distance) => Math.abs(distance - given.distance) < 0.01);
    return there ? all : [...all, given.distance].toSorted((a, b) => a - b);
  }, [per, given.distance]);
  const rows = wrongRows(given, distances);
  const off = far(offOf(given), units);
  const height = unitOf('drop', units);
  return (
    <section className="cond-block">
      <table className="table cond-table">
        <caption className="plate">A distance {off} out, by distance</caption>
        <thead>
          <tr>
            <th scope="col">distance</th>
            <th scope="col">farther: low, {height}</th>
            <th scope="col">band</th>
            <th scope="col">nearer: high, {height}</th>
            <th scope="col">points, known</th>
            <th scope="col">guessed</th>
            <th scope="col">{off} short</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ distance, guess, known, guessing, short }) => (
            <tr key={distance} className={distance === given.distance ? 'answer' : undefined}>
              <th scope="row">{far(distance, units)}</th>
              <td>{guess === null ? '–' : heightFigure(guess.farther.value, units)}</td>
              <td className="aim-band">{guess === null ? '' : bandText(guess.farther, 'up', units)}</td>
              <td>{guess === null ? '–' : heightFigure(guess.nearer.value, units)}</td>
              <td>{points(known)}</td>
              <td>{guess === null ? '–' : points(guessing)}</td>
              <td>{guess === null ? '–' : points(short)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="note">
        On the {given.face.name} face at every distance. Known: a marked round. Guessed: an unmarked one, 95 of 100 guesses within{' '}
        {off}.
      </p>
    </section>
  );
}
