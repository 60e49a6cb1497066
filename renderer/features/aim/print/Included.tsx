import { Choice } from '../../../design/index.ts';
import { stripWidths } from '../../../print/index.ts';
import type { PaperKind } from './makers.ts';
import { chooseInPrint, usePrintChoice } from './store.ts';
import { Tick } from './Tick.tsx';

/** What is on a paper of a kind. */
export function Included({ kind, columns }: { kind: PaperKind; columns: readonly string[] }) {
  const { strip, card, points } = usePrintChoice();
  if (kind === 'strip')
    return (
      <fieldset className="print-included">
        <legend>on the sheet</legend>
        {stripWidths.map(({ width }) => (
          <Tick
            key={width}
            name={`strip ${width} mm wide`}
            on={strip.widths.includes(width)}
            onTurn={(on) =>
              chooseInPrint({
                strip: { ...strip, widths: on ? [...strip.widths, width] : strip.widths.filter((one) => one !== width) },
              })
            }
          />
        ))}
        <Tick name="the marks in a list" on={strip.list} onTurn={(list) => chooseInPrint({ strip: { ...strip, list } })} />
      </fieldset>
    );
  const chosen = kind === 'card' ? card : points;
  const copies = (next: 'one' | 'full') =>
    kind === 'card' ? chooseInPrint({ card: { ...card, copies: next } }) : chooseInPrint({ points: { ...points, copies: next } });
  return (
    <>
      <fieldset className="print-included" hidden={kind === 'card' && columns.length === 0}>
        <legend>on the card</legend>
        {kind === 'card' &&
          columns.slice(1).map((name) => (
            <Tick
              key={name}
              name={name}
              on={!card.without.includes(name)}
              onTurn={(on) =>
                chooseInPrint({
                  card: { ...card, without: on ? card.without.filter((one) => one !== name) : [...card.without, name] },
                })
              }
            />
          ))}
        {kind === 'points' && (
          <>
            <Tick
              name="pictures"
              on={points.pictures}
              onTurn={(pictures) => chooseInPrint({ points: { ...points, pictures } })}
            />
            <Tick
              name="markers on the ground"
              on={points.ground}
              onTurn={(ground) => chooseInPrint({ points: { ...points, ground } })}
            />
          </>
        )}
      </fieldset>
      <Choice<'one' | 'full'>
        name="copies"
        value={chosen.copies}
        options={[
          { value: 'one', text: 'one' },
          { value: 'full', text: 'a full sheet' },
        ]}
        onKeep={copies}
      />
    </>
  );
}
