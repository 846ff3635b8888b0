ALTER TABLE `farm` ADD COLUMN `expected_from` text DEFAULT 'a number' NOT NULL CONSTRAINT "farm_expected_from" CHECK(expected_from IN ('a number', 'last season'));--> statement-breakpoint
ALTER TABLE `farm` ADD COLUMN `expected_weight_share` real DEFAULT 0.3 NOT NULL CONSTRAINT "farm_expected_weight_share" CHECK(0 < expected_weight_share AND expected_weight_share <= 1);--> statement-breakpoint
UPDATE `farm` SET `expected_weight_share` = `weight_enquiry`;
