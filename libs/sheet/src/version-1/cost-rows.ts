import type { CostRowName } from "@evenhand/shared/sheet";
export const costRows: CostRowName[] = [];
