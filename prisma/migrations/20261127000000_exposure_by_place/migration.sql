-- What was shown is kept place by place, with the door it was shown through. An item without a name stands for every place.
ALTER TABLE "statement_exposure" RENAME TO "statement_exposure_before";
ALTER TABLE "statement_exposure_before" RENAME CONSTRAINT "statement_exposure_pkey" TO "statement_exposure_before_pkey";
DROP INDEX "statement_exposure_organization_id_vehicle_id_idx";

-- CreateTable
CREATE TABLE "statement_exposure" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "vehicle_id" UUID NOT NULL,
    "organization_id" UUID,
    "account_id" UUID,
    "version_id" UUID,
    "item" TEXT NOT NULL,
    "position" TEXT NOT NULL,
    "door" TEXT NOT NULL,
    "share_link_id" UUID,
    "shown_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "statement_exposure_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "statement_exposure_vehicle_id_organization_id_idx" ON "statement_exposure"("vehicle_id", "organization_id");

-- CreateIndex
CREATE INDEX "statement_exposure_vehicle_id_account_id_idx" ON "statement_exposure"("vehicle_id", "account_id");

-- From here on: what the schema language cannot say.

-- The first showing of a place to a reader through a door is kept; reading it again adds nothing.
CREATE UNIQUE INDEX statement_exposure_once ON statement_exposure
  (vehicle_id, account_id, organization_id, version_id, item, position, door, share_link_id) NULLS NOT DISTINCT;

-- What was shown whole was shown at every place; what was shown as far as it was committed, at each place committed by then.
INSERT INTO statement_exposure (vehicle_id, organization_id, account_id, version_id, item, position, door, shown_at)
  SELECT e.vehicle_id, e.organization_id, e.account_id, e.version_id, '', '', 'statement', e.shown_at
  FROM statement_exposure_before e WHERE e.whole
  UNION ALL
  SELECT e.vehicle_id, e.organization_id, e.account_id, e.version_id, f.item, f.position, 'statement', min(e.shown_at)
  FROM statement_exposure_before e
  JOIN report r ON r.vehicle_id = e.vehicle_id AND r.organization_id = e.organization_id AND r.kind = 'inspection'
  JOIN report_finding f ON f.report_id = r.id AND f.first_committed_at <= e.shown_at
  WHERE NOT e.whole
  GROUP BY e.vehicle_id, e.organization_id, e.account_id, e.version_id, f.item, f.position
  ON CONFLICT DO NOTHING;
DROP TABLE "statement_exposure_before";
