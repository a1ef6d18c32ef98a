import { exactly, type Modulus } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import type { Defect, Filler, Fitting, FittingKind, PipeAsBuilt, RepairCase } from '../case/case.js';
import type { Reason } from '../design/design.js';
import { type Open, open } from '../job/stage.js';
import type { Workbook } from '../job/workbook.js';

/**
 * What the case states and this version does not design for. Nothing that was stated is ignored: each entry ends the
 * design with the verdict `not covered`.
 */
export function checkCoverage(work: Workbook): 'covered' | Open {
  const { case: repairCase, notCovered } = work;
  notCovered.push(
    ...uncoveredPipe(repairCase.pipe),
    ...uncoveredDefect(repairCase.defect),
    ...uncoveredFitting(repairCase.fitting, repairCase),
    ...uncoveredFiller(repairCase.filler),
  );
  return notCovered.length > 0 ? open : 'covered';
}

/** Names of what no pipe of steel is called: it is brittle, or as soft as the laminate, or expands otherwise. */
const NO_STEEL = [
  /\b(?:(?:cast|ductile|gr[ae]y|nodular) iron|iron|\w*gu(?:ss|ß)\w*|fonte|ghisa|fundici[oó]n|ni-?resist|pit[ -]cast|ductile|spheroidal|graphite)\b/iu,
  // Cast iron by its grades and standards.
  /чугун/iu,
  /\b(?:en[ -]?gj[lsmnv]\b|k[ -]?(?:7|8|9|1[0-4])\b|ggg?[ -]?\d{2}\b|fcd?[ -]?\d{3}\b|ht[ -]?\d{3}\b|a[ -]?(?:48|74|126|377|536|716|746|888)\b|(?:en|iso) (?:545|598|877|2531)\b)/iu,
  /\b(?:[uc]?pvc|hdpe|mdpe|pe ?\d+|pex|pvdf|ptfe|pp-?[hrb]|poly\w+|gr[pe]|frp|plastic|rubber|fib(?:re|er)glass)\b/iu,
  /\b(?:concrete|asbestos|(?:ac|clay) pipe|fib(?:re|er)[ -]?cement|vitrified|clay|stoneware|wood|ceramic|glass(?![ -](?:lined|coated)))\b/iu,
  /\b(?:copper|brass|bronze|cu-?(?:dhp|etp|of)|cu[ -]?ni\w*|cupronickel|c\d{5}|alumini?um|en[ -]?aw|al[ -]?\d{4}|[3-6]0(?:03|61|63|82|83)-?t\d*|titanium|ti[ -]gr(?:ade)?|nickel|zirconium|lead|zinc(?![ -](?:coated|plated)))\b/iu,
  /\b(?:C\.?I|DI|ABS|PP)\b/u,
];

function uncoveredPipe({ material: { name, modulus: stated } }: PipeAsBuilt): Reason[] {
  if (isCalledNoSteel(name)) {
    return [
      {
        text: `the pipe is called "${name}", which is no steel: strength, expansion, surface and bond are those of steel in this version`,
      },
    ];
  }
  const modulus = stated ?? practice.modulusOfSteel.value;
  const bound = brokenBound(modulus);
  if (bound === undefined) return [];
  return [
    {
      text: 'the pipe has a modulus that no steel has: strength, expansion, surface and bond are those of steel in this version; correct it where the pipe is of steel',
      found: exactly('modulus of the pipe', 'modulus', modulus),
      limit: exactly(bound.name, bound.kind, bound.value),
    },
  ];
}

function isCalledNoSteel(name: string): boolean {
  return !/steel|stahl|acier|acero|acciaio/iu.test(name) && NO_STEEL.some((words) => words.test(name));
}

function brokenBound(modulus: Modulus) {
  const { softestSteel, stiffestSteel } = practice;
  if (modulus < softestSteel.value) return softestSteel;
  return modulus > stiffestSteel.value ? stiffestSteel : undefined;
}

