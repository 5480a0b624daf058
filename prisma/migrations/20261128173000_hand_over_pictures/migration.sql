-- Photographs a carrier's link sends, each at its place of the collection or the delivery report.
CREATE TABLE "hand_over_picture" (
    "id" UUID NOT NULL,
    "hand_over_id" UUID NOT NULL,
    "stage" TEXT NOT NULL,
    "item" TEXT NOT NULL,
    "position" TEXT NOT NULL,
    "file_id" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "hand_over_picture_pkey" PRIMARY KEY ("id")
);

CREATE INDEX "hand_over_picture_file_id_idx" ON "hand_over_picture"("file_id");

CREATE UNIQUE INDEX "hand_over_picture_hand_over_id_stage_item_position_file_id_key" ON "hand_over_picture"("hand_over_id", "stage", "item", "position", "file_id");

ALTER TABLE "hand_over_picture" ADD CONSTRAINT "hand_over_picture_hand_over_id_fkey" FOREIGN KEY ("hand_over_id") REFERENCES "hand_over"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE "hand_over_picture" ADD CONSTRAINT "hand_over_picture_file_id_fkey" FOREIGN KEY ("file_id") REFERENCES "evidence_file"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
