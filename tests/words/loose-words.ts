/**
 * Finds words for people in a source file: text between tags, labels and titles as attributes, and texts and templates
 * that read like prose. What is between back ticks or quotes for the machine (keys, classes, paths) does not read so.
 */

import ts from 'typescript';

/** Attributes whose value is for the machine. */
const MACHINE = new Set([
  ...['class', 'type', 'role', 'viewBox', 'd', 'fill', 'stroke', 'key', 'id', 'transform', 'points', 'scope'],
  ...['stroke-dasharray', 'stroke-linecap', 'autocomplete', 'rel', 'preserveAspectRatio', 'for', 'accept'],
  ...['aria-hidden', 'aria-live', 'inputmode', 'href', 'text-anchor', 'dominant-baseline', 'data-hole'],
]);

/** Attributes that people read or hear, whatever they hold. */
const READ = new Set(['aria-label', 'title', 'label', 'placeholder', 'alt']);

function readsLikeProse(text: string): boolean {
  const said = text.trim();
  if (/^[.#[/]|^\([a-z-]+: [a-z]+\)$/.test(said)) return false;
  if (/^[MLHVCSQTAZmlhvcsqtaz0-9 .,-]+$/.test(said)) return false;
  // A path, a name of a file, property or computer, a kind of content, a question to a database.
  if (/^[\w@]+([./-][\w-]+)*[./][\w+-]+(; charset=utf-8)?$/.test(said)) return false;
  if (/^(SELECT|PRAGMA) /.test(said)) return false;
  return /\p{L}{2,}[ ’,.:;] ?[\p{L}(]/u.test(said) || /^\p{Lu}\p{Ll}{2,}(?!\p{L})/u.test(said);
}

export interface LooseWords {
  readonly line: number;
  readonly text: string;
}

export function looseWords(name: string, source: string): readonly LooseWords[] {
  const kind = name.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  const file = ts.createSourceFile(name, source, ts.ScriptTarget.Latest, true, kind);
  const found: LooseWords[] = [];
  const tell = (node: ts.Node, text: string): void => {
    const line = file.getLineAndCharacterOfPosition(node.getStart(file)).line + 1;
    found.push({ line, text: text.replace(/\s+/g, ' ').trim() });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isTypeNode(node) || isForMachine(node)) return;
    if (ts.isJsxAttribute(node) && node.initializer !== undefined && ts.isStringLiteral(node.initializer)) {
      const { text } = node.initializer;
      if (READ.has(node.name.getText(file)) ? /\p{L}{2}/u.test(text) : readsLikeProse(text)) tell(node, text);
      return;
    }
    if (ts.isJsxText(node)) {
      if (/\p{L}{2}/u.test(node.text)) tell(node, node.text);
      return;
    }
    if (ts.isStringLiteralLike(node)) {
      if (isCompared(node)) return;
      const isShown = isBetweenTags(node) && /\p{L}{3}/u.test(node.text);
      if (isShown || readsLikeProse(node.text)) tell(node, node.text);
      return;
    }
    if (ts.isTemplateExpression(node)) {
      const parts = [node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)];
      if (
        parts.some(
          (part) => readsLikeProse(part) || /(^| )\p{Ll}{2,} \p{Ll}|^ \p{Ll}{3,}|\p{Ll}{3,} $/u.test(part),
        )
      )
        tell(node, node.getText(file));
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

function isCompared({ parent }: ts.Node): boolean {
  return (
    ts.isCaseClause(parent) ||
    (ts.isBinaryExpression(parent) && /^[!=]==$/.test(parent.operatorToken.getText()))
  );
}

/** `{isLate ? 'late' : 'early'}` as a child of an element. */
function isBetweenTags(node: ts.Node): boolean {
  let { parent } = node;
  let child = node;
  while (
    (ts.isConditionalExpression(parent) && parent.condition !== child) ||
    ts.isParenthesizedExpression(parent)
  ) {
    child = parent;
    parent = parent.parent;
  }
  return ts.isJsxExpression(parent) && !ts.isJsxAttribute(parent.parent);
}

/** What is thrown at a programmer, sent to a console, or compared, is not read by the person at the window. */
function isForMachine(node: ts.Node): boolean {
  if (ts.isJsxAttribute(node)) return MACHINE.has(node.name.getText());
  if (ts.isThrowStatement(node)) return true;
  // A notice goes to the console of the main process.
  if (ts.isCallExpression(node)) return /^(console\.\w+|notice)$/.test(node.expression.getText());
  return ts.isNewExpression(node) && /Error$/.test(node.expression.getText());
}
