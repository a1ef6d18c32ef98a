import { gzipSync } from 'node:zlib';
import { budgets } from './budgets.js';
import { built, exportOf } from './built.js';
import type { Bundle, Bundler, Page } from './bundle.js';
import { byEsbuild } from './bundle-by-esbuild.js';
import { byRollup } from './bundle-by-rollup.js';
import type { Row } from './row.js';

const bundlers: Readonly<Record<string, Bundler>> = { esbuild: byEsbuild, rollup: byRollup };

/** The bundles of one page, by bundler. */
type Bundles = Readonly<Record<string, Bundle>>;

/** What a page has to load: the job alone, the root entry, each formula alone. The larger bundle of each counts. */
export async function sizeRows(say: (what: string) => void): Promise<Row[]> {
  const formulas = formulaPages();
  // The root comes second: what rollup has read in it shortens its way to the formulas, but not to the job.
  const pages = [{ entry: '.', name: 'designRepair' }, { entry: '.', name: '*' }, ...formulas];
  const bundled: [string, Bundle[]][] = [];
  for (const [name, bundle] of Object.entries(bundlers)) {
    say(name);
    bundled.push([name, await bundle(pages)]);
  }
  const of = (index: number): Bundles => Object.fromEntries(bundled.map(([name, all]) => [name, all[index] as Bundle]));
  return [
    sizeRow('designRepair alone', of(0), budgets.size.designRepair),
    sizeRow('all of the root entry', of(1), budgets.size.root),
    packagesRow(of(1)),
    ...formulaRows(formulas.map(({ name }, index) => sizeRow(`${name} alone`, of(index + 2), budgets.size.formula))),
  ];
}

function sizeRow(what: string, bundles: Bundles, budget: number): Row {
  const sizes = Object.entries(bundles).map(
    ([name, { minified }]) => [name, gzipSync(minified).length / 1000] as const,
  );
  const note = sizes.map(([name, size]) => `${name} ${size.toFixed(2)}`).join(', ');
  return { what, measured: Math.max(...sizes.map(([, size]) => size)), unit: 'kB', budget, note };
}

function packagesRow(bundles: Bundles): Row {
  const packages = new Set(Object.values(bundles).flatMap((bundle) => bundle.packages));
  const note = [...packages].join(', ');
  return { what: 'other packages in it', measured: packages.size, unit: 'packages', budget: 0, note };
}

/** The median of all formulas, and by its name each one above the budget. */
function formulaRows(rows: readonly Row[]): Row[] {
  const sorted = [...rows].sort((a, b) => a.measured - b.measured);
  const median = sorted[Math.floor(sorted.length / 2)] as Row;
  const above = sorted.filter(({ measured }) => measured > budgets.size.formula);
  const note = `${median.what}; ${above.length} of ${sorted.length} formulas are above`;
  return [{ ...median, what: 'a formula alone, median', note }, ...above];
}

/** Each formula by the name that a page would import. */
function formulaPages(): Page[] {
  return built.formulas.formulas.map(({ id }) => exportOf(id));
}
