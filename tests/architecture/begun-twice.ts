import ts from "typescript";

type Method = {
  readonly fields: ReadonlyMap<string, string>;
  readonly owner: string;
  readonly node: ts.MethodDeclaration;
};

const isThis = (node: ts.Node): boolean => node.kind === ts.SyntaxKind.ThisKeyword;

/** `this.database.transaction(…)` and the like. */
const begins = (node: ts.Node): node is ts.CallExpression =>
  ts.isCallExpression(node) &&
  ts.isPropertyAccessExpression(node.expression) &&
  node.expression.name.text === "transaction" &&
  /\bdatabase$/i.test(node.expression.expression.getText());

const within = (node: ts.Node, visit: (each: ts.Node) => void): void =>
  ts.forEachChild(node, (child) => {
    visit(child);
    within(child, visit);
  });

/** Classes by the name of the field that holds them, as the constructor says. */
const fieldsOf = (node: ts.ClassDeclaration): ReadonlyMap<string, string> =>
  new Map(
    node.members
      .filter(ts.isConstructorDeclaration)
      .flatMap(({ parameters }) =>
        parameters.map((each) => [each.name.getText(), each.type?.getText() ?? ""]),
      ),
  );

function methodsIn(sources: readonly ts.SourceFile[]): ReadonlyMap<string, Method> {
  const methods = new Map<string, Method>();
  for (const source of sources)
    for (const each of source.statements.filter(ts.isClassDeclaration)) {
      const [owner, fields] = [each.name?.text ?? "", fieldsOf(each)];
      for (const node of each.members.filter(ts.isMethodDeclaration))
        methods.set(`${owner}.${node.name.getText()}`, { owner, fields, node });
    }
  return methods;
}

/** The method that `this.method()` or `this.field.method()` calls, by its class and name. */
function calledBy({ owner, fields }: Pick<Method, "owner" | "fields">, node: ts.Node): string | undefined {
  if (!ts.isCallExpression(node) || !ts.isPropertyAccessExpression(node.expression)) return undefined;
  const { expression, name } = node.expression;
  if (isThis(expression)) return `${owner}.${name.text}`;
  if (!ts.isPropertyAccessExpression(expression) || !isThis(expression.expression)) return undefined;
  return `${fields.get(expression.name.text) ?? ""}.${name.text}`;
}

/** Methods that begin a transaction, or call one that does. */
function beginning(methods: ReadonlyMap<string, Method>): ReadonlySet<string> {
  const found = new Set<string>();
  for (let before = -1; before !== found.size;) {
    before = found.size;
    for (const [name, method] of methods)
      within(method.node, (each) => {
        if (begins(each) || found.has(calledBy(method, each) ?? "")) found.add(name);
      });
  }
  return found;
}

const takesOne = (node: ts.SignatureDeclaration): boolean =>
  node.parameters.some(({ type }) => type?.getText() === "Transaction");
/** What is done with a transaction open: whatever takes one, and the work of one that is begun. */
const isInside = (node: ts.Node): boolean =>
  (ts.isFunctionLike(node) && takesOne(node)) || (ts.isFunctionLike(node) && begins(node.parent));

/**
 * Where a transaction is begun while one is open, by calls as they are written: by `this.method()`, `this.field.method()` and
 * `database.transaction()`.
 *
 * @param files texts by name
 */
export function begunTwice(files: ReadonlyMap<string, string>): string[] {
  const sources = [...files].map(([name, text]) =>
    ts.createSourceFile(name, text, ts.ScriptTarget.Latest, true),
  );
  const methods = methodsIn(sources);
  const known = beginning(methods);
  const found = new Set<string>();
  for (const source of sources)
    for (const statement of source.statements) {
      const fields = ts.isClassDeclaration(statement) ? fieldsOf(statement) : new Map<string, string>();
      const owner = ts.isClassDeclaration(statement) ? (statement.name?.text ?? "") : "";
      const look = (node: ts.Node): void => {
        if (!isInside(node)) return;
        within(node, (each) => {
          if (begins(each) || known.has(calledBy({ owner, fields }, each) ?? ""))
            found.add(`${source.fileName}: ${each.getText().split("(")[0] ?? ""}`);
        });
      };
      look(statement);
      within(statement, look);
    }
  return [...found];
}
