import type { LawsSummary } from '../laws/summary.js';
import type { MutantsOf } from '../mutants/summary.js';
import type { WholeJobSummary } from '../whole-job/summary.js';
import { type Block, code, count, heading, link, paragraph, type Text, table } from './blocks.js';
import type { Report } from './shape.js';

/** The evidence that formulas do not give: that the job joins them safely. */

const perCent = (part: number, whole: number): string => (whole === 0 ? '–' : `${((part / whole) * 100).toFixed(1)} %`);

function hazardSummary({ wholeDesigns: { hazards } }: Report): Block[] {
  const rows = hazards.map(({ part, rows: each }): Text[] => [
    part,
    String(each.length),
    String(each.reduce((sum, { guards }) => sum + guards, 0)),
    String(new Set(each.flatMap(({ tests }) => tests)).size),
  ]);
  return [
    heading(3, 'Hazards and their guards', 'hazard-summary'),
    paragraph(
      'What could go wrong with a repair, and the guards against it: each place of the job that refuses, asks, warns, stops or fails a record, found in its syntax tree. With every run of the tests each guard is switched off in turn, and each half of a condition that it depends on; a test of its row must go red. None stays unnoticed, or the tests fail. The rows stand ',
      link('at the end of the chapters', 'hazards'),
      '.',
    ),
    table(['part of the job', 'hazards', 'guards', 'tests'], rows, { align: 'lrrr' }),
  ];
}

function lawBlocks({ seed, cases, verdicts, designed, laws, violations, open }: LawsSummary): Block[] {
  const share = Object.entries(verdicts).map(([name, number]) => `${name} ${perCent(number, cases)}`);
  return [
    heading(3, 'Laws over random whole cases', 'laws'),
    paragraph(
      `${count(cases, 'case')} drawn by seed ${seed}: ${share.join(', ')}. Each is designed, and designed again with one thing worse: more of a load, a larger loss, a weaker material, a word left out, a slip of the pen. The worse one must be neither thinner nor shorter, nor back in service earlier, nor of a better verdict, or the slip must be named; where no pair is designed the law asks for a refusal or a question. ${violations === 0 ? 'No law was broken' : `Laws were broken ${count(violations, 'time')}`}${Object.keys(open).length === 0 ? '.' : ', but for the cases named below.'} `,
      code('npm run laws'),
      ' repeats it.',
    ),
    table(
      ['worse by', 'pairs', 'both designed'],
      Object.entries(laws).map(([law, { pairs, bothDesigned }]) => [law, String(pairs), String(bothDesigned)]),
      { align: 'lrr' },
    ),
    table(
      ['designs that were made, by', 'and', 'designs'],
      Object.entries(designed).flatMap(([group, counts]) =>
        Object.entries(counts).map(([name, number], index): Text[] => [index === 0 ? group : '', name, String(number)]),
      ),
      { align: 'llr' },
    ),
    ...(Object.keys(open).length === 0
      ? []
      : [
          table(
            ['law and what', 'times', 'because'],
            Object.entries(open).map(([law, { times, because }]) => [law, String(times), because]),
            { align: 'lrl', widths: [30, 10, 60] },
          ),
        ]),
  ];
}

function putBackBlocks({ wholeDesigns: { putBack } }: Report): Block[] {
  return [
    paragraph(
      `Faults that were found in this library and mended were put back one by one: ${count(putBack.noticed, 'fault')} turned a law red, at a draw that every run of the tests repeats (`,
      code('npm run laws:faults'),
      ' looks for the draws anew). No law noticed these:',
    ),
    table(
      ['what the library did', 'why no law sees it', 'shown by'],
      putBack.unseen.map(({ fault, because, shownBy }) => [fault, because, code(shownBy)]),
      { widths: [36, 40, 24] },
    ),
  ];
}

function secondRouteBlocks(found: WholeJobSummary): Block[] {
  const { seed, cases, verdicts, designed, numbersCompared, wordsCompared, notCompared } = found;
  const share = Object.entries(verdicts).map(([name, number]) => `${name} ${number}`);
  return [
    heading(3, 'The whole job by a second route', 'second-route'),
    paragraph(
      `A second program computes whole designs from the reference notes and shares no code with the library. ${count(cases, 'case')} drawn from seed ${seed} on (${share.join(', ')}): ${numbersCompared} numbers and ${wordsCompared} words compared, ${found.different} differ, ${found.otherVerdicts} verdicts differ; the largest relative difference is ${found.largestRelativeDifference}. ${notCompared} leaves of the answers are not compared, for the reasons below. `,
      code('npm run whole-job'),
      ' repeats it.',
    ),
    paragraph(
      `What this is worth: it was written from the notes, but rules of the job that no note holds were fitted to the answers of the library, so that agreement there shows consistency and not truth. Where note and library read a rule in two ways the run follows the library: ${found.openReadings}. What is chosen over a slot (the root that turns, the modulus through the thickness, the ring that overshoots) it takes from the equations that this report prints. Either answer is held to the other: what one of them alone gives is a difference. Numbers that a reader confirms are not part of it yet.`,
    ),
    table(
      ['designs that were made', 'cases'],
      Object.entries(designed).map(([name, number]) => [name, String(number)]),
      { align: 'lr' },
    ),
    paragraph('Not compared:'),
    { sort: 'list', items: found.because },
  ];
}

