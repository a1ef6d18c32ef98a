import { readFileSync } from 'node:fs';
import { formulas as registered } from '../../src/registry/index.js';
import { burstPredictions } from '../datasets/burst-tests.js';
import { readEnginesSummary } from '../engines/summary.js';
import { readHandCheckSummary } from '../hand-check/summary.js';
import { accuracyTable } from '../oracles/accuracy.js';
import { readCases, runCases } from '../runner/run.js';
import { bibliography } from './bibliography.js';
import { calledByTheJob } from './called.js';
import { formulaEntry } from './formula-entry.js';
import { bibtex, identity, machine } from './identity.js';
import { ancestors, type Comparison, linesOf } from './lines.js';
import { ownRoutes } from './own-routes.js';
import { derivationsOf, perturbationReport } from './perturbation.js';
import { sortedProperties } from './properties.js';
import type { AccuracyRow, Report } from './shape.js';
import { classMeaning, coverage, errata, exceptions, summary, tolerances } from './summary.js';
import { burstReport, dewPointReport, lookUpRows, pipeSizeReport, ruleRows, unitRows } from './tables.js';
import { wholeDesignsReport } from './whole-designs.js';

/** Rooms in the order of the registry, formulas by id: the order of a module's exports differs between loaders. */
const roomOf = (id: string): string => id.split('/')[0] ?? '';
const rooms = [...new Set(registered.map(({ id }) => roomOf(id)))];
const formulas = [...registered].sort(
  (a, b) => rooms.indexOf(roomOf(a.id)) - rooms.indexOf(roomOf(b.id)) || (a.id < b.id ? -1 : 1),
);

/** Draws of each formula for the accuracy table: few, so that a fresh report takes seconds. */
const DRAWS = 60;

function accuracyRows(): AccuracyRow[] {
  return accuracyTable(formulas, DRAWS).map(({ id, draws, maxUlp, rmsUlp, worst }) => ({
    id,
    draws,
    maxUlp: Number(maxUlp.toPrecision(3)),
    rmsUlp: Number(rmsUlp.toPrecision(3)),
    condition: Number(worst.condition.toPrecision(3)),
    worst: Object.entries(worst.bySymbol)
      .map(([symbol, value]) => `${symbol} = ${typeof value === 'number' ? value : String(value)}`)
      .join(', '),
  }));
}

/** Which formula each method of the burst tests is. */
const BURST_FORMULAS: Readonly<Record<string, string>> = {
  'original B31G': 'pipe/b31g-original',
  'modified B31G': 'pipe/modified-b31g',
  'DNV-RP-F101': 'pipe/dnv-single-defect',
};

/** What is compared without a case record: datasets, and the outputs of another program that agree to the last digits. */
function comparisons(): Comparison[] {
  const methods = [...new Set(burstPredictions().map(({ method }) => method))];
  const burst = methods.map(
    (method): Comparison => ({
      sort: 'dataset',
      formula: BURST_FORMULAS[method] ?? method,
      source: 'burst tests',
      by: 'burst tests',
    }),
  );
  const dew = ['site/dew-point', 'site/frost-point', 'site/condensation-point'].map(
    (formula): Comparison => ({
      sort: 'dataset',
      formula,
      source: 'building-physics-dew-table',
      by: 'dew-point table',
    }),
  );
  const program = ['site/saturation-pressure-ashrae', 'site/moist-air-from-wet-bulb'].map(
    (formula): Comparison => ({ sort: 'program', formula, source: 'psychrolib', by: 'psychrolib' }),
  );
  return [...burst, ...dew, ...program];
}

/** Everything that the report says, as plain data. */
export function collect(): Report {
  const readings = readCases();
  const problems = readings.flatMap(({ file, problem }) => (problem === undefined ? [] : [`${file}: ${problem}`]));
  if (problems.length > 0) throw new Error(problems.join('\n'));
  const results = runCases(readings);
  const compared = comparisons();
  const derivations = derivationsOf();
  const routes = ownRoutes();
  const called = calledByTheJob();
  const entries = formulas.map((formula) =>
    formulaEntry(formula, results, {
      lines: linesOf(formula, results, compared, derivations, routes),
      routes: routes.filter((route) => route.formula === formula.id).map(({ shows, how }) => ({ shows, how })),
      called: called.has(formula.id),
    }),
  );
  const about = identity();
  return {
    volatile: machine(),
    identity: about,
    summary: summary(results, entries),
    classes: classMeaning,
    exceptions: exceptions(results),
    tolerances: tolerances(results),
    errata: errata(results),
    lookUps: lookUpRows(),
    ancestors,
    coverage: coverage(entries, results),
    formulas: entries,
    accuracy: accuracyRows(),
    engines: readEnginesSummary(),
    handChecks: readHandCheckSummary(),
    perturbation: perturbationReport(),
    wholeDesigns: wholeDesignsReport(),
    units: unitRows(),
    burst: burstReport(),
    dewPoint: dewPointReport(),
    pipeSizes: pipeSizeReport(),
    rules: ruleRows(),
    properties: sortedProperties(),
    knownProblems: JSON.parse(readFileSync(new URL('../known-problems.json', import.meta.url), 'utf8')),
    bibliography: bibliography(formulas, results),
    bibtex: bibtex(about),
  };
}
