/** A leaf of an answer that is not compared with the second route, and why. */
export interface Listed {
  readonly path: RegExp;
  readonly because: string;
}

/** Every leaf that the second route does not compare. One that is neither here nor compared fails the test. */
export const listed: readonly Listed[] = [
  { path: /^case\./u, because: 'the case itself, given back' },
  { path: /^assumed\[/u, because: 'values of the table of practice, compared where they are used' },
  {
    path: /^(warnings|reasons|missing)\[/u,
    because: 'numbers inside sentences, which restate numbers compared elsewhere',
  },
  { path: /^rules\[/u, because: 'coefficients of the rule sets, which the second route has from the notes and uses' },
  {
    path: /\.needs\.amounts\[|\.(because|change|limit)\.amounts\[/u,
    because: 'numbers inside sentences, which restate numbers compared elsewhere or limits of the trade',
  },
  { path: /^(libraryVersion|ruleSet)$/u, because: 'words of this version, no result' },
  { path: /^verdict$/u, because: 'compared case by case by the survey, with those that were asked first' },
  {
    path: /^laminate\.thickOverThin\./u,
    because: 'a second opinion, on which nothing rests: held to rings in balance by the derivation of the bond',
  },
  { path: /\.criterion$/u, because: 'the name of a row, by which its value is found' },
  { path: /^because\[/u, because: 'why the second route comes to its verdict, in words of its own' },
  { path: /^cautions\[/u, because: 'the same sentences with every design' },
  {
    path: /^endOfLife\.(measure|comesOff)\[/u,
    because: 'sentences on what is looked at, whose numbers are compared elsewhere',
  },
  {
    path: /\.(needs|because|change|limit)\.text$|\.because$|\.instead$/u,
    because: 'sentences for people; what they say is compared as verdict, as number or as yes and no',
  },
  {
    path: /^acceptance\.inspection\[/u,
    because: 'the table of the rule sets, the same with every design; its wrinkle step is compared as highestWrinkle',
  },
  {
    path: /^acceptance\.missing\[/u,
    because: 'fields that are asked for, whose absence the second route sees in the case',
  },
];
