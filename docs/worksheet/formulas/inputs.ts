import type { AnyFormula, InputDeclaration } from '../../../src/formula/index.js';
import { exampleOf, preferredUnit, type UnitSystem, units } from '../../../src/quantity/index.js';
import { isKind } from '../../../src/quantity/units/index.js';
import { chosen } from '../../../src/report/options.js';
import { shownValue } from '../../../src/report/shown-value.js';
import { boxesOf } from '../case/amount-text.js';
import type { Control, Must, RowsControl } from '../case/control.js';
import { asText, chosenOf, yesOrNo } from '../case/controls.js';
import { usualText } from '../case/usual.js';

/** What has been entered for a formula, by the names of its inputs. */
export type Given = Readonly<Record<string, unknown>>;

type Declared = InputDeclaration & { readonly kind: string };

/** The controls of the inputs of a formula. */
export function inputControls(formula: AnyFormula, given: Given, system: UnitSystem): Control[] {
  return Object.entries(formula.inputs as Readonly<Record<string, Declared>>).map(([name, declared]) =>
    inputControl(name, declared, Object.hasOwn(given, name) ? given[name] : undefined, system),
  );
}

/** The name of an input as a label: "Hoop stress". */
export function inputLabel(formula: AnyFormula, name: string): string | undefined {
  const inputs = formula.inputs as Readonly<Record<string, Declared>>;
  return Object.hasOwn(inputs, name) ? capital(inputs[name]?.name ?? name) : undefined;
}

function inputControl(name: string, declared: Declared, value: unknown, system: UnitSystem): Control {
  const { symbol, kind, choices, columns, default: fallback, optional } = declared;
  const must: Must = fallback !== undefined || optional === true ? 'optional' : 'required';
  const otherwise =
    fallback === undefined
      ? ''
      : `; ${shownValue(kind, name, fallback, chosen({ units: system }), false, declared.name)} unless given`;
  const leaf = {
    path: name,
    label: capital(declared.name),
    says: `${symbol} in the equation${otherwise}`,
    must,
    keepsPlace: false,
    example: '',
  };
  if (kind === 'list') return rowsControl(leaf, columns ?? {}, value, system);
  if (kind === 'choice')
    return {
      sort: 'choice',
      ...leaf,
      options: (choices ?? []).map((words) => ({ value: words, words })),
      text: asText(value),
    };
  if (kind === 'flag') return { sort: 'choice', ...leaf, ...chosenOf(yesOrNo, value) };
  if (!isKind(kind)) return { sort: 'number', ...leaf, text: asText(value), usual: '' };
  const { number, unit } = boxesOf(kind, asText(value));
  const shown = unit === '' ? preferredUnit(kind, name, { system }) : unit;
  const span = declared.usual ?? declared.sample;
  const usual = span === undefined ? '' : usualText({ kind, usual: span }, shown);
  return {
    sort: 'amount',
    ...leaf,
    example: exampleOf(kind).replaceAll('"', ''),
    kind,
    number,
    unit,
    units: Object.keys(units[kind]),
    usual,
  };
}

/** The rows of a list, a bare one too: its one column is called value. */
function rowsControl(
  leaf: Pick<RowsControl, 'path' | 'label' | 'says' | 'must'>,
  columns: Readonly<Record<string, string>>,
  value: unknown,
  system: UnitSystem,
): RowsControl {
  const held: readonly unknown[] = Array.isArray(value) ? value : [];
  const cells = (row: unknown, at: string): Control[] =>
    Object.entries(columns).map(([column, kind]) => {
      const cell =
        typeof row === 'object' && row !== null ? (row as Given)[column] : column === 'value' ? row : undefined;
      const declared = { symbol: column, name: spaced(column), kind } as Declared;
      return { ...inputControl(`${at}.${column}`, declared, cell, system), says: '' } as Control;
    });
  const { path, label, says, must } = leaf;
  return {
    sort: 'rows',
    path,
    label,
    says,
    must,
    held,
    rows: held.map((row, index) => cells(row, `${path}[${index}]`)),
    start: startOf(columns, held.at(-1)),
  };
}

function startOf(columns: Readonly<Record<string, string>>, last: unknown): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(columns).flatMap(([column, kind]) => {
      if (!isKind(kind) || typeof last !== 'object' || last === null) return [];
      const { unit } = boxesOf(kind, asText((last as Given)[column]));
      return unit === '' ? [] : [[column, ` ${unit}`]];
    }),
  );
}

function capital(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}

/** `wallThickness` as "wall thickness". */
function spaced(name: string): string {
  return name.replaceAll(/(?<=[a-z])(?=[A-Z])/gu, ' ').toLowerCase();
}
