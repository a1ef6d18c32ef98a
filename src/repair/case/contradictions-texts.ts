import { line } from '../../quantity/index.js';
import type { RepairCase } from './case.js';
import type { Note } from './contradiction.js';
import { mixedWord } from './says-nothing.js';

/** Texts that safety hangs on are read for what they say: a word of two alphabets says something else than it seems to. */
export function inTexts({ line: atWork, pipe, service, laminate, seal }: RepairCase, note: Note): void {
  const one = (path: string, text: string | undefined): void => {
    const word = text === undefined ? undefined : mixedWord(text);
    if (word === undefined) return;
    const must = `be written in the letters of one alphabet: "${word}" mixes Latin letters with Cyrillic or Greek ones that look like them`;
    note({ path, must: line(must) });
  };
  if (atWork.state !== 'empty, dry, isolated, vented') one('line.writtenProcedure', atWork.writtenProcedure);
  const { cathodicProtection: protection } = pipe;
  if (protection !== undefined && protection !== 'none') one('pipe.cathodicProtection.underWrap', protection.underWrap);
  one('pipe.material.name', pipe.material.name);
  one('service.contents', service.contents);
  one('service.hazardsStatedBy', service.hazardsStatedBy);
  const { cracking } = service;
  if (cracking !== undefined && cracking !== 'none') one('service.cracking.test.method', cracking.test?.method);
  one('laminate.isolatingLayer', laminate.isolatingLayer);
  one('laminate.resists.contents', laminate.resists?.contents);
  one('laminate.resists.statedBy', laminate.resists?.statedBy);
  one('seal.putty.resists.contents', seal?.putty.resists?.contents);
  one('seal.putty.resists.statedBy', seal?.putty.resists?.statedBy);
}
