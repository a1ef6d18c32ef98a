import type { RecordedStep } from '../formula/recorder.js';
import { declarationOf } from './declaration-of.js';
import type { Block } from './document.js';
import { toHtml, toHtmlFragment } from './html.js';
import { toMarkdown } from './markdown.js';
import { chosen, type SheetOptions, type StepOptions } from './options.js';
import { stepBlocks } from './step.js';
import { toText } from './text.js';

/** Blocks in the format asked for. */
export function render(blocks: readonly Block[], options: SheetOptions): string {
  const { format } = chosen(options);
  if (format === 'html') return toHtml(blocks);
  if (format === 'html-fragment') return toHtmlFragment(blocks);
  return format === 'markdown' ? toMarkdown(blocks) : toText(blocks);
}

/**
 * One recorded step as text or Markdown, with its numbers and units as typed where these are given.
 *
 * @param step as it was recorded
 * @param options how it is written, and what was typed
 */
export function renderStep(step: RecordedStep, options: StepOptions = {}): string {
  return render(stepBlocks(declarationOf(step), step, options), options);
}
