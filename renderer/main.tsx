import { createRoot } from 'react-dom/client';
import './design/tokens.css';
import './design/base.css';
import './design/controls.css';
import './design/tables.css';
import './design/sheet.css';
import './design/lines.css';
import { Bench } from './features/frame/Bench.tsx';
import { connect } from './state/connect.ts';
import { createBench } from './state/bench.ts';
import { BenchContext } from './state/useBench.ts';
import { followTheme } from './state/theme.ts';

const bench = createBench(connect());
followTheme(bench);
void bench.getState().open('own');

const place = document.querySelector('#bench');
if (place === null) throw new Error('index.html has no place for the bench');
createRoot(place).render(
  <BenchContext value={bench}>
    <Bench />
  </BenchContext>,
);
