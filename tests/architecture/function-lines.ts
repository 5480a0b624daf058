import ts from "typescript";

export interface FunctionLines {
  readonly name: string;
  readonly lines: number;
}

type Named = ts.ArrowFunction | ts.FunctionExpression | ts.FunctionDeclaration | ts.MethodDeclaration;

const isFunction = (node: ts.Node): node is Named =>
  ts.isArrowFunction(node) ||
  ts.isFunctionExpression(node) ||
  ts.isFunctionDeclaration(node) ||
  ts.isMethodDeclaration(node);

const nameOf = (node: Named): string => {
  if (node.name !== undefined) return node.name.getText();
  return ts.isVariableDeclaration(node.parent) ? node.parent.name.getText() : "(inner)";
};

/** Every function of a file with the lines from its first to its last, inner ones counted in themselves and in what holds them. */
export const functionLines = (file: string, text: string): FunctionLines[] => {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const lineOf = (position: number): number => source.getLineAndCharacterOfPosition(position).line;
  const found: FunctionLines[] = [];
  const visit = (node: ts.Node): void => {
    if (isFunction(node) && node.body !== undefined)
      found.push({ name: nameOf(node), lines: lineOf(node.end) - lineOf(node.getStart()) + 1 });
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
};
