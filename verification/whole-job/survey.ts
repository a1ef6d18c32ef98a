import { isCalculationError } from '../../src/formula/index.js';
import { decodeCase, encodeDesign, isCaseError } from '../../src/json/index.js';
import { designRepair } from '../../src/repair/index.js';
import { compare } from './compare.js';
import { drawCase } from './draw-case.js';
import { byLibrary, type Readings } from './route/open-readings.js';
import { wholeJob } from './route/whole-job.js';

/** What a number of drawn cases showed. */
export interface Survey {
  readonly cases: number;
  /** Cases that the library refused with an error instead of a verdict, by its words. */
  readonly refused: Readonly<Record<string, number>>;
  readonly verdicts: Readonly<Record<string, number>>;
  /** Share of the answers whose verdict the second route has too. */
  readonly verdictsAgree: number;
  /** The library asks for what is missing and stops; the second route goes on and finds a reason. Neither designs. */
  readonly askedFirst: readonly string[];
  readonly otherVerdicts: readonly string[];
  /** Numbers held to the second route, and words with answers of yes or no. */
  readonly compared: number;
  readonly words: number;
  /** The largest relative difference of the numbers that agree. */
  readonly largest: number;
  readonly listed: number;
  readonly different: readonly string[];
  /** By method, form, rule set, fitting and where the energy is from: how many of the designs that were made. */
  readonly designed: Readonly<Record<string, number>>;
}

/** Draws cases, designs each by both routes, and holds every number of the library to the second one. */
export function survey(from: number, cases: number, readings: Readings = byLibrary): Survey {
  const refused: Record<string, number> = {};
  const verdicts: Record<string, number> = {};
  const designed: Record<string, number> = {};
  const different: string[] = [];
  const askedFirst: string[] = [];
  const otherVerdicts: string[] = [];
  let compared = 0;
  let words = 0;
  let largest = 0;
  let listed = 0;
  let agree = 0;
  let answers = 0;
  const count = (into: Record<string, number>, key: string): void => {
    into[key] = (into[key] ?? 0) + 1;
  };
  for (let seed = from; seed < from + cases; seed++) {
    const document = drawCase(seed);
    try {
      const decoded = decodeCase(document);
      const design = designRepair(decoded.case);
      const second = wholeJob(document, readings);
      const outcome = compare(encodeDesign(design, decoded), second);
      answers += 1;
      compared += outcome.compared;
      words += outcome.words;
      largest = Math.max(largest, outcome.largest);
      listed += outcome.listed;
      for (const each of outcome.different) different.push(`case ${seed}, ${design.verdict}: ${each}`);
      count(verdicts, design.verdict);
      if (second['verdict'] === design.verdict) agree += 1;
      else {
        const refuses = second['verdict'] === 'not repairable' || second['verdict'] === 'not covered';
        const list = design.verdict === 'needs input' && refuses ? askedFirst : otherVerdicts;
        list.push(`case ${seed}: ${design.verdict}, second route ${String(second['verdict'])}`);
      }
      if (design.verdict === 'designed') {
        count(designed, design.case.basis);
        count(designed, design.case.defect.kind);
        count(designed, design.case.wrap.form);
        count(designed, design.case.repair.method ?? 'method left out');
        const { fitting, laminate } = design.case;
        if (fitting !== 'none') count(designed, fitting.kind);
        if (laminate.holeTests !== undefined) count(designed, 'tests of holes');
        if (design.case.confirmed !== undefined) count(designed, 'confirmed numbers');
        if (design.case.defect.neighbours !== 'none') count(designed, 'neighbouring losses');
        if (design.case.loads.heldLine !== 'none') count(designed, 'held line');
      }
    } catch (error) {
      if (!isCaseError(error) && !isCalculationError(error)) throw error;
      count(refused, error.message.replace(/\d[\d.]*/gu, '#').slice(0, 120));
    }
  }
  return {
    cases,
    refused,
    verdicts,
    verdictsAgree: agree / answers,
    askedFirst,
    otherVerdicts,
    compared,
    words,
    largest,
    listed,
    different,
    designed,
  };
}
