import type { ClaimedStep } from '../evaluate/check/index.js';
import { UsageError } from './usage-error.js';

/** What a line may be: the number of a step, a mark or a gap, the result with its unit. */
const LINE = /^(?<step>\d+\.\d+)\s*[\s,;=]\s*"?(?<claimed>[^"]*[^"\s])"?$/u;

/**
 * The claims of a sheet, one a line: `4.2  38.4 MPa`. Empty lines and those that begin with # say nothing.
 *
 * @throws UsageError that names the line
 */
export function readClaims(text: string): ClaimedStep[] {
  const claims = text.split(/\r?\n/u).flatMap((line, index) => {
    const said = line.trim();
    if (said === '' || said.startsWith('#')) return [];
    const { step, claimed } = LINE.exec(said)?.groups ?? {};
    if (step === undefined || claimed === undefined)
      throw new UsageError(
        `line ${index + 1} of the claims is "${said}"; a line is the number of a step and its result, such as 4.2  38.4 MPa`,
      );
    return [{ step, claimed }];
  });
  if (claims.length === 0) throw new UsageError('the file of --claims holds no claim; a line is such as 4.2  38.4 MPa');
  return claims;
}
