import { describe, expect, it } from 'vitest';
import type { Length, Line } from '../../../src/quantity/index.js';
import { planWork, type StepId } from '../../../src/repair/index.js';
import { designed } from '../by-use.js';
import { allNamed, cases, type Job, jobOf, type Named } from './of-every-kind.js';

/** The numbers that a crew reads on a plan, each by hand from the case. Lengths in metres, times in seconds. */

/** The only line of a step with such words. */
function lineAt({ plan }: Job, id: StepId, what: RegExp): Line {
  const step = plan.steps.find((each) => each.id === id);
  if (step === undefined) throw new Error(`no step ${id}`);
  const { does, uses, practice, goes, stops } = step;
  const found = [does, uses, practice, goes, stops].flat().filter(({ text }) => what.test(text));
  if (found.length !== 1) throw new Error(`${found.length} lines at ${id} like ${what}`);
  return found[0] as Line;
}

const numbers = (line: Line | undefined): number[] => (line?.amounts ?? []).map(({ value }) => value);
const ways = (line: Line): (string | undefined)[] => (line.amounts ?? []).map(({ toward }) => toward);
const rounded = (value: number): number => Number(value.toPrecision(9));

const GAS = 8.31446261815324;
/** How much faster a reaction of 55 kJ/mol goes than at 23 degC. */
const faster = (degrees: number): number => Math.exp((55_000 / GAS) * (1 / 296.15 - 1 / (degrees + 273.15)));
/** The share of a working time within which the crew is done. */
const SHARE = 0.8;

