import { useState } from 'react';
import { fileName } from '../../../../core/files.ts';
import type { Bundle } from '../../../../core/model/bundle.ts';
import { Choice, Dialog } from '../../../design/index.ts';
import { Drawn, PaperOut, type PageName, svgFile } from '../../../print/index.ts';
import { useBench, useBenchApi } from '../../../state/useBench.ts';
import { CheckLineField } from './CheckLineField.tsx';
import { Included } from './Included.tsx';
import { kindsOf, type Makers, type PaperKind, paperNames, type Span } from './makers.ts';
import { SpanFields } from './SpanFields.tsx';
import { chooseInPrint, chooseSpan, spanKey, usePrintChoice } from './store.ts';
import { useSheet } from './useSheet.ts';
import './print.css';

interface Props {
  bundle: Bundle;
  makers: Makers;
  first: PaperKind;
  onClose(): void;
}

const nowhere: Span = { from: 10, to: 50, step: 10 };

/** A paper as it will come out of the printer, with what can be chosen for it; while it is open, this is what the page prints as. */
export function PrintDesk({ bundle, makers, first, onClose }: Props) {
  const bench = useBenchApi();
  const shell = useBench((state) => state.info?.shell);
  const demo = useBench((state) => state.book) === 'demo' ? 'demo' : '';
  const { page, spans } = usePrintChoice();
  const [kind, setKind] = useState(first);
  const { id, name } = bundle.setup;
  const span = spans[spanKey(id, kind)] ?? makers[kind]?.usual ?? nowhere;
  const { sheet, columns, working } = useSheet(bundle, makers, kind, span);
  const ready = sheet?.ok === true && !working ? sheet.value : null;
  const kinds = kindsOf(makers);
  const called = (ending: 'svg' | 'pdf') => fileName([demo, name, paperNames[kind]], ending);
  return (
    <Dialog
      title={`Print: ${paperNames[kind]}`}
      size="wide"
      onClose={onClose}
      foot={
        <>
          <button
            type="button"
            className="btn go"
            disabled={ready === null}
            onClick={() => void bench.getState().print({ name: called('pdf') })}
          >
            {shell === 'electron' ? 'Save as PDF' : 'Print'}
          </button>
          <button
            type="button"
            className="btn"
            disabled={ready === null}
            onClick={() =>
              ready !== null && void bench.getState().save({ name: called('svg'), kind: 'svg', data: svgFile(ready) })
            }
          >
            Save as SVG
          </button>
          <button type="button" className="btn" onClick={onClose}>
            Close
          </button>
        </>
      }
    >
      <div className="print-desk">
        <div className="print-choices">
          {kinds.length > 1 && (
            <Choice<PaperKind>
              name="what"
              value={kind}
              options={kinds.map((value) => ({ value, text: paperNames[value] }))}
              onKeep={setKind}
            />
          )}
          <Choice<PageName>
            name="paper"
            value={page}
            options={[
              { value: 'A4', text: 'A4' },
              { value: 'letter', text: 'US letter' },
            ]}
            onKeep={(next) => chooseInPrint({ page: next })}
          />
          <SpanFields key={kind} span={span} onChoose={(next) => chooseSpan(id, kind, next)} />
          <Included kind={kind} columns={columns} />
          <CheckLineField />
        </div>
        {/* It scrolls, so that it is reached by keyboard too. */}
        {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex */}
        <div className={working ? 'print-preview old' : 'print-preview'} role="region" aria-label="Preview" tabIndex={0}>
          {sheet?.ok === false && <p className="wrong">{sheet.problem.sentence}</p>}
          {sheet?.ok === true && <Drawn node={sheet.value.svg} />}
        </div>
      </div>
      {ready !== null && <PaperOut sheet={ready} page={page} />}
    </Dialog>
  );
}
