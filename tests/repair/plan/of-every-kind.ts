import {
  arealWeight,
  energyReleaseRate,
  gauge,
  length,
  massFlow,
  ratio,
  speed,
  stress,
  temperature,
  time,
} from '../../../src/quantity/index.js';
import {
  type Designed,
  designRepair,
  type PlanOptions,
  planWork,
  type RepairCase,
  type WorkPlan,
} from '../../../src/repair/index.js';
import { wholeCase } from '../../../verification/laws/whole-case.js';
import { seeded } from '../../../verification/oracles/random.js';
import { caseOf } from '../../faults/answers.js';
import { bend, type CaseFile, emptied, evenLoss, leak, loss, quietLoss, slot, withPaths } from '../../faults/cases.js';
import { designed } from '../by-use.js';
import { planned, plannedLeak, waterTape } from '../plan-cases.js';

/** Jobs of every kind with their plans: each sort of work that a plan has words for is done in one, and left out in another. */

export interface Job {
  readonly design: Designed;
  readonly plan: WorkPlan;
}

const fromFile = (file: CaseFile, paths: Parameters<typeof withPaths>[1] = {}): RepairCase =>
  caseOf(withPaths(file, paths));

const { acceptance } = planned;
if (acceptance === undefined || acceptance.pressureTest === 'none') throw new Error('the example has a pressure test');
const { pressureTest } = acceptance;
const testedAs = (change: Partial<typeof pressureTest>): RepairCase => ({
  ...planned,
  acceptance: { ...acceptance, pressureTest: { ...pressureTest, ...change } },
});
const atPace = (metresPerMinute: number, crews = 1): RepairCase => ({
  ...waterTape,
  crew: { layingSpeed: speed.mPerMin(metresPerMinute), crews, soakTime: time.minute(0.5), start: '07:30' },
});
const { crew: _, ...nobody } = planned;
const { filler, resin } = planned;
if (filler === 'none' || resin === 'none') throw new Error('the example has filler and resin');