const rows: readonly (readonly [Named, StepId, RegExp, readonly number[]])[] = [
  // 323.9 mm by 8.38 mm with 120 mm by 80 mm down to 5 mm.
  ['wall loss under tape', 'survey', /^Circumference/, [Math.PI * 0.3239]],
  ['wall loss under tape', 'survey', /^Defect no longer/, [0.12, 0.08]],
  ['wall loss under tape', 'survey', /^Least wall/, [0.005]],
  ['wall loss under tape', 'survey', /^Sound wall beside it/, [0.00838]],
  ['sealed leak, bands off', 'survey', /^Hole no wider/, [0.005]],
  ['wall loss under tape', 'stock', /temperature of the pipe/, [293.15]],
  // Class 3: 60 um, 20 mg/m2, four hours.
  ['wall loss under tape', 'surface', /^Grade Sa 2 1\/2, profile/, [60e-6]],
  ['qualified surface', 'surface', /^Grade Sa 3, profile/, [90e-6]],
  ['wall loss under tape', 'surface', /^Wall measured again/, [0.005]],
  ['wall loss under tape', 'surface', /^No oil, no dust/, [20e-6]],
  ['wall loss under tape', 'surface', /^First resin within/, [4 * 3600]],
  // Cures from 10 degC; nobody stated the error of the thermometer, half a kelvin.
  ['wall loss under tape', 'gate', /^Humidity at most/, [0.85]],
  ['wall loss under tape', 'gate', /^Steel reads \{0\} or more/, [283.65]],
  ['sealed leak, two bands off', 'gate', /^Steel reads \{0\} or more/, [283.65]],
  // 2 mm round the pipe and 4 mm over the defect; the air of the warmest hour is at 22 degC.
  ['wall loss under tape', 'filler', /^Collar/, [0.002, 0.004, 0.12]],
  ['wall loss under tape', 'filler', /^Leave no edge/, [0.005]],
  ['wall loss under tape', 'filler', /^Diameter over it/, [0.3239 + 2 * 0.004]],
  ['wall loss under tape', 'filler', /^Used up within/, [(SHARE * 20 * 60) / faster(22.5)]],
  ['wall loss under tape', 'filler', /^A place that takes more/, [0.02]],
  ['sealed leak, bands stay', 'filler', /^Fasteners under it/, [0.002]],
  ['wall loss under tape', 'wrap', /^Used up within/, [(SHARE * 40 * 60) / faster(22.5)]],
  ['wall loss under tape', 'wrap', /^Knead or stir/, [300]],
  ['wall loss under tape', 'wrap', /^Each turn covers/, [0.5]],
  ['bend', 'wrap', /^Each turn covers/, [0.52]],
  ['narrow sheet', 'wrap', /^Each band laps/, [0.025]],
  ['tape that water activates', 'wrap', /^Soak each roll/, [30]],
  ['tape that water activates, soaked by nobody', 'wrap', /^Tape that water activates/, [10]],
  ['wall loss under tape', 'wrap', /^Bare steel older/, [4 * 3600]],
  // 90 and 80 per cent of Shore D 80.
  ['wall loss under tape', 'cure', /readings on a cold, dry/, [72, 64]],
  ['hardness by Barcol', 'cure', /readings on a cold, dry/, [36, 32]],
  ['wall loss under tape', 'cure', /^Cover or heat it/, [283.15]],
  ['wall loss under tape', 'cure', /^Hours colder/, [283.15]],
  ['tape that moisture cures', 'cure', /^Cover or heat it/, [285.15]],
  ['wall loss under tape', 'cure', /^The vent stands open/, [3600]],
  ['hydrocarbon under pressure', 'cure', /^Gauge every/, [150 * 6894.757293168361, 3600]],
  // 30 m of a bore of 307.14 mm; 4 MPa in service at 50 degC.
  ['wall loss under tape', 'pressure-test', /^Fill with/, [(Math.PI / 4) * (0.3239 - 2 * 0.00838) ** 2 * 30]],
  ['wall loss under tape', 'return', /^At most/, [4e6, 323.15]],
  ['wall loss under tape', 'return', /^Mark the repair/, [20 * 31_557_600]],
  ['wall loss under tape', 'return', /^That is within/, [10 * 31_557_600]],
  ['inspected by the owner', 'return', /^That is within/, [31_557_600]],
  // Half a bar behind 5 mm, and the jet pushes back with twice that.
  ['sealed leak, bands off', 'permit', /^Keep out of the line of the jet/, [2 * 5e4 * (Math.PI / 4) * 0.005 ** 2]],
  ['sealed leak, bands off', 'permit', /^LINE STAYS UNDER PRESSURE/, [5e4]],
  ['sealed leak, bands off', 'permit', /^The control room/, [5e4]],
  ['sealed leak, bands off', 'permit', /^The gauge reads/, [5e4]],
  ['sealed leak, bands off', 'seal', /^Line pressure/, [5e4]],
  ['sealed leak, bands off', 'seal', /^More than \{0\} in the line/, [5e4]],
  ['sealed leak, bands off', 'seal', /^Press the pad on within/, [(SHARE * 8 * 60) / faster(20.5)]],
  ['sealed leak under a wide sheet', 'seal', /^Sheet \{0\} thick/, [0.00035, 0.06]],
  ['sealed leak, bands off', 'seal', /^Before the band/, [0.005]],
  // 1 MPa over the whole pipe as it stands.
  ['sealed leak, bands off', 'seal', /^Restraints that do not take/, [1e6 * (Math.PI / 4) * 0.3239 ** 2]],
  ['sealed leak, bands off', 'putty', /^When the putty is firm/, [5e4]],
  // Two bands of 20 mm side by side are narrower than the sheet of 54 mm corner to corner.
  ['sealed leak, bands stay', 'putty', /^The bands stay/, [0.054]],
];

describe('a plan tells', () => {
  it.each(rows)('in %s at %s: %s', (name, id, what, expected) => {
    const told = numbers(lineAt(jobOf(name), id, what));
    expect(told.map(rounded)).toEqual(expected.map(rounded));
  });
});

/** The same tape on rolls of another length. */
function onRollsOf(rollLength: number) {
  const base = cases['wall loss under tape'];
  const design = designed({ ...base, wrap: { ...base.wrap, rollLength: rollLength as Length } });
  const plan = planWork(design).steps.find(({ id }) => id === 'wrap')?.does ?? [];
  return { rolls: design.rolls.rolls.length, plan };
}

