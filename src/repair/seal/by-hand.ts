import { step } from '../../formula/index.js';
import { reaches } from '../../numeric/index.js';
import { type Area, exactly, type GaugePressure } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { jetReaction } from '../../seal/index.js';
import type { Reason } from '../design/design.js';
import type { Workbook } from '../job/workbook.js';

/**
 * A person with putty and a band stands in the jet. That is for harmless, cool liquid at low pressure out of a small hole;
 * for anything else the site has a device of its own, and this version does not design it.
 */
export function checkByHand(work: Workbook, pressureDifference: GaugePressure, holeArea: Area): void {
  if (pressureDifference === 0) return;
  const { recorder, case: repairCase, notCovered } = work;
  const { phase, hazards } = repairCase.service;
  if (phase !== 'liquid') refuse(notCovered, 'the contents are gas, or part of them is');
  if (hazards.length > 0) refuse(notCovered, `the contents are a hazard (${hazards.join(', ')})`);
  const { hottestByHand, highestPressureByHand, largestJetByHand } = practice;
  const { pipeTemperature } = repairCase.site;
  if (!reaches(hottestByHand.value, pipeTemperature))
    refuse(notCovered, 'the steel is too hot to work at a jet of its contents', {
      found: exactly('steel on the day', 'temperature', pipeTemperature),
      limit: exactly(hottestByHand.name, 'temperature', hottestByHand.value),
    });
  if (pressureDifference > highestPressureByHand.value)
    refuse(notCovered, 'the pressure in the line is too high for it', {
      found: exactly('pressure while work goes on', 'gauge pressure', pressureDifference),
      limit: exactly(highestPressureByHand.name, 'gauge pressure', highestPressureByHand.value),
    });
  const reaction = step(
    recorder,
    'seal/jet-reaction',
    jetReaction,
    { pressureDifference, holeArea },
    'against the hand',
  );
  if (reaction > largestJetByHand.value)
    refuse(notCovered, 'the jet pushes too hard', {
      found: exactly('push of the jet', 'force', reaction),
      limit: exactly(largestJetByHand.name, 'force', largestJetByHand.value),
    });
}

function refuse(notCovered: Reason[], why: string, by?: Required<Pick<Reason, 'found' | 'limit'>>): void {
  const text = `a leak is sealed by hand only where that hurts nobody, and ${why}: use the device of the site for it, or empty the line`;
  notCovered.push(by === undefined ? { text } : { text, found: by.found, limit: by.limit });
}
