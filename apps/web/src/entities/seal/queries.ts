import type { SealReceipt } from "@evenhand/shared/chain";
import { queryOptions } from "@tanstack/react-query";
import { call, callForText } from "../../service/client";
import { Refusal } from "../../service/refusal";
import { saveFile } from "../../service/save-file";
import { makeSealedFile } from "./sealed-file";

/** What proves that it was sealed; `null` of what was sealed before there were receipts. It never changes. */
export const receiptQuery = (id: string) =>
  queryOptions({
    queryKey: ["receipt", id],
    staleTime: Number.POSITIVE_INFINITY,
    queryFn: async ({ signal }): Promise<SealReceipt | null> => {
      try {
        return await call("receipts.get", { params: { id }, signal });
      } catch (error) {
        if (error instanceof Refusal && error.problem.status === 404) return null;
        throw error;
      }
    },
  });

export type DocumentRoute = "reportVersions.document" | "summaries.document";

/** Asks for the keys and the sealed text as they are now, and hands the file over. */
export const takeAway = async (route: DocumentRoute, receipt: SealReceipt): Promise<void> => {
  const [{ items }, document] = await Promise.all([
    call("recordKeys.list"),
    callForText(route, { params: { id: receipt.subject } }),
  ]);
  const file = await makeSealedFile(receipt, items, document);
  saveFile(`sealed-${receipt.seal.slice(0, 12)}.json`, JSON.stringify(file));
};
