-- What a dealer has begun and not sealed, for the first screen.
CREATE INDEX report_unsealed ON report (organization_id) WHERE drafting AND order_id IS NULL;
