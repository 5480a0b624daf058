import { useText } from "../../strings/text";

interface Named {
  readonly modelYear: number;
  readonly make: string;
  readonly model: string;
}

export const useCarName = (): ((car: Named) => string) => {
  const t = useText();
  return ({ modelYear, make, model }) => t("comparison.title", { year: modelYear, make, model });
};
