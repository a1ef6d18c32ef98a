import { alike, type Equivalent, KNOWN, TIE } from './alike.js';

/** Changes of the pipe as found that no admissible case can tell from the original. */

const found = (file: string): string => `src/repair/found/${file}.ts`;

export const equivalentInFound: readonly Equivalent[] = [
  ...alike(found('coverage'), 'the word "none" has none of the members that are looked at', [
    ["filler === 'none'", 'false'],
  ]),
  ...alike(found('limit-at-hole'), TIE, [['along < round', 'along <= round']]),
  ...alike(found('limit-on-wall'), TIE, [['recent > safePressure', 'recent >= safePressure']]),
  ...alike(found('limit-on-wall'), `${KNOWN}: without an assessment there is no factor`, [
    ['assessment?.method', 'assessment.method'],
  ]),
  ...alike(found('strength-at-end'), `${KNOWN}: without an assessment there is no factor`, [
    ['assessment?.method', 'assessment.method'],
  ]),
  ...alike(found('strength'), `${KNOWN}: without an assessment there is no factor`, [
    ['assessment?.flowStress', 'assessment.flowStress'],
  ]),
  ...alike(found('sound-pipe-along'), `${TIE}; the section holds pi, so that no stated force meets it`, [
    ['stress <= limit', 'stress < limit'],
  ]),
  ...alike(found('strength-at-end'), 'every refusal of a calculation has its amounts', [
    ['[]', '["Stryker was here"]'],
  ]),
  ...alike(found('line-at-work'), TIE, [
    ['limit.highestPressure <= designPressure', 'limit.highestPressure < designPressure'],
    ['tightenedFor > seal.highestPressure', 'tightenedFor >= seal.highestPressure'],
    ['tightenedFor > highestPressure', 'tightenedFor >= highestPressure'],
    ['highestPressure <= seal.highestPressure', 'highestPressure < seal.highestPressure'],
  ]),
  ...alike(found('neighbour-strength'), TIE, [
    ['highestPressure < lowest.highestPressure', 'highestPressure <= lowest.highestPressure'],
  ]),
  ...alike(
    found('neighbour-strength'),
    'no method is named for a neighbour, and what none of them reaches is judged by its least wall all round',
    [['result?.safePressure', 'result.safePressure']],
  ),
  ...alike(found('neighbours'), TIE, [['behind(undefined) < gapRound', 'behind(undefined) <= gapRound']]),
  ...alike(found('on-bend'), 'the word "none" has none of the members that are looked at', [
    ["fitting !== 'none'", 'true'],
  ]),
  ...alike(found('sound-pipe-along'), `${TIE}; nothing else is taken from a side`, [
    ['side.combined > worst.combined', 'side.combined >= worst.combined'],
  ]),
];
