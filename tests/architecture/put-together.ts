import ts from "typescript";

/** A word of two letters or more beside a space: words for a person. */
const WORDS = /[A-Za-z]{2,}[,;:.)]? | [A-Za-z]{2,}/;
/** A mark that parts what is told, and a space: a list, or something said of something. */
const MARKS = /[,;:.]\s| \(/;

/** What only a program or its engineer reads: an error, an import, what is looked for on a page, an attribute. */
const isUnread = (node: ts.Node): boolean =>
  ts.isThrowStatement(node) ||
  ts.isImportDeclaration(node) ||
  (ts.isCallExpression(node) && /\.querySelector(All)?$/.test(node.expression.getText())) ||
  (ts.isNewExpression(node) && node.expression.getText().endsWith("Error")) ||
  (ts.isJsxAttribute(node) && /^(className|key|d|style|transform|viewBox|points)$/.test(node.name.getText()));

/** Of a template in markup the markup is none of it; what stands in its places is. */
const isMarkup = (node: ts.Node): boolean =>
  ts.isTemplateExpression(node) && ts.isTaggedTemplateExpression(node.parent);

const texts = (nodes: readonly ts.Node[]): readonly string[] =>
  nodes.flatMap((node) => (ts.isStringLiteralLike(node) ? [node.text] : []));

const piecesOf = (node: ts.Node): readonly string[] => {
  if (isMarkup(node)) return [];
  if (ts.isTemplateExpression(node)) {
    return [node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)];
  }
  if (ts.isBinaryExpression(node) && node.operatorToken.kind === ts.SyntaxKind.PlusToken) {
    const sides = [node.left, node.right];
    // Two texts are one that is too long for its line.
    return sides.every((side) => ts.isStringLiteralLike(side)) ? [] : texts(sides);
  }
  const isJoin =
    ts.isCallExpression(node) &&
    ts.isPropertyAccessExpression(node.expression) &&
    node.expression.name.text === "join";
  return isJoin ? texts(node.arguments) : [];
};

/**
 * Where words for a person are put together by hand: words in a template string, added to what varies, or between what is joined.
 *
 * @param marks whether a list joined by ", " counts too
 * @returns lines of the source, counted from 1
 * @example putTogether("a.ts", "const a = `${count} of them`;") // [1]
 */
export const putTogether = (file: string, text: string, { marks = false } = {}): readonly number[] => {
  const kind = file.endsWith("x") ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true, kind);
  const found: number[] = [];
  const walk = (node: ts.Node): void => {
    if (isUnread(node)) return;
    if (piecesOf(node).some((piece) => WORDS.test(piece) || (marks && MARKS.test(piece)))) {
      found.push(source.getLineAndCharacterOfPosition(node.getStart()).line + 1);
    }
    ts.forEachChild(node, walk);
  };
  walk(source);
  return found;
};
