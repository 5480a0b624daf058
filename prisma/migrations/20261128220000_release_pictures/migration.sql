-- Photographs that speak for a move in settling: kept with the line, their sender's alone until a move names them.
CREATE TABLE "release_picture" (
    "id" UUID NOT NULL,
    "release_id" UUID NOT NULL,
    "organization_id" UUID NOT NULL,
    "account_id" UUID NOT NULL,
    "file_id" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "sent_at" TIMESTAMPTZ(3),

    CONSTRAINT "release_picture_pkey" PRIMARY KEY ("id")
);

CREATE INDEX "release_picture_file_id_idx" ON "release_picture"("file_id");

CREATE UNIQUE INDEX "release_picture_release_id_organization_id_file_id_key" ON "release_picture"("release_id", "organization_id", "file_id");

ALTER TABLE "release_picture" ADD CONSTRAINT "release_picture_release_id_fkey" FOREIGN KEY ("release_id") REFERENCES "release"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE "release_picture" ADD CONSTRAINT "release_picture_file_id_fkey" FOREIGN KEY ("file_id") REFERENCES "evidence_file"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
