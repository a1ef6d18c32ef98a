import Qty from 'js-quantities';
import * as mathjs from 'mathjs';
import * as SafeUnits from 'safe-units';
import { built } from './built.js';
import { drawRows } from './drawn-rows.js';
import { leastInFreshProcesses, type Times } from './fresh-process.js';
import { leastTimes, type Work } from './interleaved.js';
import { guardedLoop } from './loops.js';
import type { Row } from './row.js';

const ID = 'pipe/hoop-stress';
const SECONDS = 1;

const compiled = mathjs.compile('P * D / (2 * t)');
const scope = { P: mathjs.unit(1.6, 'MPa'), D: mathjs.unit(219.1, 'mm'), t: mathjs.unit(8.18, 'mm') };
const [qtyP, qtyD, qtyT] = [Qty(1.6, 'MPa'), Qty(219.1, 'mm'), Qty(8.18, 'mm')];
const safe = {
  P: SafeUnits.Measure.of(1.6e6, SafeUnits.pascals),
  D: SafeUnits.Measure.of(0.2191, SafeUnits.meters),
  t: SafeUnits.Measure.of(0.00818, SafeUnits.meters),
};

const peers: Readonly<Record<string, Work>> = {
  'mathjs, compiled, with units': () => compiled.evaluate(scope).toNumber('MPa'),
  'js-quantities': () => qtyP.mul(qtyD).div(qtyT.mul(2)).to('MPa').scalar,
  'safe-units': () => safe.P.times(safe.D).over(safe.t.scale(2)).value,
};

/** What units cost where they are objects: the same formula in other libraries against ours. */
export function peerRows(): Row[] {
  const { ours = Number.NaN, ...theirs } = leastInFreshProcesses('peers', ID, 2);
  return Object.entries(theirs).map(([name, time]) => {
    return { what: `the hoop stress in ${name}`, measured: time / ours, unit: 'x', note: 'for comparison' };
  });
}

/** Times of one call of a formula, ours and theirs [ns]. */
export function peerTimes(id: string): Times {
  const formula = built.formulas.formulaById(id);
  if (formula === undefined) throw new Error(`there is no formula ${id}`);
  const rows = drawRows(formula);
  const [ours = Number.NaN, ...times] = leastTimes([guardedLoop(formula, rows), ...Object.values(peers)], SECONDS);
  const theirs = Object.keys(peers).map((name, index) => [name, times[index] as number]);
  return { ours: ours / rows.length, ...Object.fromEntries(theirs) };
}
