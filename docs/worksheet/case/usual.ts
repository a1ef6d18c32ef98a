import type { AmountField } from '../../../src/repair/case/table-field.js';
import { numberIn } from '../../../src/report/units.js';

/** "20 mm to 1700 mm": where the values of real jobs lie; empty where nothing is known of it. */
export function usualText({ kind, usual }: AmountField, symbol: string): string {
  if (usual === undefined) return '';
  const [least, most] = usual.map((value) =>
    rounded(kind === 'number' || kind === 'count' ? value : numberIn(kind, value, symbol)),
  );
  const unit = symbol === '' || symbol === '1' ? '' : ` ${symbol}`;
  return `${least}${unit} to ${most}${unit}`;
}

function rounded(value: number): string {
  const short = Number(value.toPrecision(3));
  return short !== 0 && Math.abs(short) < 1e-3 ? short.toExponential() : String(short);
}
