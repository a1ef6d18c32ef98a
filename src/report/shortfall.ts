import type { CriterionPoint, Distribution, NumericInput, Shortfall } from '../doubt/index.js';
import { formatNumber } from '../quantity/format.js';
import type { Block } from './document.js';
import { inputText } from './doubt.js';
import { type ChosenOptions, chosen, type SheetOptions } from './options.js';
import { render } from './render.js';
import { showSafely } from './safe-side.js';
import { shownValue } from './shown-value.js';

/**
 * How likely a repair falls short of its pressure, from stated distributions, as a sheet.
 *
 * @param found of `shortfall`
 * @param options how the sheet is written
 */
export function shortfallSheet(found: Shortfall, options: SheetOptions = {}): string {
  const all = chosen(options);
  const { plies, stated, inputs, simulation, firstOrder } = found;
  const pressure = (name: string, value: number): string => showSafely(all)('gauge pressure', name, value);
  const { samples, seed, short, refused, because, interval } = simulation;
  const spread = inputs.filter(({ distribution }) => distribution !== 'none');
  const fixed = inputs.filter(({ distribution }) => distribution === 'none');
  const blocks: Block[] = [
    { sort: 'title', text: 'How likely the repair falls short of its pressure' },
    {
      sort: 'paragraph',
      text: `${plies} plies, as designed: they resist ${pressure('resistance', stated.resistance)} in the case as stated, by ${stated.governing}, and are asked for ${pressure('pressure', stated.pressure)}. The resistance is the rated one, with the allowable strains and service factors of the rule set in it: this is the chance to fall short of a rating, and no chance of a failure. The inputs are taken to say nothing of each other, as stated.`,
    },
    {
      sort: 'table',
      head: ['input', 'as stated', 'distribution'],
      rows: spread.map((input) => [
        input.path,
        inputText(input, input.value, all),
        distributionText(input, input.distribution, all),
      ]),
    },
    { sort: 'paragraph', text: `Distribution none, so as stated: ${fixed.map(({ path }) => path).join(', ')}.` },
    { sort: 'heading', level: 1, text: 'BY SIMULATION' },
    {
      sort: 'paragraph',
      text: `${short} of ${samples} draws fall short (seed ${seed}): ${number(simulation.probability)}, between ${number(interval.least)} and ${number(interval.most)} with a confidence of ${formatNumber(100 * interval.level, 3)} % (Clopper and Pearson).${refused === 0 ? '' : ` ${refused} of them count as short because nothing is known of them; the first: ${because}.`}`,
    },
    {
      sort: 'list',
      items: Object.entries(simulation.shortBy).map(
        ([criterion, count]) => `${criterion}: ${count} of the short draws`,
      ),
    },
    { sort: 'heading', level: 1, text: 'BY THE FIRST-ORDER METHOD' },
    { sort: 'table', head: ['criterion', 'index', 'probability'], rows: firstOrder.lines.map(lineRow) },
    ...firstOrder.lines.flatMap((line) => pointBlocks(line, spread, all)),
    { sort: 'paragraph', text: verdictText(found) },
  ];
  return render(blocks, options);
}

function verdictText({ firstOrder: { governing, probability, atMost, agrees }, stated }: Shortfall): string {
  if (governing === undefined || probability === undefined || atMost === undefined)
    return 'The first-order method finds no point: the simulation alone counts.';
  const turned =
    governing === stated.governing
      ? ''
      : ` Another criterion governs there than in the case as stated, ${stated.governing}.`;
  const agreement =
    agrees === true
      ? 'It lies in the interval of the simulation.'
      : 'It does not lie in the interval of the simulation: the limit is no plane there, has a step, or several criteria count. The simulation counts.';
  return `Nearest is ${governing}, with ${number(probability)}; all criteria together at most ${number(atMost)}.${turned} ${agreement}`;
}

function lineRow(line: CriterionPoint): string[] {
  if ('because' in line) return [line.criterion, '-', line.because];
  return [line.criterion, formatNumber(line.found.index, 4), number(line.found.probability)];
}

function pointBlocks(line: CriterionPoint, spread: Shortfall['inputs'], options: ChosenOptions): Block[] {
  if ('because' in line) return [];
  const items = spread.map((input, index) => {
    const at = inputText(input, line.values[input.path] ?? input.value, options);
    return `${input.path} at ${at}, ${formatNumber(100 * (line.found.shares[index] ?? 0), 3)} % of the square of the index`;
  });
  return [
    { sort: 'paragraph', text: `${line.criterion}, most likely reached at:` },
    { sort: 'list', items },
  ];
}

function distributionText(input: NumericInput, distribution: Distribution | 'none', options: ChosenOptions): string {
  if (distribution === 'none') return 'none';
  const spreadKind = input.kind === 'temperature' ? 'temperature difference' : input.kind;
  const name = input.path.split('.').at(-1) ?? input.path;
  const off = (value: number): string => shownValue(spreadKind, name, value, options, true);
  const at = (value: number): string => inputText(input, value, options);
  switch (distribution.shape) {
    case 'normal':
    case 'lognormal':
      return `${distribution.shape}, mean ${at(distribution.mean)}, standard deviation ${off(distribution.standardDeviation)}`;
    case 'uniform':
      return `uniform, ${at(distribution.least)} to ${at(distribution.most)}`;
    case 'Weibull minimum':
      return `Weibull minimum, location ${at(distribution.location)}, scale ${off(distribution.scale)}, exponent ${formatNumber(distribution.exponent, 4)}`;
  }
}

function number(value: number): string {
  return formatNumber(value, 3);
}