function mutantTable({ byPart }: MutantsOf, of: string): Block {
  const parts = Object.entries(byPart);
  const sum = (key: 'changes' | 'noticed' | 'explained'): number => parts.reduce((all, [, part]) => all + part[key], 0);
  const row = (name: Text, changes: number, noticed: number, explained: number): Text[] => [
    name,
    String(changes),
    String(noticed),
    String(explained),
    String(changes - noticed - explained),
    perCent(noticed, changes),
    perCent(noticed, changes - explained),
  ];
  return table(
    [of, 'changes', 'noticed', 'equal in effect', 'unnoticed', 'noticed', 'of those that differ'],
    [
      ...parts.map(([part, { changes, noticed, explained }]) => row(part, changes, noticed, explained)),
      row('all', sum('changes'), sum('noticed'), sum('explained')),
    ],
    { align: 'lrrrrrr' },
  );
}

/** A table of hundreds of lines would say less than the file does. */
const MOST_LISTED = 200;

function unnoticedBlocks({ unnoticed }: MutantsOf): Block[] {
  if (unnoticed.length === 0) return [];
  if (unnoticed.length > MOST_LISTED)
    return [
      paragraph(
        `The ${unnoticed.length} that nobody noticed stand in `,
        code('verification/mutants/summary.json'),
        '.',
      ),
    ];
  const asOne = (text: string): string => text.replaceAll(/\s+/gu, ' ');
  return [
    paragraph(
      'Nobody noticed, and no reason stands for (with the number of tests in which it made a difference at its place):',
    ),
    table(
      ['place', 'written', 'changed to', 'tests'],
      unnoticed.map(({ file, line, original, replacement, asked }) => [
        code(`${file.replace('src/', '')}:${line}`),
        code(asOne(original)),
        code(asOne(replacement)),
        String(asked),
      ]),
      { align: 'lllr', widths: [26, 32, 36, 6] },
    ),
  ];
}

const drawnFrom = ({ seed, drawnFrom: all, tests }: MutantsOf, what: string): string =>
  seed === undefined
    ? `Every change of ${what}, asked of ${count(tests, 'test')}:`
    : `A sample of ${what}, drawn by seed ${seed} from ${all} changes, asked of ${count(tests, 'test')}:`;

function mutantBlocks({ wholeDesigns: { mutants } }: Report): Block[] {
  const { job, rooms } = mutants;
  if (job === undefined && rooms === undefined) return [];
  return [
    heading(3, 'Single changes of the code', 'mutants'),
    paragraph(
      'A condition turned, a side of a comparison swapped, a statement left out, a sum made a difference: each such change is made alone, and the tests are asked whether they notice. Texts are left out. A test is asked where a run on unchanged code shows that the change makes a difference to the value at its place; where it makes none in any test, nothing noticed it. Of thousands of such tests the quickest are asked, as many as take some seconds, and of the job the second route; what only another would notice counts as unnoticed. “Equal in effect”: no admissible case can tell the change from the original, each with its reason; no test is asked of those. The reasons stand in ',
      code('verification/mutants'),
      '. ',
      code('npm run mutants'),
      ' and ',
      code('npm run mutants -- rooms 1500'),
      ' repeat it.',
    ),
    ...(job === undefined
      ? []
      : [paragraph(drawnFrom(job, 'the job')), mutantTable(job, 'part of the job'), ...unnoticedBlocks(job)]),
    ...(rooms === undefined
      ? []
      : [paragraph(drawnFrom(rooms, 'the formulas')), mutantTable(rooms, 'room'), ...unnoticedBlocks(rooms)]),
  ];
}

export function wholeDesignBlocks(report: Report): Block[] {
  const { laws, secondRoute } = report.wholeDesigns;
  return [
    heading(2, 'Evidence for whole designs', 'whole-designs'),
    paragraph(
      'A count of cases proves formulas. A design joins hundreds of them, and can be wrong though each is right: by the wrong wall, a load left out, a time that starts too early. What holds a design as a whole stands here; what would notice a wrong constant stands ',
      link('above', 'perturbation'),
      '.',
    ),
    ...hazardSummary(report),
    ...(laws === undefined ? [] : lawBlocks(laws)),
    ...putBackBlocks(report),
    ...(secondRoute === undefined ? [] : secondRouteBlocks(secondRoute)),
    ...mutantBlocks(report),
  ];
}

/** The hazard log in full. */
export function hazardBlocks({ wholeDesigns: { hazards } }: Report): Block[] {
  return [
    heading(2, 'Hazard log', 'hazards'),
    ...hazards.flatMap(({ part, rows }): Block[] => [
      heading(3, part, `hazards-${part.toLowerCase().replaceAll(/[^a-z]+/gu, '-')}`),
      table(
        ['what could go wrong', 'what it would do', 'guards', 'shown by'],
        rows.map(({ could, would, guards, tests }) => [could, would, String(guards), tests.join('; ')]),
        { align: 'llrl', widths: [27, 27, 7, 39] },
      ),
    ]),
  ];
}