describe('a wrap as it is told pass by pass', () => {
  const MOST = 30;

  it('starts as far before the centre of the defect as it ends beyond it, and each pass ends on its own side', () => {
    for (const name of ['wall loss under tape', 'thin plies', 'thirty passes', 'bend', 'narrow tape'] as const) {
      const job = jobOf(name);
      const [before = 0, beyond = 0] = numbers(lineAt(job, 'wrap', /^Start \{0\} before/));
      expect(before).toBeCloseTo(beyond, 9);
      expect(before).toBeGreaterThan(cases[name].defect.axialLength / 2);
      expect(numbers(lineAt(job, 'survey', /^Mark the ends of the wrap/))).toEqual([beyond]);
      const told = (job.plan.steps.find(({ id }) => id === 'wrap')?.does ?? []).filter(({ text }) =>
        /^Pass \d/.test(text),
      );
      const { wrap } = job.design;
      const passes = wrap.form === 'tape' ? wrap.passes : 0;
      expect(told).toHaveLength(Math.min(passes, MOST));
      told.forEach((line, index) => {
        const forward = index % 2 === 0;
        expect(line.text).toMatch(
          forward ? /^Pass \d+, forward.*beyond the centre\.$/ : /^Pass \d+, back.*before the centre\.$/,
        );
        expect(line.text).toContain(`Pass ${index + 1},`);
        const [tape = 0, to = 0] = numbers(line);
        // No pass reaches past the ends, nor takes less tape than its helix would on a bare pipe.
        expect(to).toBeGreaterThan(cases[name].defect.axialLength / 2);
        expect(to).toBeLessThanOrEqual(beyond * (1 + 1e-9));
        expect(tape).toBeGreaterThan(Math.PI * job.design.found.outsideDiameter);
      });
      const goesOn = job.plan.steps
        .find(({ id }) => id === 'wrap')
        ?.does.filter(({ text }) => /^Go on in the same way to pass/.test(text));
      expect(goesOn?.map(({ text }) => text)).toEqual(
        passes > MOST ? [`Go on in the same way to pass ${passes}.`] : [],
      );
    }
    expect(jobOf('thin plies').design.rolls.passes.length).toBeGreaterThan(MOST);
    expect(jobOf('thirty passes').design.rolls.passes.length).toBe(MOST);
  });

  it('tells where each roll ends, within the wrap, and no more than thirty of them', () => {
    for (const name of ['wall loss under tape', 'short rolls', 'thin plies'] as const) {
      const job = jobOf(name);
      const { rolls } = job.design.rolls;
      const [, beyond = 0] = numbers(lineAt(job, 'wrap', /^Start \{0\} before/));
      const does = job.plan.steps.find(({ id }) => id === 'wrap')?.does ?? [];
      const told = does.filter(({ text }) => /^Roll \d/.test(text));
      expect(told).toHaveLength(Math.min(rolls.length, MOST));
      told.forEach((line, index) => {
        const at = rolls[index]?.endsAt ?? Number.NaN;
        expect(line.text).toMatch(at < 0 ? /before the centre\.$/ : /beyond the centre\.$/);
        expect(numbers(line)).toEqual([Math.abs(at)]);
        expect(Math.abs(at)).toBeLessThanOrEqual(beyond * (1 + 1e-9));
      });
      const goesOn = does.filter(({ text }) => /^Go on in the same way to roll/.test(text)).map(({ text }) => text);
      expect(goesOn).toEqual(rolls.length > MOST ? [`Go on in the same way to roll ${rolls.length}.`] : []);
    }
    // Thirty rolls to the last one, and none is left out.
    const { tapeLength } = jobOf('wall loss under tape').design.wrap as { tapeLength: number };
    const { rolls, plan } = onRollsOf(tapeLength / 29.5);
    expect(rolls).toBe(MOST);
    expect(plan.filter(({ text }) => /^Roll \d/.test(text))).toHaveLength(MOST);
    expect(plan.filter(({ text }) => /^Go on in the same way to roll/.test(text))).toEqual([]);
    expect(jobOf('short rolls').design.rolls.rolls.length).toBeGreaterThan(MOST);
    expect(jobOf('wall loss under tape').design.rolls.rolls.length).toBeLessThan(MOST);
  });

  it('is as thick when done as its layers on the pipe and the filler', () => {
    for (const [name, ply] of [
      ['wall loss under tape', 0.0008],
      ['thick plies', 0.002],
      ['one sheet over all', 0.0008],
      ['narrow sheet', 0.0008],
    ] as const) {
      const job = jobOf(name);
      const { wrap, laminate } = job.design;
      // A tape of half overlap lays two layers a pass.
      const layers = wrap.form === 'tape' ? 2 * wrap.passes : laminate.plies;
      const [done = 0] = numbers(lineAt(job, 'wrap', /^Diameter when done/));
      expect(done, name).toBeCloseTo(0.3239 + 2 * 0.004 + 2 * layers * ply, 9);
    }
  });

  it('steps in by the stagger from pass to pass, so that its ends make the taper', () => {
    const job = jobOf('narrow tape');
    const [stagger = 0, taper = 0] = numbers(lineAt(job, 'wrap', /^Each pass starts and ends/));
    const { passes } = job.design.rolls;
    const reach = passes.map(({ from, to }) => Math.abs(to - from) / 2);
    expect((reach[0] ?? 0) - (reach.at(-1) ?? 0)).toBeCloseTo((passes.length - 1) * stagger, 9);
    expect(taper).toBe(job.design.extent.taper);
    expect(numbers(lineAt(jobOf('wall loss under tape'), 'wrap', /^All passes end together/))).toEqual([
      jobOf('wall loss under tape').design.extent.taper,
    ]);
  });
});

