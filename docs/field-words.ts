/**
 * What types and their fields say to people, where a table says it already: the inputs and results of a formula in its
 * declaration, the fields of a case in the words of the case, the kinds by their SI unit. The types of the package and the
 * reference of the interface take the words from here, so that each stands in the source once.
 */
import ts from 'typescript';
import type { AnyFormula, InputDeclaration, OutputDeclaration } from '../src/formula/index.js';
import { caseFields } from '../src/json/index.js';
import { siSymbol } from '../src/quantity/index.js';
import { isKind } from '../src/quantity/units/index.js';
import { formulas } from '../src/registry/index.js';

/** Words by the node that declares the field. */
export type FieldWords = ReadonlyMap<ts.Node, string>;

export function fieldWords(program: ts.Program): FieldWords {
  const words = new Map<ts.Node, string>();
  const checker = program.getTypeChecker();
  const say = (type: ts.Type, name: string, text: string): void => {
    for (const node of checker.getPropertyOfType(type, name)?.declarations ?? [])
      if (ts.getJSDocCommentsAndTags(node).length === 0 && !words.has(node)) words.set(node, text);
  };
  const used: TypesUsed = { takes: new Map(), gives: new Map() };
  const own = program.getSourceFiles().filter(({ fileName }) => /\/src\/(?!cli)/u.test(fileName));
  for (const file of own) {
    for (const { types, id } of declaredFormulas(file)) {
      const formula = byId.get(id);
      if (formula === undefined) continue;
      const [input, output] = types.map((type) => checker.getTypeFromTypeNode(type));
      noteTypes(types, formula, checker, used);
      for (const [name, declaration] of Object.entries(formula.inputs as Readonly<Record<string, InputDeclaration>>))
        if (input !== undefined) say(input, name, inputWords(declaration));
      for (const [name, declaration] of outputsOf(formula))
        if (output !== undefined) say(output, name, `${nameAndSymbol(declaration)}.`);
    }
    for (const type of interfaces(file, checker)) {
      if (type.symbol.name === 'RepairCase') sayFields(type, '', checker, say);
      if (type.symbol.name === 'SiUnits')
        for (const { name } of type.getProperties()) say(type, name, `The coherent SI unit of the kind ${name}.`);
    }
  }
  for (const [node, names] of used.takes)
    if (!words.has(node)) words.set(node, `What ${listed(names)} ${names.length === 1 ? 'takes' : 'take'}.`);
  for (const [node, names] of used.gives)
    if (!words.has(node)) words.set(node, `What ${listed(names)} ${names.length === 1 ? 'gives' : 'give'}.`);
  return words;
}

/** Types that formulas take and give, each by the node that declares it, with the functions that do. */
interface TypesUsed {
  readonly takes: Map<ts.Node, string[]>;
  readonly gives: Map<ts.Node, string[]>;
}

/** A type of its own that a formula takes or gives is called by the function, where its doc comment does not say more. */
function noteTypes(
  types: readonly ts.TypeNode[],
  { compute }: AnyFormula,
  checker: ts.TypeChecker,
  { takes, gives }: TypesUsed,
): void {
  for (const [index, type] of types.entries()) {
    if (!ts.isTypeReferenceNode(type)) continue;
    const symbol = checker.getSymbolAtLocation(type.typeName);
    const named =
      symbol !== undefined && symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
    const by = index === 0 ? takes : gives;
    for (const node of named?.declarations ?? [])
      if (ts.getJSDocCommentsAndTags(node).length === 0) by.set(node, [...(by.get(node) ?? []), compute.name]);
  }
}

function listed(names: readonly string[]): string {
  const called = names.map((name) => `\`${name}\``);
  return called.length === 1 ? called.join('') : `${called.slice(0, -1).join(', ')} and ${called.at(-1)}`;
}

const byId = new Map(formulas.map((formula) => [formula.id, formula]));

/** The declarations of formulas in a file: the types that they name, and their ids. */
function declaredFormulas(file: ts.SourceFile): { readonly types: readonly ts.TypeNode[]; readonly id: string }[] {
  return file.statements.flatMap((statement) => {
    if (!ts.isVariableStatement(statement)) return [];
    return statement.declarationList.declarations.flatMap(({ initializer }) => {
      if (initializer === undefined || !ts.isCallExpression(initializer)) return [];
      const { expression, typeArguments, arguments: given } = initializer;
      if (!ts.isIdentifier(expression) || expression.text !== 'formula' || typeArguments === undefined) return [];
      const id = /id: '(?<id>[^']+)'/u.exec(given[0]?.getText(file) ?? '')?.groups?.['id'];
      return id === undefined ? [] : [{ types: typeArguments, id }];
    });
  });
}

function outputsOf({ output }: AnyFormula): [string, OutputDeclaration][] {
  return typeof output.symbol === 'string' ? [] : Object.entries(output as Readonly<Record<string, OutputDeclaration>>);
}

function inputWords(declaration: InputDeclaration): string {
  const { kind, default: fallback, choices } = declaration;
  const unit = isKind(kind) ? ` ${siSymbol(kind)}` : '';
  const otherwise = fallback === undefined ? '' : `; ${String(fallback)}${unit === ' 1' ? '' : unit} unless given`;
  const oneOf = choices === undefined ? '' : `: ${choices.join(', ')}`;
  return `${nameAndSymbol(declaration)}${oneOf}${otherwise}.`;
}

function nameAndSymbol({ name, symbol, kind }: { name: string; symbol: string; kind: string }): string {
  const unit = isKind(kind) && siSymbol(kind) !== '1' ? ` [${siSymbol(kind)}]` : '';
  return `${name.charAt(0).toUpperCase()}${name.slice(1)}, \`${symbol}\`${unit}`;
}

function interfaces(file: ts.SourceFile, checker: ts.TypeChecker): ts.Type[] {
  return file.statements.filter(ts.isInterfaceDeclaration).map((node) => checker.getTypeAtLocation(node));
}

const paths = new Map(caseFields().map(({ path, says }) => [path, says]));

/** The words of a case, along the types that it is made of. */
function sayFields(
  type: ts.Type,
  above: string,
  checker: ts.TypeChecker,
  say: (type: ts.Type, name: string, text: string) => void,
): void {
  for (const part of type.isUnion() ? type.types : [type]) {
    const row = checker.isArrayType(part) ? checker.getTypeArguments(part as ts.TypeReference)[0] : undefined;
    if (row !== undefined) {
      sayFields(row, `${above}[]`, checker, say);
      continue;
    }
    if (!(part.flags & ts.TypeFlags.Object)) continue;
    for (const property of part.getProperties()) {
      const path = above === '' ? property.name : `${above}.${property.name}`;
      const text = paths.get(path);
      if (text !== undefined) say(part, property.name, `${text}.`);
      const isAbove = [...paths.keys()].some((each) => each.startsWith(`${path}.`) || each.startsWith(`${path}[`));
      if (isAbove) sayFields(checker.getNonNullableType(checker.getTypeOfSymbol(property)), path, checker, say);
    }
  }
}
