import request from "supertest";
import { expect, test } from "vitest";
import { useService } from "./setup/service.ts";

const service = useService();

test("it lives, and is ready with every migration applied", async () => {
  const [health, ready] = [
    await request(service().url).get("/health"),
    await request(service().url).get("/ready"),
  ];
  expect(health.body).toEqual({ status: "alive" });
  expect(ready.body).toEqual({ status: "ready" });
});

test("an address that is not there answers with a problem document", async () => {
  const answer = await request(service().url).get("/api/v1/nothing");
  expect(answer.status).toBe(404);
  expect(answer.headers["content-type"]).toBe("application/problem+json; charset=utf-8");
  expect(answer.body.type).toBe("https://evenhand.example/problems/not-found");
});
