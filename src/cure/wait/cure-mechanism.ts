import { oneOf, refuse } from '../../formula/index.js';

/** How a resin cures: two parts that react with each other, or one that takes up moisture. */
export type CureMechanism = 'two-part reaction' | 'moisture';

/**
 * Refuses a moisture-cured system: its times depend on humidity and on how far water has to diffuse, so that no shift
 * by temperature alone describes them. What is left are the maker's own times (`makersTime`).
 */
export function onlyTwoPart(mechanism: CureMechanism): void {
  oneOf(mechanism, ['two-part reaction', 'moisture'], 'mechanism');
  if (mechanism === 'moisture') {
    refuse({
      code: 'outside-validity',
      parameter: 'mechanism',
      value: mechanism,
      unit: '',
      constraint:
        "the time of a moisture-cured system is never moved to another temperature; take the maker's own times within the tested temperatures and humidities",
    });
  }
}
