import { describe, expect, it } from 'vitest';
import { type Line, time } from '../../../src/quantity/index.js';
import { designRepair, type PlanStep, planWork, type StepId, type StockItem } from '../../../src/repair/index.js';
import { planned } from '../plan-cases.js';
import { allNamed, cases, drawnJobs, type Job, jobOf } from './of-every-kind.js';

/** What holds of every plan, whatever the job. */

type Law = (job: Job) => string | undefined;

const saidAt = ({ does, uses, practice, goes, stops }: PlanStep): readonly Line[] =>
  [does, uses, practice, goes, stops].flat();
const items = ({ plan }: Job): readonly StockItem[] => [...plan.materials, ...plan.tools];

/** A sentence that an amount stands in wherever it is named, and that names every amount. */
function unfit(said: unknown): string | undefined {
  if (typeof said !== 'object' || said === null || !('text' in said) || typeof said.text !== 'string')
    return `${String(said)} is no line`;
  const { text, amounts = [] } = said as Line;
  if (!/^[\dA-Z{"(]/u.test(text) || !/\S[.:?]$/u.test(text)) return `"${text}" is no sentence`;
  if (/undefined|NaN|null|\[object|\{\}/u.test(text)) return `"${text}" has a hole`;
  const named = new Set([...text.matchAll(/\{(\d+)\}/gu)].map(([, index]) => Number(index)));
  if ([...named].some((index) => amounts[index] === undefined)) return `"${text}" lacks an amount`;
  // One reading is said in a word.
  if (amounts.some(({ kind }, index) => kind !== 'count' && !named.has(index))) return `"${text}" keeps an amount back`;
  const unreal = amounts.find(({ value, name }) => !Number.isFinite(value) || name === '');
  return unreal === undefined ? undefined : `"${text}" has the amount ${unreal.value}`;
}

const AT_GATE = 'says at the gate each reason of the site against the start, and what would change it';

/** What is wrong with a plan, by law. */
const laws: Readonly<Record<string, Law>> = {
  'speaks in whole sentences, each with the amounts that it names': ({ plan }) => {
    for (const said of [...plan.steps.flatMap(saidAt), ...plan.alerts, ...plan.removal]) {
      const wrong = unfit(said);
      if (wrong !== undefined) return wrong;
    }
    return undefined;
  },
  'has in each step what to do, what lets it go on, what stops it, whom to call and who signs': ({ plan }) => {
    for (const { id, title, does, goes, stops, call, signs } of plan.steps) {
      if ([does, goes, stops].some((lines) => lines.length === 0)) return `${id} lacks lines`;
      if ([title, call, signs].some((text) => !/^[A-Za-z]{3}/u.test(text))) return `${id} lacks a word`;
    }
    return undefined;
  },
  'says nothing twice in a step': ({ plan }) => {
    for (const step of plan.steps) {
      const said = saidAt(step).map((line) => JSON.stringify(line));
      const twice = said.find((text, index) => said.indexOf(text) !== index);
      if (twice !== undefined) return `${step.id}: ${twice}`;
    }
    return undefined;
  },
  'has each step and each wait once, after all that it waits for': ({ plan, design }) => {
    const ids = plan.steps.map(({ id }) => id);
    if (new Set(ids).size !== ids.length) return `twice one of ${ids.join(', ')}`;
    const waits = plan.steps.flatMap(({ takes }) => ('cure' in takes ? [takes.cure] : []));
    const cured = Object.entries(design.cures).flatMap(([use, cure]) => (cure === 'none' ? [] : [use]));
    if (waits.toSorted().join() !== cured.toSorted().join()) return `waits for ${waits.join()}, not ${cured.join()}`;
    for (const { id, after, startsAt } of plan.steps)
      for (const before of after) {
        const earlier = plan.steps.find((each) => each.id === before);
        if (earlier === undefined || ids.indexOf(before) > ids.indexOf(id)) return `${before} is not before ${id}`;
        if (startsAt < earlier.endsAt) return `${id} begins before ${before} ends`;
      }
    return undefined;
  },
  'lists the steps without a time, and those that set the return, each by its id': ({ plan }) => {
    const open = plan.steps.flatMap(({ id, duration }) => (duration.known ? [] : [id]));
    const critical = plan.steps.flatMap((step) => (step.critical ? [step.id] : []));
    if (open.join() !== plan.withoutTime.join()) return `without time: ${plan.withoutTime.join()}`;
    if (critical.join() !== plan.criticalPath.join()) return `critical: ${plan.criticalPath.join()}`;
    return plan.earliestReturn.known === (open.length === 0) ? undefined : 'knows a return that it cannot know';
  },
  'repeats each warning of the design once, at its step, and where the job has no such step at the first': ({
    plan,
    design,
  }) => {
    const ids = plan.steps.map(({ id }) => id);
    const due = design.warnings.flatMap(({ step, text }) =>
      step === undefined ? [] : [`${ids.includes(step) ? step : ids[0]}: WARNING: ${text}`],
    );
    const told = plan.steps.flatMap(({ id, does }) =>
      does.flatMap(({ text }) => (text.startsWith('WARNING: ') ? [`${id}: ${text}`] : [])),
    );
    return told.toSorted().join('\n') === due.toSorted().join('\n') ? undefined : told.join('\n');
  },
  [AT_GATE]: ({ plan, design }) => {
    const gate = plan.steps.find(({ id }) => id === 'gate');
    const against = design.site.reasons.filter(({ decision }) => decision !== 'go').length;
    const told = gate?.stops.filter(({ text }) => text.startsWith('What changes it, ')).length;
    if (told !== against) return `${told} changes of ${against} reasons`;
    // What is read, and the decision, stand before them.
    return gate?.does.filter(({ text }) => !text.startsWith('WARNING')).length === 2 + against
      ? undefined
      : 'other reasons are told';
  },
  'adds to the hours of the forecast each step from the gate to the cure whose time nobody knows': ({ plan }) => {
    const ids = plan.steps.map(({ id }) => id);
    const [from, to] = [ids.indexOf('gate'), ids.indexOf('cure')];
    const open = plan.steps.flatMap(({ id, duration }, index) =>
      index >= from && index < to && !duration.known && duration.atLeast === undefined ? [id as string] : [],
    );
    const told = (plan.steps[from]?.goes ?? []).flatMap(({ text }) => {
      const [, id] = /^Not counted in it, and to be added: the time of "([a-z-]+)"/u.exec(text) ?? [];
      return id === undefined ? [] : [id];
    });
    return told.join() === open.join() ? undefined : `told ${told.join()} of ${open.join()}`;
  },
  'rejects at the inspection all that the table of findings rejects, and nothing that it lets pass': ({
    plan,
    design,
  }) => {
    const stops = plan.steps.find(({ id }) => id === 'inspection')?.stops.map(({ text }) => text) ?? [];
    const due = design.acceptance.inspection.flatMap(({ feature, beyond, remedy }) =>
      /^reject/iu.test(beyond) ? [`${feature} that is not as above: ${beyond}, ${remedy}.`.toLowerCase()] : [],
    );
    if (stops.length === 0) return 'nothing is rejected';
    return [...new Set(due)].toSorted().join('\n') ===
      stops
        .map((text) => text.toLowerCase())
        .toSorted()
        .join('\n')
      ? undefined
      : stops.join('\n');
  },
  'brings each thing once, by its name, in whole packs': (job) => {
    const names = items(job).map((item) => item?.name);
    if (names.some((name) => typeof name !== 'string' || name === '')) return 'something without a name';
    if (new Set(names).size !== names.length) return 'something twice';
    for (const { name, order, use, note } of items(job)) {
      if (order !== undefined && !(Number.isInteger(order.value) && order.value > 0)) return `${order.value} ${name}`;
      if (use !== undefined && !(use.value > 0)) return `uses ${use.value} ${name}`;
      if (note === undefined) continue;
      const wrong = unfit({ ...note, text: `${note.text.charAt(0).toUpperCase()}${note.text.slice(1)}.` });
      if (wrong !== undefined) return wrong;
    }
    return undefined;
  },
  'is named as its case, counts from its crew, and keeps its reference where it has one': ({
    plan,
    design: { case: repairCase },
  }) => {
    if (plan.title !== repairCase.title) return plan.title;
    if (plan.start !== repairCase.crew?.start) return plan.start;
    if ('start' in plan !== (repairCase.crew !== undefined)) return 'a start that is undefined';
    if ('reference' in plan !== (repairCase.reference !== undefined)) return 'a reference of nobody';
    if (plan.steps.some((step) => 'actual' in step)) return 'an hour that nobody entered';
    return plan.reference === repairCase.reference ? undefined : plan.reference;
  },
};

const broken = (jobs: readonly Job[], but = ''): string[] =>
  jobs.flatMap((job) =>
    Object.entries(laws).flatMap(([name, law]) => {
      if (name === but) return [];
      const wrong = law(job);
      return wrong === undefined ? [] : [`${job.design.case.title} ${name}: ${wrong}`];
    }),
  );

/** Later than the forecast reaches: the filler is laid at its last hours, and the gate stands beyond it. */
const lateJobs = (): Job[] => [
  jobOf('wall loss under tape', { durations: { surface: time.hour(94) } }),
  jobOf('wall loss under tape', { durations: { surface: time.hour(500) } }),
];

describe('every plan', () => {
  it('keeps each law, in jobs of every kind', () => {
    const jobs = allNamed.map((name) => jobOf(name));
    expect(broken(jobs)).toEqual([]);
    // Their gate is judged anew, at the hour to which it moves.
    expect(broken(lateJobs(), AT_GATE)).toEqual([]);
    expect(jobs.some(({ plan }) => plan.reference !== undefined)).toBe(true);
  });

  it('keeps each law, in jobs drawn at random', () => {
    expect(broken(drawnJobs(25))).toEqual([]);
  });

  it('says how the repair comes off: the line is safe first, and no cut goes into the steel', () => {
    const { removal } = jobOf('wall loss under tape').plan;
    expect(removal[0]?.text).toMatch(/^Isolate, depressurise/);
    expect(removal.some(({ text }) => text.includes('not into the steel'))).toBe(true);
  });
});

describe('a warning of a step that the job does not have', () => {
  it('stands at the first step, where somebody reads it, and every other at its own', () => {
    const { design } = jobOf('wall loss from inside');
    const told = (step: StepId) =>
      planWork({ ...design, warnings: [{ step, text: 'Mind the gap.' }] }).steps.flatMap(({ id, does }) =>
        does.some(({ text }) => text === 'WARNING: Mind the gap.') ? [id] : [],
      );
    expect(told('putty')).toEqual(['permit']);
    expect(told('wrap')).toEqual(['wrap']);
  });
});

describe('the plan of a repair that was not designed', () => {
  it('has no step, no hour, nothing to bring and nothing to do, and says why', () => {
    const refused = planWork(designRepair({ ...planned, fitting: { kind: 'tee' } }));
    expect(refused).toMatchObject({
      steps: [],
      criticalPath: [],
      withoutTime: [],
      alerts: [],
      materials: [],
      tools: [],
      removal: [],
      earliestReturn: { known: false, because: 'there is no design' },
    });
    expect(refused.reasons.length + refused.missing.length).toBeGreaterThan(0);
    expect(refused.title).toBe(cases['wall loss under tape'].title);
  });
});