const WHY_NOT: Readonly<Partial<Record<Defect['kind'], string>>> = {
  crack:
    'a crack can grow under the laminate and none of the strength methods holds for cracks; assess it by fracture mechanics or cut it out',
  dent: 'a dent concentrates stress and fatigues; none of the strength methods holds for dents',
  gouge: 'a gouge leaves cold-worked metal that cracks; grind it out and measure again, or cut it out',
  lamination: 'a lamination in the wall can open under pressure; have it assessed before any overwrap',
  bulge: 'a bulge shows that the pipe has already yielded; have it assessed before any overwrap',
  'seam defect': 'the strength methods do not hold for selective corrosion of a seam',
};

function uncoveredDefect(defect: Defect): Reason[] {
  const why = WHY_NOT[defect.kind];
  return why === undefined ? [] : [{ text: `the defect is a ${defect.kind}: ${why}` }];
}

/** A bend is round, and a flange ends a round pipe; the others have a shape that no line of the design goes round. */
const WHY_NOT_ON: Readonly<Partial<Record<FittingKind, string>>> = {
  tee: 'how thick a laminate is there is known from vague memory only (twice that of straight pipe), and nothing says how tape goes round the branch or what holds its crotch; take a part made for it, or have it analysed',
  reducer: 'tape slips down a cone, and the pull of the pressure on it is not part of this version',
  nozzle: 'the hole that it takes out of the wall needs its own reinforcement, and no factor for it is known',
  weld: 'a bead lifts the laminate off the steel beside it, and no factor for it is known; grind it flush, have it tested, and state straight pipe',
};

function uncoveredFitting(
  fitting: Fitting | 'none',
  { wrap, seal, repair, defect, line, loads }: RepairCase,
): Reason[] {
  if (fitting === 'none') return [];
  const why = WHY_NOT_ON[fitting.kind];
  if (why !== undefined) return [{ text: `the repair would lie on a ${fitting.kind}: ${why}` }];
  const { method } = repair;
  const reasons: Reason[] = [];
  if (method === 'substrate sharing load' || method === 'substrate yielded')
    reasons.push({
      text: `the case names the method "${method}", which counts on metal as it lies in straight pipe: on a ${fitting.kind} name "substrate ignored" or none`,
    });
  if (fitting.kind !== 'bend') return reasons;
  if (wrap.form === 'sheet')
    reasons.push({ text: 'the wrap is a sheet, and no sheet lies on a bend without folds: take tape' });
  const { bendingMoment, torsion, shearForce, soil } = loads;
  for (const [name, load] of [
    ['bending moment', bendingMoment],
    ['torsion', torsion],
    ['shear force', shearForce],
    ['soil', soil],
  ] as const)
    if (load !== 'none')
      reasons.push({
        text: `the case states a load on a bend, ${name}: a bend flattens under it and takes more stress than straight pipe, by an index that this version does not know`,
      });
  if (defect.kind === 'through-wall slot')
    reasons.push({
      text: 'the slot lies in a bend: the ring that holds a laminate over a wide slot is one of straight pipe; cut the piece out',
    });
  if (defect.neighbours !== undefined && defect.neighbours !== 'none')
    reasons.push({
      text: 'a neighbouring loss that no laminate covers lies on or near a bend, where the wall is stressed more than in straight pipe, and the methods for metal loss are those of straight pipe: repair it first, or have it assessed',
    });
  if (line.state !== 'empty, dry, isolated, vented')
    reasons.push({
      text: 'the line stays under pressure while people work on a thinned bend, and the methods for metal loss are those of straight pipe: empty it',
    });
  if (seal !== undefined)
    reasons.push({
      text: 'the leak would be sealed on a bend, where a band slips to the inside and no equation says how hard it presses: empty the line and leave the seal out',
    });
  return reasons;
}

/** Overlap, leak resistance and bond assume laminate on prepared steel. */
function uncoveredFiller(filler: Filler | 'none'): Reason[] {
  if (filler === 'none' || filler.underWholeWrap !== true || filler.qualifiedOverFiller !== undefined) return [];
  return [
    {
      text: 'the filler would lie under the whole wrap, bonded overlap included: overlap and leak resistance assume laminate on prepared steel; end the filler short of the overlap, or state the energy release rate of a system that was qualified over filler',
    },
  ];
}
