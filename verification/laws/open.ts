import type { RepairDesign } from '../../src/repair/index.js';

/**
 * Where a law is restricted, and why the physics allows it: the exception counts only while what it rests on is so in the
 * two designs. Each is counted, never hidden.
 */
export interface OpenException {
  readonly law: string;
  /** What comes out better. */
  readonly what: RegExp;
  readonly open: string;
  /** What has to be so, or the law is broken all the same. */
  readonly onlyIf: (before: RepairDesign, after: RepairDesign, what: string) => boolean;
}

/** What a laminate pulls on its bond at one strain, per length of circumference: E_a t, with all that lies there. */
function pullOf({ case: { laminate: system }, extent }: RepairDesign): number {
  return (extent?.meanThickness ?? Number.NaN) * system.axialModulus;
}

const pullsLess: OpenException['onlyIf'] = (before, after) => pullOf(after) < pullOf(before);

/** Nothing but bands of sheet takes the plies, and the criteria ask for no less. */
const joinsLess: OpenException['onlyIf'] = ({ laminate: was }, { laminate: is }) =>
  was?.joints !== undefined && is !== undefined && is.thickness.value >= was.thickness.value * (1 - 1e-9);

/** Only the plies or the overlap of the stiff one were too much. */
const tooMuchOfIt: OpenException['onlyIf'] = ({ reasons }) =>
  reasons.every(({ text }) => /too thick for the equations|inside the laid length/u.test(text));

const lessThanASecond: OpenException['onlyIf'] = (_, __, what) => {
  const [was = Number.NaN, is = Number.NaN] = [...what.matchAll(/[\d.]+/gu)].map(([number]) => Number(number));
  return was - is < 1;
};

/** What the refusal of a neighbour asks for: one defect that holds both. */
const statedAsOne: OpenException['onlyIf'] = ({ reasons }, { case: { defect }, warnings }) =>
  reasons.every(({ text }) => text.startsWith('a neighbouring loss that ')) &&
  defect.neighbours !== 'none' &&
  warnings.some(({ text }) => text.startsWith('Neighbouring losses act as one'));

/** Nothing was asked but how a loss grows that no laminate covers. */
const coveredNow: OpenException['onlyIf'] = ({ missing }, { case: { defect }, warnings }) =>
  missing.every(({ why }) => why.startsWith('a neighbouring loss lies outside the repair')) &&
  defect.neighbours !== 'none' &&
  warnings.some(({ text }) => text.startsWith('Neighbouring losses act as one'));

/** No strength of the wall is counted on, and what stands today is judged by the least factor of the work. */
const countsOnNoWall: OpenException['onlyIf'] = (_, { found }) => found !== undefined && found.strength === undefined;

/** Less than a thousandth of the thickness over a seal. */
const moreAlike: OpenException['onlyIf'] = ({ laminate: was }, { laminate: is }) =>
  was?.footprint?.under === 'seal' &&
  is?.thickness.governing === 'leak through the hole' &&
  is.thickness.value >= was.thickness.value * (1 - 1e-3);

export const openExceptions: readonly OpenException[] = [
  {
    law: 'a safety factor of 1.2',
    what: /^no warning says so$/u,
    open: 'where the wall counts as gone by the end of the life, or no method reaches it, no strength of it is computed with the stated factor, and the work on it is judged by 1.25 at least',
    onlyIf: countsOnNoWall,
  },
  {
    law: 'a softer laminate',
    what: /^thickness: /u,
    open: 'over a seal the worst place of the rim counts: with the same shear modulus a softer laminate is more alike in all directions, its rim releases more evenly, and what the edge opens hangs on the shear modulus; the thickness is less by less than a thousandth',
    onlyIf: moreAlike,
  },
  {
    law: 'one more neighbouring loss',
    what: /^verdict: not (?:covered|repairable) to (?:designed|needs input|not covered)$/u,
    open: 'a loss that lies apart, under the laminate or too weak by itself, is refused until it is stated as one with the defect; one more between the two makes them one, which is then designed for',
    onlyIf: statedAsOne,
  },
  {
    law: 'one more neighbouring loss',
    what: /^verdict: needs input to designed$/u,
    open: 'a loss that lies apart is asked how it grows, since no laminate covers it; one more between it and the defect makes them one, which the laminate covers',
    onlyIf: coveredNow,
  },
  {
    law: 'a softer laminate',
    what: /^(?:overlap|length|return): /u,
    open: 'the bond has to pass on what the laminate pulls, E_a eps t. Where t does not rise as fast as E_a falls (whole plies, the least plies, the line of a leak) a softer laminate pulls less, and needs less overlap, tape and time; that its overlap passes on all that it pulls is a law of its own, and its thickness is no less',
    onlyIf: pullsLess,
  },
  {
    law: 'a softer laminate',
    what: /^(?:plies|laid thickness|return|length): /u,
    open: 'a joint of sheet in bands reaches as far as the bond of one ply, E_a eps t/tau: in a softer laminate fewer joints lie in one reach, and fewer plies are added for those that end there; the thickness that the criteria ask for is not less, and as many plies go through as it needs',
    onlyIf: joinsLess,
  },
  {
    law: 'a softer laminate',
    what: /^verdict: (?:not repairable|not covered) to (?:designed|needs input)$/u,
    open: 'follows from the two above: a stiff laminate needs so many plies for its joints that it is no thin one, or so long an overlap that a weld lies under it; a softer one does not',
    onlyIf: tooMuchOfIt,
  },
  {
    law: 'a weaker bond in shear',
    what: /^return: /u,
    open: 'the joints of the bands lie on other places, and the cut sheet is some millimetres shorter though the repair is longer: less than a second of laying',
    onlyIf: lessThanASecond,
  },
];