describe('what is mixed', () => {
  it('is told in batches that hold all of it, ordered in whole kits, and weighed on a scale that is fine enough', () => {
    const said = new Set<string>();
    for (const name of allNamed) {
      const job = jobOf(name);
      const { plan, design } = job;
      const portions: number[] = [];
      for (const [id, parts, mix] of [
        ['filler', design.case.filler, design.mixes.filler],
        ['wrap', design.case.resin, design.mixes.laminateResin],
      ] as const) {
        if (parts === 'none' || mix === 'none') continue;
        const [base = 0, hardener = 0] = numbers(lineAt(job, id, /^\{0\} of base with \{1\}/));
        portions.push(base, hardener);
        // By mass as the maker has it.
        expect(base / hardener, name).toBeCloseTo(parts.parts.base / parts.parts.hardener, 6);
        const [first] = plan.steps.find((step) => step.id === id)?.uses ?? [];
        said.add(first?.text ?? '');
        const batches = first?.text === 'One batch.' ? 1 : (numbers(first)[0] ?? Number.NaN);
        if (first?.text !== 'One batch.') expect(batches, name).toBeGreaterThan(1);
        expect(batches * (base + hardener), name).toBeGreaterThanOrEqual(mix.mass * (1 - 1e-9));
        const item = plan.materials.find(({ use, order }) => use?.value === mix.mass && order?.name === 'kits');
        expect(numbers(item?.note), name).toEqual([parts.kitMass]);
        expect((item?.order?.value ?? 0) * parts.kitMass, name).toBeGreaterThanOrEqual(mix.mass * (1 - 1e-9));
      }
      const scale = plan.tools.find((tool) => tool.name === 'scale');
      // Half of five per cent of the smallest portion.
      if (portions.length === 0) expect(scale, name).toBeUndefined();
      else expect(numbers(scale?.note)[0], name).toBeCloseTo((0.05 / 2) * Math.min(...portions), 12);
    }
    expect(said.size).toBe(2);
  });
});

