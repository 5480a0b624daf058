import type { Readable } from "node:stream";
import { Injectable } from "@nestjs/common";
import type { ProblemCode } from "@evenhand/shared/http/problem-codes";
import { MemoryLocker, Server } from "@tus/server";
import type { FastifyReply, FastifyRequest } from "fastify";
import { z } from "zod";
import { ProblemError } from "../../platform/problems/problem-error.ts";
import { PartStore } from "./part-store.ts";

const Bytes = z.instanceof(Uint8Array);
const path = "/api/v1/uploads";
/** Set by this class alone: for which upload the library is asked. */
const forUpload = "x-for-upload";
const handedOn = ["tus-resumable", "location", "upload-offset", "upload-length"];

const refusals: Readonly<Record<number, readonly [ProblemCode, string]>> = {
  400: ["malformed-request", "The headers are not what tus 1.0 asks for."],
  403: ["malformed-request", "The headers are not what tus 1.0 asks for: Upload-Offset is missing."],
  404: ["not-found", "There is no such upload, or it is not yours to see."],
  409: ["upload-moved", "The upload stands at another byte. Ask where with HEAD, and go on from there."],
  412: ["upload-protocol", "Send Tus-Resumable: 1.0.0."],
  413: [
    "malformed-request",
    "More bytes were sent than the file was announced with. Ask where it stands with HEAD.",
  ],
  415: ["malformed-request", "Send parts of a file as application/offset+octet-stream."],
};

/** Hands requests to the library that speaks tus, and its answers back in the service's own form. */
@Injectable()
export class TusDoor {
  private readonly server: Server;
  constructor(store: PartStore) {
    this.server = new Server({
      path,
      datastore: store,
      // A connection that only seems to live gives way to the next one.
      locker: new MemoryLocker(),
      lockDrainTimeout: 500,
      relativeLocation: true,
      namingFunction: ({ headers }) => headers.get(forUpload) ?? "",
      getFileIdFromRequest: ({ headers }) => headers.get(forUpload) ?? "",
    });
  }

  /** @throws ProblemError where the library refuses */
  async pass(
    { method, headers }: FastifyRequest,
    reply: FastifyReply,
    { id, body }: { readonly id: string; readonly body: Readable | null },
  ): Promise<undefined> {
    const asked = new Headers({ [forUpload]: id });
    for (const [name, value] of Object.entries(headers))
      if (name !== forUpload && typeof value === "string" && /^(tus-|upload-|content-)/.test(name))
        asked.set(name, value);
    const streamed = body === null ? {} : { body: streamOf(body), duplex: "half" as const };
    const answer = await this.server.handleWeb(
      new Request(`http://uploads${path}/${id}`, { method, headers: asked, ...streamed }),
    );
    if (answer.status >= 400) throw await refusalOf(answer);
    for (const name of handedOn) {
      const value = answer.headers.get(name);
      if (value !== null) void reply.header(name, value);
    }
    void reply.header("cache-control", "no-store");
    return undefined;
  }
}

/** What is left unread is thrown away by whoever answers; a cut fails whoever reads. */
function streamOf(body: Readable): ReadableStream<Uint8Array<ArrayBuffer>> {
  const parts: AsyncIterator<unknown> = body[Symbol.asyncIterator]();
  return new ReadableStream({
    async pull(controller) {
      const { done, value } = await parts.next();
      if (done === true) controller.close();
      else controller.enqueue(new Uint8Array(Bytes.parse(value)));
    },
  });
}

async function refusalOf(answer: Response): Promise<Error> {
  const known = refusals[answer.status];
  if (known === undefined) return new Error(`The upload failed: ${(await answer.text()).slice(0, 300)}`);
  const problems = known[0] === "malformed-request" ? { problems: [{ at: "header", reason: known[1] }] } : {};
  return new ProblemError(known[0], known[1], { ...problems, headers: { "tus-resumable": "1.0.0" } });
}
