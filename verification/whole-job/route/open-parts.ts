const CURES = ['cures.putty', 'cures.filler', 'cures.laminate'];
const BATCHES = ['mixes.filler', 'mixes.laminateResin', 'rolls', 'timeline'];
const LAYING = ['wrap', ...BATCHES];
const EXTENT = ['extent', 'acceptance', ...LAYING];
const LAMINATE = ['laminate', ...EXTENT];
const ALL = ['found', 'line', 'seal', 'site', ...CURES, ...LAMINATE];

/** Nobody knows what may stand behind a seal that is not worked out. */
const SEAL = ['seal', 'line.highestPressure', 'line.limitedBy'];

/** What a reason leaves open: nobody works out what rests on something that does not stand. */
const OPENS: Readonly<Record<string, readonly string[]>> = {
  'not covered: kind of defect': ALL,
  'not covered: fitting': ALL,
  'not covered: filler under the wrap': ALL,
  'not covered: brittle laminate': LAMINATE,
  'not covered: steep tape': LAMINATE,
  'not covered: life': LAMINATE,
  'not covered: default strain near failure': LAMINATE,
  'not covered: extent': EXTENT,
  'not covered: joints without an extent': LAMINATE,
  'not covered: pad round more than half the pipe': [...SEAL, ...CURES, ...LAMINATE],
  'not covered: moisture cure': [...CURES, ...BATCHES],
  'not repairable: too hot': LAMINATE,
  'not covered: cycles': LAMINATE,
  'not repairable: sound pipe yields': LAYING,
  'not repairable: sound pipe above its allowable stress shares': LAYING,
  'not repairable: colder than qualified': LAYING,
  'not repairable: too cold to cure': [...CURES, ...BATCHES],
  'not repairable: no time to place': BATCHES,
  'not repairable: class': LAYING,
  'not repairable: lap shear': LAYING,
  'not repairable: thick laminate': LAYING,
  'not repairable: line at work': LAYING,
  'not repairable: no procedure': LAYING,
  'not repairable: seal': LAYING,
  'not repairable: span buckles': LAYING,
  'not repairable: tight bend': LAYING,
  'not repairable: metal beside the slot tears on': LAYING,
  'not repairable: metal beside the slot parts': LAYING,
  'not repairable: neighbour under pressure': LAYING,
  'not repairable: neighbour under what presses from outside': LAYING,
  'not covered: neighbour bent by soil': LAYING,
  'needs input: factor for the metal beside the slot': LAMINATE,
  'needs input: radius of the bend': LAMINATE,
  'needs input: extents of the slot': LAMINATE,
  'needs input: strain to failure': LAMINATE,
  'needs input: seal': [...SEAL, ...CURES, ...LAMINATE],
  'needs input: what the wall carries at work': ['line'],
  'needs input: growth': ALL,
  'needs input: history': ['timeline'],
};

/** Whether a part is left open by one of the reasons. */
export function isOpen(part: string, reasons: readonly string[]): boolean {
  return reasons.some((reason) => OPENS[reason]?.includes(part));
}

/** The answer without the parts that its reasons leave open. */
export function withoutOpenParts(
  answer: Readonly<Record<string, unknown>>,
  reasons: readonly string[],
): Readonly<Record<string, unknown>> {
  const without = (value: unknown, path: string): unknown => {
    if (isOpen(path, reasons)) return undefined;
    if (path.includes('.') || typeof value !== 'object' || value === null || Array.isArray(value)) return value;
    const members = Object.entries(value);
    return Object.fromEntries(members.map(([key, member]) => [key, without(member, `${path}.${key}`)]));
  };
  return Object.fromEntries(Object.entries(answer).map(([key, part]) => [key, without(part, key)]));
}
