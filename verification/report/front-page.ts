import { verdicts } from '../runner/judge.js';
import {
  type Block,
  code,
  count,
  heading,
  link,
  list,
  paragraph,
  type Run,
  strong,
  type Text,
  table,
} from './blocks.js';
import { isArithmeticOnly, otherHands } from './lines.js';
import type { EvidenceCount, Report } from './shape.js';
import { isCalledBare } from './summary.js';

/** What somebody who has to cite the report needs before anything else. */

/** Kept in the repository, without what differs from run to run, or built by a run. */
export type Form = 'kept' | 'built';

/** The one-line result. */
export function oneLine({ summary }: Report): string {
  const { byVerdict, evidence } = summary;
  const agreed = byVerdict.agrees + byVerdict['agrees within the rounding of its inputs'];
  return `${count(summary.cases, 'case')} with ${count(summary.values, 'value')}: ${agreed} agree to the printed digits, ${byVerdict['within stated tolerance']} within a stated tolerance, ${byVerdict['explained difference']} differ for a stated reason, ${byVerdict.fails} fail. Of ${count(summary.formulas, 'formula')}, ${evidence.otherHand} meet a value that another hand published, ${evidence.ownRoute} only a second route of our own (${evidence.arithmeticOnly} of them one that shows the arithmetic only), ${evidence.neither} neither.`;
}

export const NO_WORKED_EXAMPLE =
  'No worked example of a repair by the standards, and no burst pressure of a repaired pipe with its inputs, was found: no laminate thickness has been compared with one that a standard prints.';

/** What of the laminate was held against print, counted from the cases, so that it is true of this run. */
export function laminatePrints({ formulas }: Pick<Report, 'formulas'>): string {
  const laminate = formulas.filter(({ id }) => id.startsWith('laminate/'));
  const meet = laminate.filter(({ lines }) => otherHands(lines).length > 0);
  const differ = laminate.filter(({ cases }) =>
    cases.some(
      ({ class: of, verdict }) => verdict === 'explained difference' && of !== 'derivation' && of !== 'practice',
    ),
  );
  const names = differ.map(({ id }) => id.replace('laminate/', '')).join(', ');
  return ` The mechanics under the equations do meet print: ${meet.length} of ${laminate.length} formulas of the laminate agree with a value from another hand, among them both tubes under one load, the yielded tube, the closed cylinder and the terms of the hole equation. ${differ.length === 0 ? 'None differs.' : `Of the forms that differ from print, each with its reason below (${names}), the sharing form of one direction lies on the unsafe side where the ends are closed: a design takes the thicker of it and of the form of both directions, which agrees.`} The rest stands on derivations by a second route and on recollection.`;
}

const PROVES: readonly Text[] = [
  'that the code computes what its sources print, to the printed digits, wherever a case agrees;',
  [
    'that it does so at 64 digits over the stated validity, and in any system of units (',
    link('numeric accuracy', 'accuracy'),
    ');',
  ],
  [
    'that a design as a whole obeys the laws that any safe design obeys, and that a second program finds the same (',
    link('whole designs', 'whole-designs'),
    ');',
  ],
  [
    'that a wrong constant or a turned condition would have been noticed (',
    link('constants', 'perturbation'),
    ', ',
    link('single changes', 'mutants'),
    ').',
  ],
];

const DOES_NOT: readonly Text[] = [
  'a validation or qualification of any repair system: that takes tests of the material on pipe, by its maker and under the standard;',
  'a licence to skip the standard: the rule sets follow documents whose body pages were not read, and every such value says so;',
  'a licence to skip the competent engineer, who answers for the design under the local code;',
  'proof that an equation describes a given pipe.',
];

const evidenceRow = (name: Text, row: EvidenceCount, called: number, bare: number): Text[] => [
  name,
  ...[row.formulas, row.otherHand, row.ownRoute, row.arithmeticOnly, row.neither, called, bare].map((number) =>
    number === 0 ? '–' : String(number),
  ),
];

function evidenceTable({ summary: { byRoom, evidence } }: Report): Block {
  const sum = (key: 'called' | 'calledBare'): number => byRoom.reduce((all, row) => all + row[key], 0);
  return table(
    [
      'room',
      'formulas',
      'value of another hand',
      'own second route only',
      'of these arithmetic only',
      'neither',
      'called by a design',
      'of these without another hand',
    ],
    [
      ...byRoom.map((row) => evidenceRow(link(row.room, `room-${row.room}`), row, row.called, row.calledBare)),
      evidenceRow(strong('all'), evidence, sum('called'), sum('calledBare')),
    ],
    { align: 'lrrrrrrr', widths: [14, 10, 13, 13, 12, 10, 13, 15] },
  );
}

const MARKS =
  'An asterisk: no second route of our own either. A ring: a definition, a sum or the largest of several, whose route shows the arithmetic only.';

/** The formulas of a design that nobody else has printed a value of, by name: with an asterisk those that have nothing at all. */
function bareBlocks({ formulas, summary }: Report): Block[] {
  const rows = summary.byRoom.flatMap(({ room }): Run[] => {
    const bare = formulas.filter((entry) => entry.id.startsWith(`${room}/`) && isCalledBare(entry));
    if (bare.length === 0) return [];
    const names = bare.flatMap((entry, index): Run[] => [
      index === 0 ? ' ' : ', ',
      { link: entry.id.slice(room.length + 1), to: `f-${entry.id.replaceAll('/', '-')}` },
      entry.lines.length === 0 ? '*' : isArithmeticOnly(entry.lines) ? '°' : '',
    ]);
    return [strong(`${room}:`), ...names, '. '];
  });
  return [
    heading(3, 'Called by a design, and no value of another hand', 'bare'),
    { sort: 'paragraph', small: true, text: [...rows, MARKS] },
  ];
}

