/**
 * The pages of the documentation that are written by hand, and where each stands in the site. Markdown is the source: a page
 * reads as well on the repository.
 */

/** One page: its file in the repository, and what its link in the list of pages says. */
export interface Page {
  readonly source: string;
  readonly label: string;
  readonly group: string;
}

interface Group {
  readonly name: string;
  /** What somebody comes here for. */
  readonly says: string;
  readonly pages: Readonly<Record<string, string>>;
}

export const groups: readonly Group[] = [
  {
    name: 'Tutorials',
    says: 'Learn it by doing, from start to end.',
    pages: {
      'docs/tutorial/first-repair.md': 'From the measured pipe to the signed sheet',
      'docs/tutorial/check-by-hand.md': 'Check hand calculations',
    },
  },
  {
    name: 'How to',
    says: 'One task, done.',
    pages: {
      'docs/case.md': 'Write a case',
      'docs/surveys.md': 'Read a survey',
      'docs/plan.md': 'Plan the work and check what was built',
      'docs/compare.md': 'Compare the rule sets',
      'docs/doubt.md': 'Ask what a design hangs on',
      'docs/how-to/page.md': 'Embed a formula in a page',
      'docs/how-to/service.md': 'Embed it in a service',
      'docs/how-to/form.md': 'Build a form for a case',
      'docs/how-to/coefficient.md': 'Override a coefficient',
      'docs/how-to/formula.md': 'Add a formula',
      'docs/embedding.md': 'Nine programs for embedders',
    },
  },
  {
    name: 'Reference',
    says: 'Every formula, field, unit, refusal and symbol.',
    pages: {
      'docs/command-line.md': 'The command line',
      'docs/quantities.md': 'Quantities and kinds',
      'docs/errors.md': 'Refusals, and what to do',
      'docs/tables.md': 'Tables of sizes and grades',
      'docs/hazards.md': 'Hazard log',
    },
  },
  {
    name: 'Explanation',
    says: 'Why it computes what it computes, and what it does not do.',
    pages: {
      'docs/how-it-designs.md': 'How a repair is designed',
      'docs/why/thinned-pipe.md': 'Why the thinned pipe is judged first',
      'docs/why/thickness.md': 'Why the laminate is as thick as it is',
      'docs/why/leak-and-bond.md': 'Why a leak has criteria of its own',
      'docs/why/cure-and-weather.md': 'Why wait and weather are computed',
      'docs/verification.md': 'How the numbers were verified',
    },
  },
  {
    name: 'The project',
    says: 'Source, report, changes.',
    pages: {
      'README.md': 'Read me first',
      'verification/report/report.md': 'Verification report',
      'DEVELOPERS.md': 'For contributors',
      'CHANGELOG.md': 'Changes',
    },
  },
];

export const pages: readonly Page[] = groups.flatMap(({ name, pages: listed }) =>
  Object.entries(listed).map(([source, label]) => ({ source, label, group: name })),
);

/** Files that go into the site as they are, by where they stand in the repository. */
export const copied: Readonly<Record<string, string>> = {
  LICENSE: 'licence.txt',
  'CITATION.cff': 'citation.cff',
};

/** Where a page of the repository stands in the site: `docs/case.md` is `case.html`. */
export function placeOf(source: string): string {
  if (source === 'verification/report/report.md') return 'verification/report.html';
  return source
    .replace(/^docs\//u, '')
    .toLowerCase()
    .replace(/\.md$/u, '.html');
}
