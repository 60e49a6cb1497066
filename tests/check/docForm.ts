import { isDeepStrictEqual } from 'node:util';
import ts from 'typescript';

/** What a bracket may hold: the units in use, and words for what is no number. A misspelt unit is not among them. */
const units = [
  '-',
  'm',
  'm/s',
  'm²',
  '1/m',
  'N',
  'N m²',
  'kg',
  'kg/N',
  'kg/m³',
  'kg m²',
  'kg/m',
  'rad',
  'Hz',
  's',
  'h',
  'J',
  'K',
  'Pa',
  'Pa s',
  '1/m²',
  'SI',
  'SI per unit',
];
const words = ['record', 'list', 'text', 'choice', 'function'];
const marks = ['common practice', 'from memory', 'own derivation'];
const order = ['equation', 'param', 'returns', 'validity', 'source', 'example'];

export interface DocFaults {
  /** The exported functions that were looked at. */
  readonly functions: readonly string[];
  readonly faults: readonly string[];
}

/** Holds the comments of a file's exported functions to the form that core's README promises, and runs their examples with what `scope` knows. */
export function docFaults(text: string, scope: Readonly<Record<string, unknown>>, sources: readonly string[]): DocFaults {
  const file = ts.createSourceFile('room.ts', text, ts.ScriptTarget.ES2023, true);
  const found = exportedFunctions(file);
  return {
    functions: found.map(({ name }) => name),
    faults: found.flatMap(({ name, node, parameters }) =>
      faultsOf(node, parameters, scope, sources).map((fault) => `${name}: ${fault}`),
    ),
  };
}

interface Found {
  readonly name: string;
  readonly node: ts.Node;
  readonly parameters: readonly string[];
}

/** Declared as a function, or as a constant that is one. */
function exportedFunctions(file: ts.SourceFile): Found[] {
  const isExported = (node: ts.FunctionDeclaration | ts.VariableStatement) =>
    node.modifiers?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword) ?? false;
  const named = (parameters: ts.NodeArray<ts.ParameterDeclaration>) => parameters.map(({ name }) => name.getText(file));
  return file.statements.flatMap((node): Found[] => {
    if (ts.isFunctionDeclaration(node) && isExported(node)) {
      return [{ name: node.name?.text ?? 'default', node, parameters: named(node.parameters) }];
    }
    if (!ts.isVariableStatement(node) || !isExported(node)) return [];
    return node.declarationList.declarations.flatMap(({ name, initializer }) =>
      initializer !== undefined && (ts.isArrowFunction(initializer) || ts.isFunctionExpression(initializer))
        ? [{ name: name.getText(file), node, parameters: named(initializer.parameters) }]
        : [],
    );
  });
}

function faultsOf(
  node: ts.Node,
  parameters: readonly string[],
  scope: Readonly<Record<string, unknown>>,
  sources: readonly string[],
): string[] {
  const comment = ts.getJSDocCommentsAndTags(node).find(ts.isJSDoc);
  const said = (tag: ts.JSDocTag) => (ts.getTextOfJSDocComment(tag.comment) ?? '').trim();
  const tags = ts.getJSDocTags(node);
  const texts = (name: string) => tags.filter((tag) => tag.tagName.text === name).map(said);
  const faults: string[] = [];

  if (!/^\p{Lu}[^]*\.$/u.test((ts.getTextOfJSDocComment(comment?.comment) ?? '').trim())) faults.push('has no opening sentence');
  for (const name of ['equation', 'returns', 'validity', 'source', 'example']) {
    const [text, ...more] = texts(name);
    if (text === undefined || text === '') faults.push(`has no @${name}`);
    else if (more.length > 0 && name !== 'example') faults.push(`has more than one @${name}`);
  }
  const places = tags.map((tag) => order.indexOf(tag.tagName.text));
  if (places.includes(-1)) faults.push('has a tag that the form does not know');
  if (places.some((place, i) => i > 0 && place < (places[i - 1] ?? 0))) faults.push('has its tags in another order');

  const documented = tags.filter(ts.isJSDocParameterTag);
  const names = documented.map((tag) => tag.name.getText());
  // A parameter that is taken apart in the signature has no name there; the comment gives it one.
  const isNamed = (parameter: string, i: number) =>
    parameter === names[i] || (parameter.startsWith('{') && names[i] !== undefined);
  if (names.length !== parameters.length || !parameters.every(isNamed))
    faults.push(`takes (${parameters.join(', ')}) but documents (${names.join(', ')})`);
  for (const tag of documented) if (!endsInUnit(said(tag))) faults.push(`@param ${tag.name.getText()} does not end in a [unit]`);
  for (const text of texts('returns')) if (!endsInUnit(text)) faults.push('@returns does not end in a [unit]');

  for (const key of texts('source').flatMap((text) => text.split(/[,;]/))) {
    if (!sources.includes(key.trim()) && !marks.includes(key.trim()))
      faults.push(`cites "${key.trim()}", which core/sources.ts does not have`);
  }
  for (const example of texts('example')) faults.push(...exampleFaults(example, scope));
  return faults;
}

function endsInUnit(text: string): boolean {
  const unit = /\[([^\]]+)\]$/.exec(text)?.[1];
  return unit !== undefined && (units.includes(unit) || words.includes(unit));
}

/** Runs `expression // value`. Numbers may differ by one part in 10^9. */
function exampleFaults(example: string, scope: Readonly<Record<string, unknown>>): string[] {
  const at = example.lastIndexOf(' // ');
  if (at < 0 || example.includes('\n')) return ['has an example that is not one line of: expression // value'];
  const expression = example.slice(0, at);
  try {
    const wanted: unknown = JSON.parse(example.slice(at + 4));
    // Running what a comment says is the point here.
    // oxlint-disable-next-line typescript/no-implied-eval
    const got: unknown = new Function(...Object.keys(scope), `return (${expression});`)(...Object.values(scope));
    return isClose(got, wanted) ? [] : [`example gives ${JSON.stringify(got)}, the comment says ${JSON.stringify(wanted)}`];
  } catch (error) {
    return [`example does not run: ${String(error)}`];
  }
}

function isClose(got: unknown, wanted: unknown): boolean {
  if (typeof got === 'number' && typeof wanted === 'number')
    return Math.abs(got - wanted) <= 1e-9 * Math.max(Math.abs(got), Math.abs(wanted));
  if (typeof got !== 'object' || typeof wanted !== 'object' || got === null || wanted === null) return Object.is(got, wanted);
  const keys = Object.keys(got);
  return isDeepStrictEqual(keys.toSorted(), Object.keys(wanted).toSorted())
    ? keys.every((key) => isClose((got as Record<string, unknown>)[key], (wanted as Record<string, unknown>)[key]))
    : false;
}
