import { type ArgumentMetadata, Injectable, type PipeTransform } from "@nestjs/common";
import type { FieldProblem } from "@evenhand/shared/problem";
import { ProblemError } from "../problems/problem-error.ts";
import { findUnstorable } from "./storable-text.ts";

type Schema = NonNullable<ArgumentMetadata["schema"]>;
type Segment = PropertyKey | { readonly key: PropertyKey };
const keyOf = (segment: Segment): string => String(typeof segment === "object" ? segment.key : segment);
const escape = (key: string): string => key.replaceAll("~", "~0").replaceAll("/", "~1");

const at = (type: ArgumentMetadata["type"], path: readonly Segment[]): string =>
  type === "query"
    ? `query/${path.map(keyOf).join("/")}`
    : path.map((each) => `/${escape(keyOf(each))}`).join("");

const refusal = (problems: readonly FieldProblem[]): ProblemError =>
  new ProblemError("invalid-fields", "Some of what was sent does not hold; each field is named.", {
    problems,
  });

/** What was found to hold, by the very value that was sent: whoever asks again for the same body is not kept waiting again. */
const held = new WeakMap<object, { schema: Schema; value: unknown }>();

/**
 * Holds what was sent against its contract.
 *
 * @returns the value with its defaults
 * @throws ProblemError `invalid-fields` naming every field that does not hold
 */
export async function holdAgainst(
  schema: Schema,
  sent: unknown,
  type: ArgumentMetadata["type"],
): Promise<unknown> {
  const known = typeof sent === "object" && sent !== null ? held.get(sent) : undefined;
  if (known?.schema === schema) return known.value;
  const unstorable = findUnstorable(sent);
  if (unstorable.length > 0)
    throw refusal(unstorable.map((each) => (type === "query" ? { ...each, at: `query${each.at}` } : each)));
  const result = await schema["~standard"].validate(sent);
  if (result.issues !== undefined)
    throw refusal(
      result.issues
        .slice(0, 100)
        .map((issue): FieldProblem => ({ at: at(type, issue.path ?? []), reason: issue.message })),
    );
  if (typeof sent === "object" && sent !== null) held.set(sent, { schema, value: result.value });
  return result.value;
}

/**
 * Holds what was sent against the contract that stands on the parameter, and names every field that does not hold: as a JSON
 * pointer into the body, or `query/<name>`. (Nest's own pipe of this kind answers sentences without pointers.)
 */
@Injectable()
export class ContractPipe implements PipeTransform {
  async transform(value: unknown, { schema, type }: ArgumentMetadata): Promise<unknown> {
    return schema === undefined ? value : holdAgainst(schema, value, type);
  }
}
