import { problemCodeOf, type ProblemCode } from "@evenhand/shared/http/problem-codes";
import type { DetailedError } from "tus-js-client";
import { addressOf, call } from "../service/client";
import { problemFrom, Refusal, unreachable } from "../service/refusal";
import { whyFailed } from "./managers";
import type { KeptUpload } from "./store";
import type { Hearing, UploadManagers, WhyNotSent } from "./upload-queue";

/** SHA-256 of a file's bytes, in hexadecimal. Over a secure connection only, as the sign-in itself is. */
export const hashOfFile = async (file: Blob): Promise<string> => {
  const hash = await crypto.subtle.digest("SHA-256", await file.arrayBuffer());
  return Array.from(new Uint8Array(hash), (byte) => byte.toString(16).padStart(2, "0")).join("");
};

/** What the service is told of a file before its bytes; a photograph straight from the camera may have no name of its own. */
const metadataOf = async ({ item, position, name, file }: KeptUpload): Promise<Record<string, string>> => ({
  filename: name.replaceAll(/[/\\]/g, "_").slice(0, 200) || "photograph",
  sha256: await hashOfFile(file),
  item,
  position,
});

const statusOf = (error: Error | DetailedError): number =>
  "originalResponse" in error ? (error.originalResponse?.getStatus() ?? 0) : 0;
const isOfRequest = (error: unknown): error is DetailedError =>
  error instanceof Error && "originalRequest" in error;

/** What was thrown, as everything else that the service says: with its problem document, or that it was not reached. */
const asRefusal = async (error: unknown): Promise<unknown> => {
  if (!isOfRequest(error)) return error;
  const status = statusOf(error);
  if (status < 400) return new Refusal(unreachable, { cause: error });
  const body = error.originalResponse?.getBody() ?? "";
  return new Refusal(await problemFrom(new Response(body, { status })), { cause: error });
};

/** Loaded when something is to be sent. Where the connection is lost before, it is as if the service were not reached. */
export const loadTus = async () => {
  try {
    return await import("tus-js-client");
  } catch (error) {
    throw new Refusal(unreachable, { cause: error });
  }
};

const sendByTus = async (upload: KeptUpload, hearing: Hearing, signal: AbortSignal): Promise<void> => {
  const { Upload } = await loadTus();
  const metadata = await metadataOf(upload);
  await new Promise<void>((done, fail) => {
    const sending = new Upload(upload.file, {
      endpoint: addressOf("uploads.create", { id: upload.report }),
      uploadUrl: upload.address ?? null,
      metadata,
      storeFingerprintForResuming: false,
      // The queue tries again. Here only what the service has a part of already, under an address just learned, is asked for anew.
      retryDelays: [0],
      onShouldRetry: (error) => statusOf(error) === 409 && sending.url !== null,
      onUploadUrlAvailable: () => void hearing.onAddress(sending.url ?? ""),
      onProgress: hearing.onProgress,
      onSuccess: () => done(),
      onError: fail,
    });
    signal.addEventListener("abort", () => {
      void sending.abort();
      fail(signal.reason);
    });
    sending.start();
  });
};

/** Sends what the service has not got of a file yet. It goes on where it stood, also in another page. */
const send: UploadManagers["sender"]["send"] = async (upload, hearing, signal) => {
  try {
    await sendByTus(upload, hearing, signal);
  } catch (error) {
    throw await asRefusal(error);
  }
};

/** The id of what the service has of a file. */
export const idAt = (address: string): string => address.split("/").at(-1) ?? "";

const drop = async ({ address }: KeptUpload): Promise<void> => {
  try {
    if (address !== undefined) await call("evidence.remove", { params: { id: idAt(address) } });
  } catch (error) {
    if (!(error instanceof Refusal) || error.problem.status !== 404) throw error;
  }
};

/** What asking again changes nothing of: it is of this file or of this report. */
const ofTheFile: readonly (ProblemCode | null)[] = [
  "malformed-request",
  "invalid-fields",
  "evidence-full",
  "report-sealed",
  "body-too-large",
  "not-found",
];

/** Why a file did not arrive, from what was thrown. */
export const whyNotSent = (error: unknown): WhyNotSent => {
  if (error instanceof Refusal && ofTheFile.includes(problemCodeOf(error.problem.type)))
    return { refused: error.problem };
  const why = whyFailed(error);
  return why === "seal" ? "refuse" : why;
};

/** The service, asked by one page of this account at a time. */
export const uploadSender = (account: string | null): UploadManagers["sender"] => ({
  send,
  drop,
  whyFailed: whyNotSent,
  alone: async (deed) => {
    if (!("locks" in navigator)) return deed();
    await navigator.locks.request(`evenhand-uploads-${account ?? "nobody"}`, deed);
  },
});
