import { describe, expect, it } from 'vitest';
import { asksFor, designOf, idsOf, laminateOf, linesOf, planOf, verdictOf } from './answers.js';
import { type CaseFile, emptied, leak, loss, proposed, quietLoss, withPaths } from './cases.js';

/** Issue 9, the hazards that no item names: those whose acceptance is a question, a number or a verdict. */

/** Whether a plan names a length in one of its steps, from one step up to another. */
function namesLength(file: CaseFile, from: string, to: string, length: number): boolean {
  const plan = planOf(file);
  const ids = idsOf(plan);
  expect(ids).toEqual(expect.arrayContaining([from, to]));
  const amounts = plan.steps
    .slice(ids.indexOf(from), ids.indexOf(to) + 1)
    .flatMap(linesOf)
    .flatMap(({ amounts = [] }) => amounts);
  return amounts.some(({ kind, value }) => kind === 'length' && Math.abs(value - length) < 1e-9);
}

describe('a case', () => {
  it.each([
    ['whether the design pressure holds the surge', loss, proposed.surge],
    ['whether cracks were looked for', loss, proposed.cracking],
    ['how far the nearest weld, branch or support is', loss, proposed.nearestAttachment],
    ['how warm the sample of the glass transition was cured', loss, proposed.transitionCure],
    ['what fibre lies on the steel', loss, proposed.fibre],
    ['how thick the filler may be poured at once', leak, proposed.greatestLift],
    ['the lowest rating within the length under test', loss, proposed.lowestRating],
  ])('is asked %s', (_, file, field) => {
    expect(asksFor(withPaths(file, { [field]: undefined }), field)).toBe(true);
  });

  it('with the fields of a first screening gets its numbers, the verdict `needs input`, and who has the rest', () => {
    const later = [proposed.surge, proposed.nearestAttachment, proposed.transitionCure, proposed.lowestRating];
    const screening = withPaths(loss, Object.fromEntries(later.map((field) => [field, undefined])));
    const { verdict, laminate, missing } = designOf(screening);
    expect([verdict, laminate === undefined]).toEqual(['needs input', false]);
    for (const field of later) expect(missing.find((each) => each.field === field)?.askWhom ?? '').not.toBe('');
  });
});

describe('sour service', () => {
  const sour = {
    'service.contents': 'wet gas with hydrogen sulphide',
    'service.phase': 'gas',
    'service.hazards': ['flammable', 'toxic', 'corrosive'],
    ...emptied,
  };

  it('under a wall loss needs a crack test', () => {
    const environment = { [proposed.cracking]: { environment: 'sour' } };
    expect(verdictOf(withPaths(loss, { ...sour, ...environment }))).toBe('needs input');
  });

  it('under a wall loss is never designed on no word about cracks', () => {
    expect(verdictOf(withPaths(loss, { ...sour, [proposed.cracking]: undefined }))).not.toBe('designed');
  });
});

describe('a heating blanket', () => {
  /** The steel stands at a temperature while the laminate sets, and at 5 to 35 degC in service. */
  const set = (temperature: string) =>
    withPaths(leak, { 'site.history': [{ duration: '80 h', temperature }], 'service.lowestTemperature': '5 degC' });
  // eps_a = f_T eps_a0 - |dT (alpha_s - alpha_a)|: 0.32 %, f_T of 65 - 35 K, 12e-6 against 20e-6
  const axialStrain = (kelvin: number): number => (6e-5 * 900 + 0.03 + 0.7014) * 0.0032 - kelvin * 8e-6;

  it('of 18 degC is none: the mismatch is that of 22 K, from the coldest steel of the forecast', () => {
    expect(laminateOf(set('18 degC')).axialStrain).toBeCloseTo(axialStrain(22), 9);
  });

  it('of 40 degC is the temperature from which the mismatch counts: 35 K down to the coldest steel', () => {
    expect(laminateOf(set('40 degC')).axialStrain).toBeLessThanOrEqual(axialStrain(35) + 1e-9);
  });
});

describe('the wall', () => {
  it('counts less the error of its reading at the end of the life too', () => {
    const read = designOf(withPaths(quietLoss, { 'defect.readingError': '0.5 mm' }));
    expect(read.found?.wallAtEndOfLife).toBeCloseTo(0.0015, 12);
  });

  it('is measured again after the preparation, before the wrap', () => {
    const { remainingWall } = designOf(loss).case.defect;
    expect(namesLength(loss, 'surface', 'wrap', remainingWall)).toBe(true);
  });

  it('is measured round the ring before a band presses on it', () => {
    const { remainingWall } = designOf(leak).case.defect;
    expect(namesLength(leak, 'seal', 'putty', remainingWall)).toBe(true);
  });
});

describe('what stands near the repair', () => {
  it('is never a weld inside the length that is laid', () => {
    const at = (distance: string) => verdictOf(withPaths(loss, { [proposed.nearestAttachment]: distance }));
    expect([at('2 m'), at('50 mm') === 'designed']).toEqual(['designed', false]);
  });

  it('is never tested above its rating', () => {
    const rated = (rating: string) => verdictOf(withPaths(loss, { [proposed.lowestRating]: rating }));
    expect([rated('100 bar'), rated('20 bar') === 'designed']).toEqual(['designed', false]);
  });
});

describe('a safety-critical line', () => {
  it('is asked what becomes of the laminate in a fire, or told in its plan', () => {
    const critical = withPaths(loss, { 'service.safetyCritical': true });
    const known = new Set(
      planOf(loss)
        .steps.flatMap(linesOf)
        .map(({ text }) => text),
    );
    const told = planOf(critical)
      .steps.flatMap(linesOf)
      .some(({ text }) => !known.has(text));
    expect(verdictOf(critical) !== 'designed' || told).toBe(true);
  });
});
