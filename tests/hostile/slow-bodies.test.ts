import { once } from "node:events";
import { connect } from "node:net";
import { expect, test } from "vitest";
import { useService } from "../api/setup/service.ts";

const service = useService({ environment: { REQUEST_TIMEOUT_MS: "1000" } });

/** Sends what is given and then a byte at a time, until it is cut off; gives what was answered. */
async function drip(port: number, first: string): Promise<string> {
  const socket = connect(port, "127.0.0.1");
  let said = "";
  socket.on("data", (part: Buffer) => (said += part.toString()));
  // Being cut off while writing is what is tried.
  socket.on("error", () => {});
  socket.write(first);
  const dripping = setInterval(() => socket.write("x"), 20);
  await once(socket, "close");
  clearInterval(dripping);
  return said;
}

const head = "POST /api/v1/sessions HTTP/1.1\r\nHost: here\r\nContent-Type: application/json\r\n";

test("bodies and headers that only drip are cut off, and everybody else is answered meanwhile", async () => {
  const { url } = service();
  const port = Number(new URL(url).port);
  const dripping = Array.from({ length: 40 }, (_, index) =>
    drip(port, index % 2 === 0 ? `${head}Content-Length: 60000\r\n\r\n{` : `${head}X-Long: `),
  );
  const statuses: number[] = [];
  for (let asked = 0; asked < 50; asked += 1) statuses.push((await fetch(`${url}/ready`)).status);
  expect(statuses).toEqual(Array.from({ length: 50 }, () => 200));
  for (const said of await Promise.all(dripping)) {
    expect(said).toContain("HTTP/1.1 408 ");
    expect(said).toContain("problems/request-too-slow");
  }
});
