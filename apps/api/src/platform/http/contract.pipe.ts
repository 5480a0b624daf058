import { type ArgumentMetadata, Injectable, type PipeTransform } from "@nestjs/common";
import type { FieldProblem } from "@evenhand/shared/problem";
import { ProblemError } from "../problems/problem-error.ts";

type Segment = PropertyKey | { readonly key: PropertyKey };
const keyOf = (segment: Segment): string => String(typeof segment === "object" ? segment.key : segment);
const escape = (key: string): string => key.replaceAll("~", "~0").replaceAll("/", "~1");

const at = (type: ArgumentMetadata["type"], path: readonly Segment[]): string =>
  type === "query"
    ? `query/${path.map(keyOf).join("/")}`
    : path.map((each) => `/${escape(keyOf(each))}`).join("");

/**
 * Holds what was sent against the contract that stands on the parameter, and names every field that does not hold: as a JSON
 * pointer into the body, or `query/<name>`. (Nest's own pipe of this kind answers sentences without pointers.)
 */
@Injectable()
export class ContractPipe implements PipeTransform {
  async transform(value: unknown, { schema, type }: ArgumentMetadata): Promise<unknown> {
    if (schema === undefined) return value;
    const result = await schema["~standard"].validate(value);
    if (result.issues === undefined) return result.value;
    throw new ProblemError("invalid-fields", "Some of what was sent does not hold; each field is named.", {
      problems: result.issues
        .slice(0, 100)
        .map((issue): FieldProblem => ({ at: at(type, issue.path ?? []), reason: issue.message })),
    });
  }
}