export const cases = {
  'wall loss under tape': planned,
  'wall loss from inside': fromFile(quietLoss),
  'wall loss without crew': nobody,
  'wall loss, no hardness stated': { ...planned, acceptance: undefined },
  'hardness by Barcol': {
    ...planned,
    acceptance: { ...acceptance, hardnessScale: 'Barcol', qualifiedHardness: 40 },
  },
  'hardness below the table of Barcol': {
    ...planned,
    acceptance: { ...acceptance, hardnessScale: 'Barcol', qualifiedHardness: 15 },
  },
  'filler under the whole wrap': {
    ...planned,
    filler: {
      ...filler,
      underWholeWrap: true,
      qualifiedOverFiller: { energyReleaseRate: energyReleaseRate.JPerM2(150) },
    },
  },
  'sealed leak, bands off': plannedLeak,
  'sealed leak under a wide sheet': {
    ...plannedLeak,
    seal: { ...plannedLeak.seal, sheet: { ...plannedLeak.seal?.sheet, across: length.mm(60) } } as never,
  },
  'sealed leak on an empty line': { ...plannedLeak, line: { state: 'empty, dry, isolated, vented' } },
  'sealed leak, bands stay': fromFile(leak, { 'seal.bands': 'left' }),
  'sealed leak, two bands off': fromFile(leak),
  'open leak on an empty line': fromFile(leak, { seal: undefined, ...emptied }),
  'hydrocarbon under pressure': fromFile(loss),
  'flammable gas, emptied': fromFile(loss, {
    'service.contents': 'fuel gas',
    'service.phase': 'gas',
    ...emptied,
  }),
  'compressed air, vented': fromFile(quietLoss, {
    'service.contents': 'compressed air',
    'service.phase': 'gas',
  }),
  'toxic contents behind a loss from inside': fromFile(quietLoss, {
    'service.contents': 'process water with biocide',
    'service.hazards': ['toxic'],
  }),
  'safety-critical line': fromFile(loss, { 'service.safetyCritical': true }),
  bend: fromFile(bend),
  slot: fromFile(slot),
  'tape that water activates': waterTape,
  'tape that water activates, soaked by nobody': {
    ...waterTape,
    crew: { ...atPace(2).crew, soakTime: undefined } as never,
  },
  'tape that is soaked for no time': {
    ...waterTape,
    crew: { layingSpeed: speed.mPerMin(2), crews: 1, soakTime: time.minute(0), start: '07:30' },
  },
  'resin in small batches': { ...planned, resin: { ...resin, rate: massFlow.kgPerMin(0.005) } },
  'tape that water activates, laid too slowly': atPace(0.2),
  'tape that nothing makes fit': {
    ...waterTape,
    crew: { layingSpeed: speed.mPerMin(2), crews: 1, soakTime: time.hour(10), start: '07:30' },
    site: { ...planned.site, forecast: undefined },
  },
  'beyond what the repair resists': fromFile(evenLoss, { 'service.designPressure': '45 bar' }),
  'beyond it, and no test decided': fromFile(evenLoss, {
    'service.designPressure': '45 bar',
    acceptance: undefined,
  }),
  'tape laid too slowly, and no forecast': { ...atPace(0.2), site: { ...planned.site, forecast: undefined } },
  'tape that moisture cures': {
    ...waterTape,
    laminate: {
      ...waterTape.laminate,
      transitionCuredAt: temperature.degC(12),
      cure: {
        mechanism: 'moisture',
        rows: [
          {
            temperature: temperature.degC(30),
            humidity: 0.8 as never,
            cureTime: time.hour(3),
            workingTime: time.minute(10),
          },
          {
            temperature: temperature.degC(12),
            humidity: 0.5 as never,
            cureTime: time.hour(10),
            workingTime: time.minute(30),
          },
        ],
      },
    },
    site: { ...waterTape.site, forecast: undefined },
  },
  'two crews on a tape': atPace(2, 2),
  'narrow sheet': { ...planned, wrap: { form: 'sheet', width: length.m(0.2), rollLength: length.m(20) } },
  'narrow sheet, two crews': {
    ...planned,
    wrap: { form: 'sheet', width: length.m(0.2), rollLength: length.m(20) },
    crew: { layingSpeed: speed.mPerMin(2), crews: 2, start: '07:30' },
  },
  'one sheet over all': { ...planned, wrap: { form: 'sheet', width: length.m(3), rollLength: length.m(20) } },
  'no pressure test': { ...planned, acceptance: { ...acceptance, pressureTest: 'none' } },
  'gas test': testedAs({ medium: 'gas' }),
  'test with another liquid': testedAs({ liquid: 'other' }),
  'toxic leak, emptied': fromFile(leak, {
    seal: undefined,
    ...emptied,
    'service.hazards': ['toxic'],
    'repair.class': 3,
  }),
  'leak on a surface that nobody qualified': fromFile(leak, { 'site.surface.qualified': undefined }),
  'narrow tape': { ...planned, wrap: { ...planned.wrap, width: length.mm(40), rollLength: length.m(50) } },
  'qualified surface': fromFile(leak, { 'site.surface.qualified': { grade: 'Sa 3', profile: '90 um' } }),
  'cold and wet day': {
    ...planned,
    site: {
      ...planned.site,
      forecast: undefined,
      pipeTemperature: temperature.degC(12),
      airTemperature: temperature.degC(12),
      relativeHumidity: ratio.percent(96),
    },
  },
  'carbon over glass': {
    ...planned,
    laminate: { ...planned.laminate, fibre: 'carbon', isolatingLayer: 'one ply of glass' },
  },
  'sheet that bends round by hand': {
    ...plannedLeak,
    seal: {
      ...plannedLeak.seal,
      sheet: { ...plannedLeak.seal?.sheet, thickness: length.mm(0.2), yieldStrength: stress.MPa(600) },
    } as never,
  },
  'frost in dry air': {
    ...planned,
    site: {
      ...planned.site,
      forecast: undefined,
      relativeHumidity: ratio.percent(15),
    },
  },
  'hole off a wide loss that is inspected by its owner': fromFile(leak, { 'repair.inspectionInterval': '1 year' }),
  'thin plies': {
    ...planned,
    laminate: { ...planned.laminate, plyThickness: length.mm(0.2) },
    resin: { ...resin, fabricWeight: arealWeight.gPerM2(200) },
  },
  'thirty passes': {
    ...planned,
    laminate: { ...planned.laminate, plyThickness: length.mm(0.2265) },
    resin: { ...resin, fabricWeight: arealWeight.gPerM2(226.5) },
  },
  'thick plies': {
    ...planned,
    laminate: { ...planned.laminate, plyThickness: length.mm(2) },
    resin: { ...resin, fabricWeight: arealWeight.gPerM2(2000) },
  },
  'short rolls': { ...planned, wrap: { ...planned.wrap, rollLength: length.m(1) } },
  'inspected by the owner': {
    ...planned,
    date: '2026-03-12',
    repair: { ...planned.repair, inspectionInterval: time.year(1) },
  },
  'lower pressure': { ...planned, service: { ...planned.service, designPressure: gauge.MPa(2.5) } },
} as const satisfies Record<string, RepairCase>;

export type Named = keyof typeof cases;

/**
 * The job of a case that is designed, made anew each time: a design that a test took from another one would be that of the
 * code before it was changed.
 */
export function jobOf(name: Named, options: PlanOptions = {}): Job {
  const design = designed(cases[name]);
  return { design, plan: planWork(design, options) };
}

export const allNamed = Object.keys(cases) as Named[];

/** Jobs drawn as the laws of whole designs draw them. */
export function drawnJobs(count: number): Job[] {
  const random = seeded('jobs of a plan');
  const jobs: Job[] = [];
  while (jobs.length < count) {
    const design = designRepair(wholeCase(random));
    if (design.verdict === 'designed') jobs.push({ design, plan: planWork(design) });
  }
  return jobs;
}
