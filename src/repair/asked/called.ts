import type { RepairCase } from '../case/case.js';
import { need, type Workbook } from '../job/workbook.js';
import { GAS_WORDS, LIQUEFIED_WORDS, SAFETY_WORDS, VACUUM_WORDS } from './contents-words.js';
import { spelt } from './hazards.js';

/** What the name of the contents says of the phase and of the line, where the field beside it says other. */
export function askWhatIsCalledOtherwise(work: Workbook): void {
  const { contents, phase } = work.case.service;
  const name = spelt(contents);
  if (phase === 'liquid' && GAS_WORDS.test(name.replaceAll(LIQUEFIED_WORDS, ''))) {
    need(
      work,
      'service.phase',
      `the contents are called "${contents}", which stands for gas or for what gives off gas, and the phase says liquid: gas stores far more energy, and limits, class and test follow the phase. State "gas" or "two-phase", or call the contents what they are`,
      'the process engineer of the line',
    );
  }
  askWhetherLivesHangOn(work, name);
  askWhetherSucked(work, name);
}

function askWhetherLivesHangOn(work: Workbook, name: string): void {
  const { contents, safetyCritical } = work.case.service;
  if (safetyCritical || !SAFETY_WORDS.test(name)) return;
  need(
    work,
    'service.safetyCritical',
    `the contents are called "${contents}", which stands for a line that lives hang on, and the case says that it is not safety-critical: state true, or call the contents what they are`,
    'the fire or process safety engineer of the site',
  );
}

function askWhetherSucked(work: Workbook, name: string): void {
  const { service, loads } = work.case;
  if (isPressed(loads) || !VACUUM_WORDS.test(name)) return;
  need(
    work,
    'loads.externalPressure',
    `the contents are called "${service.contents}", which stands for vacuum, and the case says that nothing presses from outside: state by how much the pressure inside may fall below that of the air (1.013 bar for all of it), or call the contents what they are`,
    'the process engineer of the line',
  );
}

/** Whether the case states that anything presses from outside. */
export function isPressed({ externalPressure }: RepairCase['loads']): boolean {
  return externalPressure !== 'none' && externalPressure > 0;
}
