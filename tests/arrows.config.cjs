/**
 * Which room may import which. An arrow that runs the other way fails the test command.
 * The order is that of DEVELOPERS.md; each room may import the rooms that stand before it.
 */
const middle = ['pipe', 'laminate', 'wrap', 'resin', 'cure', 'site', 'seal', 'acceptance'];
const order = [
  ['numeric'],
  ['quantity'],
  ['formula'],
  ['rules'],
  ['mechanics'],
  middle,
  ['repair'],
  ['compare'],
  ['doubt'],
  ['survey'],
  ['registry'],
  ['report', 'json'],
  ['evaluate'],
  ['cli'],
];

const forbidden = order.flatMap((rooms, level) =>
  rooms.map((room) => {
    const allowed = [room, ...order.slice(0, level).flat()];
    return {
      name: `${room}-imports-only-what-stands-before-it`,
      severity: 'error',
      from: { path: `^src/${room}/` },
      to: { path: '^src/', pathNot: `^src/(${allowed.join('|')})/` },
    };
  }),
);

module.exports = {
  forbidden: [
    ...forbidden,
    {
      name: 'the-second-route-knows-nothing-of-the-library',
      comment: 'A design that is computed again by the code it is held against would agree with every fault in it.',
      severity: 'error',
      from: { path: '^verification/whole-job/route/' },
      to: { pathNot: '^verification/whole-job/route/' },
    },
    { name: 'no-cycles', severity: 'error', from: { path: '^(src|verification/whole-job)/' }, to: { circular: true } },
    {
      name: 'words-stay-out-of-the-job',
      comment:
        'What the fields of a case say to people is for json and report: a program that designs does not load it.',
      severity: 'error',
      from: { path: '^src/repair/', pathNot: '^src/repair/case/words' },
      to: { path: '^src/repair/case/words' },
    },
    {
      name: 'only-the-shell-knows-node',
      severity: 'error',
      from: { path: '^src/', pathNot: '^src/cli/' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'only-the-command-uses-packages',
      severity: 'error',
      from: { path: '^src/', pathNot: '^src/cli/' },
      to: { dependencyTypes: ['npm', 'npm-dev', 'npm-no-pkg', 'unknown'] },
    },
  ],
  options: { tsConfig: { fileName: 'tsconfig.json' }, tsPreCompilationDeps: true },
};
