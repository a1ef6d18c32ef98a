import {
  type Application,
  Comment,
  type Context,
  Converter,
  type DeclarationReflection,
  type ParameterReflection,
  type ProjectReflection,
  type Reflection,
  ReflectionKind,
  type SignatureReflection,
} from 'typedoc';
import ts from 'typescript';
import { type FieldWords, fieldWords } from '../../field-words.js';

/** What typedoc is taught beside its options: words from tables, names of taken-apart inputs, choices by their words. */
export function teach({ converter }: Application): void {
  const known = new Map<ts.Program, FieldWords>();
  const wordsOf = (context: Context, reflection: DeclarationReflection): string | undefined => {
    for (const node of context.getSymbolFromReflection(reflection)?.declarations ?? []) {
      for (const program of context.programs) {
        const words = known.get(program) ?? fieldWords(program);
        known.set(program, words);
        const text = words.get(node);
        if (text !== undefined) return text;
      }
    }
    return undefined;
  };
  converter.on(Converter.EVENT_CREATE_DECLARATION, (context: Context, reflection: DeclarationReflection) => {
    const text = reflection.comment === undefined ? wordsOf(context, reflection) : undefined;
    if (text !== undefined) reflection.comment = new Comment([{ kind: 'text', text }]);
    if (reflection.kind === ReflectionKind.TypeAlias) spellOut(context, reflection);
  });
  converter.on(Converter.EVENT_CREATE_SIGNATURE, (_: Context, signature: SignatureReflection) => nameInputs(signature));
}

/** An input that is taken apart in the head of its function has the name by which its doc comment calls it. */
function nameInputs({ comment, parameters = [] }: SignatureReflection): void {
  const taken = parameters.map(({ name }) => name);
  const called = comment?.getTags('@param').map(({ name = '' }) => name.replace(/\..*$/u, ''));
  const unnamed = parameters.find(({ name }) => name === '__namedParameters');
  if (unnamed !== undefined) unnamed.name = called?.find((name) => !taken.includes(name)) ?? 'input';
}

/** `(typeof choices)[number]` says nothing to a reader; the words of the choice do. */
function spellOut(context: Context, reflection: DeclarationReflection): void {
  const [node] = context.getSymbolFromReflection(reflection)?.declarations ?? [];
  if (node === undefined || !ts.isTypeAliasDeclaration(node)) return;
  if (!/^\(typeof \w+\)\[number\]$/u.test(node.type.getText())) return;
  reflection.comment ??= new Comment();
  reflection.comment.modifierTags.add('@useDeclaredType');
}

const DOCUMENTED =
  ReflectionKind.Function |
  ReflectionKind.Variable |
  ReflectionKind.Class |
  ReflectionKind.Interface |
  ReflectionKind.TypeAlias |
  ReflectionKind.Property |
  ReflectionKind.Method;

/** The exported symbols, fields and parameters that have no words, by their full names. */
export function wordless(project: ProjectReflection): string[] {
  const symbols = project
    .getReflectionsByKind(DOCUMENTED)
    .filter((reflection) => !hasWords(reflection as DeclarationReflection) && !isData(reflection));
  const parameters = project.getReflectionsByKind(ReflectionKind.Function).flatMap((reflection) => {
    // What makes a quantity or reads one off says in its own words what goes in.
    if (reflection.parent?.kindOf(ReflectionKind.Namespace) === true) return [];
    const { signatures = [] } = reflection as DeclarationReflection;
    return signatures.flatMap((signature) => signature.parameters ?? []).filter((each) => !saysItself(each));
  });
  const names = [...symbols, ...parameters].map((reflection) => reflection.getFullName());
  return [...new Set(names)].sort();
}

/** A parameter with words, or with fields that have theirs: of an interface, or spelt out in the head of the function. */
function saysItself({ comment, type }: ParameterReflection): boolean {
  if (comment?.hasVisibleComponent() === true || type?.type === 'reflection') return true;
  return type?.type === 'reference' && type.reflection?.kindOf(ReflectionKind.Interface) === true;
}

function hasWords({ comment, signatures = [], type }: DeclarationReflection): boolean {
  if (comment?.hasVisibleComponent() === true) return true;
  const called = type?.type === 'reflection' ? [...signatures, ...(type.declaration.signatures ?? [])] : signatures;
  return called.some((signature) => signature.comment?.hasVisibleComponent() === true);
}

/**
 * The members of a constant are data that say themselves what they are, and what is spelt out in the head of a function stands
 * in its doc comment; what a class inherits is no word of ours.
 */
function isData(reflection: Reflection): boolean {
  const { inheritedFrom, flags } = reflection as DeclarationReflection;
  if (inheritedFrom !== undefined || flags.isExternal) return true;
  for (let above = reflection.parent; above !== undefined; above = above.parent)
    if (above.kindOf(ReflectionKind.Variable | ReflectionKind.SomeSignature)) return true;
  return false;
}
