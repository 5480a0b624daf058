-- CreateTable
CREATE TABLE "buyer_case" (
    "id" UUID NOT NULL,
    "vehicle_id" UUID NOT NULL,
    "buyer_id" UUID NOT NULL,
    "dealer_id" UUID NOT NULL,
    "opened_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "buyer_case_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "buyer_case_vehicle_id_buyer_id_key" ON "buyer_case"("vehicle_id", "buyer_id");

-- CreateIndex
CREATE INDEX "buyer_case_buyer_id_id_idx" ON "buyer_case"("buyer_id", "id");

-- CreateIndex
CREATE INDEX "buyer_case_dealer_id_id_idx" ON "buyer_case"("dealer_id", "id");

-- Whatever a buyer began with a car so far is a case, since its first part; the id is of version 7 and of that time (RFC 9562, 5.7).
INSERT INTO "buyer_case" ("id", "vehicle_id", "buyer_id", "dealer_id", "opened_at")
SELECT (left(ms, 8) || '-' || right(ms, 4) || '-7' || substr(rnd, 16, 21))::uuid, "vehicle_id", "buyer_id", "organization_id", "since"
FROM (
  SELECT part."vehicle_id", part."buyer_id", v."organization_id", min(part."at") AS "since",
    lpad(to_hex((extract(epoch FROM min(part."at")) * 1000)::bigint), 12, '0') AS ms, gen_random_uuid()::text AS rnd
  FROM (
    SELECT "vehicle_id", "buyer_id", "created_at" AS "at" FROM "question"
    UNION ALL SELECT "vehicle_id", "buyer_id", "updated_at" FROM "brief"
    UNION ALL SELECT "vehicle_id", "buyer_id", "ordered_at" FROM "inspection_order"
    UNION ALL SELECT c."vehicle_id", a."buyer_id", a."created_at" FROM "appointment" a JOIN "appointment_car" c ON c."appointment_id" = a."id"
  ) part JOIN "vehicle" v ON v."id" = part."vehicle_id"
  GROUP BY part."vehicle_id", part."buyer_id", v."organization_id"
) began;
