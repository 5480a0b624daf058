-- What a buyer reckons that transport costs, and what a buyer keeps with a case: every save is a row, and the newest holds.
CREATE TABLE "transport_rates_version" (
    "organization_id" UUID NOT NULL,
    "revision" INTEGER NOT NULL,
    "document" JSONB NOT NULL,
    "saved_by" UUID NOT NULL,
    "saved_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "transport_rates_version_pkey" PRIMARY KEY ("organization_id","revision")
);

CREATE TABLE "case_document_version" (
    "case_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "revision" INTEGER NOT NULL,
    "document" JSONB NOT NULL,
    "saved_by" UUID NOT NULL,
    "saved_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "case_document_version_pkey" PRIMARY KEY ("case_id","kind","revision")
);

ALTER TABLE "transport_rates_version" ADD CONSTRAINT "transport_rates_version_organization_id_fkey" FOREIGN KEY ("organization_id") REFERENCES "organization"("id") ON DELETE CASCADE ON UPDATE CASCADE;

ALTER TABLE "case_document_version" ADD CONSTRAINT "case_document_version_case_id_fkey" FOREIGN KEY ("case_id") REFERENCES "buyer_case"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
