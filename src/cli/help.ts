const COMMON = `  --format FORMAT     text or json; design, compare and doubt also markdown, design also plan, plan-html;
                       plan takes text and html
  --units si|us        units of the answer (si where left out)
  --digits N           significant digits, 2 to 15
  --help               this text

Exit codes: 0 done, 1 no design, 2 bad input, 3 a fault of hoopwright.
`;

/** The help of the program and of each command. */
export const help: Readonly<Record<string, string>> = {
  '': `hoopwright designs composite repairs of corroded or leaking pipe.

  hoopwright design CASE.json            design the repair of a case; - reads standard input
  hoopwright plan CASE.json              the work on site, step by step
  hoopwright compare CASE.json           the design by either rule set, and which rules make the difference
  hoopwright doubt CASE.json             how the results move with each number of the case
  hoopwright evaluate FORMULA name=...   evaluate one formula and show the substitution
  hoopwright check FORMULA name=...      hold a hand calculation to the formula, and name the slip
  hoopwright exercises FORMULA           exercises for a class with random inputs, and their worked answers
  hoopwright formulas [WORD]             list the formulas that hold a word, or show one
  hoopwright survey FILE.csv             screen the metal losses of a survey, the worst first
  hoopwright schema                      JSON Schema of a case

  hoopwright COMMAND --help              the options of a command
  hoopwright --version

${COMMON}`,
  design: `hoopwright design CASE.json [options]

Designs the repair of a case and prints its first page: verdict, drawing, answer, warnings, what was assumed.
The file - is standard input. Any verdict but "designed" ends with exit code 1; the page then says why.

  --full               the whole calculation sheet, every step of it
  --out FOLDER         write every form into a folder: sheet, drawing, plan and design
  --out FILE           write one file: .html, .md and .txt are the whole sheet, .svg is the drawing, .json the design
  --force              replace files that stand there; the case itself is never written
  --format markdown    print the whole sheet as Markdown
  --format plan        print the plan of the work; plan-html prints it as one page
  --start HH:MM        the plan from that hour; --start best looks for the best hour of the forecast
  --actual STEP=HH:MM  real hours at which steps began, joined by commas: they move what follows
  --passed STEP        hold points that were read and passed, joined by commas; one passed over leaves no return time
  --rules FILE         design by a rule set of your own, in place of the one that the case names
  --strict             refuse a value outside its usual span, more often a slip than right
${COMMON}`,
  plan: `hoopwright plan CASE.json [options]

Prints the plan of the work: every step with what to do, how much, the hour or the wait, what lets the crew go on and what
stops it, who signs.

  --out FILE           write it to a file too: .html is one page that works offline, .txt is text
  --force              replace a file that stands there; the case itself is never written
  --format html        print the page
  --start HH:MM        from that hour; --start best looks for the best hour of the forecast
  --actual STEP=HH:MM  real hours at which steps began, joined by commas: they move what follows
  --passed STEP        hold points that were read and passed, joined by commas; one passed over leaves no return time
  --strict             refuse a value outside its usual span, more often a slip than right
${COMMON}`,
  compare: `hoopwright compare CASE.json [options]

Designs the case by its own rule set and by the other one, and names for each difference the rules that make it: one group
of rules at a time is taken from the other set, over the whole design.

${COMMON}`,
  doubt: `hoopwright doubt CASE.json [options]

Moves each number of the case a step down and up, designs the whole job again, and ranks what each result hangs on.

  --within FIELD=AMOUNT  how far fields may be off, joined by commas: the results at all corners
  --spread FIELD=SHAPE   distributions of fields, joined by commas: how likely the repair falls short of its pressure;
                         normal(MEAN; DEVIATION), lognormal(MEAN; DEVIATION), uniform(LEAST; MOST),
                         weibull(LOCATION; SCALE; EXPONENT), none
  --dependence none      that the fields of --spread say nothing of each other: never assumed
  --samples N, --seed N  draws (10000) and seed (1) of the simulation
  --format html          one page; without --within and --spread it draws the rankings, and the thickness against the input
                         that moves it most
${COMMON}
  hoopwright doubt case.json --within "defect.remainingWall=0.3 mm,service.designTemperature=5 K"
  hoopwright doubt case.json --spread "service.designPressure=normal(5.5 bar; 0.6 bar)" --dependence none
`,
  evaluate: `hoopwright evaluate FORMULA name="value unit" ... [options]

Evaluates one formula and shows the equation with its numbers. An input is called by its name or by its symbol;
"hoopwright formulas FORMULA" shows them. Plain numbers and counts are bare, words are as they are: ends=closed.
A list comes from a file, name=@FILE: a JSON array of rows, or a CSV table with a header such as
"position [mm],depth [mm]".

  --unit UNIT          unit of the main result
  --compare "38.4 MPa" hold a result of your own to the digits in which it is written, and name the slip; exit code 1 where it
                       does not agree
  --strict             refuse an input outside the span that is tested
${COMMON}
  hoopwright evaluate pipe/hoop-stress pressure="150 psig" outsideDiameter="12.75 in" wallThickness="0.33 in"
`,
  check: `hoopwright check FORMULA name="value unit" ... --claimed "VALUE UNIT" [options]
hoopwright check CASE.json --claims FILE [options]

Holds a result that was worked out by hand to the digits in which it is written. Where it does not agree, the slips that people
make are tried one at a time, and those named that give it to its last digit: a radius for a diameter, an inch for a millimetre,
psi for MPa, gauge for absolute, two inputs swapped, a square forgotten. With three digits only the common ones are tried, with
fewer none. Exit code 1 where it does not agree.

With a case and --claims it holds the results of a whole calculation to the steps of its sheet, and names the first that departs. A
line of the file is the number of a step on the sheet and its result: 4.2  38.4 MPa. Steps may be left out.

  --claimed "38.4 MPa" the result as written, with its unit
  --claims FILE        results by the numbers of the steps
  --units si|us        units of the sheet (si where left out)
  --format text|json
  --help               this text
`,
  exercises: `hoopwright exercises FORMULA [options]

Draws exercises from the span over which a formula is tested, with inputs rounded as people write them, and works out each answer
from what is printed. The answers come behind the exercises, on a page of their own.

  --count N            how many, 1 to 50 (5 where left out)
  --seed N             the same seed draws the same exercises (1 where left out)
  --part PART          exercises, answers or both (where left out)
  --format FORMAT      text, markdown or html
  --units si|us        units of inputs and answers (si where left out)
  --digits N           significant digits of the answers, 2 to 15
  --help               this text

  hoopwright exercises pipe/hoop-stress --count 3 --seed 7 --part exercises
`,
  formulas: `hoopwright formulas [WORD] [options]

Lists the formulas whose id, title or inputs hold a word; all of them without a word. The id of a formula shows its card:
equation, symbols, limits, evidence, sources.

${COMMON}`,
  survey: `hoopwright survey FILE.csv [name="value unit" ...] --factor N --life TIME [options]

Screens every metal loss of a survey: safe pressure today and at the end of life, the time left, what to repair. The header
names the inputs with their units: "outsideDiameter [mm],wallThickness [mm],defectDepth [mm],defectLength [mm]"; what all rows
share is given once: yieldStrength="359 MPa" designPressure="70 bar" depthRate="0.1 mm/year" lengthRate="0 mm/year". A column
"id" goes through. The file - is standard input. Memory does not grow with the file. A row that cannot be read is written with its
line and the reason, and the exit code is then 2.

  --factor N           failure pressure over safe pressure, 1 or above
  --life TIME          how long the pipe shall serve: "10 year"
  --method METHOD      original B31G, modified B31G, lowest (of the two, where left out)
  --flow-stress RULE   of modified B31G: 1.1 SMYS (where left out), SMYS + 69 MPa
  --top N              the N rows that rank first: too deep for the methods, then to check, then by safe pressure at the end
                       of life over design pressure, then by time left
  --out FOLDER         also draw it: counts by band of safe pressure, depth against length with the limit after B31G, and both on
                       a page with the rows that rank first
  --force              replace files that stand there; the survey itself is never written
  --strict             refuse a row with a value outside its usual span; without it such a row is "to check", never "sound"
  --format csv|json    rows as CSV, or a JSON object a line
${COMMON}`,
  schema: `hoopwright schema [options]

Prints the JSON Schema of a case, for an editor or a validator; with --format text the list of its fields.

${COMMON}`,
};
