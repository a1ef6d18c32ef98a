import {
  Application,
  type DeclarationReflection,
  LogLevel,
  type ProjectReflection,
  ReflectionKind,
  RendererEvent,
} from 'typedoc';
import type { Entry } from '../search/rank.js';
import { options } from './options.js';
import { teach, wordless } from './reflections.js';

/** The pages of the interface, written by typedoc from the doc comments. */
export interface Symbols {
  /** What stands against them: every warning of typedoc, and every exported symbol or field without words. */
  readonly problems: readonly string[];
  /** Where the page of an exported symbol of a room stands in the site. */
  placeOf(room: string, name: string): string | undefined;
  readonly entries: readonly Entry[];
}

export async function writeSymbols(folder: string): Promise<Symbols> {
  const problems: string[] = [];
  const app = await Application.bootstrap({ ...options, out: folder, logLevel: LogLevel.Warn });
  teach(app);
  const { logger } = app;
  const log = logger.log.bind(logger);
  logger.log = (message, level) => {
    if (level >= LogLevel.Warn) problems.push(`typedoc: ${message}`);
    else log(message, level);
  };
  const project = await app.convert();
  if (project === undefined) throw new Error(`typedoc could not read the source:\n${problems.join('\n')}`);
  app.validate(project);
  let places = new Map<string, Entry>();
  // The addresses are known while typedoc writes, no longer afterwards.
  app.renderer.on(RendererEvent.BEGIN, () => {
    places = placesOf(project, (reflection) => app.renderer.router?.getFullUrl(reflection));
  });
  await app.generateOutputs(project);
  return {
    problems: [...problems, ...wordless(project).map((name) => `without words: ${name}`)],
    placeOf: (room, name) => places.get(`${room} ${name}`)?.place,
    entries: [...places.values()],
  };
}

function placesOf(
  project: ProjectReflection,
  addressOf: (reflection: DeclarationReflection) => string | undefined,
): Map<string, Entry> {
  const found = new Map<string, Entry>();
  for (const entry of project.getReflectionsByKind(ReflectionKind.Module)) {
    for (const symbol of (entry as DeclarationReflection).children ?? []) {
      const address = addressOf(symbol);
      if (address === undefined) continue;
      const comment = symbol.comment ?? symbol.signatures?.[0]?.comment;
      const text = comment?.summary.map((part) => part.text).join('') ?? '';
      const sort = ReflectionKind.singularString(symbol.kind).toLowerCase();
      const says = `hoopwright/${entry.name}. ${text.replaceAll(/\s+/gu, ' ')}`.replace(
        'hoopwright/index',
        'hoopwright',
      );
      found.set(`${entry.name} ${symbol.name}`, {
        title: symbol.name,
        place: `api/${address}`,
        sort,
        terms: [],
        text: says.slice(0, 260),
      });
    }
  }
  return found;
}
