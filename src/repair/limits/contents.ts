import { reaches } from '../../numeric/index.js';
import type { Resistance } from '../case/case.js';
import { saysNothing } from '../case/says-nothing.js';
import type { AsFound } from '../design/design.js';
import { need, type Workbook } from '../job/workbook.js';
import { hottestOf } from './temperature.js';

/** Where the wall is gone, or will be, the contents stand on the resin for as long as the repair lasts, and on the putty first. */
export function checkContents(work: Workbook, { throughWall }: AsFound): void {
  if (!throughWall) return;
  const { laminate, seal } = work.case;
  checkResistance(work, 'laminate.resists', 'the resin', laminate.resists);
  if (seal !== undefined) checkResistance(work, 'seal.putty.resists', 'the putty', seal.putty.resists);
}

/** A word counts for the contents that it names and up to its temperature: any other is no word at all. */
function checkResistance(work: Workbook, field: string, what: string, stated: Resistance | undefined): void {
  const lacks = lackOf(work, stated);
  if (lacks === undefined) return;
  need(
    work,
    field,
    `the contents reach ${what}, and ${lacks}`,
    `the maker of ${what}, for the contents by name, their strength and their temperature`,
  );
}

function lackOf({ case: repairCase }: Workbook, stated: Resistance | undefined): string | undefined {
  if (stated === undefined) return 'nothing says what it stands';
  if (saysNothing(stated.statedBy)) return `nobody states it ("${stated.statedBy}" names no source)`;
  if (saysNothing(stated.contents)) return `what it stands is stated for no contents ("${stated.contents}")`;
  if (named(stated.contents) !== named(repairCase.service.contents))
    return `what it stands is stated for other contents ("${stated.contents}")`;
  return reaches(stated.temperature, hottestOf(repairCase))
    ? undefined
    : 'what it stands is stated for colder contents only';
}

/** Capitals and spaces do not tell two contents apart. */
function named(contents: string): string {
  return contents.trim().toLowerCase().replaceAll(/\s+/gu, ' ');
}
