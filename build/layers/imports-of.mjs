import ts from 'typescript';

/**
 * @typedef {{ specifier: string, line: number, isTypeOnly: boolean }} Import
 */

/**
 * Every import of a module, as written: static, dynamic, re-exported, in a type, and workers named by `new URL(…, import.meta.url)`.
 * @param {string} path
 * @param {string} text
 * @returns {Import[]}
 */
export function importsOf(path, text) {
  const source = ts.createSourceFile(path, path.endsWith('.svelte') ? scriptsOf(text) : text, ts.ScriptTarget.Latest);
  /** @type {Import[]} */
  const found = [];
  /** @param {ts.Node | undefined} name @param {boolean} isTypeOnly */
  const add = (name, isTypeOnly) => {
    if (name === undefined || !ts.isStringLiteralLike(name)) return;
    const line = source.getLineAndCharacterOfPosition(name.getStart(source)).line + 1;
    found.push({ specifier: name.text, line, isTypeOnly });
  };
  /** @param {ts.Node} node */
  const visit = (node) => {
    if (ts.isImportDeclaration(node)) add(node.moduleSpecifier, bindsTypesOnly(node.importClause));
    else if (ts.isExportDeclaration(node)) add(node.moduleSpecifier, node.isTypeOnly);
    else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) add(node.argument.literal, true);
    else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword)
      add(node.arguments[0], false);
    else if (isModuleUrl(node)) add(node.arguments?.[0], false);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** @param {ts.ImportClause | undefined} clause */
function bindsTypesOnly(clause) {
  if (clause === undefined) return false;
  if (clause.phaseModifier === ts.SyntaxKind.TypeKeyword) return true;
  const names = clause.namedBindings;
  if (clause.name !== undefined || names === undefined || !ts.isNamedImports(names)) return false;
  return names.elements.length > 0 && names.elements.every((element) => element.isTypeOnly);
}

/** @param {ts.Node} node @returns {node is ts.NewExpression} */
function isModuleUrl(node) {
  if (!ts.isNewExpression(node) || !ts.isIdentifier(node.expression) || node.expression.text !== 'URL') return false;
  const base = node.arguments?.[1];
  return base !== undefined && ts.isPropertyAccessExpression(base) && ts.isMetaProperty(base.expression);
}

/**
 * The scripts of a component, with the markup blanked line by line so that line numbers stay true.
 * @param {string} text
 */
function scriptsOf(text) {
  let kept = '';
  let end = 0;
  for (const match of text.matchAll(/<script\b[^>]*>([\s\S]*?)<\/script>/g)) {
    const start = match.index + match[0].indexOf('>') + 1;
    kept += text.slice(end, start).replace(/[^\n]/g, ' ') + (match[1] ?? '');
    end = start + (match[1] ?? '').length;
  }
  return kept;
}
