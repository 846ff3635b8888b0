ALTER TABLE `bloom_curve` ADD COLUMN `sowing_days` integer CONSTRAINT "bloom_curve_sowing_days" CHECK(sowing_days BETWEEN 0 AND 1e15 AND sowing_days = CAST(sowing_days AS INTEGER));--> statement-breakpoint
ALTER TABLE `planting` ADD COLUMN `sown` integer DEFAULT 0 NOT NULL CONSTRAINT "planting_sown" CHECK(sown IN (0, 1));
