import { describe, expect, it } from "vitest";
import { agreementWeights } from "./index.ts";

describe("agreementWeights", () => {
  it("has the result its example states", () => {
    expect(agreementWeights("linear", 3)).toEqual([
      [1, 0.5, 0],
      [0.5, 1, 0.5],
      [0, 0.5, 1],
    ]);
  });

  it("counts only the same, or the square of the distance", () => {
    expect(agreementWeights("unweighted", 2)).toEqual([
      [1, 0],
      [0, 1],
    ]);
    expect(agreementWeights("quadratic", 3)).toEqual([
      [1, 0.75, 0],
      [0.75, 1, 0.75],
      [0, 0.75, 1],
    ]);
    expect(agreementWeights("quadratic", 1)).toEqual([[1]]);
  });

  it("takes a matrix of agreement as it is", () => {
    const agreement = [
      [1, 0.2],
      [0.7, 1],
    ];
    expect(agreementWeights({ agreement }, 2)).toBe(agreement);
  });

  it("turns disagreement round", () => {
    const disagreement = [
      [0, 1],
      [4, 0],
    ];
    expect(agreementWeights({ disagreement }, 2)).toEqual([
      [1, 0.75],
      [0, 1],
    ]);
  });

  it("refuses a matrix of another size, or one that nowhere disagrees", () => {
    const size = new RangeError("The weights must be 2 by 2.");
    expect(() => agreementWeights({ agreement: [[1]] }, 2)).toThrow(size);
    expect(() => agreementWeights({ agreement: [[1, 0]] }, 2)).toThrow(size);
    expect(() => agreementWeights({ agreement: [[1, 0], [0]] }, 2)).toThrow(size);
    expect(() =>
      agreementWeights(
        {
          disagreement: [
            [0, 1, 1],
            [1, 0],
          ],
        },
        2,
      ),
    ).toThrow(size);
    const none = [
      [0, 0],
      [0, 0],
    ];
    const refusal = new RangeError("Weights of disagreement must hold one above 0.");
    expect(() => agreementWeights({ disagreement: none }, 2)).toThrow(refusal);
  });
});
