import { describe, expect, it } from "vitest";
import { oneShape } from "./index.ts";

type Some = { readonly a?: number; readonly b?: string };

describe("oneShape", () => {
  it("gives every object the same fields in the same order, and keeps what each says", () => {
    const list: readonly Some[] = [{ a: 1 }, { b: "two" }, { b: "three", a: 3 }, {}];
    const shaped = list.map(oneShape(list));
    expect(shaped.map((one) => Object.keys(one))).toEqual(list.map(() => ["a", "b"]));
    expect(shaped).toEqual(list);
  });

  it("leaves the object it copies as it was", () => {
    const one: Some = { b: "two" };
    oneShape<Some>([{ a: 1 }, one])(one);
    expect(Object.keys(one)).toEqual(["b"]);
  });
});
