import { bibliographyBlocks, knownProblemBlocks, propertyBlocks, ruleBlocks, unitBlocks } from './annex-blocks.js';
import {
  accuracyAnnex,
  accuracyBlocks,
  engineBlocks,
  handCheckBlocks,
  perturbationBlocks,
} from './arithmetic-blocks.js';
import { type Block, heading, paragraph } from './blocks.js';
import { errataBlocks, exceptionBlocks, lookUpBlocks, methodBlocks, roomBlocks, tagBlocks } from './case-blocks.js';
import { burstBlocks, dewPointBlocks, pipeSizeBlocks } from './compared-blocks.js';
import { coverageBlocks } from './coverage-blocks.js';
import { cardBlocks } from './formula-cards.js';
import { countBlocks, type Form, frontPage } from './front-page.js';
import { indexBlocks } from './index-blocks.js';
import type { Report } from './shape.js';
import { hazardBlocks, wholeDesignBlocks } from './whole-design-blocks.js';

/** The report as a document: what is said, in which order. It reads the data of the report and nothing else. */

function ending({ bibtex, identity }: Report): Block[] {
  return [
    heading(2, 'How to reproduce', 'reproduce'),
    paragraph(`On a clean clone with Node ${identity.nodeMajor}:`),
    {
      sort: 'code',
      text: 'npm ci\nnpm run verify    # writes report.md, and report.html and report.json under build/report/; fails if a case fails\nnpm test          # holds the verdicts, counts and values of report.md to a fresh run\nnpm run perturb   # what would notice a wrong constant, in minutes',
    },
    heading(2, 'How to cite', 'cite'),
    { sort: 'code', text: bibtex },
    paragraph('Give the version and the commit of the report, and the id of the case or formula that you rely on.'),
  ];
}

/** The whole report in blocks: a body that tells, and annexes in which to look things up. */
export function documentBlocks(report: Report, form: Form): Block[] {
  return [
    ...frontPage(report, form),
    ...indexBlocks(report),
    { sort: 'contents' },
    ...countBlocks(report, form),
    ...methodBlocks(),
    ...tagBlocks(report),
    ...roomBlocks(report),
    ...lookUpBlocks(report),
    ...exceptionBlocks(report),
    ...errataBlocks(report),
    ...burstBlocks(report.burst),
    ...dewPointBlocks(report),
    ...pipeSizeBlocks(report),
    ...accuracyBlocks(report),
    ...engineBlocks(report),
    ...perturbationBlocks(report),
    ...wholeDesignBlocks(report),
    ...handCheckBlocks(report),
    ...knownProblemBlocks(report),
    ...ending(report),
    ...bibliographyBlocks(report),
    ...cardBlocks(report),
    ...ruleBlocks(report),
    ...coverageBlocks(report),
    ...accuracyAnnex(report),
    ...propertyBlocks(report),
    ...unitBlocks(report),
    ...hazardBlocks(report),
  ];
}
