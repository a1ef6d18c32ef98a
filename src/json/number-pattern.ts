/** A text of digits as it is written in decimals, `273.15`. */
type Decimal = string;

/** Where a number of a text lies: below the limit, or at most at it. */
export interface Upper {
  readonly limit: Decimal;
  readonly included: boolean;
}

/**
 * A pattern for decimal numbers without sign, zeros in front allowed, below a limit or at most at it. What JSON Schema can
 * say of a number that stands in a text it has to say digit by digit.
 */
export function decimalPattern(upper: Upper | undefined): string {
  if (upper === undefined) return '(?:\\d+\\.?\\d*|\\.\\d+)';
  const [whole = '0', fraction = ''] = upper.limit.split('.');
  const digits = whole.replace(/^0+(?=\d)/u, '');
  const rest = '(?:\\.\\d*)?';
  const options = digits === '0' ? [] : [`0*\\d{0,${digits.length - 1}}${rest}`];
  [...digits].forEach((digit, place) => {
    const lower = lowerDigit(digit, place === 0 && digits.length > 1 ? 1 : 0);
    if (lower !== undefined)
      options.push(`0*${digits.slice(0, place)}${lower}\\d{${digits.length - 1 - place}}${rest}`);
  });
  const start = `0*${digits === '0' ? '' : digits}`;
  const point = '\\.';
  [...fraction].forEach((digit, place) => {
    const lower = lowerDigit(digit, 0);
    if (lower !== undefined) options.push(`${start}${point}${fraction.slice(0, place)}${lower}\\d*`);
    options.push(`${start}(?:${point}${fraction.slice(0, place)})?`);
  });
  if (upper.included) options.push(`${start}(?:${point}${fraction}0*)?`);
  if (digits === '0' && fraction === '') options.push('0*(?:\\.0*)?');
  // At least one digit, wherever it stands.
  return `(?=\\.?\\d)(?:${[...new Set(options)].join('|')})`;
}

/** The digits below one, from the least that may stand there. */
function lowerDigit(digit: string, least: number): string | undefined {
  const most = Number(digit) - 1;
  return most < least ? undefined : `[${least}-${most}]`;
}