function memory({ summary, rules }: Report): Block {
  const recalled = rules.filter(({ tag }) => tag === 'recalled').length;
  const published = rules.filter(({ tag }) => tag === 'published').length;
  return paragraph(
    `Memory: of ${count(rules.length, 'value')} of the rule sets ${recalled} are recalled and ${published} were read in the source’s own text; all stand with their clauses under `,
    link('rule values to confirm', 'rules'),
    `. Of the formulas ${summary.byTag.recalled} have a form or a coefficient that is recalled; each says so on its card, and the `,
    link('tags', 'tags'),
    ' count the rest. No body page of ISO 24817 or ASME PCC-2 was read.',
  );
}

export function frontPage(report: Report, form: Form): Block[] {
  const { identity, summary, volatile } = report;
  const run: readonly Text[][] = [
    [
      'this run',
      [
        'commit ',
        code(volatile.commit),
        volatile.changed.length === 0 ? '' : ` with changes in ${count(volatile.changed.length, 'file')}`,
        `, Node ${volatile.node}, V8 ${volatile.v8}, ${volatile.platform}`,
      ],
    ],
  ];
  const { evidence } = summary;
  return [
    heading(1, `Verification report of ${identity.name} ${identity.version}`, 'top'),
    { sort: 'paragraph', text: oneLine(report), strong: true },
    {
      sort: 'figures',
      items: [
        {
          value: `${evidence.otherHand} of ${evidence.formulas}`,
          label: 'formulas meet a value that another hand published',
        },
        { value: String(evidence.ownRoute), label: 'only a second route of our own' },
        { value: String(evidence.neither), label: 'neither' },
        { value: String(summary.byVerdict.fails), label: 'cases that fail' },
      ],
    },
    table(
      ['', ''],
      [
        [
          'who made it',
          `the authors of ${identity.name} themselves (${identity.authors.join(', ')}); no outside body has reviewed it`,
        ],
        [
          'from what',
          [
            `version ${identity.version}, not released (name the commit), licence ${identity.licence}; lock file `,
            code(`sha256 ${identity.lockHash}`),
            '; seed of every random draw ',
            code(String(identity.seed)),
          ],
        ],
        ...(form === 'built' ? run : []),
        [
          'repeat it',
          [
            code('npm ci && npm run verify'),
            ', one row by ',
            code('npm run case -- ID'),
            '; more under ',
            link('how to reproduce', 'reproduce'),
          ],
        ],
        [
          'cite it',
          [
            `${identity.name} ${identity.version}, verification report, commit, and the id of the formula or case; `,
            link('how to cite', 'cite'),
          ],
        ],
      ],
      { widths: [14, 86] },
    ),
    heading(3, 'What it shows', 'proves'),
    list(...PROVES),
    heading(3, 'What it is not', 'not'),
    list(...DOES_NOT),
    memory(report),
    paragraph(strong(NO_WORKED_EXAMPLE), laminatePrints(report)),
    heading(3, 'What the formulas stand on', 'evidence'),
    evidenceTable(report),
    ...bareBlocks(report),
  ];
}

/** What counts, and how the cases came out. */
export function countBlocks(report: Report, form: Form): Block[] {
  const { summary, identity } = report;
  const head = ['', ...verdicts.map((verdict): Text => verdict), 'cases'];
  const rows = summary.byClass
    .filter(({ cases }) => cases > 0)
    .map((row): Text[] => [
      [strong(row.class), `: ${report.classes[row.class]}`],
      ...verdicts.map((verdict) => (row.byVerdict[verdict] === 0 ? '–' : String(row.byVerdict[verdict]))),
      String(row.cases),
    ]);
  const empty = summary.byClass.filter(({ cases }) => cases === 0).map((row) => row.class);
  return [
    heading(2, 'What counts', 'counts'),
    paragraph(
      strong('Independently published '),
      'is a printed value of another hand, a dataset, or a program of another hand, met without a tolerance or an explanation. A second source with the same ancestor counts once. ',
      strong('Own second route '),
      'is a derivation of this project that imports nothing under test: it shows that the equation follows, not that somebody else found the same; of a definition, a sum or the largest of several it shows the arithmetic only, and is counted apart. Neither: the check of the declared text against the code, the accuracy table, properties, refusals, inequalities, recalled or customary values.',
    ),
    table(head, rows, { align: `l${'r'.repeat(verdicts.length + 1)}`, widths: [40, 10, 14, 12, 12, 6, 6] }),
    paragraph(
      empty.length === 0 ? '' : `No case has the class ${empty.join(' or ')}. `,
      'A case has the verdict of the worst of its values. ',
      form === 'built'
        ? 'Commit and machine on the first page are those of this run.'
        : 'The commit of this file is the one that it is read at: its verdicts, counts and values equal those of a fresh run at every commit, or the tests fail. Commit, changed files and machine of a run stand in the forms that the run builds.',
      ` Accuracy numbers are compared on Node ${identity.nodeMajor} only.`,
    ),
  ];
}
