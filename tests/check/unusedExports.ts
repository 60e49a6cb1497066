import path from 'node:path';
import ts from 'typescript';
import type { Tracked } from './tracked.ts';

/**
 * "file name" of every exported value that no other file takes. Left out are the doors, which are there for others than us, and what a tool reads; types, since
 * whoever names a function's argument may need them; and what the file's own examples use, which are run from outside.
 */
export function unusedExports(tree: readonly Tracked[], folders: readonly string[]): string[] {
  const sources = tree
    .filter(({ path: file }) => /\.(tsx?|mjs)$/.test(file) && !file.endsWith('.d.ts'))
    .map((file) => ({ ...file, source: ts.createSourceFile(file.path, file.text, ts.ScriptTarget.ES2023) }));
  const taken = new Set<string>();
  for (const { path: file, text, source } of sources) for (const name of takenBy(file, text, source)) taken.add(name);
  return sources
    .filter(({ path: file }) => folders.includes(file.split('/')[0] ?? '') && !/(^|\/)index\.ts$|\.config\.ts$/.test(file))
    .flatMap(({ path: file, text, source }) =>
      exportsOf(source)
        .filter((name) => !taken.has(`${file} ${name}`) && !taken.has(`${file} *`) && !isInExample(text, name))
        .map((name) => `${file} ${name}`),
    );
}

const isInExample = (text: string, name: string): boolean => new RegExp(`@example .*\\b${name}\\b`).test(text);

function exportsOf(source: ts.SourceFile): string[] {
  return source.statements.flatMap((node): string[] => {
    if (ts.isExportDeclaration(node) && node.exportClause !== undefined && ts.isNamedExports(node.exportClause))
      return node.isTypeOnly ? [] : node.exportClause.elements.flatMap(({ name, isTypeOnly }) => (isTypeOnly ? [] : [name.text]));
    if (ts.isExportAssignment(node)) return ['default'];
    const modifiers = ts.canHaveModifiers(node) ? (ts.getModifiers(node) ?? []) : [];
    const has = (kind: ts.SyntaxKind) => modifiers.some((modifier) => modifier.kind === kind);
    if (!has(ts.SyntaxKind.ExportKeyword)) return [];
    if (has(ts.SyntaxKind.DefaultKeyword)) return ['default'];
    if (ts.isVariableStatement(node)) return node.declarationList.declarations.map(({ name }) => name.getText(source));
    if (ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node)) return [];
    return 'name' in node && node.name !== undefined ? [(node.name as ts.Identifier).text] : [];
  });
}

/** What a file takes from others, as "file name"; "file *" where it takes all, or it cannot be told which. */
function takenBy(file: string, text: string, source: ts.SourceFile): string[] {
  const taken: string[] = [];
  const take = (from: string, names: readonly string[]) => {
    const target = path.posix.join(path.posix.dirname(file), from.split('?')[0] ?? '');
    if (from.startsWith('.')) taken.push(...names.map((name) => `${target} ${name}`));
  };
  const original = ({ name, propertyName }: ts.ImportSpecifier | ts.ExportSpecifier) => (propertyName ?? name).text;
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) && ts.isStringLiteral(node.moduleSpecifier)) {
      const bindings = node.importClause?.namedBindings;
      const named = bindings === undefined ? [] : ts.isNamespaceImport(bindings) ? ['*'] : bindings.elements.map(original);
      take(node.moduleSpecifier.text, node.importClause?.name === undefined ? named : [...named, 'default']);
    } else if (ts.isExportDeclaration(node) && node.moduleSpecifier !== undefined && ts.isStringLiteral(node.moduleSpecifier)) {
      const clause = node.exportClause;
      take(node.moduleSpecifier.text, clause !== undefined && ts.isNamedExports(clause) ? clause.elements.map(original) : ['*']);
    } else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      const [from] = node.arguments;
      if (from !== undefined && ts.isStringLiteralLike(from)) take(from.text, ['*']);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  for (const [, from = '', name = '*'] of text.matchAll(/import\('(\.[^']*)'\)(?:\.(\w+))?/g)) take(from, [name]);
  return taken;
}
