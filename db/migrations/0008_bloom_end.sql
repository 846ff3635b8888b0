ALTER TABLE `bloom_curve` ADD COLUMN `ends` text DEFAULT 'weeks' NOT NULL;--> statement-breakpoint
ALTER TABLE `bloom_curve` ADD COLUMN `end_high_c` real CONSTRAINT "bloom_curve_ends" CHECK(ends IN ('weeks', 'frost', 'heat') AND (ends = 'heat') = (end_high_c IS NOT NULL));
