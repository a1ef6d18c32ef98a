/** A part of the form: what belongs together on site, whatever block of the case it stands in. */
export interface Part {
  readonly id: string;
  readonly title: string;
  readonly says: string;
  readonly keys: readonly string[];
}

/** The parts of the form in the order in which a repair is thought through. A test holds every field of a case in one of them. */
export const parts: readonly Part[] = [
  {
    id: 'job',
    title: 'The job',
    says: 'What this sheet is about, and by which rules.',
    keys: ['title', 'reference', 'date', 'note', 'basis'],
  },
  {
    id: 'measured',
    title: 'The pipe as measured',
    says: 'The pipe, what was found on it, and the fitting it lies on.',
    keys: ['pipe', 'defect', 'fitting'],
  },
  {
    id: 'carries',
    title: 'What it carries',
    says: 'Contents, pressure, temperature, loads, and the line while people work on it.',
    keys: ['service', 'line', 'loads'],
  },
  {
    id: 'asked',
    title: 'What is asked of the repair',
    says: 'Class, life and methods. What is left out takes the safe side.',
    keys: ['repair', 'assessment'],
  },
  {
    id: 'material',
    title: 'The material at hand',
    says: 'Laminate, tape or sheet, resin, filler, and how a leak is held.',
    keys: ['laminate', 'wrap', 'resin', 'filler', 'seal'],
  },
  {
    id: 'site',
    title: 'The site and the crew',
    says: 'Weather and steel on the day, the people, and what is checked before the line goes back.',
    keys: ['site', 'crew', 'acceptance'],
  },
  {
    id: 'confirmed',
    title: 'Numbers you have confirmed',
    says: 'Values of the rule set that somebody read in the document itself.',
    keys: ['confirmed'],
  },
];