describe('what is brought', () => {
  const noteOf = ({ plan }: Job, name: RegExp) =>
    numbers([...plan.materials, ...plan.tools].find((item) => name.test(item.name))?.note);

  it('is rolls that hold the tape of every pass with its waste, and no roll more', () => {
    for (const name of ['wall loss under tape', 'bend', 'short rolls', 'thin plies'] as const) {
      const job = jobOf(name);
      const [tape] = job.plan.materials;
      const laid = job.design.rolls.passes.reduce((sum, { tapeLength }) => sum + tapeLength, 0);
      const { rollLength, width } = cases[name].wrap;
      expect(tape?.use?.value).toBeCloseTo(laid, 6);
      expect((tape?.order?.value ?? 0) * rollLength).toBeGreaterThanOrEqual(laid * 1.1 * (1 - 1e-9));
      expect(((tape?.order?.value ?? 0) - 1) * rollLength).toBeLessThan(laid * 1.1);
      expect(numbers(tape?.note)).toEqual([rollLength, width]);
    }
  });

  it('is sheet for every turn, in rolls', () => {
    const job = jobOf('one sheet over all');
    const [sheet] = job.plan.materials;
    const { wrap, laminate } = job.design;
    expect(sheet?.use?.value).toBe(wrap.form === 'sheet' ? wrap.sheetLength : Number.NaN);
    expect(sheet?.use?.value).toBeGreaterThan(Math.PI * 0.3319 * laminate.plies);
  });

  it('is a band, a fastener and a sheet for each that the seal has, and putty for its pad', () => {
    const job = jobOf('sealed leak, two bands off');
    const orders = ['band', 'fastener', 'backing sheet'].map(
      (wanted) => job.plan.materials.find(({ name }) => name === wanted)?.order?.value,
    );
    expect(orders).toEqual([2, 2, 1]);
    // 25 mm on each side of the hole of 4 mm, which is more than three times the hole.
    expect(noteOf(job, /putty/).map(rounded)).toEqual([0.054]);
    const [band = 0] = noteOf(job, /^band$/);
    expect(band).toBeGreaterThan(Math.PI * 0.2191 + 0.12);
    expect(band).toBeLessThan(Math.PI * 0.2291 + 0.12);
    expect(noteOf(job, /^fastener$/)).toEqual([0.008]);
    expect(noteOf(job, /^backing sheet$/).map(rounded)).toEqual([0.0004, 0.054]);
    expect(noteOf(job, /^torque /)).toEqual(numbers(lineAt(job, 'seal', /^Tighten to/)));
  });

  it('is an isolating layer longer than the wrap, and as wide as the pipe is round', () => {
    const job = jobOf('carbon over glass');
    const [under = 0, round = 0] = noteOf(job, /^isolating layer: one ply of glass/);
    const [, beyond = 0] = numbers(lineAt(job, 'wrap', /^Start \{0\} before/));
    expect(under).toBeCloseTo(2 * beyond, 9);
    expect(round).toBeCloseTo(Math.PI * 0.3239, 9);
  });

  it('is a gauge that reads the test pressure, and a hammer of two ounces', () => {
    for (const name of ['wall loss under tape', 'gas test'] as const) {
      const [raised = 0] = numbers(lineAt(jobOf(name), 'pressure-test', /^Raise it in steps/));
      expect(noteOf(jobOf(name), /^pump, gauge/)).toEqual([raised]);
      expect(raised).toBeGreaterThan(4e6);
    }
    expect(noteOf(jobOf('wall loss under tape'), /^tap hammer/)).toEqual([0.057]);
    expect(noteOf(jobOf('qualified surface'), /^profile gauge/)).toEqual([90e-6]);
  });
});

describe('a limit on a plan', () => {
  it.each([
    ['survey', /^Defect no longer/, ['down', 'down']],
    ['survey', /^Least wall/, ['up']],
    ['surface', /^No oil, no dust/, ['down']],
    ['surface', /^Profile \{0\}/, ['up']],
    ['gate', /^Steel reads/, ['up']],
    ['filler', /^Used up within/, ['down']],
    ['wrap', /^Each batch, \{0\} long/, [undefined, 'down', 'up']],
    ['cure', /readings on a cold/, ['up', 'up']],
    ['inspection', /^Thickness \{0\}/, ['up']],
    ['inspection', /^Overlap on prepared steel/, ['up', 'up']],
    ['inspection', /^No step or wrinkle/, ['down']],
    ['return', /^At most/, ['down', 'down']],
    ['return', /^That is within/, ['down']],
  ] as const)('at %s is rounded to its safe side: %s', (id, what, toward) => {
    expect(ways(lineAt(jobOf('wall loss under tape'), id, what))).toEqual(toward);
  });
});

describe('a gas test', () => {
  it('keeps people away by the energy of the gas, as much as so much TNT', () => {
    const job = jobOf('gas test');
    const [energy = 0, tnt = 0, distance = 0] = numbers(lineAt(job, 'pressure-test', /^GAS: stored energy/));
    const [pressure = 0] = numbers(lineAt(job, 'pressure-test', /^Raise it in steps/));
    const volume = (Math.PI / 4) * (0.3239 - 2 * 0.00838) ** 2 * 30;
    const [inside, outside, gamma] = [pressure + 101_300, 101_300, 1.4];
    const byHand = ((inside * volume) / (gamma - 1)) * (1 - (outside / inside) ** ((gamma - 1) / gamma));
    expect(energy / byHand).toBeCloseTo(1, 6);
    // ASME PCC-2 501: 4.266 MJ a kilogram.
    expect(energy / tnt / 4.266e6).toBeCloseTo(1, 2);
    expect(distance).toBeGreaterThanOrEqual(30);
    expect(
      job.plan.steps.some(({ id, does }) => id === 'pressure-test' && does.some(({ text }) => /^Fill with/.test(text))),
    ).toBe(false);
  });
});
